import { abvPercent, sugarGPerL } from '../../../core/liquid/liquid.ts'
import { USUAL_MATERIAL } from '../../../core/quantity/materials.ts'
import { abvPercent as strengthOf } from '../../../core/quantity/measured/precision.ts'
import { liquidOf, type Portion } from '../../../core/recipe/portion.ts'
import { valuesOf } from '../../../core/recipe/propagate.ts'
import { adjust } from '../../../core/recipe/solve/adjust.ts'
import { sweetnessAlone } from '../../../core/recipe/solve/sweetness-alone.ts'
import { gramOf } from '../../../core/recipe/sweetening.ts'
import { signature } from '../../calls/signatures.ts'
import { ChatError } from '../../chat/chat-error.ts'
import { defineCommand } from '../../chat/command.ts'
import { portionOf } from '../options/input-to-portion.ts'
import { missing } from '../options/missing-option.ts'
import { adjustJar } from './adjust-jar.ts'
import { type AdjustInput, adjustReply } from './adjust-reply.ts'

/** As its maker said it. */
function toldLiqueur({ liqueur, strength, sweetness }: AdjustInput): Portion {
  if (liqueur === undefined) throw missing('adjust', 'liqueur')
  if (strength === undefined) throw missing('adjust', 'strength')
  return portionOf(liqueur.is, strength.is, sweetness?.is ?? null, 'label')
}

export const adjustCommand = defineCommand({
  ...signature('adjust'),
  topic: 'sums',
  isOfLineAlone: true,
  async run(input, context) {
    if (input.jar !== undefined) return adjustJar({ ...input, jar: input.jar }, context)
    const glass = (['glass', 'glass-spirit', 'glass-water', 'glass-sugar'] as const).find((each) => input[each])
    if (glass !== undefined) throw new ChatError('missing_option', 'glass_of_jar', {}, { option: 'jar' })
    const { 'to-strength': toStrength, 'to-sweetness': toSweetness, 'spirit-strength': spiritStrength } = input
    const liqueur = toldLiqueur(input)
    if (!toStrength && !toSweetness) throw missing('adjust', 'to-strength')
    const now = liquidOf(valuesOf(liqueur))
    const spiritAbv = spiritStrength ? strengthOf(spiritStrength.is, 'label') : null
    const sweetener = input.sugar?.is ?? USUAL_MATERIAL
    const drifts = !toStrength && spiritAbv === null
    const sugarGPerLWanted = toSweetness?.is.sugarGPerL ?? sugarGPerL(now)
    const targets = drifts
      ? sweetnessAlone(now, sugarGPerLWanted, gramOf(sweetener))
      : { abvPercent: toStrength?.is.abvPercent ?? abvPercent(now), sugarGPerL: sugarGPerLWanted }
    const adjustment = adjust(liqueur, targets, spiritAbv, sweetener)
    return adjustReply(input, { liqueur, adjustment, spiritAbv }, drifts, context)
  },
})
