import { describe, expect, test } from 'vitest'
import { ask, keysOf, textOf } from './desk.ts'

const SYRUP = '/syrup infusion:920 ml strength:90% to-strength:30% to-sweetness:250 g/L'

const notes = async (line: string) => keysOf((await ask(line)).notes)
const cautions = async (line: string) => keysOf((await ask(line)).cautions)

/** For each key, a line that must say it and one that must not. */
const NOTES: readonly [key: string, where: string, notWhere: string][] = [
  ['syrup_by_weight', SYRUP, '/syrup 1 l strength:40% to-strength:30% to-sweetness:0'],
  [
    'fresh_plants',
    '/syrup 1 l strength:85% to-strength:30% ratio:1',
    '/syrup 1 l strength:84.9% to-strength:30% ratio:1',
  ],
  ['fresh_plants', '/syrup 1 l strength:96%', '/syrup 1 l strength:60%'],
  ['strained_strength', '/syrup 1 l strength:60%', '/mix spirit:1 l strength:60%'],
  ['strained_strength', '/syrup 1 l strength:60% to-strength:30% ratio:1', '/dilute 1 l 60% to-strength:50%'],
  ['settle', SYRUP, '/syrup 1 l strength:60%'],
  ['settle', '/mix spirit:1 l strength:95% water:1 l', '/mix spirit:1 l strength:95%'],
  ['settle', '/dilute 1 l 95% to-strength:60%', '/mix water:1 l'],
  [
    'sweet_reading',
    '/adjust 1 l strength:33% sweetness:300 to-strength:30%',
    '/adjust 1 l strength:33% to-strength:30%',
  ],
  ['sweet_reading', '/blend parts:600 ml 47% 250 g/L + 1 l 40%', '/blend parts:600 ml 47% + 1 l 40%'],
  ['unsweetened', '/adjust 1 l strength:33% to-strength:30%', '/adjust 1 l strength:33% sweetness:300 to-strength:30%'],
  ['as_before', '/adjust 1 l strength:33% to-strength:30%', '/adjust 1 l strength:33% to-strength:30% to-sweetness:50'],
  ['plain_parts', '/blend parts:600 ml 47% + 1 l 40% 100 g/L', '/blend parts:600 ml 47% 50 g/L + 1 l 40% 100 g/L'],
  ['bounded', `${SYRUP} at-most:2 l`, `${SYRUP} at-most:5 l`],
  ['percent_vol', '/dilute 1 l strength:95 to-strength:60', '/dilute 1 l strength:95% to-strength:60%'],
  ['grams_per_litre', '/syrup 1 l strength:60% to-sweetness:250', '/syrup 1 l strength:60% to-sweetness:250 g/L'],
  ['us_measure', '/dilute 2 cups 95% to-strength:60%', '/dilute 500 ml 95% to-strength:60%'],
  ['us_proof', '/dilute 1 l 190 proof to-strength:60%', '/dilute 1 l 95% to-strength:60%'],
  ['decimal_point', '/dilute 0,750 l 95% to-strength:60%', '/dilute 0,75 l 95% to-strength:60%'],
  ['sugar_ounces', '/mix water:1 l sugar:9 oz', '/mix water:1 l sugar:9 oz weight'],
  ['sugar_by_volume', '/mix water:1 l sugar:2 cups', '/mix water:1 l sugar:400 g'],
  ['whole_fruit', '/plan of:1 kg lemons spirit:1 l 95%', '/plan of:1 kg lemon peel spirit:8 l 95%'],
  ['volume_at_20', '/dilute 930 ml at 28 C 95% to-strength:60%', '/dilute 930 ml 95% at 20 C to-strength:60%'],
  ['strength_at_20', '/dilute 930 ml 90.6% at 28 C to-strength:60%', '/dilute 930 ml 90.6% to-strength:60%'],
]

