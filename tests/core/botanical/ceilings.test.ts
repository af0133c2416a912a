import fc from 'fast-check'
import { expect, test } from 'vitest'
import { botanicalById, catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { inForm } from '../../../core/botanical/find/in-form.ts'
import { checkCeilings } from '../../../core/botanical/limits/ceilings.ts'
import { runs, SEED } from '../../runs.ts'
import { refusal, refusedValues } from '../quantity/refusal.ts'

const grams = (id: string, massG: number) => ({ botanical: botanicalById(id), massG })

// The ceilings of the reference, g per litre of steeping spirit.
test.each([
  ['sage', 10],
  ['cinnamon_cassia', 5],
  ['liquorice_root', 20],
  ['gentian_root', 30],
  ['saffron', 1.5],
  ['wormwood', 2],
  ['nutmeg', 1],
  // From memory: as nutmeg; coumarin of 10 and 5 mg/g in 10 mg a litre of drink; a heat that burns.
  ['mace', 1],
  ['woodruff', 2],
  ['bison_grass', 4],
  ['habanero', 16],
  ['cayenne', 8],
])('%s: %f g in a litre of spirit, half in a litre of the drink, and no more', (id, ceilingG) => {
  expect(checkCeilings([grams(id, ceilingG)], 1000).shares[0]?.share).toBeCloseTo(1, 9)
  expect(refusal(() => checkCeilings([grams(id, ceilingG * 1.001)], 1000))).toBe('over_ceiling over_ceiling')
  checkCeilings([grams(id, ceilingG / 2)], 1000, 1000)
  expect(refusedValues(() => checkCeilings([grams(id, ceilingG * 0.501)], 1000, 1000))).toMatchObject({
    per: 'finished',
    volumeMl: 1000,
  })
  checkCeilings([grams(id, ceilingG)], 1000, 2000)
})

test('ceilings of one hazard add', () => {
  const { shares } = checkCeilings([grams('sage', 5), grams('wormwood', 1)], 1000)
  expect(shares).toEqual([{ hazard: 'thujone', share: 1, per: 'spirit', ids: ['sage', 'wormwood'] }])
  const values = refusedValues(() => checkCeilings([grams('sage', 10), grams('wormwood', 2)], 1000))
  expect(values).toMatchObject({ hazard: 'thujone', share: 2 })
  expect(values).toMatchObject({
    of: [
      { id: 'sage', mostG: 5 },
      { id: 'wormwood', mostG: 1 },
    ],
  })
  checkCeilings([grams('nutmeg', 1), grams('saffron', 1.5), grams('sage', 10)], 1000)
})

test('mace shares the limit of nutmeg, woodruff and bison grass that of cassia', () => {
  const both = (one: string, other: string, oneG: number, otherG: number) =>
    refusal(() => checkCeilings([grams(one, oneG), grams(other, otherG)], 1000))
  expect(both('mace', 'nutmeg', 0.6, 0.6)).toBe('over_ceiling over_ceiling')
  expect(both('woodruff', 'cinnamon_cassia', 1.1, 3)).toBe('over_ceiling over_ceiling')
  expect(both('bison_grass', 'woodruff', 2.1, 1)).toBe('over_ceiling over_ceiling')
  checkCeilings([grams('woodruff', 1), grams('bison_grass', 2)], 1000)
})

test('genepi is warned about before it is refused, and counts beside wormwood', () => {
  expect(checkCeilings([grams('genepi', 25)], 1000)).toMatchObject({
    shares: [{ hazard: 'thujone', share: 1 }],
    warned: [{ id: 'genepi', limitGPerL: 20 }],
  })
  expect(checkCeilings([grams('genepi', 16)], 1000).warned).toEqual([])
  expect(refusal(() => checkCeilings([grams('genepi', 20), grams('wormwood', 1)], 1000))).toBe(
    'over_ceiling over_ceiling',
  )
})

test('dried sage counts four times', () => {
  const dried = inForm(botanicalById('sage'), 'dried')!
  expect(checkCeilings([{ botanical: dried, massG: 2.5 }], 1000).shares[0]?.share).toBeCloseTo(1, 9)
  expect(refusal(() => checkCeilings([{ botanical: dried, massG: 3 }], 1000))).toBe('over_ceiling over_ceiling')
})

test('every plant may be taken at its largest usual dose', () => {
  for (const botanical of catalogue) {
    expect(checkCeilings([{ botanical, massG: botanical.dose.maxGPerL }], 1000, 2000).warned).toEqual([])
  }
})

test('what is refused names amounts that are then allowed', () => {
  const weighed = fc.record({
    botanical: fc.constantFrom(...catalogue),
    massG: fc.double({ min: 0, max: 500, noNaN: true }),
  })
  fc.assert(
    fc.property(
      fc.array(weighed, { maxLength: 5 }),
      fc.double({ min: 100, max: 5000, noNaN: true }),
      (jar, spiritMl) => {
        const values = (() => {
          try {
            checkCeilings(jar, spiritMl, 2 * spiritMl)
            return null
          } catch {
            return refusedValues(() => checkCeilings(jar, spiritMl, 2 * spiritMl))
          }
        })() as { of: readonly { id: string; mostG: number }[] } | null
        if (values !== null)
          checkCeilings(
            values.of.map(({ id, mostG }) => grams(id, mostG)),
            spiritMl,
            2 * spiritMl,
          )
      },
    ),
    { seed: SEED, numRuns: runs(200, 5000) },
  )
})
