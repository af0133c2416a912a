import { expect, test } from 'vitest'
import { ask, askAny, keysOf, number } from './desk.ts'

const OF = 'of:8 lemons spirit:1 l 95%'

// Lemon zest is 82 % water (USDA SR28, NDB 09156), so a strained infusion is weaker than the spirit was.
test('the strength of what is strained is expected of what went in, with a wider ± than a reading', async () => {
  const expected = await ask(`/syrup infusion:930 ml ${OF} to-strength:30% to-sweetness:250 g/L`)
  const asSpirit = await ask('/syrup infusion:930 ml strength:95% to-strength:30% to-sweetness:250 g/L')
  expect(number(expected, 'waterMl')).toBeLessThan(number(asSpirit, 'waterMl'))
  expect(number(expected, 'abvPercentPlusMinus')).toBeGreaterThan(number(asSpirit, 'abvPercentPlusMinus'))
  expect(keysOf(expected.notes)).toContain('strength_expected')
  expect(keysOf(expected.notes)).not.toContain('fresh_plants')
})

test('the styles of an expected strength come as lines that answer the same', async () => {
  const { data } = await ask(`/syrup infusion:930 ml ${OF}`)
  expect(data.styles).toHaveLength(3)
  for (const style of data.styles ?? []) {
    expect(style.line).toContain(OF)
    expect(number(await ask(style.line), 'waterMl')).toBeCloseTo(style.waterMl!, 6)
  }
})

test.each([
  ['/syrup infusion:930 ml of:8 lemons', 'missing_option', 'spirit'],
  ['/syrup infusion:930 ml spirit:1 l 95%', 'missing_option', 'of'],
  ['/syrup infusion:930 ml', 'missing_option', 'strength'],
  ['/syrup infusion:930 ml strength:90% of:8 lemons', 'missing_option', 'spirit'],
  ['/syrup infusion:930 ml of:8 lemons spirit:1 l denatured alcohol 95%', 'refused', 'spirit'],
  ['/syrup infusion:930 ml of:yew berries spirit:1 l 95%', 'refused', 'of'],
])('%s: %s, %s', async (line, code, option) => {
  expect((await askAny(line)).error).toMatchObject({ code, option })
})
