import { expect, test } from 'vitest'
import { talker } from './told.ts'

const PLUMS = '600 g plums and 70 cl of 40% vodka'

const after = async (...lines: readonly string[]) => {
  const one = talker()
  for (const line of lines.slice(0, -1)) await one.say(line)
  return one.say(lines.at(-1)!)
}

test.each([
  'two lb foxglove in a quart of gin',
  '300 g cherries in 1 l of antifreeze',
  '150 g marula and 70 cl of 40% vodka',
  'a recipe of Ann’s: 400 g elderberries, 70 cl vodka',
])('behind %s nothing older is started', async (recipe) => {
  const refused = await after(PLUMS, recipe)
  const one = await after(PLUMS, recipe, 'start it')
  expect(refused.code).not.toBeNull()
  expect(one).toMatchObject({ code: refused.code, read: refused.read, recorded: 0 })
})

test.each(['ok, start it', 'I started it yesterday', 'start it today', 'avvialo', 'yes'])(
  '%s behind a refused recipe is of that one',
  async (start) => {
    const one = await after(PLUMS, '150 g marula and 70 cl of 40% vodka', start)
    expect(one).toMatchObject({ command: 'plan', recorded: 0 })
    expect(one.read).toContain('marula')
  },
)

test('other answers in between change nothing in that', async () => {
  const one = await after(PLUMS, '150 g marula and 70 cl of 40% vodka', 'what’s on?', 'start it')
  expect(one.recorded).toBe(0)
})

test('a recipe that is not understood at all is said to be', async () => {
  const one = await after(PLUMS, 'The fair’s old recipe\nwibble of the usual\nfoo as ever', 'start it')
  expect(one).toMatchObject({ code: 'not_understood', recorded: 0 })
})

test('a plan that is offered instead is shown, and begun when that is said again', async () => {
  const instead = await after(PLUMS, '2 kg plums and 100 ml of 40% vodka', 'start it')
  expect(instead).toMatchObject({ command: 'plan', code: null, recorded: 0 })
  expect(instead.call?.options.of).toBe('2 kg plums')
  const begun = await after(PLUMS, '2 kg plums and 100 ml of 40% vodka', 'start it', 'start it')
  expect(begun).toMatchObject({ command: 'jar start', recorded: 1 })
})

test('the next plan that is worked out is the one that is begun', async () => {
  const one = await after(PLUMS, '500 g elderberries in 70 cl vodka', '8 lemons in 70 cl of 60% spirit', 'start it')
  expect(one.call).toMatchObject({ path: 'jar start', options: { of: '8 lemons' } })
})

test('a plant that is only asked about keeps no plan from being begun', async () => {
  expect((await after(PLUMS, 'is foxglove poisonous?', 'start it')).call?.options.of).toBe('600 g plums')
})

test.each([
  ['80 proof fifth\n1 lb cherries\n1 cup sugar', '1 fifth', 40],
  ['cherries, 3 lb, and a 100 proof handle', '1 handle', 50],
  ['a fifth at 80 proof and 1 lb cherries', '1 fifth', 40],
  ['Cherry bounce\n- 80 proof vodka, one fifth\n- 1 lb. cherries\n- peel of 1 lemon', '1 fifth', 40],
  ['one fifth 80-proof, 1 pound of cherries', '1 fifth', 40],
])('%s is a bottle of spirit', async (recipe, bottle, abv) => {
  const one = await after(recipe)
  expect(one).toMatchObject({ command: 'plan', code: null })
  expect(one.call?.options.spirit).toContain(bottle)
  expect(one.call?.options.spirit).toContain(`${abv * 2} proof`)
})

test.each(['a fifth sweeter please', 'make it 80 proof, a fifth less sugar'])('%s is no bottle', async (line) => {
  const one = await after('10 lemons and 1 l of 95% spirit', line)
  expect(one.call?.options.spirit ?? '').not.toContain('fifth')
})

test('the dot of a unit that is cut short ends no sentence', async () => {
  const one = await after('3 lb. cherries, 1 quart vodka 80 proof, lemon peel')
  expect(one.call?.options.of).toBe('3 lb cherries + lemon peel')
})
