import { z } from 'zod'
import { dayAt } from '../../../core/quantity/time/zone.ts'
import { defineCommand } from '../../chat/command.ts'
import type { Reply } from '../../chat/reply.ts'
import { blamed } from '../options/fields.ts'
import { startAction } from './plan-actions.ts'
import { planAsked } from './plan-asked.ts'
import { planFields } from './plan-fields.ts'
import { planReply } from './plan-reply.ts'
import { checkUnknown } from './plan-unknown.ts'
import { planShape } from './plan-wish.ts'

const { 'ready-by': readyBy, 'steep-at': steepAt, sugar, 'unknown-ok': unknownOk, days, ...before } = planShape

export const planCommand = defineCommand({
  path: 'plan',
  input: z
    .object({
      ...before,
      start: planFields.start.optional(),
      'ready-by': readyBy,
      'steep-at': steepAt,
      sugar,
      'unknown-ok': unknownOk,
      days,
    })
    .superRefine(checkUnknown),
  run(input, { nowMs, zone, settings: { country } }) {
    const today = dayAt(zone, nowMs)
    const start = blamed('start', () => input.start?.is.read({ today, country }) ?? today)
    const asked = planAsked(input, { command: 'plan', today, country, start })
    const reply = planReply(asked.input, asked.wish, asked.planned, asked.limit)
    const actions = startAction(input, asked.planned, { start, today })
    // A recipe goes by the alcohol: little of a plant in a litre of weak spirit is as much of it in a glass.
    const isFaint = ({ key }: Reply['notes'][number]) => input.from !== undefined && key === 'plan_less_than_usual'
    return { ...reply, notes: [...asked.notes, ...reply.notes.filter((note) => !isFaint(note))], actions }
  },
})
