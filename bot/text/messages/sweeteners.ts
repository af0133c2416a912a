import type { MaterialId } from '../../../core/quantity/materials.ts'
import type { Plain } from './plain.ts'

interface Sweetener {
  readonly material: MaterialId
}

export interface SweetenerMessages {
  notes: Plain<'brown_by_volume' | 'syrup_by_volume' | 'honey_haze' | 'juice_turns'> & {
    /** How much sugar and water it was counted with. */
    sweetener_counted: Sweetener
    /** How a ratio was read: of what sweetens, as it is weighed, to the water added. */
    ratio_as_weighed: Sweetener
    /** Where it does not taste as sweet, weight for weight, as its sugars do as white sugar. */
    sweetener_taste: Sweetener
  }
  cautions: Plain<'honey_infant'>
}

declare module '../language.ts' {
  interface MessagesByFeature {
    readonly sweetener: SweetenerMessages
  }
}
