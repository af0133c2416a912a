import { sweeteningG, volumeMl } from '../../../core/quantity/measured/precision.ts'
import type { GlassTrial } from '../../../core/recipe/solve/scale-trial.ts'
import { ChatError } from '../../chat/chat-error.ts'
import { spiritPortions, waterOf } from '../options/input-to-portion.ts'
import type { AdjustInput } from './adjust-reply.ts'

const PUT_IN = ['glass-spirit', 'glass-water', 'glass-sugar'] as const

/** What pleased in a glass; null where none was tried. Throws where only one half of it was said. */
export function trialIn(input: AdjustInput): GlassTrial | null {
  const { glass, 'glass-spirit': spirits, 'glass-water': water, 'glass-sugar': sugar } = input
  const isPutIn = PUT_IN.some((option) => input[option] !== undefined)
  if (glass === undefined && !isPutIn) return null
  if (glass === undefined) throw new ChatError('missing_option', 'glass_how_much', {}, { option: 'glass' })
  if (!isPutIn) throw new ChatError('missing_option', 'glass_of_what', {}, { option: 'glass-sugar' })
  const wished = (['to-strength', 'to-sweetness'] as const).find((option) => input[option] !== undefined)
  if (wished !== undefined) {
    throw new ChatError('too_many_options', 'glass_or_wish', { option: wished }, { option: wished })
  }
  const [spirit = null, ...others] = spirits === undefined ? [] : spiritPortions(spirits.is, undefined)
  if (others.length > 0) throw new ChatError('too_many_options', 'glass_one_spirit', {}, { option: 'glass-spirit' })
  const [sweet = null, ...moreSugar] = sugar?.is ?? []
  if (moreSugar.length > 0) throw new ChatError('too_many_options', 'glass_one_sugar', {}, { option: 'glass-sugar' })
  return {
    glassMl: volumeMl(glass.is),
    spirit,
    water: water === undefined ? null : waterOf(water.is),
    sweetening: sweet === null ? null : { material: sweet.material, massG: sweeteningG(sweet) },
  }
}
