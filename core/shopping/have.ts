import type { PlantNeed, SpiritNeed, SweetenerNeed, VesselNeed } from './needs.ts'

/** As many, and of whatever size, as it takes where that was not said. */
export type VesselsAtHand = { readonly [Of in keyof VesselNeed]: number | null }

/** Something that is at hand already; amounts left out are as much as it takes. */
export type Have = { readonly typed: string } & (
  | { readonly kind: 'plant'; readonly plant: Omit<PlantNeed, 'massG'> & { readonly massG: number | null } }
  | { readonly kind: 'spirit'; readonly spirit: SpiritNeed }
  | {
      readonly kind: 'sweetener'
      readonly sweetener: SweetenerNeed | { readonly material: SweetenerNeed['material']; readonly massG: null }
    }
  | { readonly kind: 'bottles'; readonly vessels: VesselsAtHand }
  | { readonly kind: 'jars'; readonly vessels: VesselsAtHand }
  | { readonly kind: 'cloth' }
  | { readonly kind: 'paper' }
)
