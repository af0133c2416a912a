import { abvPercent, liquidFrom, sugarGPerL } from '../../../core/liquid/liquid.ts'
import { dissolvableSugarG } from '../../../core/liquid/solubility.ts'
import { materialOf, USUAL_MATERIAL } from '../../../core/quantity/materials.ts'
import { abvPercent as strengthOf } from '../../../core/quantity/measured/precision.ts'
import { liquidOf } from '../../../core/recipe/portion.ts'
import { valuesOf } from '../../../core/recipe/propagate.ts'
import { adjust } from '../../../core/recipe/solve/adjust.ts'
import { sweetnessAlone } from '../../../core/recipe/solve/sweetness-alone.ts'
import { gramOf } from '../../../core/recipe/sweetening.ts'
import { signature } from '../../calls/signatures.ts'
import { ChatError } from '../../chat/chat-error.ts'
import { defineCommand } from '../../chat/command.ts'
import type { Message } from '../../text/words.ts'
import { portionOf } from '../options/input-to-portion.ts'
import { assumptionNotes, kitchenOf } from '../options/input-units.ts'
import {
  caution,
  freezerOf,
  made,
  measuredData,
  note,
  outcomeCautions,
  outcomeData,
  outcomeRows,
  row,
  sureOf,
} from '../reply/outcome-reply.ts'
import { sweetenerData, sweetenerNotes } from '../reply/sweetener-notes.ts'

const keptAs = (what: 'strength' | 'sweetness'): Message<'notes'> => ({
  group: 'notes',
  key: 'as_before',
  values: { what },
})

export const adjustCommand = defineCommand({
  ...signature('adjust'),
  run(input, context) {
    const freezerC = freezerOf(context)
    const { 'to-strength': toStrength, 'to-sweetness': toSweetness, 'spirit-strength': spiritStrength } = input
    if (!toStrength && !toSweetness) {
      const values = { command: 'adjust', option: 'to-strength', example: null }
      throw new ChatError('missing_option', 'missing_option', values, { option: 'to-strength' })
    }
    const liqueur = portionOf(input.liqueur.is, input.strength.is, input.sweetness?.is ?? null, 'label')
    const now = liquidOf(valuesOf(liqueur))
    const spiritAbv = spiritStrength ? strengthOf(spiritStrength.is, 'label') : null
    const sweetenerWished = input.sugar?.is ?? USUAL_MATERIAL
    const drifts = !toStrength && spiritAbv === null
    const sugarGPerLWanted = toSweetness?.is.sugarGPerL ?? sugarGPerL(now)
    const targets = drifts
      ? sweetnessAlone(now, sugarGPerLWanted, gramOf(sweetenerWished))
      : { abvPercent: toStrength?.is.abvPercent ?? abvPercent(now), sugarGPerL: sugarGPerLWanted }
    const { outcome, sugarStays, spiritMl, waterG, waterMl, sweetener, sugarG } = adjust(
      liqueur,
      targets,
      spiritAbv,
      sweetenerWished,
    )
    const spirit =
      spiritAbv && spiritMl.value > 0
        ? [liquidFrom({ volumeMl: spiritMl.value, abvPercent: spiritAbv.value, sugarGPerL: 0 })]
        : []
    const handled = [now, ...spirit]
    const isDissolved = materialOf(sweetener).isSyrup
    const isSyrup =
      sugarG.value > 0 && (isDissolved ? waterG.value > 0 : dissolvableSugarG(waterG.value) >= sugarG.value)
    return {
      headline: {
        group: 'headlines',
        key: 'adjust',
        values: { ...made(outcome, freezerC), spiritMl, waterMl, sweetener, sugarG },
      },
      table: [
        ...(sugarG.value > 0
          ? [row('sugar', { group: 'cells', key: 'weigh', values: { massG: sugarG, sweetener } })]
          : []),
        ...(waterMl.value > 0 ? [row('water', { group: 'cells', key: 'water', values: { waterMl, waterG } })] : []),
        ...(spiritAbv && spiritMl.value > 0
          ? [row('spirit', { group: 'cells', key: 'spirit', values: { spiritMl, abvPercent: spiritAbv.value } })]
          : []),
        ...outcomeRows(outcome, freezerC),
      ],
      sure: sureOf(outcome, liqueur.by === 'volume'),
      notes: [
        ...assumptionNotes(input),
        ...(isSyrup
          ? [
              {
                group: 'notes',
                key: 'syrup_by_weight',
                values: { syrupG: { value: waterG.value + sugarG.value, plusMinus: 0 } },
              } as const,
            ]
          : []),
        ...(spiritMl.value > 0 || waterMl.value > 0 ? [note('settle')] : []),
        ...(input.sweetness ? [note('sweet_reading')] : [note('unsweetened')]),
        ...(toStrength ? [] : [drifts ? note('strength_drifts') : keptAs('strength')]),
        ...(toSweetness ? [] : [keptAs('sweetness')]),
        ...(sugarG.value > 0 ? sweetenerNotes([sweetener], sweetener) : []),
      ],
      cautions: [
        ...outcomeCautions(outcome, sugarStays, handled, { freezerC, isSyrup }),
        ...(sugarG.value > 0 && !isSyrup && !isDissolved ? [caution('sugar_alone')] : []),
      ],
      actions: [],
      data: {
        ...outcomeData(outcome),
        ...measuredData({ spiritMl, waterMl, waterG, sugarG }),
        ...sweetenerData(sweetener, sugarG),
      },
      kitchen: kitchenOf(input),
    }
  },
})
