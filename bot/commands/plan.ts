import { z } from 'zod'
import { abvPercentAt20 } from '../../core/measure/hydrometer.ts'
import { exactly, type Measured } from '../../core/quantity/measured.ts'
import { abvPercent } from '../../core/quantity/precision.ts'
import type { CalendarDay, Strength } from '../../core/quantity/quantities.ts'
import { heldMl } from '../../core/recipe/plan/fill-bottles.ts'
import { USUAL_BOTTLE_ML } from '../../core/recipe/plan/parse-bottles.ts'
import { plan } from '../../core/recipe/plan/plan.ts'
import { answeredFor } from '../../core/recipe/plan/unknown-plant.ts'
import { ChatError } from '../chat/chat-error.ts'
import { defineCommand } from '../chat/command.ts'
import { fields } from './fields.ts'
import { planFields } from './plan-fields.ts'
import { planReply } from './plan-reply.ts'
import { checkUnknown } from './plan-unknown.ts'
import { spiritPortions, sugarOf } from './portions.ts'

const todayAt = (nowMs: number): CalendarDay => {
  const now = new Date(nowMs)
  return { year: now.getUTCFullYear(), month: now.getUTCMonth() + 1, day: now.getUTCDate() }
}

const spiritStrength = (strength: Strength): Measured => {
  const read = abvPercent(strength, strength.atC === null ? 'label' : 'hydrometer')
  return strength.atC === null ? read : { ...read, value: abvPercentAt20(read.value, strength.atC) }
}

const missing = (option: string, example: string): ChatError =>
  new ChatError('missing_option', 'missing_option', { command: 'plan', option, example }, { option })

export const planCommand = defineCommand({
  path: 'plan',
  input: z
    .object({
      of: planFields.anyPlants,
      spirit: planFields.drinkable.optional(),
      strength: fields.strength.optional(),
      bottles: planFields.bottles.optional(),
      'to-strength': fields.wishedStrength.optional(),
      'to-sweetness': fields.sweetness.optional(),
      start: planFields.date.optional(),
      'ready-by': planFields.date.optional(),
      'steep-at': fields.wishedStrength.optional(),
      sugar: fields.sugar.optional(),
      'unknown-ok': planFields.yesNo.optional(),
      days: planFields.days.optional(),
    })
    .superRefine(checkUnknown),
  run(input, { nowMs }) {
    const bottles = input.bottles?.is ?? [{ count: null, volumeMl: USUAL_BOTTLE_ML, size: null }]
    const toFind = input.spirit === undefined
    if (toFind && heldMl(bottles) === null) throw missing('bottles', 'bottles:4 x 500 ml, or spirit:1 l')
    if (toFind && input.strength === undefined) throw missing('strength', 'strength:95%')
    const today = todayAt(nowMs)
    const wish = {
      plants: input.of.is.plants.map(({ botanical, massG, count }) => ({ botanical, massG, count })),
      unknown: input.of.is.unknown.map(answeredFor),
      steepFor: input.days?.is ?? null,
      spirits: input.spirit === undefined ? null : spiritPortions('plan', input.spirit.is, input.strength),
      spiritAbvPercent: input.strength === undefined ? exactly(0) : spiritStrength(input.strength.is),
      steepAtPercent: input['steep-at']?.is.abvPercent ?? null,
      sugarG: sugarOf(input.sugar),
      named: { abvPercent: input['to-strength']?.is.abvPercent, sugarGPerL: input['to-sweetness']?.is.sugarGPerL },
      bottles,
      start: input.start?.is.read(today) ?? today,
      readyBy: input['ready-by']?.is.read(today) ?? null,
    }
    return planReply(input, wish, plan(wish))
  },
})
