import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const said = async (text: string) => (await talkerFor({ after: null, shelf: 'fair' })).say(text)

describe('how a jar that stands there is to be', () => {
  it.each([
    ['make the lemon sweeter', '/syrup jar:lemon to-sweetness:270 g/L'],
    ['the lemon a bit drier please', '/syrup jar:lemon to-sweetness:160 g/L'],
    ['I want the lemon at 28', '/syrup jar:lemon to-strength:28%'],
    ['lemon to 28% and dry', '/syrup jar:lemon to-sweetness:dry to-strength:28%'],
    ['the lemon wants more sugar', '/syrup jar:lemon to-sweetness:270 g/L'],
  ])('by its syrup, where it is strained: %s', async (text, read) => {
    expect(await said(text)).toMatchObject({ read, recorded: 0 })
  })

  it.each([
    ['bring the orange down to 25%', '/adjust jar:orange to-strength:25%'],
    ['could the orange be sweeter', '/trouble not sweet enough jar:orange'],
    ['the orange wants more sugar', '/trouble not sweet enough jar:orange'],
  ])('by what mends it, where it is sweetened: %s', async (text, read) => {
    expect(await said(text)).toMatchObject({ read, recorded: 0 })
  })

  it('is worked out a step weaker, where it is only too strong', async () => {
    expect(await said('the orange is too strong')).toMatchObject({
      code: null,
      command: 'adjust',
      read: '/adjust jar:orange to-strength:30%',
      recorded: 0,
    })
  })

  it('is given another week', async () => {
    expect((await said('give the sloe another week')).read).toBe('/jar later sloe until:in 1 week')
    expect((await said('the lemon needs another fortnight')).read).toBe('/jar later lemon until:in 2 weeks')
    expect((await said('lascia il limone un’altra settimana')).read).toBe('/jar later lemon until:in 1 week')
    expect((await said('should I give the sloe another month')).recorded).toBe(0)
  })

  it('is not what it is measured at', async () => {
    expect((await said('the lemon is 87%')).read ?? '').not.toMatch(/to-strength/)
  })

  it('is nothing of a new batch', async () => {
    expect((await said('10 lemons, 1 l of 95%, to 28%')).read).toMatch(/^\/plan/)
  })
})

describe('more time for what stands there, without its name', () => {
  it.each([
    ['needs another fortnight', 'in 2 weeks'],
    ['give it another month', 'in 1 month'],
    ['it wants two more weeks', 'in 2 weeks'],
    ['ha bisogno di altre due settimane', 'in 2 settimane'],
  ])('%s', async (text, until) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    expect(await one.say(text)).toMatchObject({ read: `/jar later lemon until:${until}`, recorded: 1 })
    const two = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    two.wait(40)
    expect(await two.say(text)).toMatchObject({ code: 'question', recorded: 0 })
  })

  it.each(['does it need another week?', 'I need another week off'])(
    'not where nothing is told of it: %s',
    async (text) => {
      const one = await talkerFor({ after: null, shelf: 'lemon' })
      expect(await one.say(text)).toMatchObject({ recorded: 0 })
    },
  )
})

describe('what is only said to be too strong', () => {
  it.each([
    ['it’s a bit too strong for me', '/adjust jar:lemon to-strength:25%'],
    ['far too boozy for gran', '/adjust jar:lemon to-strength:25%'],
    ['too strong, what can I do?', '/adjust jar:lemon to-strength:25%'],
    ['too strong, I’d like 27%', '/adjust jar:lemon to-strength:27%'],
    ['è troppo forte', '/adjust jar:lemon to-strength:25%'],
  ])('is of the one jar that is past its syrup: %s', async (text, read) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
    expect(await one.say(text)).toMatchObject({ read, code: null, recorded: 0 })
  })

  it('is of the syrup, where that is not in yet', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_strained' })
    expect((await one.say('bit strong for me')).read).toBe('/syrup jar:lemon to-strength:25%')
  })

  it('is of the jar that was spoken of last, and asked of which among several', async () => {
    const one = await talkerFor({ after: null, shelf: 'fair' })
    await one.say('show me the raspberry')
    expect((await one.say('it’s too strong')).read).toMatch(/^\/adjust jar:raspberry to-strength:\d+%$/)
    const two = await talkerFor({ after: null, shelf: 'fair' })
    two.wait(40)
    const asked = await two.say('too strong')
    expect(asked).toMatchObject({ code: 'question', recorded: 0 })
    expect(asked.choices).toHaveLength(3)
  })

  it('is asked, not told, with whether', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
    expect((await one.say('is it too strong?')).command).not.toBe('adjust')
  })

  it('is changed by what goes in besides, once the syrup is in, whatever was said of the jar', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
    await one.say('tasted the lemon, 3 stars')
    expect((await one.say('make it weaker')).read).toBe('/adjust jar:lemon to-strength:25%')
  })
})

it.each([
  'is it too strong for me',
  'would that be too strong for my aunt',
  'could it be too strong',
  'is this a bit too strong',
])('makes nothing weaker where it is only asked whether it is too strong: %s', async (text) => {
  const told = await (await talkerFor({ after: null, shelf: 'lemon_strained' })).say(text)
  expect(told.command).not.toBe('syrup')
  expect(told.choices.join()).not.toContain('to-strength')
})
