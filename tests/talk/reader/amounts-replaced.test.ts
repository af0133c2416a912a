import { describe, expect, it } from 'vitest'
import { talker, talkerFor } from './told.ts'

async function notesBehind(...lines: readonly string[]) {
  const one = await talkerFor({ after: null })
  for (const line of lines.slice(0, -1)) await one.say(line)
  const { outcome, read } = await one.hear(lines.at(-1)!)
  return { read, notes: outcome.ok && 'reply' in outcome ? outcome.reply.notes : [] }
}

describe('bottles wished behind amounts that were told', () => {
  it.each([
    ['8 oranges and 70 cl of 95%', 'make it eight bottles', '8 oranges and 70 cl 95%', 3, 8],
    ['1 kg damsons and 2 l of gin 43%', 'we only want one bottle', '1 kg damsons and 2 l gin 43%', 4, 1],
    ['12 limoni e un litro di alcol 96', 'basta per dieci bottiglie', '12 limoni and 1 litro 96%', 5, 10],
    [
      '400 g raspberries and a litre of vodka',
      'enough for five bottles',
      '400 g raspberries and 1 litre vodka 40%',
      2,
      5,
    ],
  ])('%s, then %s: says how far those go', async (plan, wish, typed, filled, wished) => {
    const { notes } = await notesBehind(plan, wish)
    expect(notes).toContainEqual({ group: 'notes', key: 'amounts_replaced', values: { typed, filled, wished } })
  })

  it('says nothing where no amount was told before', async () => {
    const { notes } = await notesBehind('lemons for five bottles', 'make it seven bottles')
    expect(notes.map(({ key }) => key)).not.toContain('amounts_replaced')
  })
})

describe('what is shown in other measures stays the batch that it was', () => {
  it.each([
    ['lemons for six bottles', 'in US cups', '6 x 500 ml'],
    ['raspberries for four bottles', 'in US cups please', '4 x 500 ml'],
    ['oranges for three bottles', 'can you give it to me in ounces', '3 x 500 ml'],
    ['arance per tre bottiglie', 'in tazze per favore', '3 x 500 ml'],
  ])('%s, then %s', async (plan, measures, bottles) => {
    const one = talker()
    const before = await one.say(plan)
    const told = await one.say(measures)
    expect(told.call?.options.bottles).toBe(bottles)
    expect(told.data.volumeMl).toBeCloseTo(before.data.volumeMl as number, 3)
    expect((await one.say('start it')).call?.options.bottles).toBe(bottles)
  })

  it('begins the bottles that it showed where the plan itself was wished in cups', async () => {
    const one = talker()
    const told = await one.say('plan for six bottles of orange liqueur in US cups')
    expect(told.data.bottles).toMatchObject([{ count: 6, volumeMl: expect.closeTo(354.88, 1) }])
    expect((await one.say('start it')).call?.options.bottles).toBe('6 x 12 fl oz')
  })
})

describe('the size of a jar by which a plan was told', () => {
  it.each([
    ['the jar is about 1.5 l', '450 g peaches', '900 ml vodka 40%'],
    ['no, my jar holds 2 litres', '600 g peaches', '1.2 l vodka 40%'],
    ['1.5 litres', '450 g peaches', '900 ml vodka 40%'],
    ['it takes two litres', '600 g peaches', '1.2 l vodka 40%'],
    ['il vaso è da due litri', '600 g peaches', '1.2 l vodka 40%'],
    ['sorry, the kilner is 750 ml', '230 g peaches', '450 ml vodka 40%'],
  ])('%s: as much as that one takes', async (said, of, spirit) => {
    const one = talker()
    await one.say('peaches to two thirds of a kilner jar and vodka over them')
    expect((await one.say(said)).call).toMatchObject({ path: 'plan', options: { of, spirit } })
  })

  it('is the size that was asked for, however it is said', async () => {
    const one = talker()
    await one.say('half a jar of plums topped up with brandy')
    expect((await one.say('it holds a litre')).call).toMatchObject({ path: 'plan' })
  })

  it('is of the spirit again once something else was wished', async () => {
    const one = talker()
    await one.say('peaches to two thirds of a kilner jar and vodka over them')
    await one.say('drier')
    expect((await one.say('a litre')).call?.options.spirit).toBe('1 litre vodka 40%')
  })
})
