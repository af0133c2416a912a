import { describe, expect, it } from 'vitest'
import { type HazardKey, hazards } from '../../../core/botanical/evidence/hazards.ts'
import { isAllergen, isAlwaysSaidInFull, planHazards } from '../../../core/botanical/evidence/plan-hazards.ts'

const all = planHazards(Object.keys(hazards) as HazardKey[])

describe('hazards that a jar says', () => {
  /** Regulation (EU) 1169/2011, annex II, as far as plants and sulphites go, with the families of which plants cross-react. */
  it('name a guest those of the list of allergens', () => {
    expect(all.filter(isAllergen).sort()).toEqual([
      'allergen_celery',
      'allergen_generic',
      'allergen_milk_soya',
      'allergen_mustard',
      'allergen_nuts',
      'allergen_nuts_trace',
      'allergen_peanut',
      'allergen_sesame',
      'anacardiaceae_allergy',
      'asteraceae_allergy',
      'sulphites',
    ])
  })

  it('are said in full each time where they may kill, poison or set off an allergy', () => {
    for (const hazard of all) {
      if (isAllergen(hazard)) expect(isAlwaysSaidInFull(hazard)).toBe(true)
      if (['critical', 'high'].includes(hazards[hazard].severity)) expect(isAlwaysSaidInFull(hazard)).toBe(true)
    }
    const poisons = ['coumarin', 'saffron_dose', 'juniper_species', 'ornamental_flowers', 'rhubarb_oxalate'] as const
    for (const hazard of poisons) expect(isAlwaysSaidInFull(hazard)).toBe(true)
  })

  it('are reminded of in a few words once read, where they are mild', () => {
    const mild = all.filter((hazard) => !isAlwaysSaidInFull(hazard))
    expect(mild.length).toBeGreaterThan(5)
    for (const hazard of mild) expect(['medium', 'low', 'quality']).toContain(hazards[hazard].severity)
  })
})
