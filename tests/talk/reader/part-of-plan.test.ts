import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const planned = async (plan: string) => {
  const one = await talkerFor({ after: null })
  await one.say(plan)
  return one
}

const PLUMS = 'a kilo of plums and a litre of vodka'
const BOTH = '12 lemons and 2 oranges in a litre of 95% spirit'

describe('so much of one plant, the rest as it is', () => {
  it.each([
    [PLUMS, 'use half the plums', 'of:0.5 kilo plums'],
    [PLUMS, 'with two thirds of the plums', 'of:0.67 kilo plums'],
    ['300 g di ciliegie in un litro di vodka', 'il doppio delle ciliegie', 'of:600 g ciliegie'],
    [BOTH, 'half as many lemons', 'of:6 lemons + 2 oranges'],
    [BOTH, 'double the oranges please', 'of:12 lemons + 4 oranges'],
    ['3 cups of blackberries and a 750 ml bottle of vodka', 'halve the blackberries', 'of:1.5 cups blackberries'],
  ])('%s: %s', async (plan, text, line) => {
    const told = await (await planned(plan)).say(text)
    expect(told).toMatchObject({ command: 'plan', code: null, read: expect.stringContaining(line) })
  })
})

describe('the measure of what is swapped stays', () => {
  it.each([
    [PLUMS, 'use damsons instead', 'of:1 kilo damsons'],
    ['1 lb 4 oz blackberries in a litre of gin', 'swap the blackberries for sloes', 'of:1 lb 4 oz sloes'],
    ['a pound of cherries and a litre of brandy', 'same but with damsons', 'of:1 pound damsons'],
    [PLUMS, 'swap the vodka for rum', 'spirit:1 litre rum 40%'],
    [PLUMS, 'sostituisci la vodka con il gin', 'spirit:1 litre gin 40%'],
  ])('%s: %s', async (plan, text, line) => {
    expect(await (await planned(plan)).say(text)).toMatchObject({ code: null, read: expect.stringContaining(line) })
  })

  it.each([
    'a kilo of plums and a litre of vodka',
    '3 cups of blackberries and 750 ml of vodka',
    '1 lb 4 oz of cherries and 750 ml of vodka',
  ])('no measure is taken for a name once it is for bottles: %s', async (plan) => {
    const told = await (await planned(plan)).say('for six bottles')
    expect(told).toMatchObject({ command: 'plan', code: null })
    expect(told.call!.options.of).toMatch(/^(?:plums|blackberries|cherries)$/)
  })
})

// The jar of this plan is one of 3 l.
describe('the size of a jar', () => {
  it.each(['make it in a 2 litre jar', 'it has to fit a 2 l Kilner jar', 'in un vaso da 2 litri'])(
    'is none of spirit, and the batch is made to fit: %s',
    async (text) => {
      expect(await (await planned(PLUMS)).say(text)).toMatchObject({
        command: 'plan',
        code: null,
        read: expect.stringMatching(/of:0\.67 kilo plums spirit:0\.67 litre vodka/),
      })
    },
  )

  it('that is larger may hold the same or more', async () => {
    expect(await (await planned(PLUMS)).say('use a 5 l demijohn')).toMatchObject({
      code: 'question',
      choices: [expect.stringContaining('of:1 kilo plums'), expect.stringContaining('of:1.67 kilo plums')],
    })
  })
})

// 1 kg of sloes in a litre at 40 % comes to 23 %, below the 30 % that is aimed at.
describe('weaker and stronger', () => {
  const SLOES = '1 kg sloes and a litre of gin'

  it.each([
    ['could it be weaker?', 'to-strength:18%'],
    ['a bit weaker please', 'to-strength:21%'],
    ['più leggero', 'to-strength:18%'],
  ])('goes on from what the plan comes to: %s', async (text, line) => {
    expect(await (await planned(SLOES)).say(text)).toMatchObject({ code: null, read: expect.stringContaining(line) })
  })
})
