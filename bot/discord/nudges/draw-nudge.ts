import type { Person, SentNudge } from '../../../store/person.ts'
import type { Store } from '../../../store/store.ts'
import type { Reply } from '../../chat/reply.ts'
import type { SaidAnswer } from '../../reminders/nudge-answers.ts'
import { nudgeNow } from '../../reminders/sent-nudge.ts'
import { languageFor, type Spoken } from '../../text/language.ts'
import { buttonIds } from '../buttons/button-ids.ts'
import { shortened } from '../show/cut-text.ts'
import { escapeText } from '../show/escape-text.ts'
import { type DiscordLanguage, speechIn } from '../show/language-for-discord.ts'
import type { MessagePayload } from '../show/message-payload.ts'
import { plainText } from '../show/plain-text.ts'
import { replyMessages } from '../show/to-messages.ts'

export interface NudgeWriting extends Spoken {
  readonly store: Pick<Store, 'read' | 'update'>
  /** IANA name of the zone of who has chosen none. */
  readonly assumedZone: string
}

/** Characters of what was recorded, before it is escaped. */
const MOST_SAID = 200
/** Answers under a nudge: the last. With all its buttons a message has room for them. */
const MOST_ANSWERS = 8

interface Answering {
  readonly owner: string
  readonly kitchen: Reply['kitchen']
  readonly speech: DiscordLanguage
}

/** What was recorded, who said so and when. */
const answerText = ({ message, atMs, isTakenBack }: SaidAnswer, { owner, kitchen, speech }: Answering): string => {
  const said = plainText(speech.words.say<'headlines'>(message, kitchen)).trim()
  const parts = {
    what: escapeText(shortened(said, MOST_SAID)),
    who: `<@${owner}>`,
    when: `<t:${Math.floor(atMs / 1000)}:f>`,
  }
  return isTakenBack ? speech.discord.takenBack(parts) : speech.discord.answered(parts)
}

interface Drawn {
  readonly userId: string
  readonly nudgeId: string
  readonly reply: Reply
  readonly answers?: readonly SaidAnswer[]
}

/** What a nudge shows: one message that pings its owner, its id in every button. What the store fails at comes out. */
export async function nudgeMessage(
  { userId: owner, nudgeId, reply, answers = [] }: Drawn,
  { store, assumedZone, ...spoken }: NudgeWriting,
): Promise<MessagePayload> {
  const calls = reply.actions.map((action) => action.call)
  const ids = await buttonIds(calls, { owner, nudgeId }, store)
  const { settings } = await store.read(owner)
  const speech = speechIn(languageFor(spoken, settings), settings.zone ?? assumedZone)
  const answering = { owner, kitchen: reply.kitchen, speech }
  const under = answers.slice(-MOST_ANSWERS).map((answer) => answerText(answer, answering))
  const rendering = { owner, isPrivate: false, pings: true, ids, mostMessages: 1, under }
  return replyMessages(null, reply, rendering, speech)[0]!
}

/** A nudge drawn anew from what is kept of it, and from what its jars tell since. What the store fails at comes out. */
export const redrawnNudge = (
  userId: string,
  person: Person,
  nudge: SentNudge,
  writing: NudgeWriting,
): Promise<MessagePayload> =>
  nudgeMessage({ userId, nudgeId: nudge.id, ...nudgeNow(person, nudge, writing.assumedZone) }, writing)
