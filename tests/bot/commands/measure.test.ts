import { expect, test } from 'vitest'
import { testDesk } from '../test-desk.ts'
import { ask, askAny, keysOf, number } from './desk.ts'

const MEASURED = [
  '/measure',
  '/measure brix:26.5 hydrometer:1.035',
  '/measure brix:26.5 at 24 C hydrometer:1.035 at 24 C',
  '/measure before:1.059',
  '/measure before:1.059 after:1.096',
  '/measure hydrometer:1.035 sweetness:180 g/L',
]

test.each([
  [80, 8],
  [44, 12],
])('every answer fits into %d columns and %d lines', async (width, most) => {
  for (const line of MEASURED) {
    const text = await testDesk({ width }).textOf(line)
    expect(
      text.split('\n').filter((each) => each.trim() !== ''),
      line,
    ).toSatisfy((lines: string[]) => lines.length <= most)
  }
})

// Derived, not published: density by OIML R 22 and ICUMSA, refraction from the CRC tables.
test.each([
  ['brix:32.7 hydrometer:1.0591', 30, 250, 'two_instruments'],
  ['brix:32.7 hydrometer:14.5 Brix', 30, 250, 'two_instruments'],
  ['brix:32.7 hydrometer:1059.1', 30, 250, 'two_instruments'],
  ['before:1.0591 after:1.0958', 30, 250, 'boiled'],
  ['before:1.0572 g/ml after:1.0938 g/ml', 30, 250, 'boiled'],
  ['hydrometer:1.0591 sweetness:250 g/L', 30, 250, 'known_sugar'],
  ['hydrometer:23.4% sweetness:20 g/L', 30, 20, 'known_sugar'],
])('%s is %d %% vol and %d g/L', async (readings, percent, sweetness, method) => {
  const json = await ask(`/measure ${readings}`)
  expect(json.data.method).toBe(method)
  expect(Math.abs(number(json, 'abvPercent') - percent)).toBeLessThanOrEqual(0.2)
  expect(Math.abs(number(json, 'sugarGPerL') - sweetness)).toBeLessThanOrEqual(1.5)
  expect(json.data.volumeMl).toBeNull()
  expect(number(json, 'freezesAtC')).toBeLessThan(-10)
})

test('what was not tested on measured liqueurs is told as ±2 % vol at least, of coarse readings more', async () => {
  for (const line of ['/measure brix:32.7 hydrometer:1.0591', '/measure before:1.0591 after:1.0958']) {
    expect(number(await ask(line), 'abvPercentPlusMinus')).toBe(2)
  }
  const coarse = await ask('/measure before:1.059±0.004 after:1.096±0.004')
  expect(number(coarse, 'abvPercentPlusMinus')).toBeGreaterThan(3)
  expect(number(await ask('/measure hydrometer:0.9498 sweetness:0 g/L'), 'abvPercentPlusMinus')).toBeLessThan(1.5)
})

test('a temperature is brought to 20 °C: a warm liqueur reads lighter', async () => {
  const cold = await ask('/measure hydrometer:1.0591 sweetness:250 g/L')
  const warm = await ask('/measure hydrometer:1.0591 at 24 C sweetness:250 g/L')
  const fahrenheit = await ask('/measure hydrometer:1.0591 at 75.2 F sweetness:250 g/L')
  // 0.45 kg/m³ a kelvin at 30 % vol (OIML R 22), 1.35 kg/m³ for 1 % vol.
  expect(number(cold, 'abvPercent') - number(warm, 'abvPercent')).toBeGreaterThan(1)
  expect(number(cold, 'abvPercent') - number(warm, 'abvPercent')).toBeLessThan(2)
  expect(number(fahrenheit, 'abvPercent')).toBeCloseTo(number(warm, 'abvPercent'), 9)
  const at60F = await ask('/measure hydrometer:1.0591 60/60 sweetness:250 g/L')
  expect(number(at60F, 'abvPercent')).toBeLessThan(number(cold, 'abvPercent') - 0.3)
})

test('boiling is told with what keeps it safe, before and after', async () => {
  for (const line of ['/measure before:1.059', '/measure before:1.059 after:1.096']) {
    expect(keysOf((await ask(line)).cautions)).toEqual(['measure_boil'])
  }
})

