import { expect, it } from 'vitest'
import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import { inForm } from '../../../core/botanical/find/in-form.ts'
import { nearestIds } from '../../../core/botanical/find/nearest-ids.ts'
import { GLASS_ML, substances } from '../../../core/botanical/limits/substances.ts'
import { expectNotRefused } from '../../../core/botanical/refuse/refusal.ts'
import { expectNotNearUndrinkable } from '../../../core/botanical/refuse/refuse-spirit.ts'
import { refusal, refusedValues } from '../quantity/refusal.ts'

// JECFA 1982 and 1979 (from memory): 2.5 and 0.5 mg a day for each kg, of an adult of 60 kg as in EFSA's opinions.
it.each([
  ['eugenol', 150],
  ['linalool', 30],
] as const)('a glass of %s holds a day’s %s mg', (substance, mg) => {
  expect((substances[substance].mgPerLFinished * GLASS_ML) / 1000).toBeCloseTo(mg, 9)
})

// Common practice, no source: half as much again as the usual most must be within the limit.
it.each([
  ['genepi', 1.25, false],
  ['saffron', 1.5, false],
  ['coffee_whole', 1.55, true],
  ['fennel_seed', 1.625, true],
])('%s, whose limit is %s times the usual most, stands in for its oil: %s', (id, times, isNamed) => {
  const { ceiling, dose, names } = botanicalById(id)
  expect(ceiling!.gPerLSpirit / dose.maxGPerL).toBeCloseTo(times, 9)
  const values = refusedValues(() => expectNotRefused(`${names.en[0]} oil`))
  expect(values).toMatchObject({ id: 'essential_oils', instead: isNamed ? id : null })
})

it.each(['methyk', 'propyk', 'toluox'])('%s has six letters, so that a typo may hide what is undrinkable', (word) => {
  expect(refusal(() => expectNotNearUndrinkable([word], word))).toBe('ambiguous near_refused_spirit')
})

it.each(['butyk', 'xylot'])('%s has five, and is one letter from too much else', (word) => {
  expect(() => expectNotNearUndrinkable([word], word)).not.toThrow()
})

it.each(['lemon', 'coffee', 'orange', 'cinnamon', 'pepper'])('of all plants like %s three are named', (word) => {
  expect(nearestIds([word])).toHaveLength(3)
})

// Common practice, no source: herbs and roots are sold with 5 to 12 % water.
it('a dried plant holds a tenth of water', () => {
  const { waterFraction, driedPerFresh } = inForm(botanicalById('sage'), 'dried') ?? {}
  expect(waterFraction).toMatchObject({ value: 0.1, range: [0.05, 0.15] })
  expect(driedPerFresh).toBeNull()
})
