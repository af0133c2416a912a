import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { botanicalById, catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { inForm, isFormAsked } from '../../../core/botanical/find/in-form.ts'
import { ceilingsUsed, checkCeilings, overCeilings } from '../../../core/botanical/limits/ceilings.ts'
import { gPerLSpiritOf, withLimits } from '../../../core/botanical/limits/limits.ts'
import { contents } from '../../../core/botanical/limits/substance-contents.ts'
import { GLASS_ML, substances } from '../../../core/botanical/limits/substances.ts'
import { toldLimits } from '../../../core/botanical/limits/told-limits.ts'
import { refusal } from '../quantity/refusal.ts'

const published = JSON.parse(
  readFileSync(new URL('../../published/limits-in-drinks.json', import.meta.url), 'utf8'),
) as {
  eu: { rows: readonly { substance: string; mgPerKg: number }[] }
  daily: { rows: readonly { substance: string; mg: number }[] }
  contents: { mgPerG: Readonly<Record<string, number>> }
  genepi: { leastGPerLFinished: number }
  nutmeg: { harmfulG: number }
}

const grams = (id: string, massG: number) => ({ botanical: botanicalById(id), massG })
const limited = catalogue.flatMap(({ id, ceiling }) => (ceiling === null ? [] : [[id, ceiling.gPerLSpirit] as const]))
const ceilingOf = (id: string): number => botanicalById(id).ceiling!.gPerLSpirit
const mgPerKg = (substance: string): number => published.eu.rows.find((row) => row.substance === substance)!.mgPerKg
const dailyMg = (substance: string): number => published.daily.rows.find((row) => row.substance === substance)!.mg

test.each(limited)('%s: %f g in a litre of spirit, and no more', (id, mostG) => {
  expect(overCeilings([grams(id, mostG)], 1000)).toEqual([])
  expect(overCeilings([grams(id, mostG)], 1000, 2000)).toEqual([])
  expect(overCeilings([grams(id, mostG * 1.001)], 1000)).toMatchObject([{ per: 'spirit', volumeMl: 1000 }])
  expect(overCeilings([grams(id, mostG * 0.501)], 1000, 1000)).toMatchObject([{ per: 'finished', spiritMl: 1000 }])
  expect(refusal(() => checkCeilings([grams(id, mostG * 1.001)], 1000))).toBe('over_ceiling over_ceiling')
})

// A litre of liqueur weighs about a kilogram, so that mg/L are a little more than mg/kg.
test.each([
  ['wormwood', 'thujone, from Artemisia'],
  ['sage', 'thujone, not from Artemisia'],
  ['cinnamon_cassia', 'coumarin, alcoholic drinks'],
])('%s at its ceiling keeps the law on %s', (id, substance) => {
  const finishedMgPerL = (ceilingOf(id) / 2) * published.contents.mgPerG[id]!
  expect(finishedMgPerL).toBeLessThanOrEqual(mgPerKg(substance))
  expect(finishedMgPerL).toBeGreaterThan(mgPerKg(substance) / 4)
})

test('the law’s figures are those that contents are held against', () => {
  expect(substances.thujone.mgPerLFinished).toBe(mgPerKg('thujone, not from Artemisia'))
  expect(substances.coumarin.mgPerLFinished).toBe(mgPerKg('coumarin, alcoholic drinks'))
})

test('a glass holds no more than a day may', () => {
  const inGlassMg = (mgPerL: number): number => (mgPerL * GLASS_ML) / 1000
  expect(inGlassMg(substances.caffeine.mgPerLFinished)).toBe(dailyMg('caffeine'))
  expect(inGlassMg(substances.turmeric_liver.mgPerLFinished)).toBe(dailyMg('curcumin'))
  const liquorice = (ceilingOf('liquorice_root') / 2) * published.contents.mgPerG.liquorice_root!
  expect(inGlassMg(liquorice)).toBeLessThanOrEqual(dailyMg('glycyrrhizin'))
  // The richest genepi, 10 mg/g from memory.
  expect(inGlassMg((ceilingOf('genepi') / 2) * 10)).toBeCloseTo(dailyMg('thujone'), 9)
})

test('genepi may be as strong as its product file asks', () => {
  expect(ceilingOf('genepi') / 2).toBeGreaterThan(published.genepi.leastGPerLFinished)
})

test('a litre with nutmeg at its ceiling holds a fifth of what has harmed', () => {
  expect(ceilingOf('nutmeg')).toBe(published.nutmeg.harmfulG / 5)
})

test.each(contents)('$latin, $state: its ceiling is what $key allows, rounded down to two digits', (content) => {
  const exactly = substances[content.key].mgPerLFinished / content.mgPerG / 0.5
  const gPerL = gPerLSpiritOf(content)
  expect(gPerL).toBeLessThanOrEqual(exactly)
  expect(gPerL).toBeGreaterThan(exactly * 0.9)
  expect(Number(gPerL.toPrecision(2))).toBe(gPerL)
  expect(content.from).not.toBe('')
})

test('every plant of a species in the tables has a limit, its own or theirs', () => {
  const rows = [...contents, ...toldLimits]
  const missed = catalogue.filter(({ names, form, ceiling, warnAbove, hazards }) => {
    const isListed = rows.some((row) => {
      const needs = 'hazard' in row ? row.hazard : undefined
      const isMeant = needs === undefined || hazards.includes(needs)
      return isMeant && names.latin.includes(row.latin) && form.state === row.state
    })
    return isListed && ceiling === null && warnAbove === null
  })
  expect(missed).toEqual([])
})

test('a limit of a plant’s own row counts before the tables', () => {
  const own = { key: 'thujone', gPerLSpirit: 3, trust: 'memory' } as const
  const bare = { ...botanicalById('genepi'), ceiling: null, warnAbove: null }
  expect(withLimits(bare)).toMatchObject({ ceiling: { gPerLSpirit: 25 }, warnAbove: { gPerLSpirit: 20 } })
  expect(withLimits({ ...bare, ceiling: own }).ceiling).toEqual(own)
})

test('a sweet pepper is no chilli', () => {
  const sweet = { ...botanicalById('chilli_fresh'), hazards: [], ceiling: null, warnAbove: null }
  expect(withLimits(sweet)).toMatchObject({ ceiling: null, warnAbove: null })
})

// The coffee of a litre is that of its cups: 12 mg/g of arabica, from memory.
test('a glass of the strongest coffee liqueur of arabica holds less than two espressos', () => {
  const mgPerGlass = (ceilingOf('coffee_whole') / 2) * 12 * (GLASS_ML / 1000)
  expect(mgPerGlass).toBeGreaterThan(100)
  expect(mgPerGlass).toBeLessThan(160)
})

test.each([
  ['caffeine', 'coffee_whole', 'tea_black'],
  ['caffeine', 'coffee_ground', 'coffee_cracked'],
  ['anethole', 'star_anise', 'fennel_seed'],
  ['anethole', 'aniseed', 'fennel_seed'],
  ['coumarin', 'cinnamon_cassia', 'cinnamon_ceylon'],
  ['eugenol', 'clove', 'allspice'],
  ['thujone', 'genepi', 'sage'],
  ['thujone', 'wormwood', 'genepi'],
  ['capsaicin', 'chilli_fresh', 'chilli_dried'],
])('%s of %s and %s adds up', (hazard, one, other) => {
  const [first, second] = [grams(one, ceilingOf(one) * 0.6), grams(other, ceilingOf(other) * 0.6)]
  expect(overCeilings([first], 1000)).toEqual([])
  expect(overCeilings([second], 1000)).toEqual([])
  expect(overCeilings([first, second], 1000)).toMatchObject([{ hazard, of: [{ id: one }, { id: other }] }])
  expect(overCeilings([first, second], 1000)[0]!.share).toBeCloseTo(1.2, 9)
})

test('what is told is told without a throw, the worst first', () => {
  const jar = [grams('nutmeg', 2), grams('cinnamon_cassia', 50), grams('rosemary', 500)]
  expect(overCeilings(jar, 1000).map(({ hazard }) => hazard)).toEqual(['coumarin', 'nutmeg'])
  expect(ceilingsUsed(jar, 1000)).toMatchObject({
    shares: [
      { hazard: 'coumarin', share: 10 },
      { hazard: 'nutmeg', share: 2 },
    ],
    warned: [{ id: 'rosemary', limitGPerL: 40 }],
  })
})

test('the form is asked where the usual dose of the one is too much of the other', () => {
  expect(catalogue.filter(isFormAsked).map(({ id }) => id)).toContain('sage')
  expect(isFormAsked(botanicalById('turmeric'))).toBe(false)
  expect(isFormAsked(inForm(botanicalById('sage'), 'dried')!)).toBe(false)
})
