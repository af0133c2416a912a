import type { APIMessage, APIMessageTopLevelComponent, REST } from 'discord.js'
import type { InTurn } from '../../../store/queue.ts'
import type { Outcome } from '../../chat/execute.ts'
import type { Reply } from '../../chat/reply.ts'
import { trace } from '../../chat/trace.ts'
import { restFault } from '../connect/rest-fault.ts'
import { decodeCustomId } from '../receive/custom-id.ts'
import { readReference } from '../receive/long-button-lines.ts'
import { shortened } from '../show/cut-text.ts'
import { escapeText } from '../show/escape-text.ts'
import type { Speech } from '../show/language-for-discord.ts'
import { COMPONENTS_V2, MOST_COMPONENTS, TEXT_CHARACTERS } from '../show/message-payload.ts'
import { plainText } from '../show/plain-text.ts'
import { shownAgain } from '../show/resendable-components.ts'
import { buttonsIn, type ShownButton, withButtons } from './buttons-in.ts'
import { codeOf } from './nudge-fault.ts'

/** Who is told, when and in which words. */
export interface Telling {
  readonly userId: string
  readonly nowMs: number
  readonly speech: Speech
}

/** Where a nudge stands, and what it showed when it was pressed, as Discord gives it; null where that is not known. */
interface Standing {
  readonly channelId: string
  readonly messageId: string
  readonly components: readonly APIMessageTopLevelComponent[] | null
}

/** A press on a nudge that has been run. */
export interface NudgePress extends Standing, Telling {
  readonly customId: string
  readonly outcome: Outcome
}

const [TEXT, CONTAINER] = [10, 17] as const
/** Of what was recorded, with the signs that escape it. */
const MOST_SAID = 200

const UNKNOWN_MESSAGE = 10008

/** What records something; the others only show. */
const ANSWERS = /^\/jar (?!show\b|list\b)/
const LATER = /^\/jar later\b/

const lineOf = ({ custom_id }: ShownButton): string => {
  const line = decodeCustomId(custom_id)?.line ?? ''
  const reference = readReference(line)
  return reference === null ? line : `/${reference.path}`
}

const isAnswer = (button: ShownButton): boolean => ANSWERS.test(lineOf(button))
export const isLater = (button: ShownButton): boolean => LATER.test(lineOf(button))

/** Nothing was recorded: what it asks is open still. */
const HELD: readonly string[] = ['jar_moved_on', 'jar_same_again']

export const isHeld = ({ headline }: Pick<Reply, 'headline'>): boolean => HELD.includes(headline.key)

/** What a button answers, however it does: `/jar taste #k7f2a`. A line that is kept elsewhere answers something of its own. */
export const questionOf = (button: ShownButton): string => {
  const line = decodeCustomId(button.custom_id)?.line ?? ''
  return readReference(line) === null ? line.split(' ').slice(0, 3).join(' ') : line
}

export const settlesQuestion = (answered: string, asked: string): boolean =>
  asked === answered || asked === answered.replace(/^\/jar strain /, '/jar shake ')

/** Whether a press leaves nothing to ask with another button: it asks the same, or to shake what has been strained. */
export function settles(pressed: ShownButton, other: ShownButton): boolean {
  return settlesQuestion(questionOf(pressed), questionOf(other))
}

/** Those that are still open: with nothing left to be done there is nothing to put off either. */
function stillOpen(
  components: readonly APIMessageTopLevelComponent[],
  isAnswered: (button: ShownButton) => boolean,
): APIMessageTopLevelComponent[] {
  const rest = withButtons(components, (button) => !isAnswered(button))
  const isOpen = buttonsIn(rest).some((button) => isAnswer(button) && !isLater(button))
  return isOpen ? rest : withButtons(rest, (button) => !isLater(button))
}

export interface Node {
  readonly type: number
  readonly content?: string
  readonly custom_id?: string
  readonly components?: readonly Node[]
}

export const lengthOf = (nodes: readonly Node[]): number =>
  nodes.reduce((sum, { content = '', components = [] }) => sum + content.length + lengthOf(components), 0)

export const countOf = (nodes: readonly Node[]): number =>
  nodes.reduce((sum, { components = [] }) => sum + 1 + countOf(components), 0)

