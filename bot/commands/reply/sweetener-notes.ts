import { isJuice, type MaterialId, materialOf, sugarsShare, USUAL_MATERIAL } from '../../../core/quantity/materials.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import { inMore } from '../../chat/depth.ts'
import type { Data, Reply } from '../../chat/reply.ts'
import type { Message } from '../../text/words.ts'
import { note } from './outcome-reply.ts'

/** How far from the same sugars in the bag a taste has to be for a word, as a share. Judgement. */
const TASTES_ALIKE_SHARE = 0.1

const tastesOtherwise = (material: MaterialId): boolean => {
  const { low, high } = materialOf(material).sweetness
  return [low, high].some((sweetness) => Math.abs(sweetness / sugarsShare(material) - 1) > TASTES_ALIKE_SHARE)
}

/** Juices and purées, not coffee, tea or an acid. */
const turns = (material: MaterialId): boolean => isJuice(material) && sugarsShare(material) > 0

/** What an amount of what sweetens is, and what it brings of sugars and of water; `sugarG` is as it is weighed. */
export const sweetenerData = (sweetener: MaterialId, sugarG: Measured): { readonly [name: string]: Data } => ({
  sweetener,
  sweetenerSugarsG: sugarG.value * sugarsShare(sweetener),
  sweetenerWaterG: (sugarG.value * materialOf(sweetener).per100G.water) / 100,
})

/** What has to be said of what sweetens, each once; `solved`: what the amount was worked out of, null where it was said. */
export function sweetenerNotes(all: readonly MaterialId[], solved: MaterialId | null = null): Reply['notes'] {
  const materials = [...new Set(all)].filter((material) => material !== USUAL_MATERIAL)
  return inMore([
    ...materials.map(
      (material): Message<'notes'> => ({ group: 'notes', key: 'sweetener_counted', values: { material } }),
    ),
    ...(solved !== null && tastesOtherwise(solved)
      ? [{ group: 'notes', key: 'sweetener_taste', values: { material: solved } } as const]
      : []),
    ...(materials.some(turns) ? [note('juice_turns')] : []),
    ...(materials.includes('honey') ? [note('honey_haze')] : []),
  ])
}
