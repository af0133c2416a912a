import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

describe('what is left in bottles', () => {
  it.each([
    'what’s left?',
    'how many are left',
    'what’s left of the lemon',
    'what have we got left',
    'quante ne sono rimaste?',
  ])('%s', async (said) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
    expect(await one.say(said)).toMatchObject({ command: 'bottles', code: null, recorded: 0 })
  })

  it('is no list of what is left to do', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
    expect((await one.say('what’s left to do')).command).not.toBe('bottles')
  })
})

describe('what is to be weaker', () => {
  it.each(['how do I make it less strong?', 'how can we make this milder'])(
    '%s: of no plan, it is trouble',
    async (said) => {
      const one = await talkerFor({ after: null })
      expect(await one.say(said)).toMatchObject({ command: 'trouble', data: { symptom: 'harsh_hot' } })
    },
  )

  it('of a plan, it is planned again', async () => {
    const one = await talkerFor({ after: null })
    await one.say('9 limes in a litre of gin')
    expect((await one.say('how can I make it less strong?')).read).toMatch(/^\/plan of:9 limes .*to-strength:2\d%$/)
  })
})

describe('for somebody under eighteen', () => {
  it.each(['one for my 15-year-old', 'a bottle for our 16 year old nephew', 'una bottiglia per mio figlio di 14 anni'])(
    '%s',
    async (said) => {
      const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
      expect(await one.say(said)).toMatchObject({ command: 'handbook', data: { entry: 'children' }, recorded: 0 })
    },
  )
  it.each(['one for my 40 year old brother', 'one for my 12 year old rum'])('%s is none', async (said) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
    expect((await one.say(said)).data.entry).not.toBe('children')
  })
})

describe('what was started is put right', () => {
  it.each([
    [
      '/jar start pepper of:2 jalapeños spirit:750 ml tequila 40%',
      'it should be 5 jalapeños not 2',
      'pepper entry:1 of:5 jalapeños',
    ],
    [
      '/jar start plum of:900 g plums spirit:750 ml gin 40%',
      'that should have been 950 g plums, not 900',
      'plum entry:1 of:950 g plums',
    ],
    [
      '/jar start prugne of:900 g plums spirit:750 ml gin 40%',
      'dovevano essere 950 g di prugne non 900',
      'prugne entry:1 of:950 g prugne',
    ],
  ])('%s, %s', async (start, said, read) => {
    const one = await talkerFor({ after: null })
    await one.say(start)
    expect((await one.say(said)).read).toBe(`/jar correct ${read}`)
  })

  it('not in a jar of another plant', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
    const { read, recorded } = await one.say('it should be 4 jalapeños not 2')
    expect(read ?? '').not.toMatch(/^\/jar correct/)
    expect(recorded).toBe(0)
  })
})
