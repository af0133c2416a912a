import { isWholePeel } from '../../../core/botanical/catalogue/piece-mass.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import { isFarOff } from '../../../core/recipe/plan/unusual-amounts.ts'
import type { Message } from '../../text/words.ts'

/** Amounts that may have been typed wrong. */
export const farNotes = (batch: Plan): readonly Message<'notes'>[] =>
  batch.plants
    .filter((plant) => isFarOff(plant, batch))
    .map(({ botanical, massG, count, words }) => ({
      group: 'notes',
      key: 'plan_far_off',
      values: {
        plant: {
          id: botanical.id,
          massG,
          count,
          unit: words?.unit,
          ofZest: isWholePeel(botanical, count, massG.value),
        },
        usualG: (botanical.dose.typicalGPerL * batch.steep.pouredMl) / 1000,
      },
    }))
