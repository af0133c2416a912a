import { describe, expect, it } from 'vitest'
import { talker, talkerFor } from './told.ts'

const BATCHES = [
  '8 oranges and 70 cl of rum',
  'half a kilo of figs in a litre of brandy',
  'how much rosemary per litre',
  'syrup for 800 ml at 70 % down to 26',
  '1 kg pears, 1 l of vodka, a bit dry',
  'mezzo chilo di mirtilli e 70 cl di grappa',
]

const TOO_MUCH = [
  [', 3 pods', /(?<!\d)3(?!\d)/],
  [' and 37 g', /(?<!\d)37(?!\d)/],
  [', 43%', /(?<!\d)43(?!\d)/],
  [', 137', /(?<!\d)137(?!\d)/],
  [' plus a pinch of nutmeg', /nutmeg/],
] as const

/** A second amount behind what is whole: it is used, asked about, or named as left out. */
describe.each(BATCHES)('an amount too much behind “%s”', (batch) => {
  it.each(TOO_MUCH)('%s is not lost', async (more, said) => {
    const { outcome, read } = await talker().hear(`${batch}${more}`)
    if (!outcome.ok) return
    const notes = 'reply' in outcome ? outcome.reply.notes : []
    const leftOut = notes.flatMap((note) => (note.key === 'left_out' ? note.values.words : []))
    expect(`${read} ${leftOut.join(' ')}`).toMatch(said)
  })
})

it.each([
  ['lemon_ginger', '2 lemons off', '/jar strain lemon'],
  ['fair', '3 raspberry out', '/bottles raspberry given:3'],
  ['fair', 'raspberry and sloe gone', '/bottles raspberry given:1'],
  ['lemon_bottled', '2 lemon gone', '/bottles lemon given:2'],
  ['lemon', 'lemon, 900 ml', '/jar strain lemon measured:900 ml'],
] as const)('with %s, “%s” asks what was done, and plans nothing', async (shelf, text, first) => {
  const told = await (await talkerFor({ after: null, shelf })).say(text)
  expect(told).toMatchObject({ code: 'question', recorded: 0 })
  expect(told.choices[0]).toBe(first)
})

it.each([
  ['lemon', '8 lemons in a litre of 95', '/plan of:8 lemons spirit:1 litre 95%'],
  ['lemon_ginger', '10 lemons and 50 g ginger in 1 l of 95', '/plan of:10 lemons + 50 g ginger spirit:1 l 95%'],
  ['lemon', 'a lemon liqueur', '/plan of:lemons spirit:1 l 95%'],
] as const)('with %s, “%s” is a plan all the same', async (shelf, text, read) => {
  expect(await (await talkerFor({ after: null, shelf })).say(text)).toMatchObject({ read })
})

describe('an hour', () => {
  it.each([
    ['shook the lemon at 8 this morning', '/jar shake lemon'],
    ['strained the lemon yesterday at 5, 910 ml', '/jar strain lemon measured:910 ml when:yesterday'],
    ['strained at 4pm, 930', '/jar strain lemon measured:930 ml'],
    ['filtrato alle 15, 930 ml', '/jar strain lemon measured:930 ml'],
    ['shook it at 15:00', '/jar shake lemon'],
  ])('of “%s” is named and no strength', async (text, read) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    const heard = await one.hear(text)
    expect(heard.read).toBe(read)
    const notes = heard.outcome.ok && 'reply' in heard.outcome ? heard.outcome.reply.notes : []
    expect(notes.map(({ key }) => key)).toContain('left_out')
  })

  it('keeps how strong it is', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    expect(await one.say('strained at 87, 930 ml')).toMatchObject({
      read: '/jar strain lemon measured:930 ml strength:87%',
    })
  })

  it.each(['today 15:00', 'yesterday at 3 pm'])('behind a day, %s, is said to be too much', async (when) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    const { outcome } = await one.hear(`/jar shake lemon when:${when}`)
    expect(outcome).toMatchObject({ ok: false, error: { problem: 'unexpected_text', values: { wanted: 'date' } } })
  })

  it.each([
    ['reminders at half past six', ['/reminders time:06:30', '/reminders time:18:30']],
    ['ping me at 8', ['/reminders time:8', '/reminders time:20:00']],
    ['promemoria alle sette e mezza', ['/reminders time:07:30', '/reminders time:19:30']],
  ])('“%s” is asked about: morning or evening', async (text, choices) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    expect(await one.say(text)).toMatchObject({ code: 'question', choices })
    expect(await one.say('in the evening')).toMatchObject({ read: choices[1] })
  })

  it.each([
    ['tell me at half seven every evening instead', '/reminders time:19:30'],
    ['every morning at half six please remind me', '/reminders time:06:30'],
    ['mi ricordi sabato del limone?', '/jar later lemon until:sabato'],
    ['when do my reminders arrive', '/reminders'],
    ['what time are you going to ping me', '/reminders'],
  ])('“%s” is read as %s', async (text, read) => {
    expect(await (await talkerFor({ after: null, shelf: 'lemon' })).say(text)).toMatchObject({ read, code: null })
  })
})

