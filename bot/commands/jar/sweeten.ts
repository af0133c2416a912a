import { z } from 'zod'
import { contentsOf } from '../../../core/jar/contents.ts'
import type { Story } from '../../../core/jar/story.ts'
import { isSweetening } from '../../../core/jar/strained-series.ts'
import type { IsoDay } from '../../../core/quantity/calendar.ts'
import type { Measured } from '../../../core/quantity/measured.ts'
import { ChatError } from '../../chat/chat-error.ts'
import { type Context, defineCommand } from '../../chat/command.ts'
import type { Action } from '../../chat/reply.ts'
import { writeLine } from '../../chat/write-line.ts'
import type { Message } from '../../text/words.ts'
import { fields } from '../fields.ts'
import { outcomeCautions, row } from '../outcome-reply.ts'
import { planFields } from '../plan-fields.ts'
import { sugarOf } from '../portions.ts'
import { waterG } from './amounts.ts'
import { expectJar, type Input, type Recorded, recordStep, typedIn } from './change-jar.ts'
import { jarFields } from './jar-fields.ts'
import { plannedSyrup } from './planned-syrup.ts'
import { jarRef, nowRows, recordedHeadline, stepReply } from './step-reply.ts'
import { sweetenActions } from './sweeten-actions.ts'

/** What has to be said of what it has become. */
const cautionsOf = (story: Story) => {
  const { outcome, sugarStays } = contentsOf(story)
  return outcomeCautions(outcome, sugarStays === 'refused' ? 'not_known' : sugarStays, [])
}

/** So far from what was worked out, a number slipped: a third of it. */
const SLIP_SHARE = 1 / 3

const isFar = (value: number, planned: number): boolean => Math.abs(value - planned) > SLIP_SHARE * planned

interface Poured {
  readonly waterG: Measured
  readonly sugarG: Measured
}

/** What was worked out, where something else went in. */
function slipNotes(before: Story, { waterG, sugarG }: Poured) {
  const syrup = before.strained === null || before.ended !== null ? null : plannedSyrup(before)?.syrup
  if (!syrup || (!isFar(waterG.value, syrup.waterG.value) && !isFar(sugarG.value, syrup.sugarG.value))) return []
  const values = { name: before.name, sugarG: syrup.sugarG.value, waterMl: syrup.waterMl.value }
  return [{ group: 'notes', key: 'jar_sweetened_otherwise', values } as const]
}

/** The entry of the very same amounts on that day. */
const sameSweetening = ({ happened }: Story, on: IsoDay, { waterG, sugarG }: Poured) =>
  happened.find(
    (entry) =>
      entry.kind === 'sweetened' &&
      entry.day === on &&
      entry.waterG.value === waterG.value &&
      entry.sugarG.value === sugarG.value,
  )

/** What to press where nothing was recorded: what the jar wants now, or the same once more. */
function heldActions(recorded: Recorded, input: Input, context: Context): readonly Action[] {
  const { story, held } = recorded
  if (held !== 'same_again') {
    return story.strained !== null && story.ended === null && isSweetening(story)
      ? sweetenActions(recorded, context)
      : []
  }
  const line = writeLine('jar sweeten', jarRef(recorded, context), [...typedIn(input), ['again', 'yes']])
  return [{ label: { group: 'actions', key: 'jar_once_more', values: undefined }, line }]
}

export const jarSweetenCommand = defineCommand({
  path: 'jar sweeten',
  input: z.object({
    jar: jarFields.jar,
    water: fields.amount.optional(),
    sugar: fields.sugar.optional(),
    when: jarFields.when.optional(),
    after: jarFields.entry.optional(),
    again: planFields.yesNo.optional(),
  }),
  async run(input, context) {
    const { water, sugar } = input
    if (water === undefined && sugar === undefined) {
      await expectJar(context, input.jar)
      const example = writeLine('jar sweeten', input.jar.is, [
        ['water', '500 ml'],
        ['sugar', '450 g'],
      ])
      const values = { command: 'jar sweeten', option: 'sugar', example }
      throw new ChatError('missing_option', 'missing_option', values, { option: 'sugar' })
    }
    const poured = { waterG: waterG(water), sugarG: sugarOf(sugar) }
    let notes: readonly Message<'notes'>[] = []
    const isMeant = input.again?.is ?? false
    const recorded = await recordStep(context, input, {
      happening: (story) => {
        notes = slipNotes(story, poured)
        return { kind: 'sweetened', ...poured }
      },
      cautions: cautionsOf,
      sameOn: (story, day) => (isMeant ? undefined : sameSweetening(story, day, poured)),
    })
    const { readyOn } = recorded.story
    return stepReply(context, input, recorded, {
      headline: recordedHeadline(recorded, context),
      actionsHeld: heldActions(recorded, input, context),
      // What was sweetened before is asked of as a whole.
      notes: recorded.unusual.some(({ key }) => key === 'sweetened_again') ? [] : notes,
      rows: (view) => [
        ...nowRows(view),
        ...(readyOn === null ? [] : [row('jar_ready', { group: 'cells', key: 'jar_ready', values: { day: readyOn } })]),
      ],
    })
  },
})
