import fc from 'fast-check'
import { expect, test } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { runs, SEED } from '../../runs.ts'
import { cautionKeys, faults, json, noteKeys, printed, reply } from './desk.ts'

interface Judged {
  readonly id: string
  readonly meets: boolean
  readonly missing: readonly string[]
}

const judged = async (line: string): Promise<readonly Judged[]> =>
  (await reply(line)).data.categories as unknown as readonly Judged[]
const met = async (line: string): Promise<readonly string[]> =>
  (await judged(line)).flatMap(({ id, meets }) => (meets ? [id] : []))

test('says what the drink may be called and must say', async () => {
  expect(await printed('/label strength:30% sweetness:250 g/L of:lemon region:EU')).toMatchInlineSnapshot(`
    "At 30 % with 250 g/L of sugar it’s a “crème de” liqueur in the EU.

      EU spirit drink     yes: at least 15 % vol (Regulation (EU) 2019/787)
      EU liqueur          yes: at least 15 % vol and 100 g/L (Regulation (EU)
                          2019/787 and Regulation (EC) 110/2008)
      EU “crème de”       yes: at least 15 % vol and 250 g/L (Regulation (EU)
                          2019/787, from memory)
      Limone di Sorrento  no: the name belongs to makers in its own area (at least
                          250 g of the fruit or plant a litre, steeped 2 days or
                          more), and strength and sugar would fit (product file of
                          2012)
      EU label            30 % vol, true from 29.7 to 30.3 (±1.5 with macerated
                          fruit or plant parts) (Regulation (EU) 1169/2011)

    Limits in g/L count sugar as invert sugar: 263 g/L of it here.

    • In the EU “limoncello” is only a name for a lemon liqueur. The names of
      Sorrento and the Costa d’Amalfi are protected.
    • In the EU a liqueur of this fruit may only have natural flavouring, which your
      fruit is (Regulation (EC) 110/2008).
    • An EU label says: the legal name, the strength with one decimal at most
      (needed above 1.2 % vol: Regulation (EU) 1169/2011), the volume, the
      allergens, and who answers for it (the rest from memory).

    ! Write on every bottle: “Not in pregnancy. Keep out of reach of children.”
    ! It’s for your own table. Selling it, raffling it or giving it for money needs
      a licence and paid duty nearly everywhere. Ask your local authority first.
    ! Not if you’re pregnant or trying for a baby, under age, or about to drive,
      swim or use machines. On medicines, with liver disease or a past dependence?
      Ask a doctor or pharmacist. Your local law comes first."
  `)
})

test.each([
  ['15%', '95 g/L', ['eu_spirit_drink', 'eu_liqueur']],
  ['15.0%', '95.0 g/L', ['eu_spirit_drink', 'eu_liqueur']],
  ['14.9%', '95 g/L', []],
  ['15%', '94.9 g/L', ['eu_spirit_drink']],
  ['15%', '237.5 g/L', ['eu_spirit_drink', 'eu_liqueur', 'eu_creme_de']],
  ['15%', '237.4 g/L', ['eu_spirit_drink', 'eu_liqueur']],
])(
  '%s with %s of sucrose is %j (Regulation (EU) 2019/787; 95 g of sucrose are 100 g of invert sugar)',
  async (...row) => {
    const [strength, sweetness, ids] = row
    expect(await met(`/label strength:${strength} sweetness:${sweetness} region:EU`)).toEqual(ids)
  },
)

test.each([
  ['gentian', '76 g/L', true],
  ['gentian', '75.9 g/L', false],
  ['lemon', '76 g/L', false],
  ['gentian + lemon', '76 g/L', false],
  ['wormwood', '76 g/L', true],
])(
  'of %s with %s of sucrose: an EU liqueur %s (80 g/L for gentian alone, check case 8)',
  async (of, sweetness, meets) => {
    expect((await met(`/label strength:25% sweetness:${sweetness} of:${of} region:EU`)).includes('eu_liqueur')).toBe(
      meets,
    )
  },
)

test('29 % vol is too weak for the Sorrento name, and 30 % still is not ours to use (check case 12)', async () => {
  const file = async (strength: string) =>
    (await judged(`/label strength:${strength} sweetness:250 g/L of:lemon region:EU`)).find(
      ({ id }) => id === 'gi_sorrento',
    )
  expect(await file('29%')).toMatchObject({ meets: false, missing: expect.arrayContaining(['stronger']) })
  expect(await file('30%')).toMatchObject({ meets: false, missing: ['plant_amount', 'steep_time', 'made_in_area'] })
})

