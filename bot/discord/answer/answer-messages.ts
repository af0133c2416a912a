import { StorageError } from '../../../store/storage-error.ts'
import type { Invocation } from '../../calls/invocation.ts'
import { lineOf } from '../../calls/write-line.ts'
import type { DepthShown } from '../../chat/depth.ts'
import { drawFiles } from '../../chat/draw-files.ts'
import type { Reply } from '../../chat/reply.ts'
import type { CallOutcome, Dispatch } from '../../chat/run/call-outcome.ts'
import { attempt } from '../../chat/run/execute.ts'
import type { HelpPage } from '../../chat/run/help-page.ts'
import { trace } from '../../chat/trace.ts'
import type { Language } from '../../text/language.ts'
import { type ButtonIds, buttonIds } from '../buttons/button-ids.ts'
import { encodeCustomId } from '../buttons/custom-id.ts'
import { retypeId } from '../forms/retype.ts'
import { speechIn } from '../show/language-for-discord.ts'
import type { MessagePayload } from '../show/message-payload.ts'
import type { CommandIds } from '../show/reply-blocks.ts'
import { sentenceMessage, toMessages } from '../show/to-messages.ts'
import { withFiles } from '../show/with-files.ts'
import { zoneChoice } from '../suggest/zone-choice.ts'
import { afterFailure, type SentBefore } from './after-failure.ts'
import { depthFor } from './depth-for.ts'
import { speechFor } from './speech-for.ts'

/** Where an app is a person's own, an answer can have so many messages with the first. */
const MOST_MESSAGES = 5

const NO_IDS: ButtonIds = new Map()

export interface CallDispatch extends Dispatch {
  readonly language: Language
  /** What Discord calls the person's language: `en-GB`. */
  readonly locale: string
  /** Nobody else reads along: answers are ordinary messages, which stay. */
  readonly isAlone: boolean
  /** Of the registered commands, where they are known. */
  readonly commandIds?: CommandIds
  /** Called before what takes long to draw is drawn. */
  readonly slow: (isPublic: boolean) => void
}

export interface SaidMessages {
  readonly kind: 'messages'
  readonly messages: readonly MessagePayload[]
  /** What was run; null where nothing was. */
  readonly outcome: CallOutcome | null
  /** Where all who are there see it: what is told where it stands. */
  readonly isPublic: boolean
  readonly posted?: Reply['posted']
}

const idsOf = async (outcome: CallOutcome | HelpPage, dispatch: CallDispatch) => {
  const { userId: owner, store, log } = dispatch
  if (!outcome.ok || !('reply' in outcome)) return NO_IDS
  try {
    const { actions } = outcome.reply
    const own = actions
      .filter(({ audience, isChangedFirst }) => audience === undefined && isChangedFirst === undefined)
      .map((action) => action.call)
    const changed = actions.filter(({ isChangedFirst }) => isChangedFirst).map((action) => action.call)
    const ids = await buttonIds(own, { owner, nudgeId: null }, store)
    const toChange: (readonly [string, string])[] = []
    for (const each of changed) {
      const line = lineOf(each)
      const id = await retypeId({ line, path: each.command }, dispatch)
      if (id !== null) toChange.push([line, id])
    }
    const open = actions.flatMap(({ call, audience }): (readonly [string, string])[] => {
      const line = lineOf(call)
      const id = audience === 'anyone' ? encodeCustomId({ owner: null, line, nudgeId: null }) : null
      return id === null ? [] : [[line, id]]
    })
    return new Map([...ids, ...toChange, ...open])
  } catch (error) {
    // What cannot be kept is shown as a line to type.
    if (!(error instanceof StorageError)) log(trace(error))
    return NO_IDS
  }
}

export const renderingFor = (
  { userId: owner, isAlone, commandIds }: CallDispatch,
  ids: ButtonIds,
  isPublic = false,
) => ({
  owner,
  ...(commandIds !== undefined && { commandIds }),
  isPrivate: !isPublic && !isAlone,
  pings: false,
  ids,
  mostMessages: MOST_MESSAGES,
})

export const sentenceFor = (sentence: string, dispatch: CallDispatch): MessagePayload =>
  sentenceMessage(sentence, renderingFor(dispatch, NO_IDS), speechIn(dispatch.language, dispatch.assumedZone))

