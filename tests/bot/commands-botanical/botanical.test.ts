import { expect, test } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { hazards } from '../../../core/botanical/evidence/hazards.ts'
import { askBacks } from '../../../core/botanical/names/ambiguous-names.ts'
import { allRefusedNames } from '../../../core/botanical/refuse/all-refused.ts'
import { eachHolds } from '../../each-holds.ts'
import { sampled } from '../../runs.ts'
import { faults, json, noteKeys, printed, reply, told } from '../commands-label/desk.ts'
import { flat } from '../flat.ts'

const BROKEN = /NaN|undefined|null|\[object|Infinity/
const SEVERITIES = ['critical', 'high', 'medium', 'low', 'quality']
const allRefused = allRefusedNames.map(({ name }) => name)

test('says the amount and the days first, and where each figure stands', async () => {
  expect(await printed('/botanical ginger')).toMatchInlineSnapshot(`
    "Ginger: about 150 g (50 to 400), 6 thumbs of ginger, in a litre of spirit, for
    14 to 21 days.

      Spirit       40 to 96 %
      Latin name   Zingiber officinale
      Form         fresh. 1 g dried counts as 5 g fresh (common practice)
      Spirit       40 to 96 % vol (common practice)
      Taste from   5 days
      Usual steep  14 to 21 days (common practice)
      Strain by    30 days
      Rest after   30 days (common practice)
      Water        79 % (USDA, row 11216)
      One weighs   a thumb 20 to 30 g (common practice)
      Dissolves    5 g/L ± 4 g/L of it, at the usual amount (estimated)
      Soaks up     0.5 to 0.9 ml of liquid for each gram (estimated)
      Season       all year

    • Scrub it, peel it and slice it thin.
    • I’ve assumed the ginger is fresh. If not, say so.
    • Two hours of stirring drew 23 % of what boiling drew from ginger, probably
      dried powder (Korean J. Food Preserv. 2019): hours aren’t enough. Nobody has
      measured the days.
    • The days are what people use (common practice). Taste.

      Plan a jar: /plan of:ginger spirit:1 l 40%"
  `)
})

test('every plant has a page, by its short name and its title', () =>
  eachHolds(
    sampled(catalogue, 3).flatMap(({ id, names }) => [
      { id, typed: names.en[0]! },
      { id, typed: names.title },
    ]),
    ({ typed }) => typed,
    async ({ id, typed }) => {
      const { outcome, text } = await told(`/botanical of:"${typed}"`)
      expect(flat(text)).toContain('in a litre of spirit')
      expect(text).not.toMatch(BROKEN)
      expect(outcome).toMatchObject({ ok: true, reply: { data: { id } } })
    },
  ))

test('lists everything it knows by kind, each under a name that finds it', async () => {
  const { data, table } = await reply('/botanical')
  const kinds = data.kinds as unknown as readonly { readonly kind: string; readonly ids: readonly string[] }[]
  expect(kinds.flatMap(({ ids }) => ids)).toEqual(catalogue.map(({ id }) => id))
  expect(table).toHaveLength(kinds.length)
  const text = flat(await printed('/botanical'))
  expect(text).toContain(`I know ${catalogue.length} plants, of 12 kinds`)
  for (const { names } of catalogue) expect(text).toContain(names.en[0])
  expect(text).not.toMatch(BROKEN)
})

test('answers a script with the same keys for every plant, null where unknown', async () => {
  expect((await json('/botanical ginger')).data).toEqual({
    id: 'ginger',
    latin: 'Zingiber officinale',
    form: 'fresh',
    cut: null,
    doseGPerL: { min: 50, typical: 150, max: 400 },
    spiritMl: 1000,
    dose: { minG: 50, typicalG: 150, maxG: 400, pieces: 6 },
    timesDays: { tasteFrom: 5, usualMin: 14, usualMax: 21, latest: 30, restMin: 30, restMax: 30 },
    strengthPercent: { min: 40, max: 96 },
    waterFraction: 0.7889,
    sugarsFraction: null,
    extractFraction: { min: 0.01, max: 0.05 },
    sugarsGPerL: 0,
    sugarsGPerLPlusMinus: 0,
    // 1 to 5 % of 150 g, spread evenly.
    extractGPerL: expect.closeTo(4.5, 9),
    extractGPerLPlusMinus: expect.closeTo((3 * 1.96) / Math.sqrt(3), 9),
    ceilingGPerL: null,
    hazards: [],
  })
  const keys = Object.keys((await json('/botanical ginger')).data)
  for (const { names } of sampled(catalogue, 3, 1))
    expect(Object.keys((await json(`/botanical ${names.en[0]}`)).data)).toEqual(keys)
  expect((await json('/botanical wormwood')).data.ceilingGPerL).toBe(2)
  expect((await json('/botanical lemon')).data.timesDays.latest).toBeNull()
})

test('gives every hazard of a plant, worst first; those of the look stand among the notes', async () => {
  for (const { names, hazards: keys } of sampled(catalogue, 3, 2)) {
    const line = `/botanical ${names.en[0]}`
    const { data, cautions, notes } = await reply(line)
    const said = data.hazards as readonly (keyof typeof hazards)[]
    expect([...said].sort()).toEqual([...keys].sort())
    const ranks = said.map((key) => SEVERITIES.indexOf(hazards[key].severity))
    expect(ranks).toEqual(ranks.toSorted())
    const looks = notes.filter(({ key }) => key === 'botanical_look').length
    const inFull = cautions.filter(({ key }) => key === 'botanical_hazard').length
    expect(inFull + looks).toBe(keys.length)
  }
})

test('gives no page to what is refused', () =>
  eachHolds(sampled(allRefused, 20), String, async (name) => {
    expect((await json(`/botanical of:"${name}"`)).error.code).toBe('refused')
  }))

test('asks back at every word of several plants', () =>
  eachHolds(
    sampled(askBacks, 3).flatMap(({ words }) => words.split(', ')),
    String,
    async (word) => {
      expect((await json(`/botanical of:"${word}"`)).error.code).toBe('ambiguous')
    },
  ))

test('forgives a typo and says what it read', async () => {
  expect((await reply('/botanical gingr')).data.id).toBe('ginger')
  expect(await noteKeys('/botanical gingr')).toContain('botanical_corrected')
  expect(await noteKeys('/botanical ginger')).not.toContain('botanical_corrected')
  expect((await json('/botanical oleanderr')).error.code).toBe('ambiguous')
})

test('takes an amount without minding it', async () => {
  expect((await reply('/botanical 8 lemons')).data.id).toBe('lemon_peel')
  expect((await reply('/botanical of:30 g zenzero')).data.id).toBe('ginger')
  expect((await json('/botanical lemon + ginger')).error.code).toBe('not_found')
})

test('tells the dried from the fresh', async () => {
  expect(await printed('/botanical dried ginger')).toContain('Dried ginger: use about 30 g (10 to 80)')
  expect((await reply('/botanical dried ginger')).data).toMatchObject({ form: 'dried', doseGPerL: { typical: 30 } })
  expect(await noteKeys('/botanical ginger')).toContain('botanical_form_taken')
  expect(await noteKeys('/botanical dried ginger')).not.toContain('botanical_form_taken')
  expect(flat(await printed('/botanical sage'))).toContain('at most 10 g in a litre of spirit (2.5 g if dried)')
})

test('says what is measured, what is habit, and what a product file asks for', async () => {
  expect(await noteKeys('/botanical horseradish')).not.toContain('botanical_evidence')
  expect(flat(await printed('/botanical horseradish'))).toContain('nobody I know of has measured them')
  expect(flat(await printed('/botanical sloe'))).toContain('125 to 250 g of the plant in a litre of finished drink')
  expect((await noteKeys('/botanical lemon')).filter((key) => key === 'botanical_file')).toHaveLength(2)
})

test('says where amounts, days and shares are from memory, and in which row of USDA they are to be read', async () => {
  const text = flat(await printed('/botanical apple'))
  expect(text).toContain('about 600 g (300 to 1 000), 3 apples, in a litre of spirit, for 14 to 30 days')
  expect(text).toContain('Water 86 % (from memory, USDA, row 09003)')
  expect(text).toContain('those of a similar plant (from memory)')
  expect(text).not.toMatch(/Usual steep [^A-Z]*common practice/)
  expect(flat(await printed('/botanical dried limes'))).toContain('about 40 g (20 to 67)')
})

test('turns the season round for the south, and says so', async () => {
  expect(flat(await printed('/botanical sloe'))).toContain(
    'September to November in the north (common practice), March to May in the south (derived)',
  )
  expect(flat(await printed('/botanical bitter orange'))).toContain('July to September in the south')
})

test('counts hours where days are too long', async () => {
  expect(await printed('/botanical black tea')).toContain('5 to 12 hours')
  expect(flat(await printed('/botanical wormwood'))).toContain('12 hours to 2 days')
})

test.each([
  '',
  ' ',
  '""',
  '+',
  'of:',
  'of:+',
  '../../etc',
  '__proto__',
  'constructor',
  '🍋',
  '1e999 g ginger',
  '-5 ginger',
  'ginger '.repeat(200),
])('keeps its feet at %j', async (typed) => {
  const text = await printed(`/botanical ${typed}`)
  expect(text).not.toMatch(/undefined|\[object|NaN/)
  expect(faults()).toEqual([])
})