/** With a text more in its container, as long as the message takes it. */
function withText(components: readonly APIMessageTopLevelComponent[], content: string): APIMessageTopLevelComponent[] {
  const nodes = components as readonly Node[]
  const isRoom = lengthOf(nodes) + content.length <= TEXT_CHARACTERS && countOf(nodes) < MOST_COMPONENTS
  if (!isRoom) return [...components]
  return nodes.map((node) =>
    node.type === CONTAINER ? { ...node, components: [...(node.components ?? []), { type: TEXT, content }] } : node,
  ) as unknown as APIMessageTopLevelComponent[]
}

/** What came of a press, for the words that say who did it and when. */
const parts = ({ headline, kitchen }: Reply, { userId, nowMs, speech }: Telling) => {
  const said = plainText(speech.words.say<'headlines'>(headline, kitchen)).trim()
  const what = escapeText(shortened(said, MOST_SAID))
  return { what, who: `<@${userId}>`, when: `<t:${Math.floor(nowMs / 1000)}:f>` }
}

export const doneText = (reply: Reply, telling: Telling): string =>
  telling.speech.discord.answered(parts(reply, telling))

export const takenBackText = (reply: Reply, telling: Telling): string =>
  telling.speech.discord.takenBack(parts(reply, telling))

/**
 * The nudge as it is shown after a press: what was recorded, who said so and when, and what is still open. Null where
 * nothing was recorded, or the nudge shows it already.
 */
export function answeredNudge(
  shown: readonly APIMessageTopLevelComponent[],
  press: NudgePress,
): APIMessageTopLevelComponent[] | null {
  const pressed = buttonsIn(shown).find((button) => button.custom_id === press.customId)
  if (pressed === undefined || !isAnswer(pressed) || !press.outcome.ok) return null
  if (isHeld(press.outcome.reply)) return null
  return withText(
    stillOpen(shown.map(shownAgain), (button) => settles(pressed, button)),
    doneText(press.outcome.reply, press),
  )
}

/** The same where it was answered elsewhere; null where none of its buttons asks for that. */
export function answeredBy(
  shown: readonly APIMessageTopLevelComponent[],
  isAnswered: (button: ShownButton) => boolean,
  text: string,
): APIMessageTopLevelComponent[] | null {
  if (!buttonsIn(shown).some(isAnswered)) return null
  return withText(stillOpen(shown.map(shownAgain), isAnswered), text)
}

export interface NudgeEditing {
  readonly rest: Pick<REST, 'get' | 'patch'>
  readonly inTurn: InTurn
  readonly log: (text: string) => void
}

/** As it is now, since another of its buttons may have been pressed meanwhile; null where the message is gone. */
async function shownNow({ channelId, messageId, components }: Standing, { rest }: NudgeEditing) {
  try {
    const message = (await rest.get(`/channels/${channelId}/messages/${messageId}`)) as APIMessage
    return message.components ?? []
  } catch (error) {
    return codeOf(error) === UNKNOWN_MESSAGE ? null : components
  }
}

/** Shows a nudge as `changed` makes of what it shows, which is null where it stays. Never throws. */
export async function redrawNudge(
  nudge: Standing,
  changed: (shown: readonly APIMessageTopLevelComponent[]) => APIMessageTopLevelComponent[] | null,
  editing: NudgeEditing,
): Promise<void> {
  const { channelId, messageId } = nudge
  try {
    await editing.inTurn(messageId, async () => {
      const shown = await shownNow(nudge, editing)
      const components = shown === null ? null : changed(shown)
      if (components === null) return
      const body = { flags: COMPONENTS_V2, components, allowed_mentions: { parse: [] } }
      await editing.rest.patch(`/channels/${channelId}/messages/${messageId}`, { body })
    })
  } catch (error) {
    editing.log(`editing nudge ${messageId}: ${restFault(error) ?? trace(error)}`)
  }
}

/** Edits a nudge to say what a press on it has recorded. Never throws: what was recorded is, and its owner was told. */
export async function editNudge(press: NudgePress, editing: NudgeEditing): Promise<void> {
  if (press.components !== null && answeredNudge(press.components, press) === null) return
  await redrawNudge(press, (shown) => answeredNudge(shown, press), editing)
}
