import type { APIMessage, APIMessageTopLevelComponent, REST } from 'discord.js'
import type { Outcome } from '../chat/execute.ts'
import type { Reply } from '../chat/reply.ts'
import { trace } from '../chat/trace.ts'
import { buttonsIn, type ShownButton, withButtons } from './buttons-in.ts'
import { decodeCustomId } from './custom-id.ts'
import { shortened } from './cut-text.ts'
import { escapeText } from './escape-text.ts'
import type { InTurn } from './in-turn.ts'
import { readReference } from './kept-lines.ts'
import { COMPONENTS_V2, TEXT_CHARACTERS } from './message-payload.ts'
import { codeOf } from './nudge-fault.ts'
import { plainText } from './plain-text.ts'
import { restFault } from './rest-fault.ts'
import { shownAgain } from './shown-again.ts'
import type { Speech } from './speech.ts'

/** A press on a nudge that has been run. */
export interface NudgePress {
  readonly channelId: string
  readonly messageId: string
  /** What the message showed when it was pressed, as Discord gives it; null where that is not known. */
  readonly components: readonly APIMessageTopLevelComponent[] | null
  readonly customId: string
  readonly userId: string
  readonly outcome: Outcome
  readonly nowMs: number
  readonly speech: Speech
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
const isLater = (button: ShownButton): boolean => LATER.test(lineOf(button))

/** Nothing was recorded: what it asks is open still. */
const HELD: readonly string[] = ['jar_moved_on', 'jar_same_again']

/** What a button answers, however it does: `/jar taste #k7f2a`. A line that is kept elsewhere answers something of its own. */
const questionOf = (button: ShownButton): string => {
  const line = decodeCustomId(button.custom_id)?.line ?? ''
  return readReference(line) === null ? line.split(' ').slice(0, 3).join(' ') : line
}

/** Those that are still open: with nothing left to be done there is nothing to put off either. */
function stillOpen(
  components: readonly APIMessageTopLevelComponent[],
  pressed: ShownButton,
): APIMessageTopLevelComponent[] {
  const rest = withButtons(components, (button) => questionOf(button) !== questionOf(pressed))
  const isOpen = buttonsIn(rest).some((button) => isAnswer(button) && !isLater(button))
  return isOpen ? rest : withButtons(rest, (button) => !isLater(button))
}

interface Node {
  readonly type: number
  readonly content?: string
  readonly components?: readonly Node[]
}

const lengthOf = (nodes: readonly Node[]): number =>
  nodes.reduce((sum, { content = '', components = [] }) => sum + content.length + lengthOf(components), 0)

/** With a text more in its container, as long as the message takes it. */
function withText(components: readonly APIMessageTopLevelComponent[], content: string): APIMessageTopLevelComponent[] {
  const nodes = components as readonly Node[]
  if (lengthOf(nodes) + content.length > TEXT_CHARACTERS) return [...components]
  return nodes.map((node) =>
    node.type === CONTAINER ? { ...node, components: [...(node.components ?? []), { type: TEXT, content }] } : node,
  ) as unknown as APIMessageTopLevelComponent[]
}

const doneText = ({ headline, kitchen }: Reply, { userId, nowMs, speech }: NudgePress): string => {
  const said = plainText(speech.words.say<'headlines'>(headline, kitchen)).trim()
  const what = escapeText(shortened(said, MOST_SAID))
  return speech.discord.answered({ what, who: `<@${userId}>`, when: `<t:${Math.floor(nowMs / 1000)}:f>` })
}

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
  if (HELD.includes(press.outcome.reply.headline.key)) return null
  return withText(stillOpen(shown.map(shownAgain), pressed), doneText(press.outcome.reply, press))
}

export interface NudgeEditing {
  readonly rest: Pick<REST, 'get' | 'patch'>
  readonly inTurn: InTurn
  readonly log: (text: string) => void
}

/** As it is now, since another of its buttons may have been pressed meanwhile; null where the message is gone. */
async function shownNow({ channelId, messageId, components }: NudgePress, { rest }: NudgeEditing) {
  try {
    const message = (await rest.get(`/channels/${channelId}/messages/${messageId}`)) as APIMessage
    return message.components ?? []
  } catch (error) {
    return codeOf(error) === UNKNOWN_MESSAGE ? null : components
  }
}

/** Edits a nudge to say what a press on it has recorded. Never throws: what was recorded is, and its owner was told. */
export async function editNudge(press: NudgePress, editing: NudgeEditing): Promise<void> {
  const { channelId, messageId } = press
  if (press.components !== null && answeredNudge(press.components, press) === null) return
  try {
    await editing.inTurn(messageId, async () => {
      const shown = await shownNow(press, editing)
      const components = shown === null ? null : answeredNudge(shown, press)
      if (components === null) return
      const body = { flags: COMPONENTS_V2, components, allowed_mentions: { parse: [] } }
      await editing.rest.patch(`/channels/${channelId}/messages/${messageId}`, { body })
    })
  } catch (error) {
    editing.log(`editing nudge ${messageId}: ${restFault(error) ?? trace(error)}`)
  }
}
