import { describe, expect, it, test } from 'vitest'
import { parseSweetness } from '../../../core/quantity/read/parse-sweetness.ts'
import { exampleIn } from '../../../core/quantity/write/example-in.ts'
import { usJarTold } from '../../../core/quantity/write/size-told.ts'
import { writeSweetness } from '../../../core/quantity/write/write-quantity.ts'
import { parseBottles, usualBottleMl } from '../../../core/recipe/plan/parse-bottles.ts'

const US = { volume: 'us', mass: 'us' }

describe('ounces of sugar in a quart', () => {
  // 28.3495 g in 0.946353 l (NIST Handbook 44, Appendix C): 29.9566 g/L.
  test.each([
    ['8 oz/quart', 239.653],
    ['6 1/2 oz / quart', 194.718],
    ['1 oz per quart', 29.957],
    ['4 ounces a quart', 119.826],
  ])('%s', (text, gPerL) => {
    const read = parseSweetness(text)
    expect(read.sugarGPerL).toBeCloseTo(gPerL, 2)
    expect(parseSweetness(writeSweetness(read))).toEqual(read)
  })
})

// Mason jars hold 8, 16, 32 and 64 fl oz, a fluid ounce 29.5735 ml (common practice, no source; NIST Handbook 44).
test.each([
  [250, 'half-pint'],
  [500, 'pint'],
  [750, 'quart'],
  [1000, 'quart'],
  [1500, 'half-gallon'],
  [2000, 'half-gallon'],
  [3000, 'gallon'],
  [4000, 'gallon'],
  [5000, '2-gallon'],
  [20_000, '5-gallon'],
])('a jar of %d ml is a %s one', (volumeMl, told) => {
  expect(usJarTold(volumeMl)).toBe(told)
})

test('bottles without a size hold 12 fl oz in cups, half a litre elsewhere, and their ounces are fluid', () => {
  expect(usualBottleMl('us')).toBeCloseTo(12 * 29.5735, 2)
  expect([usualBottleMl('metric'), usualBottleMl('imperial')]).toEqual([500, 500])
  for (const text of ['6 x 12 oz', '6 x 12oz', '6 bottles of 12 ounces'])
    expect(parseBottles(text)).toMatchObject([{ count: 6, volumeMl: expect.closeTo(354.88, 1) }])
})

describe('an example', () => {
  test.each([
    ['/plan of:10 lemons spirit:1 l 95%', '/plan of:10 lemons spirit:1 quart 95%'],
    ['/plan of:lemon bottles:4 x 500 ml strength:95%', '/plan of:lemon bottles:4 x 16 fl oz strength:95%'],
    ['/jar sweeten lemon water:500 ml sugar:450 g', '/jar sweeten lemon water:2 cups sugar:1 lb'],
    ['/jar strain lemon measured:930 ml', '/jar strain lemon measured:3 3/4 cups'],
    ['/serving pour:30 ml strength:30%', '/serving pour:1 fl oz strength:30%'],
    ['/syrup infusion:1 l to-sweetness:250 g/L', '/syrup infusion:1 quart to-sweetness:8 1/2 oz/quart'],
    ['/settings freezer:-18 C zone:Rome country:UK', '/settings freezer:0 F zone:America/New_York country:US'],
    ['/cost prices:sugar ? per kg + spirit 95% ? per l', '/cost prices:sugar ? per lb + spirit 95% ? per quart'],
    ['/cost prices:lemons 4/kg + spirit 95% 18/l', '/cost prices:lemons 4/lb + spirit 95% 18/quart'],
    ['The bottles your spirit is sold in: 700 ml', 'The bottles your spirit is sold in: 750 ml'],
    ['Bottles you’re going to fill: 500 ml, or 6 x 200 ml', 'Bottles you’re going to fill: 16 fl oz, or 6 x 8 fl oz'],
    ['10 lemons and a litre of 95%', '10 lemons and a quart of 95%'],
    ['1.5 kg plums', '3 lb plums'],
  ])('%s is %s where somebody pours in cups', (line, own) => {
    expect(exampleIn(line, US)).toBe(own)
    expect(exampleIn(line, { volume: 'metric', mass: 'metric' })).toBe(line)
    expect(exampleIn(line, { volume: 'imperial', mass: 'us' })).not.toMatch(/quart|cups/)
  })

  it('keeps what somebody has typed, and nothing that only looks like it', () => {
    expect(exampleIn('/plan spirit:70 cl 40% water:1 l', US, 'gin 70cl')).toBe('/plan spirit:70 cl 40% water:1 quart')
    expect(exampleIn('/plan of:1 lb cherries spirit:1 l 95%', US, '1 lb cherries')).toBe(
      '/plan of:1 lb cherries spirit:1 quart 95%',
    )
  })
})
