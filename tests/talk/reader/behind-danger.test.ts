import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const told = async (...lines: readonly string[]) => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  for (const line of lines) await one.say(line)
  return one
}

const textOf = async (one: Awaited<ReturnType<typeof told>>, line: string) => {
  const { outcome } = await one.hear(line)
  if (!outcome.ok || !('reply' in outcome)) throw new Error('no reply')
  return outcome.reply
}

const FUR = 'there is fur on top of the lemon'
const VARNISH = 'the lemon smells of nail varnish'
const AWAY = { command: 'trouble', data: { discard: { verdict: 'throw_away' } } }

// Sentences as makers type them; what spirit of unknown origin does stands in core/trouble with its sources.
describe('whether its spirit was bought is answered in other words', () => {
  it.each([
    'my uncle runs a still',
    'no, a friend distilled it himself',
    'no idea, it was a present',
    'I can’t remember',
    'the label came off',
    'he got it from a man at the market, no label',
    'non lo so, me l’hanno regalato',
    'l’ha distillato mio zio',
  ])('not bought: %s', async (text) => {
    const one = await told(VARNISH)
    expect(await one.say(text)).toMatchObject({ ...AWAY, recorded: 1 })
    expect((await one.say('/jar show lemon')).data.dangers).toEqual(['to_throw_away'])
  })

  it('bought', async () => {
    const one = await told(VARNISH)
    expect((await one.say('it’s from the supermarket')).call?.options).toMatchObject({
      yes: expect.stringContaining('bought spirit'),
    })
  })

  it('comes before a step that is told, and straining is written down', async () => {
    const one = await told(VARNISH)
    expect(await one.say('bottled it')).toMatchObject({ command: 'trouble', data: { discard: { verdict: 'ask' } } })
    const strained = await one.say('I strained it')
    expect(strained).toMatchObject({ command: 'trouble', recorded: 1 })
    expect(strained.also).toMatchObject([{ command: 'jar strain', code: null }])
  })
})

describe('where its spirit came from clears nothing', () => {
  const STARTED = '/jar start plum of:500 g plums spirit:1 l vodka 40%'
  const GLUE = 'the plum smells of glue'

  it.each([
    'the vodka came from the corner shop',
    'it was labelled vodka, a good brand',
    'I bought that vodka myself',
    'the spirit was from an off licence',
    'la vodka l’ho comprata al supermercato',
  ])('%s', async (text) => {
    const one = await told(STARTED, GLUE, 'no')
    for (const line of [text, text])
      expect(await one.say(line)).toMatchObject({ command: 'trouble', data: { discard: { verdict: 'hold' } } })
    expect((await one.say('/jar show plum')).data.dangers).toEqual(['not_yet'])
  })

  it('of mould too, and a no stands', async () => {
    expect(await (await told(FUR)).say('the vodka was from the supermarket')).toMatchObject(AWAY)
    expect(await (await told(VARNISH, 'no')).say('the vodka was from the supermarket')).toMatchObject(AWAY)
  })

  it('nobody’s spirit has it thrown away', async () => {
    expect(await (await told(STARTED, GLUE, 'no')).say('the vodka was homemade by a friend')).toMatchObject(AWAY)
  })

  it.each(['which vodka should I buy at the shop?', 'I’ll buy another vodka at the shop'])(
    'is nothing of another: %s',
    async (text) => {
      expect((await (await told(STARTED, GLUE, 'no')).say(text)).command).not.toBe('trouble')
    },
  )

  it('is said to be for good, and to be thrown away first', async () => {
    const { headline, actions } = await textOf(await told(STARTED, GLUE), 'no')
    expect(headline).toMatchObject({ key: 'trouble_hold_for', values: { isForGood: true } })
    expect(actions[0]).toMatchObject({ label: { key: 'jar_throw_away' } })
    const gas = await textOf(await told(STARTED, 'the lid of the plum is bulging'), 'yes')
    expect(gas.headline).not.toMatchObject({ values: { isForGood: true } })
  })
})