test.each(NOTES)('the note %s stands with %s and not with %s', async (key, where, notWhere) => {
  expect(await notes(where)).toContain(key)
  expect(await notes(notWhere)).not.toContain(key)
})

const CAUTIONS: readonly [key: string, where: string, notWhere: string][] = [
  ['flame', SYRUP, '/syrup 1 l strength:37% to-strength:30% to-sweetness:100'],
  ['flame', '/mix spirit:1 l strength:96% water:3 l', '/mix spirit:1 l strength:30% water:3 l'],
  ['flame', '/adjust 1 l strength:50% to-strength:45%', '/adjust 1 l strength:35% to-strength:30%'],
  [
    'flame',
    '/adjust 1 l strength:30% sweetness:300 to-sweetness:250 spirit-strength:95%',
    '/adjust 1 l strength:35% to-strength:30% spirit-strength:95%',
  ],
  ['flame', '/blend parts:1 l 96% + 3 l', '/blend parts:1 l 30% + 3 l'],
  ['cool_first', SYRUP, '/syrup 1 l strength:60% to-strength:30% to-sweetness:0'],
  [
    'cool_first',
    '/adjust 1 l strength:35% sweetness:100 to-strength:30% to-sweetness:150',
    '/adjust 1 l strength:35% to-strength:30%',
  ],
  ['syrup_too_thick', '/syrup 1 l strength:40% to-strength:31% ratio:3:1', SYRUP],
  ['may_crystallise', '/syrup 1 l strength:96% to-strength:40% to-sweetness:370', SYRUP],
  ['sugar_limit_not_known', '/syrup 1 l strength:96% to-strength:40% to-sweetness:440', SYRUP],
  ['can_ferment', '/syrup 1 l strength:60% to-strength:14% to-sweetness:100', SYRUP],
  ['keeps_undecided', '/syrup 1 l strength:60% to-strength:16% to-sweetness:80', SYRUP],
  [
    'keeps_undecided',
    '/syrup 1 l strength:60% to-strength:16% to-sweetness:80',
    '/syrup 1 l strength:60% to-strength:21% to-sweetness:190',
  ],
  ['bottle_bursts', '/syrup 1 l strength:60% to-strength:14% to-sweetness:100', SYRUP],
]

test.each(CAUTIONS)('the caution %s stands with %s and not with %s', async (key, where, notWhere) => {
  expect(await cautions(where)).toContain(key)
  expect(await cautions(notWhere)).not.toContain(key)
})

describe('what belongs to several at once', () => {
  test('sugar with next to no water: the rest is stirred in without heat', async () => {
    const line = '/syrup 1 l strength:40% to-strength:30% ratio:5:1'
    expect(await cautions(line)).toContain('syrup_too_thick')
    expect((await ask(line)).cautions.find(({ key }) => key === 'syrup_too_thick')?.text).toMatch(/shake daily/)
  })

  test('the least sweet of worked styles does not hide what the sweetest needs', async () => {
    expect(await cautions('/syrup 1 l strength:96% to-strength:50%')).toContain('may_crystallise')
  })

  test('where nothing is added, nothing is mixed, warm, or to be cooled', async () => {
    for (const line of [
      '/dilute 1 l 43.7% to-strength:43.7%',
      '/syrup 1 l strength:40% to-strength:40% to-sweetness:0',
    ]) {
      expect(await notes(line), line).not.toContain('settle')
      expect(await cautions(line), line).not.toContain('cool_first')
    }
  })

  test('lemon zest, ginger and basil carry the water of USDA SR28 (check case 23: 81.6, 78.89, 92.06 g/100 g)', async () => {
    const { text } = (await ask(SYRUP)).notes.find(({ key }) => key === 'fresh_plants_why')!
    expect(text).toMatch(/82 %.*79.*92/)
  })
})

test('what has no alcohol is not said to be right within ±0 % vol', async () => {
  expect(await textOf('/mix water:1 l sugar:300 g')).not.toMatch(/±\s?0 % vol/)
})