test.each([
  ['hydrometer:1.035', 'missing_option', 'sweetness', 'hydrometer:1.035 sweetness:190 g/L'],
  ['brix:26.5', 'missing_option', 'hydrometer', 'brix:26.5 hydrometer:1.035'],
  ['sweetness:180 g/L', 'missing_option', 'hydrometer', 'hydrometer:1.035 sweetness:180 g/L'],
  ['after:1.096', 'missing_option', 'before', 'before:1.059 after:1.096'],
  ['before:1.094 after:1.021', 'bad_value', 'after', 'before:1.021 after:1.094'],
  ['before:1.021 after:1.094 brix:26', 'too_many_options', undefined, 'before:1.021 after:1.094'],
  ['brix:26.5 hydrometer:1.035 sweetness:dry', 'too_many_options', undefined, 'brix:26.5 hydrometer:1.035'],
])('%s: %s, and a line that runs', async (readings, code, option, fixed) => {
  const { error } = await askAny(`/measure ${readings}`)
  expect(error).toMatchObject({ code })
  expect(error?.option).toBe(option)
  expect(error?.message.replaceAll('\u00a0', ' ')).toContain(`/measure ${fixed}`)
  await ask(`/measure ${fixed}`)
})

test('a number that may be of several scales is asked back, and each answer runs', async () => {
  const { error } = await askAny('/measure brix:32.7 hydrometer:14.5')
  expect(error).toMatchObject({ code: 'ambiguous', option: 'hydrometer' })
  for (const answer of ['14.5 Brix', '8 Baumé', '14.5% at 18 C']) {
    expect(error?.message).toMatch(/14.5 Brix.*14.5 Baumé.*14.5%/)
    await ask(`/measure hydrometer:${answer} sweetness:40 g/L`).catch((fault: unknown) => {
      // 8 Baumé is more than 40 g/L can weigh.
      expect(String(fault)).toContain('bad_value')
    })
  }
})

test.each([
  '/measure brix:5 hydrometer:1.06',
  '/measure brix:26.5 hydrometer:zorble',
  '/measure brix:26.5 kg hydrometer:1.035',
  '/measure brix:120 hydrometer:1.035',
  '/measure hydrometer:1.2 sweetness:10 g/L',
])('%s is refused in one sentence', async (line) => {
  expect((await askAny(line)).error).toMatchObject({ code: 'bad_value' })
})

test('every line that is offered lies within 10 to 42 % vol and 50 to 400 g/L, where the table was made', async () => {
  const asked = ['', 'before:1.02', 'before:14.5 Brix', 'before:8 Baumé', 'before:23.4%', 'before:1.059 g/ml']
  const lacking = ['hydrometer:1.035', 'after:1.096', 'after:22.8 Brix', 'after:12.7 Baumé', 'hydrometer:5 Brix']
  const texts = await Promise.all([...asked, ...lacking].map((readings) => testDesk().textOf(`/measure ${readings}`)))
  const lines = texts.join(' ').match(/\/measure (?:\S+:\S+(?: (?:Brix|Baumé|g\/ml|g\/L))? ?)+/g) ?? []
  expect(lines.length).toBeGreaterThanOrEqual(asked.length + lacking.length + 2)
  for (const line of lines) {
    const json = await ask(line.trim())
    expect(number(json, 'abvPercent'), line).toBeGreaterThan(10)
    expect(number(json, 'abvPercent'), line).toBeLessThan(42)
    expect(number(json, 'sugarGPerL'), line).toBeGreaterThanOrEqual(50)
    expect(number(json, 'sugarGPerL'), line).toBeLessThanOrEqual(400)
  }
})

test.each([
  ['/measure brix 32.7 hydrometer 1.0591', '/measure brix:32.7 hydrometer:1.0591'],
  ['/measure before 1.059 and after 1.096', '/measure before:1.059 after:1.096'],
  ['/measure hydrometer 1.059 at 24 C sweetness 250 g/L', '/measure hydrometer:1.059 at 24 C sweetness:250 g/L'],
])('%s, without a colon, is read as %s, or offered as it', async (typed, meant) => {
  const json = await askAny(typed)
  expect(json.error?.message ?? (json as { read?: string }).read).toContain(meant)
})
