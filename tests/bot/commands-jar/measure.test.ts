import { expect, test } from 'vitest'
import { testDesk } from '../test-desk.ts'
import { jarDesk, LEMON, numberIn } from './desk.ts'

const sweetened = async () => {
  const desk = jarDesk('2026-11-01')
  await desk.ask(LEMON)
  desk.at('2026-11-20')
  await desk.ask('/jar strain lemon measured:920 ml')
  await desk.ask('/jar sweeten lemon water:1.4 l sugar:600 g')
  return desk
}

test('a jar takes what was measured, and what comes of it is worked out anew', async () => {
  const desk = await sweetened()
  const before = await desk.ask('/jar show lemon')
  const measured = await desk.ask('/measure lemon before:1.058 after:1.096')
  expect(measured.data).toMatchObject({ method: 'boiled', name: 'lemon' })
  expect(numberIn(measured, 'abvPercent')).toBeCloseTo(30.8, 0)
  // 250.7 g/L are dissolved, of which the peel gave about one.
  expect(numberIn(measured, 'sugarGPerL')).toBeCloseTo(249.8, 0)
  expect(numberIn(measured, 'volumeMl')).toBeCloseTo(numberIn(before, 'volumeMl'), 6)
  expect(numberIn(measured, 'ethanolG')).toBeCloseTo(
    numberIn(measured, 'volumeMl') * 0.789239 * (numberIn(measured, 'abvPercent') / 100),
    1,
  )
  const syrup = await desk.ask('/jar sweeten lemon water:100 ml sugar:50 g when:today')
  expect(numberIn(syrup, 'sugarGPerL')).toBeGreaterThan(250)
  const { events } = (await desk.ask('/jar show lemon')).data as { events: { kind: string; typed: object }[] }
  expect(events.at(-2)).toMatchObject({ kind: 'measured', typed: { before: '1.058', after: '1.096' } })
})

test('undone, the jar is what it was before', async () => {
  const desk = await sweetened()
  const before = await desk.ask('/jar show lemon')
  await desk.ask('/measure jar:lemon brix:32 hydrometer:1.058')
  const undone = await desk.ask('/jar undo lemon')
  for (const name of ['abvPercent', 'sugarGPerL', 'volumeMl', 'abvPercentPlusMinus']) {
    expect(numberIn(undone, name)).toBe(numberIn(before, name))
  }
})

test('a hydrometer alone will do where the jar knows its sugar', async () => {
  const desk = await sweetened()
  const sugarGPerL = numberIn(await desk.ask('/jar show lemon'), 'sugarGPerL')
  const measured = await desk.ask('/measure lemon hydrometer:1.051')
  expect(measured.data.method).toBe('known_sugar')
  expect(numberIn(measured, 'sugarGPerL')).toBeCloseTo(sugarGPerL, 9)
})

test('without any instrument it says what the recipe says, how far off, and what a scale does', async () => {
  const desk = await sweetened()
  const json = await desk.ask('/measure lemon')
  expect(json.data.method).toBe('recipe')
  const shown = await desk.ask('/jar show lemon')
  expect(numberIn(json, 'abvPercent')).toBe(numberIn(shown, 'abvPercent'))
  expect(numberIn(json, 'weighedAbvPercentPlusMinus')).toBeLessThanOrEqual(numberIn(json, 'abvPercentPlusMinus'))
  expect(json.notes.map(({ key }) => key)).toEqual(['measure_weighing_no_help', 'measure_scale'])
  await desk.ask('/jar start zest of:10 lemons spirit:1 l 95% when:30 days ago')
  await desk.ask('/jar strain zest')
  await desk.ask('/jar sweeten zest water:1.4 l sugar:600 g')
  expect((await desk.ask('/measure zest')).notes.map(({ key }) => key)).toEqual(['measure_if_weighed', 'measure_scale'])
  expect(await desk.textOf('/measure')).toContain('/measure lemon')
})

test('what cannot be in the jar is refused, what surprises is said, and a steeping jar waits', async () => {
  const desk = await sweetened()
  expect(await desk.refused('/measure lemon hydrometer:0.82 sweetness:10 g/L')).toMatchObject({ code: 'bad_value' })
  const surprising = await desk.ask('/measure lemon hydrometer:1.070')
  expect(surprising.notes.map(({ key }) => key)).toContain('measure_surprising')
  expect(surprising.notes.find(({ key }) => key === 'measure_surprising')?.text).toContain('/jar undo lemon')
  await desk.ask('/jar start quince of:500 g quince spirit:1 l 60%')
  expect(await desk.refused('/measure quince brix:26.5 hydrometer:1.035')).toMatchObject({ code: 'wrong_stage' })
  expect(await desk.refused('/measure zorble brix:26.5 hydrometer:1.035')).toMatchObject({ code: 'not_found' })
})

test.each([
  [80, 10],
  [44, 16],
])('an answer of a jar fits into %d columns and %d lines', async (width, most) => {
  const desk = await sweetened()
  const { asker } = desk
  for (const line of ['/measure lemon', '/measure lemon brix:31.5 hydrometer:1.0515']) {
    const text = await testDesk({ width, asker, nowMs: Date.parse('2026-11-20T12:00:00Z') }).textOf(line)
    expect(
      text.split('\n').filter((each) => each.trim() !== ''),
      text,
    ).toSatisfy((lines: string[]) => lines.length <= most)
  }
})

test('what was measured last is known as well as it was measured, and said so in one way', async () => {
  const desk = await sweetened()
  const measured = await desk.ask('/measure lemon brix:32 hydrometer:1.058')
  expect(numberIn(measured, 'abvPercentPlusMinus')).toBe(2)
  const shown = await desk.ask('/jar show lemon')
  expect(numberIn(shown, 'abvPercentPlusMinus')).toBe(2)
  expect(numberIn(shown, 'sugarGPerLPlusMinus')).toBe(numberIn(measured, 'sugarGPerLPlusMinus'))
  // With what goes in since, it is worked out anew.
  await desk.ask('/jar sweeten lemon water:500 ml sugar:50 g')
  expect(numberIn(await desk.ask('/jar show lemon'), 'abvPercentPlusMinus')).toBeLessThan(2)
})

test.each([
  [80, 8],
  [44, 12],
])('recorded at %d columns, it takes %d lines at most', async (width, most) => {
  const { asker } = await sweetened()
  const wide = testDesk({ width, asker, nowMs: Date.UTC(2026, 10, 20, 9) })
  const text = await wide.firstOf('/measure lemon brix:32 hydrometer:1.058')
  expect(text.split('\n').filter((line) => line.trim() !== '').length).toBeLessThanOrEqual(most)
})

test('readings without colons behind the name of a jar are no part of it', async () => {
  const desk = await sweetened()
  const text = await desk.textOf('/measure lemon brix 32 hydrometer 1.058')
  expect(text).toContain('/measure lemon brix:32 hydrometer:1.058')
})
