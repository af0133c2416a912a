import { dayAt } from '../../../core/quantity/time/zone.ts'
import { asOptionProblem } from '../../calls/option.ts'
import { signature } from '../../calls/signatures.ts'
import { defineCommand } from '../../chat/command.ts'
import type { Reply } from '../../chat/reply.ts'
import { freezerOf } from '../reply/outcome-reply.ts'
import { startAction } from './plan-actions.ts'
import { planAsked } from './plan-asked.ts'
import { planReply } from './plan-reply.ts'

export const planCommand = defineCommand({
  ...signature('plan'),
  run(input, context) {
    const { nowMs, zone } = context
    const { country } = context.settings
    const today = dayAt(zone, nowMs)
    const start = asOptionProblem('start', () => input.start?.is.read({ today, country }) ?? today)
    const asked = planAsked(input, { command: 'plan', today, country, start })
    const reply = planReply(asked.input, asked.wish, asked.planned, asked.limit, freezerOf(context))
    const actions = startAction(input, asked.planned, { start, today })
    // A recipe goes by the alcohol: little of a plant in a litre of weak spirit is as much of it in a glass.
    const isFaint = ({ key }: Reply['notes'][number]) => input.from !== undefined && key === 'plan_less_than_usual'
    return { ...reply, notes: [...asked.notes, ...reply.notes.filter((note) => !isFaint(note))], actions }
  },
})
