import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import { plantSaid } from '../../../core/botanical/find/plant-said.ts'
import { saidText } from '../../../core/quantity/said/said-text.ts'
import { roundly, written } from './vessel-said.ts'

/** What weighs so much in a litre of spirit, or more, goes in by the jarful, g. */
const BY_THE_JAR_G_PER_L = 100

/** Whole fruit fills its room by half, as its weight in it tells, g to a ml; the spirit takes the rest. Common practice, no source. */
export const FRUIT_G_PER_ML = 0.5

/** How full a jar is that was topped up: room to shake. Common practice, no source. */
export const FULL_SHARE = 0.9

/** Whether plants, by their ids, are fruit that a jar is filled with: not leaves, not peel, not spices. */
export const isByTheJar = (ids: readonly string[] = []): boolean =>
  ids.length > 0 &&
  ids.every((id) => {
    const { bulky, zestGPerFruit, form, dose } = botanicalById(id)
    return !bulky && zestGPerFruit === null && form.state === 'fresh' && dose.typicalGPerL >= BY_THE_JAR_G_PER_L
  })

/** What fruit weighs that a text begins with and that fills so much, g; null where it begins with none. */
export function fruitG(text: string, ml: number): number | null {
  const ids = plantSaid(saidText(text).tokens, 0, new Set())?.ids
  return isByTheJar(ids) ? roundly(FRUIT_G_PER_ML * ml) : null
}

/** Leaves and flowers, pressed under, take so much of a jar; peel and spices next to nothing. Estimated. */
const LEAVES_SHARE = 0.3

/** Spirit for a jar of a size that is filled with plants and topped up, as it is typed. */
export function spiritToFill(jarMl: number, plants: string): string {
  const ids = plantSaid(saidText(plants).tokens, 0, new Set())?.ids ?? []
  const isBulky = ids.some((id) => botanicalById(id).bulky)
  const share = isByTheJar(ids) ? FRUIT_G_PER_ML : isBulky ? LEAVES_SHARE : 0
  return written(roundly(FULL_SHARE * (1 - share) * jarMl))
}
