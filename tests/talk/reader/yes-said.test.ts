import { describe, expect, it } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import { talker, talkerFor } from './told.ts'

type AskedOf = Parameters<typeof en.problems.talk_which_offered>[0]

const strained = () => talkerFor({ after: null, shelf: 'lemon_strained' })

describe('a yes to what may be a mistake', () => {
  it.each(['yes', 'oh yes', 'sì'])('undoes a sweetening that was typed twice: %s', async (text) => {
    const one = await strained()
    await one.say('/jar sweeten lemon sugar:500 g water:1.5 l')
    await one.say('/jar sweeten lemon sugar:100 g water:100 ml')
    const told = await one.say(text)
    expect(told).toMatchObject({ command: 'jar undo', code: null })
    expect((await one.say('/jar show lemon')).data).toMatchObject({ stage: 'sweetened' })
  })

  it('asks of a yes that may say that it was meant', async () => {
    const one = await strained()
    await one.say('/jar sweeten lemon sugar:500 g water:1.5 l')
    await one.say('/jar sweeten lemon sugar:100 g water:100 ml')
    expect(await one.say('yes I did')).toMatchObject({ code: 'question', recorded: 0 })
  })

  it('records no bottling by a done, and names what may be undone', async () => {
    const one = await strained()
    await one.say('/jar sweeten lemon sugar:500 g water:1.5 l')
    await one.say('/jar sweeten lemon sugar:100 g water:100 ml')
    expect(await one.say('done')).toMatchObject({
      code: 'question',
      choices: [expect.stringContaining('/jar undo')],
      recorded: 0,
    })
  })

  it.each(['yes', 'yes that’s right'])(
    'is agreed with behind a jar that was begun, which is not let be: %s',
    async (text) => {
      const one = await strained()
      await one.say('/jar start plum of:400 g plums spirit:0.5 l vodka 40%')
      expect(await one.say(text)).toMatchObject({ data: { said: 'talk_right' }, recorded: 0 })
    },
  )

  it('leaves what was meant as it is', async () => {
    const one = await strained()
    await one.say('/jar sweeten lemon sugar:50 g water:100 ml')
    expect(await one.say('yes')).toMatchObject({ code: null, data: { said: 'talk_let_be' }, recorded: 0 })
  })

  it('asks whether a number that does not fit is to go', async () => {
    const one = await strained()
    await one.say('/jar sweeten lemon sugar:500 g water:1.5 l')
    await one.say('/jar bottle lemon bottles:6 x 500 ml')
    expect(await one.say('yes')).toMatchObject({ code: 'question', recorded: 0 })
    expect(await one.say('yes')).toMatchObject({ command: 'jar undo', recorded: 1 })
  })
})

describe('a yes to several lines, or to one for later', () => {
  it('asks which', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    await one.say('/jar strain lemon measured:930 ml strength:87%')
    expect(await one.say('yes')).toMatchObject({ code: 'question', recorded: 0 })
  })

  it('asks it of a plan by words that each do it, and by no code', async () => {
    const ways = [
      ['start it', 'jar start', {}],
      ['drier', 'plan', { 'to-sweetness': '120 g/L' }],
      ['shopping list', 'shopping', {}],
    ] as const
    for (const [word, command, options] of ways) {
      const one = talker()
      await one.say('10 lemons and a litre of 95%')
      const { outcome } = await one.hear('yes')
      if (outcome.ok || outcome.error.problem !== 'talk_which_offered') throw new Error('nothing was asked')
      const asked = en.problems.talk_which_offered(outcome.error.values as AskedOf, en.format('metric'))
      expect(asked).toContain(`“${word}”`)
      expect(asked).not.toContain('/')
      expect(await one.say(word)).toMatchObject({ code: null, command, call: { options } })
    }
  })

  it('is asked of a bottling before it is written down', async () => {
    const one = await strained()
    await one.say('done')
    expect(await one.say('yes')).toMatchObject({
      code: 'question',
      choices: [expect.stringContaining('/jar bottle')],
      recorded: 0,
    })
    expect(await one.say('yes')).toMatchObject({ command: 'jar bottle', recorded: 1 })
  })
})

