import { isSouthern } from '../../../core/quantity/time/hemisphere.ts'
import { dayAt } from '../../../core/quantity/time/zone.ts'
import { asOptionProblem } from '../../calls/option.ts'
import { signature } from '../../calls/signatures.ts'
import { defineCommand } from '../../chat/command.ts'
import { inMore } from '../../chat/depth.ts'
import type { Reply } from '../../chat/reply.ts'
import { isSaidAsTyped, kitchenOf } from '../options/input-units.ts'
import { byDepth } from '../reply/first-screen.ts'
import { freezerOf } from '../reply/outcome-reply.ts'
import { changeActions, shoppingAction, startAction } from './plan-actions.ts'
import { planAsked } from './plan-asked.ts'
import { dilutedFirst } from './plan-diluted.ts'
import { isWeaker } from './plan-from-code.ts'
import { planReply } from './plan-reply.ts'
import { recipeDepartures } from './recipe-departures.ts'

const isHarmful = ({ cautions }: Reply): boolean =>
  cautions.some((each) => each.key === 'plan_unknown' || each.key === 'plan_grave')

export const planCommand = defineCommand({
  ...signature('plan'),
  topic: 'planning',
  isOfLineAlone: true,
  run(input, context) {
    const { nowMs, zone } = context
    const { country } = context.settings
    const today = dayAt(zone, nowMs)
    const start = asOptionProblem('start', () => input.start?.is.read({ today, country }) ?? today)
    const setting = { command: 'plan', today, country, start, kitchen: context.kitchen }
    const asked = planAsked(input, setting)
    const reply = planReply(asked, {
      freezerC: freezerOf(context),
      isAsTyped: isSaidAsTyped(kitchenOf(input), context.settings),
      isSouth: isSouthern(zone),
      have: input.have?.is,
    })
    const changes = changeActions(input, asked.planned, setting)
    // The line of several plants is long, and what may harm somebody has its room before a wish.
    const isAlone = asked.planned.plants.length + asked.planned.unknown.length === 1 && !isHarmful(reply)
    const diluted = dilutedFirst(asked.input, asked.planned)
    const first = isAlone && diluted.actions.length === 0 ? 1 : 0
    const recipe = recipeDepartures(input, asked.planned, reply.notes, setting)
    const actions = [
      ...reply.actions,
      ...startAction(input, asked.planned, { start, today }),
      ...diluted.actions,
      ...recipe.actions,
      ...changes.slice(0, first),
      ...inMore([...shoppingAction(input, asked), ...changes.slice(first)]),
    ]
    // A recipe goes by the alcohol: little of a plant in a litre of weak spirit is as much of it in a glass.
    const isFaint = ({ key }: Reply['notes'][number]) => input.from !== undefined && key === 'plan_less_than_usual'
    return {
      ...reply,
      notes: [...diluted.notes, ...byDepth(asked.notes, isWeaker), ...recipe.notes.filter((note) => !isFaint(note))],
      actions,
    }
  },
})