describe('what would be done with it all the same is refused', () => {
  it.each([
    'can I bake a cake with it?',
    'could I use it for a sauce',
    'I’ll boil it then',
    'can I use it to wipe the table',
    'I’ll give it to the neighbours',
    'posso usarlo per una torta?',
    'lo regalo alla vicina',
  ])('%s', async (text) => {
    const one = await told(VARNISH, 'no')
    expect(await one.say(text)).toMatchObject({ ...AWAY, recorded: 0 })
    const { headline, notes } = await textOf(one, text)
    expect(headline).toMatchObject({ key: 'trouble_throw_away', values: { isRefused: true } })
    expect(notes.map(({ key }) => key)).toContain('trouble_no_use')
  })

  it('offers no line that it was nothing where it may blind', async () => {
    const { actions } = await textOf(await told(VARNISH), 'no')
    expect(JSON.stringify(actions)).not.toContain('"nothing"')
    expect(JSON.stringify(actions)).toContain('in a labelled bottle')
  })

  it.each(['how do I clean a jar?', 'can I use vodka instead?', 'should I throw it away?'])(
    'says no to nothing else: %s',
    async (text) => {
      const { outcome } = await (await told(FUR)).hear(text)
      expect(JSON.stringify(outcome)).not.toContain('"isRefused":true')
    },
  )
})

describe('skimming is no way', () => {
  it.each([
    'I’ll scoop the fluff out',
    'I took it off, can I carry on?',
    'I only removed the top',
    'I’ve spooned it out',
    'l’ho tolta, posso continuare?',
    'levo solo la muffa',
  ])('%s', async (text) => {
    const one = await told(FUR)
    expect(await one.say(text)).toMatchObject({ ...AWAY, recorded: 0 })
    expect((await textOf(one, text)).notes.map(({ key }) => key)).toContain('trouble_skimmed')
  })

  it.each(['what about the other bottles?', 'are the others ok?', 'e le altre bottiglie?'])(
    'the same batch is looked at: %s',
    async (text) => {
      expect((await textOf(await told(FUR), text)).notes.map(({ key }) => key)).toContain('trouble_other_bottles')
    },
  )
})

describe('whoever has some is told', () => {
  it.each([
    ['gave a glass to Tessa', 'Tessa'],
    ['I let my cousin try it', 'your cousin'],
    ['passed some to Tessa and Ugo', 'Tessa and Ugo'],
    ['Tessa has a bottle', 'Tessa'],
    ['I gave her a bit yesterday', null],
    ['ne ho dato un bicchiere a Tessa', 'Tessa'],
    ['l’ho fatto assaggiare al vicino', null],
  ])('%s', async (text, who) => {
    for (const before of [FUR, VARNISH, 'the lid of the lemon is bulging']) {
      const { cautions } = await textOf(await told(before), text)
      expect(cautions[0]).toMatchObject({ key: 'trouble_given', values: { who } })
    }
  })

  it('whom to call is said once', async () => {
    const keys = async (...before: readonly string[]) =>
      (await textOf(await told(...before), 'gave some to Tessa')).cautions
    expect((await keys(FUR))[0]).toMatchObject({ values: { call: { numbers: expect.anything() } } })
    const poisoned = await keys(VARNISH, 'no')
    expect(poisoned[0]).toMatchObject({ values: { call: null } })
    expect(poisoned[1]).toMatchObject({ key: 'trouble_if_drunk' })
  })

  it('a bottle is written down as given', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
    await one.say(FUR)
    const given = await one.say('I already gave a bottle to Tessa')
    expect(given).toMatchObject({ ...AWAY, recorded: 1 })
    expect(given.also).toMatchObject([{ command: 'bottles', code: null }])
  })

  it('is nothing behind what harms nobody', async () => {
    const one = await told('the lemon is too sweet')
    expect((await one.say('gave some to Tessa')).command).not.toBe('trouble')
  })
})