describe('what /trouble asks', () => {
  it.each([
    ['yes', { yes: 'something grows' }],
    ['yes, it is', { yes: 'something grows' }],
    ['no', { no: 'something grows' }],
    ['no, nothing', { no: 'something grows' }],
  ])('is answered by %s', async (text, answer) => {
    const one = await strained()
    await one.say('/trouble fizzing jar:lemon')
    const told = await one.say(text)
    // That something grows is kept: it has to go. No bottle of it was ever filled, so none can have burst.
    expect(told).toMatchObject({ command: 'trouble', code: null, recorded: 'yes' in answer ? 1 : 0 })
    expect(told.call?.options).toEqual({ symptom: 'fizzing', jar: 'lemon', ...answer })
  })
})

describe('a sweetening as planned', () => {
  const STRAINED = '/jar strain lemon measured:930 ml strength:87%'

  it.each([
    ['/syrup jar:lemon to-strength:25%', 'I’ve sweetened it as planned'],
    ['less sweet please', 'all sweetened to plan'],
    ['più dolce', 'addolcito come previsto'],
  ])('asks which of two ways it was, and writes down the one that is said: %s, %s', async (tried, text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    await one.say(STRAINED)
    const planned = (await one.say('/syrup jar:lemon')).data as { sugarG: number }
    const anew = (await one.say(tried)).data as { sugarG: number }
    const asked = await one.say(text)
    expect(asked).toMatchObject({ code: 'question', recorded: 0 })
    expect(asked.choices.map((line) => Number(/sugar:(\d+)/.exec(line)?.[1]))).toEqual([
      expect.closeTo(anew.sugarG, -1),
      expect.closeTo(planned.sugarG, -1),
    ])
    expect(await one.say('the second')).toMatchObject({ command: 'jar sweeten', code: null, recorded: 1 })
  })

  it('takes the plan’s amounts where what was tried comes to the same', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    await one.say(STRAINED)
    await one.say('/syrup jar:lemon')
    expect(await one.say('I’ve sweetened it as planned')).toMatchObject({
      command: 'jar sweeten',
      code: null,
      recorded: 1,
    })
  })

  it('takes what was tried last where nothing is said of a plan', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    await one.say(STRAINED)
    const tried = (await one.say('/syrup jar:lemon to-sweetness:300 g/L')).data as { sugarG: number }
    const told = await one.say('I’ve sweetened it')
    expect(told).toMatchObject({ command: 'jar sweeten', code: null, recorded: 1 })
    expect(Number.parseFloat(told.call!.options.sugar!)).toBeCloseTo(tried.sugarG, -1)
  })

  it('asks with the planned amounts where the plan was not told in this talk', async () => {
    const one = await strained()
    one.wait(40)
    await one.say('/syrup jar:lemon to-sweetness:300 g/L')
    expect(await one.say('I’ve sweetened it as planned')).toMatchObject({ code: 'missing_option', recorded: 0 })
  })
})

it.each(['yes', 'yes, go on', 'sì'])(
  'takes a yes behind a start for no answer to what is only offered: %s',
  async (text) => {
    const one = await talkerFor({ after: '10 lemons and 1 l 95%' })
    await one.say('start it')
    expect(await one.say(text)).toMatchObject({ code: null, recorded: 0, choices: [] })
  },
)

describe('a nod to a question that it does not answer', () => {
  it.each(['yes', 'done', 'ok'])('is asked again, and takes nothing that was offered before: %s', async (text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    await one.say('shook the lemon')
    expect(await one.say('tasted it')).toMatchObject({ code: 'question' })
    expect(await one.say(text)).toMatchObject({ command: 'jar taste', code: 'question', recorded: 0 })
    expect(await one.say('lovely')).toMatchObject({ read: '/jar taste lemon note:lovely', recorded: 1 })
  })
})