/** What a place is tried with: it names whom it reminds, as reminders do. */
export const proofMessage = (owner: string, language: CallDispatch['language']): MessagePayload =>
  sentenceMessage(
    language.discord.proof(),
    { owner, isPrivate: false, pings: true, ids: NO_IDS, mostMessages: 1 },
    speechIn(language, 'UTC'),
  )

/** The same as an answer in which nothing was run. */
export const sentenceSaid = (sentence: string, dispatch: CallDispatch): SaidMessages => ({
  kind: 'messages',
  messages: [sentenceFor(sentence, dispatch)],
  outcome: null,
  isPublic: false,
})

/** A line that was sent in a form and asks for another: Discord takes none as the answer, so a button opens it. */
export const formOffered = async (call: Invocation, dispatch: CallDispatch): Promise<SaidMessages> => {
  const { userId: owner, store, language, assumedZone, log } = dispatch
  const ids = await attempt(
    () => buttonIds([call], { owner, nudgeId: null }, store),
    () => null,
    log,
  )
  if (!ids.ok) return messagesOf(ids, dispatch)
  const customId = ids.result.get(lineOf(call))
  const { discord } = language
  const buttons = customId === undefined ? [] : [{ label: discord.openForm(), customId, isMain: true }]
  const speech = speechIn(language, assumedZone)
  const message = sentenceMessage(discord.formNext(), renderingFor(dispatch, NO_IDS), speech, buttons)
  return { kind: 'messages', messages: [message], outcome: null, isPublic: false }
}

/** A choice of zone under what took one for granted. */
const withChoice = (
  messages: readonly MessagePayload[],
  outcome: CallOutcome | HelpPage,
  { userId: owner, locale, nowMs, language }: CallDispatch,
): readonly MessagePayload[] => {
  const last = messages.at(-1)
  if (!outcome.ok || !('reply' in outcome) || last === undefined) return messages
  const row = zoneChoice(outcome.reply, { owner, locale, nowMs, text: language.discord })
  if (row === null) return messages
  return [...messages.slice(0, -1), { ...last, components: [...last.components, row] }]
}

interface Asked {
  /** Can be opened again where it failed. */
  readonly sent?: SentBefore | null
  /** IANA name of the zone whose days the outcome means; left out, or null, where it is not known yet. */
  readonly zone?: string | null
  /** Of a reply; left out: its first screen, with a button that opens the rest. */
  readonly shown?: DepthShown
  readonly lead?: string
}

/** An outcome as messages. A fault in the wording is excused like any other. */
export const messagesOf = async (
  outcome: CallOutcome | HelpPage,
  dispatch: CallDispatch,
  { sent = null, zone = null, shown, lead }: Asked = {},
): Promise<SaidMessages> => {
  const { language, log } = dispatch
  const path = outcome.path === null ? null : { path: outcome.path, options: {} }
  const reply = outcome.ok && 'reply' in outcome ? outcome.reply : null
  const isPublic = reply?.visibility === 'public'
  const show = async () => {
    const speech = await speechFor(dispatch, zone)
    const ids = await idsOf(outcome, dispatch)
    const after = await afterFailure(outcome, sent, dispatch)
    const depth = shown === undefined ? await depthFor(outcome, dispatch) : { shown }
    const rendering = {
      ...renderingFor(dispatch, ids, isPublic),
      ...depth,
      ...after,
      ...(lead !== undefined && { lead }),
    }
    const messages = toMessages(outcome, rendering, speech)
    if ((reply?.files ?? []).length > 0) dispatch.slow(isPublic)
    const files = reply === null ? [] : await drawFiles(reply, speech.plainWords, log)
    return withFiles(withChoice(messages, outcome, dispatch), files, speech)
  }
  const made = await attempt(show, () => path, log)
  const ran = 'entries' in outcome ? null : outcome
  if (!made.ok) {
    const excuse = sentenceFor(language.problems.internal(), dispatch)
    return { kind: 'messages', messages: [excuse], outcome: ran, isPublic: false }
  }
  return { kind: 'messages', messages: made.result, outcome: ran, isPublic, posted: reply?.posted }
}
