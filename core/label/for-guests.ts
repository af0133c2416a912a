import type { Botanical } from '../botanical/botanical.ts'
import { botanicalById } from '../botanical/catalogue/catalogue.ts'
import type { HazardKey } from '../botanical/evidence/hazards.ts'
import { type MaterialId, materialOf } from '../quantity/materials.ts'
import { type Allergen, allergens, inOrder } from './allergens.ts'
import { allergensNamed, withoutUnsulphured } from './allergens-named.ts'
import { allergensFined, type FiningId } from './fining.ts'
import { adviceOf, type GuestAdvice } from './guest-advice.ts'

/** A plant in a drink: its id in the catalogue, or null, and what it was called. */
export interface PlantInDrink {
  readonly id: string | null
  readonly name: string
}

/** What has to be said of a drink to whoever is offered a glass. */
export interface ForGuests {
  readonly allergens: readonly Allergen[]
  readonly advice: readonly GuestAdvice[]
  /** Plants outside the catalogue of which nobody knows what else they bring. */
  readonly unknown: readonly string[]
}

const BY_HAZARD: Readonly<Partial<Record<HazardKey, readonly Allergen[]>>> = {
  allergen_celery: ['celery'],
  allergen_mustard: ['mustard'],
  allergen_peanut: ['peanut'],
  allergen_sesame: ['sesame'],
  sulphites: ['sulphites'],
  allergen_milk_soya: ['milk_traces', 'soya_traces'],
  allergen_nuts_trace: ['nut_traces'],
  anacardiaceae_allergy: ['cashew_family'],
  asteraceae_allergy: ['daisy_family'],
}

const isNut = (allergen: Allergen): boolean =>
  allergens[allergen].group === 'nuts' && allergens[allergen].is === 'certain'

/** Of its names, its hazards and its form: a nut whose sort its names do not tell is a nut, dried fruit may be sulphured. */
export const allergensOf = ({ names, hazards, form, kind }: Botanical): readonly Allergen[] => {
  const named = [names.title, ...names.en, ...names.it].flatMap((name) => allergensNamed(name).allergens)
  const isUntoldNut = hazards.includes('allergen_nuts') && !named.some(isNut)
  const isCashew = named.includes('cashew') || named.includes('pistachio')
  return [
    ...named,
    ...hazards
      .flatMap((hazard) => BY_HAZARD[hazard] ?? [])
      // The nut itself says what its kin would.
      .filter((allergen) => !(isCashew && allergen === 'cashew_family')),
    ...(isUntoldNut ? (['nut'] as const) : []),
    ...(kind === 'fruit' && form.state === 'dried' ? (['sulphites'] as const) : []),
  ]
}

const allergensIn = ({ id, name }: PlantInDrink): readonly Allergen[] => {
  const said = allergensNamed(name).allergens
  if (id === null) return said
  const all = [...said, ...allergensOf(botanicalById(id))]
  return withoutUnsulphured(name) === null ? all : all.filter((allergen) => allergen !== 'sulphites')
}

/** What has to be said of a drink of these plants, of what sweetens it and what it was fined with, each thing once and the worst first. */
export const forGuests = (
  plants: readonly PlantInDrink[],
  sweeteners: readonly MaterialId[] = [],
  fined: readonly FiningId[] = [],
): ForGuests => ({
  allergens: inOrder([...plants.flatMap(allergensIn), ...allergensFined(fined)]),
  advice: adviceOf([
    ...plants.map(({ id, name }) =>
      id === null ? { hazards: [], name } : { hazards: botanicalById(id).hazards, name: null },
    ),
    ...sweeteners.map((id) => ({ hazards: [], name: materialOf(id).names[0]! })),
  ]),
  unknown: plants.flatMap(({ id, name }) => (id !== null || allergensNamed(name).isWhole ? [] : [name])),
})