test('a US liqueur is counted by weight: 24 g/L of 960 g/L is 2.5 % (27 CFR 5.150)', async () => {
  expect(await met('/label strength:35% sweetness:25 g/L region:US')).toEqual(['us_liqueur'])
  expect(await met('/label strength:35% sweetness:22 g/L region:US')).toEqual([])
})

test('takes the EU and the US where no region is named, and says so', async () => {
  const line = '/label strength:30% sweetness:250 g/L'
  expect(await met(line)).toEqual(['eu_spirit_drink', 'eu_liqueur', 'eu_creme_de', 'us_liqueur'])
  expect(await noteKeys(line)).toEqual(['both_regions', 'eu_label_says', 'us_label_says'])
  expect(await noteKeys(`${line} region:UK`)).toEqual(['uk_label_says'])
})

test('counts sugar as invert sugar, with its ±', async () => {
  const { data } = await reply('/label strength:30% sweetness:95±1 g/L')
  expect(data.sugarAsInvertGPerL).toBeCloseTo(100, 1)
  expect(data.sugarAsInvertGPerLPlusMinus).toBeCloseTo(1.0526, 3)
})

test('says when a limit is too near to be sure', async () => {
  expect((await reply('/label strength:15.2% sweetness:250 g/L region:EU')).sure).toMatchObject([
    { key: 'as_invert' },
    { values: { near: ['strength'] } },
  ])
  const { sure } = await reply('/label strength:30% sweetness:150 g/L region:EU')
  expect(sure.map(({ key }) => key)).toEqual(['as_invert'])
  expect((await reply('/label strength:30% sweetness:0 region:EU')).sure).toEqual([])
  // By weight, of whatever sugar (27 CFR 5.150).
  expect((await reply('/label strength:30% sweetness:150 g/L region:US')).sure).toEqual([])
})

test('names allergens first, then what every bottle says, then that it is not for sale, then law and doctor', async () => {
  expect(await cautionKeys('/label strength:30% sweetness:250 g/L of:hazelnuts')).toEqual([
    'allergens',
    'for_guests',
    'not_for_sale',
    'law_and_doctor',
  ])
  expect(await cautionKeys('/label strength:30% sweetness:250 g/L of:lemon')).toEqual([
    'for_guests',
    'not_for_sale',
    'law_and_doctor',
  ])
})

test('vouches for nothing it does not know, and refuses what is never planned', async () => {
  expect(await noteKeys('/label strength:30% sweetness:250 g/L of:dragonwort')).toContain('unknown_plant')
  expect(await json('/label strength:30% sweetness:250 g/L of:lemon + belladonna')).toMatchObject({
    error: { code: 'refused', option: 'of' },
  })
  expect(await json('/label strength:30% sweetness:250 g/L region:Japan')).toMatchObject({
    error: { code: 'bad_value', option: 'region' },
  })
  expect(await json('/label strength:95% sweetness:500 g/L')).toMatchObject({ error: { code: 'unreachable' } })
})

test('answers in words for whatever is in the catalogue, at any strength and sweetness', async () => {
  const line = fc
    .record({
      strength: fc.integer({ min: 1, max: 1000 }).map((tenths) => tenths / 10),
      sweetness: fc.integer({ min: 0, max: 1200 }),
      of: fc.array(fc.constantFrom(...catalogue.map(({ names }) => names.title), 'dragonwort'), { maxLength: 3 }),
      region: fc.constantFrom('', ' region:EU', ' region:US', ' region:UK'),
    })
    .map(({ strength, sweetness, of, region }) => {
      const plants = of.length === 0 ? '' : ` of:${of.join(' + ')}`
      return `/label strength:${strength}% sweetness:${sweetness} g/L${plants}${region}`
    })
  await fc.assert(
    fc.asyncProperty(line, async (typed) => {
      const text = await printed(typed)
      expect(text).not.toMatch(/NaN|undefined|null|\[object|Infinity/)
      expect(faults()).toEqual([])
    }),
    { seed: SEED, numRuns: runs(100, 5000) },
  )
})
