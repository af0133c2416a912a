import { describe, expect, test } from 'vitest'
import { askAny, faults, textOf, UNSEEMLY } from './desk.ts'

/** Every code of the contract that the commands of a syrup can meet, each at several doors. */
const CODES: readonly [code: string, line: string, names: string | RegExp][] = [
  ['bad_value', '/mix spirit:-1 l strength:95%', '-1 l'],
  ['bad_value', '/mix spirit:1 l strength:110%', '110'],
  ['bad_value', '/dilute 1 l 95% to-strength:0%', '0%'],
  ['bad_value', '/syrup 1 l strength:90% to-sweetness:1300', '1300'],
  ['bad_value', '/syrup 1 l strength:90% to-strength:30% ratio:0', '0'],
  ['bad_value', '/syrup 1 l strength:90% at-most:500 g', '500 g'],
  ['bad_value', '/mix water:1 l sugar:300 g xylitol', 'honey'],
  ['bad_value', '/mix spirit:1 l strength:95% water:1 l at 95 C', /95/],
  ['ambiguous', '/mix spirit:1 l zorble strength:40%', /“zorble”.*spirit:1 l vodka strength:40%/],
  ['ambiguous', '/mix spirit:1 l zorble 95%', /“zorble”.*spirit:1 l 95% neutral spirit/],
  ['ambiguous', '/mix spirit:500 ml walnut liqueur 28%', /How sweet.*spirit:500 ml walnut liqueur 28% 250 g\/L/],
  ['refused', '/mix spirit:1 l 99% water:1 l', /97\.2 %.*spirit:1 l 95% water:1 l/],
  ['ambiguous', '/mix spirit:1 l strength:0.95', '0.95'],
  ['ambiguous', '/mix spirit:1,000 ml strength:95%', '1,000 ml'],
  ['ambiguous', '/mix spirit:1.000 ml strength:95%', '1.000 ml'],
  ['ambiguous', '/mix spirit:25 oz strength:95%', '25 oz'],
  ['unknown_command', '/sirup 1 l', '/syrup'],
  ['unknown_option', '/syrup 1 l strengh:90%', 'strength:'],
  ['unknown_option', '/mix colour:red', 'colour'],
  ['missing_option', '/syrup 1 l', 'strength:'],
  ['missing_option', '/syrup strength:90%', 'infusion:'],
  ['missing_option', '/mix spirit:1 l', 'strength:'],
  ['missing_option', '/mix', '/mix'],
  ['missing_option', '/dilute 1 l 95%', 'to-strength:'],
  ['missing_option', '/adjust 1 l strength:30%', 'to-strength:'],
  ['missing_option', '/blend', 'parts:'],
  ['too_many_options', '/mix spirit:1 l 95% strength:40%', 'strength twice'],
  ['too_many_options', '/mix water:1 l water:2 l', 'water:'],
  ['too_many_options', '/syrup 1 l strength:90% to-strength:30% to-sweetness:250 ratio:1', '1:1'],
  ['unreachable', '/syrup 1 l strength:28% to-strength:30% to-sweetness:0', /28 % can’t become 30 %/],
  ['unreachable', '/dilute 1 l 40% to-strength:41%', '41 %'],
  ['unreachable', '/syrup 1 l strength:28% to-strength:30% ratio:1', '28 %'],
  ['unreachable', '/syrup 1 l strength:60% to-sweetness:250 ratio:0.1', '250 g/L'],
  ['unreachable', '/adjust 1 l strength:25% to-strength:30%', 'spirit-strength:'],
  ['unreachable', '/adjust 1 l strength:25% sweetness:200 to-strength:45% spirit-strength:40%', '40 %'],
  ['unreachable', '/syrup 1 l strength:96% to-strength:80% to-sweetness:400', '400 g/L'],
  ['not_soluble', '/syrup 1 l strength:96% to-strength:40% to-sweetness:600', 'g/L'],
  ['not_soluble', '/mix water:100 ml sugar:1 kg', 'g/L'],
  ['not_soluble', '/blend 1 l 96% + 1 l 20% 500 g/L', 'g/L'],
]

test.each(CODES)('%s: %s', async (code, line, names) => {
  const { error } = await askAny(line)
  expect(error?.code).toBe(code)
  expect(error?.message).toMatch(names)
  expect(error?.message.replace(/“[^”]*”/g, '')).not.toMatch(UNSEEMLY)
  expect((await textOf(line)).replaceAll('\n', ' ')).toBe(error?.message)
  expect(faults()).toEqual([])
})

test('all codes of the contract that this issue can reach are among them', () => {
  const reached = new Set(CODES.map(([code]) => code))
  const codes =
    'bad_value ambiguous unknown_command unknown_option missing_option too_many_options unreachable not_soluble refused'
  expect([...reached].sort()).toEqual(codes.split(' ').sort())
})

describe('the nearest that a sentence names, typed in, works', () => {
  test.each<[line: string, number: RegExp, retry: (found: string) => string]>([
    [
      '/syrup 1 l strength:28% to-strength:27% to-sweetness:250',
      /to-strength:([\d.]+)%/,
      (found) => `/syrup 1 l strength:28% to-strength:${found}% to-sweetness:250`,
    ],
    [
      '/syrup 1 l strength:28% to-strength:26% to-sweetness:250',
      /At most 23 %: \/syrup infusion:1 l strength:28% to-strength:([\d.]+)% to-sweetness:250/,
      (found) => `/syrup 1 l strength:28% to-strength:${found}% to-sweetness:250`,
    ],
    [
      '/syrup 1 l strength:96% to-strength:40% to-sweetness:600',
      /about (\d+) g\/L/,
      (found) => `/syrup 1 l strength:96% to-strength:40% to-sweetness:${found}`,
    ],
    [
      '/syrup 1 l strength:90% to-strength:30% to-sweetness:250 ratio:1',
      /a ([\d.]+):1 syrup/,
      (found) => `/syrup 1 l strength:90% to-strength:30% to-sweetness:250 ratio:${found}`,
    ],
    [
      '/adjust 1 l strength:25% sweetness:200 to-strength:45% to-sweetness:200 spirit-strength:40%',
      /under ([\d.]+) %/,
      (found) =>
        `/adjust 1 l strength:25% sweetness:200 to-strength:${Number(found) - 0.1}% to-sweetness:200 spirit-strength:40%`,
    ],
  ])('%s', async (line, number, retry) => {
    const message = (await askAny(line)).error!.message
    const found = number.exec(message)?.[1]
    expect(found, message).toBeDefined()
    expect((await askAny(retry(found!))).error).toBeUndefined()
  })

  test('a clash without any sugar wished for does not ask for a syrup of 0:1', async () => {
    expect((await askAny('/syrup 1 l strength:50% to-strength:30% to-sweetness:0 ratio:1')).error?.message).not.toMatch(
      /\b0:1/,
    )
  })
})

test.each([
  ['/dilute 750 ml 40% to-strength:40%', 'waterMl'],
  ['/dilute 1 l 70% to-strength:70%', 'waterMl'],
  ['/syrup 1 l strength:41.3% to-strength:41.3% ratio:1:1', 'sugarG'],
  ['/adjust 1 l strength:40% to-strength:40%', 'waterMl'],
])('%s adds nothing, and says so', async (line, amount) => {
  const json = await askAny(line)
  expect(json.error).toBeUndefined()
  expect(json.data[amount]).toBeCloseTo(0, 6)
  expect((await textOf(line)).split('\n')[0]).toMatch(/^Nothing to add/)
})
