import type { APIMessageTopLevelComponent } from 'discord.js'
import type { Outcome } from '../../chat/execute.ts'
import type { Data } from '../../chat/reply.ts'
import type { Said } from '../receive/run-call.ts'
import { type CallDispatch, zoneOf } from '../show/answer-messages.ts'
import { speechIn } from '../show/language-for-discord.ts'
import type { ShownButton } from './buttons-in.ts'
import {
  answeredBy,
  doneText,
  isHeld,
  type NudgeEditing,
  questionOf,
  redrawNudge,
  settlesQuestion,
} from './mark-nudge-answered.ts'
import type { SentNudges } from './sent-nudges.ts'

/** What ends a jar answers whatever was asked of it. */
const ENDS: readonly string[] = ['jar discard', 'jar empty']

/** What amends, shows or names a jar answers nothing that a nudge asks. */
const ANSWERS: readonly string[] = [
  ...['shake', 'taste', 'strain', 'add', 'sweeten', 'filter', 'bottle', 'open', 'later'].map((duty) => `jar ${duty}`),
  ...ENDS,
]

const idOf = (data: Data | undefined): readonly string[] =>
  typeof data === 'object' && data !== null && 'id' in data && typeof data.id === 'string' ? [data.id] : []

/** The jars that an outcome tells of. */
const jarsIn = ({ reply: { data } }: Extract<Outcome, { readonly ok: true }>): readonly string[] => {
  const { jars } = data
  return Array.isArray(jars) ? jars.flatMap(idOf) : idOf(data)
}

/** Whether a button asks what an outcome has answered; null where it answers nothing. */
function answering(outcome: Outcome): ((button: ShownButton) => boolean) | null {
  if (!outcome.ok || !ANSWERS.includes(outcome.path) || isHeld(outcome.reply)) return null
  const jars = jarsIn(outcome).map((id) => `#${id}`)
  const { path } = outcome
  const isAll = jars.length > 0 && Array.isArray(outcome.reply.data.jars)
  if (ENDS.includes(path)) return (button) => jars.includes(questionOf(button).split(' ')[2] ?? '')
  const questions = [...jars, ...(isAll ? ['all'] : [])].map((jar) => `/${path} ${jar}`)
  return (button) => questions.some((question) => settlesQuestion(question, questionOf(button)))
}

/**
 * Where something was recorded that reminders ask for: those that stand elsewhere say so, and lose the buttons that it has
 * answered. Never throws.
 *
 * @param pressedOn - the message whose button was pressed, which says it by itself
 */
export async function sayElsewhere(
  work: Promise<Said>,
  dispatch: CallDispatch,
  { sent, editing, pressedOn }: { sent: SentNudges; editing: NudgeEditing; pressedOn: string | null },
): Promise<void> {
  const said = await work
  const nudges = sent.of(dispatch.userId).filter(({ messageId }) => messageId !== pressedOn)
  if (said.kind === 'form' || said.outcome === null || !said.outcome.ok || nudges.length === 0) return
  const isAnswered = answering(said.outcome)
  if (isAnswered === null) return
  const speech = speechIn(dispatch.language, await zoneOf(dispatch))
  const text = doneText(said.outcome.reply, { ...dispatch, speech })
  const changed = (shown: readonly APIMessageTopLevelComponent[]) => answeredBy(shown, isAnswered, text)
  for (const nudge of nudges) await redrawNudge({ ...nudge, components: null }, changed, editing)
}