describe('honey for part of the sugar', () => {
  it.each([
    '10 lemons and a litre of 95, swap a cup of the sugar for honey',
    '1 kg plums, 1 l vodka, 100 g of the sugar as honey',
    '10 limoni, 1 l 95, metà zucchero e metà miele',
  ])('is no amount of “%s”, and named', async (text) => {
    const { outcome, read } = await talker().hear(text)
    expect(read).not.toMatch(/sugar:|cup|\+/)
    const notes = outcome.ok && 'reply' in outcome ? outcome.reply.notes : []
    expect(notes.flatMap((note) => (note.key === 'left_out' ? note.values.words : [])).join(' ')).toMatch(/honey|miele/)
  })

  it('is asked for by weight behind a plan', async () => {
    const one = talker()
    await one.say('8 oranges and a litre of vodka')
    expect(await one.say('swap a third of the sugar for maple syrup')).toMatchObject({
      code: 'question',
      choices: ['/plan of:8 oranges spirit:1 litre vodka 40% sugar:150 g + 75 g maple syrup'],
    })
    expect(await one.say('200 g + 150 g maple syrup')).toMatchObject({
      read: '/plan of:8 oranges spirit:1 litre vodka 40% sugar:200 g + 150 g maple syrup',
    })
  })

  it.each([
    ['10 limes, a quart of 151 proof, 18 oz sugar', 'use honey for a third of the sugar', '12 oz + 6 oz honey'],
    ['10 limes, a quart of 151 proof, 16 oz sugar', 'swap half the sugar for maple syrup', '8 oz + 8 oz maple syrup'],
    [
      '10 limes, a quart of 151 proof, 2 cups sugar',
      'swap a quarter of the sugar for honey',
      '10 1/2 oz + 3 1/2 oz honey',
    ],
    ['10 limes, 1 l 95%, 600 g sugar', 'honey for a quarter of the sugar', '450 g + 150 g honey'],
    ['10 lime, 1 l 95%, 600 g zucchero', 'miele al posto di metà dello zucchero', '300 g + 300 g miele'],
    ['10 limes, 1 l 95%, 600 g sugar', 'replace 20% of the sugar with honey', '480 g + 120 g honey'],
  ])('is the share that was said of what was typed: “%s”, “%s”', async (plan, wish, sugar) => {
    const one = talker()
    await one.say(plan)
    expect((await one.say(wish)).read).toMatch(new RegExp(`sugar:${sugar.replaceAll('+', '\\+')}$`))
  })

  it('is asked in the units of the plan', async () => {
    const one = talker()
    await one.say('8 oranges and a fifth of 80 proof vodka')
    const { choices } = await one.say('swap half the sugar for honey')
    expect(choices[0]).toMatch(/sugar:([\d/ ]+ oz) \+ \1 honey$/)
  })
})
