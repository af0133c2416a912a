import type { APIMessageTopLevelComponent } from 'discord.js'
import { z } from 'zod'
import type { Person } from '../../../store/person.ts'
import { StorageError } from '../../../store/storage-error.ts'
import type { Store } from '../../../store/store.ts'
import type { Reply } from '../../chat/reply.ts'
import { trace as traceOf } from '../../chat/trace.ts'
import { type NudgeButton, nudgeButton } from '../forms/form.ts'
import { keepIn, LONGEST_KEPT, lineOf } from '../receive/long-button-lines.ts'
import { shownAgain } from '../show/resendable-components.ts'
import { buttonsIn, type ShownButton } from './buttons-in.ts'
import { doneText, type Telling } from './mark-nudge-answered.ts'

/** A button of a nudge, and what the nudge shows, where that is known. */
export interface Behind {
  readonly button: NudgeButton
  readonly components: readonly APIMessageTopLevelComponent[] | null
}

/** What a press left on a nudge, so that it can be taken off again. */
export interface NudgeTrace {
  readonly button: NudgeButton
  /** The line that says what was recorded. */
  readonly said: string
  /** The buttons there were, as they can be sent again; none where they are not known. */
  readonly buttons: readonly ShownButton[]
}

const kept: z.ZodType<NudgeTrace> = z.strictObject({
  button: nudgeButton,
  said: z.string(),
  buttons: z.array(z.looseObject({ type: z.literal(2), custom_id: z.string() })),
})

/** Begins what stands in the place of a nudge's id, which has digits and letters up to f alone. */
const MARK = 'k'

/** Whether what a button carries for a nudge's id is a trace instead. */
export const isTrace = (nudgeId: string | null): boolean => nudgeId?.startsWith(MARK) ?? false

/**
 * Keeps what a press is about to leave on a nudge, for the button that takes it back; null where that cannot be kept. Never
 * throws: the button does its work without, too.
 */
export async function keepTrace(
  { button, components }: Behind,
  reply: Reply,
  telling: Telling & { readonly store: Pick<Store, 'update'>; readonly log: (text: string) => void },
): Promise<string | null> {
  const { store, userId, log } = telling
  const trace = { button, said: doneText(reply, telling), buttons: buttonsIn(components ?? []).map(shownAgain) }
  const whole = JSON.stringify(trace)
  const text = whole.length <= LONGEST_KEPT ? whole : JSON.stringify({ ...trace, buttons: [] })
  try {
    return MARK + (await keepIn(store, userId, text))
  } catch (error) {
    if (!(error instanceof StorageError)) log(traceOf(error))
    return null
  }
}

/** What was kept under such an id; null where it no longer is. */
export function traceIn(person: Person, nudgeId: string): NudgeTrace | null {
  const text = lineOf(person, nudgeId.slice(MARK.length))
  return text === null ? null : kept.parse(JSON.parse(text))
}
