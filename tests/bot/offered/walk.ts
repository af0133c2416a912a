import { type LastReplies, newLastReplies } from '../../../bot/chat/last-replies.ts'
import { placeOf } from '../../../bot/chat/run/kitchen-said.ts'
import type { CallDispatch } from '../../../bot/discord/answer/answer-messages.ts'
import { saidToSentence } from '../../../bot/discord/answer/heard-messages.ts'
import { type CallRun, saidMore, saidRetype, saidTo } from '../../../bot/discord/answer/run-call.ts'
import { keptLine, type Pressed, pressed } from '../../../bot/discord/receive/decode-button.ts'
import type { MessagePayload } from '../../../bot/discord/show/message-payload.ts'
import { newTalkMemory, type TalkMemory, whoAt } from '../../../bot/talk/memory/remembered.ts'
import { answer, showText } from '../../../bot/terminal/chat/answer-line.ts'
import { en } from '../../../bot/text/en/index.ts'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import type { Place } from '../../../store/person.ts'
import type { Store } from '../../../store/store.ts'
import { buttonsOf, textOf } from '../discord/fake/shown-text.ts'
import { commands, speech } from '../test-desk.ts'

/** Somebody who talks: all that is kept of it can be copied, so that a line is tried and forgotten. */
export interface Talker {
  readonly userId: string
  readonly place: Place
  readonly store: Store
  readonly talk: TalkMemory
  readonly replies: LastReplies
  readonly nowMs: number
  readonly logged: string[]
}

export const talkerAt = (kind: 'console' | 'private', nowMs: number, zone = 'UTC'): Talker => ({
  userId: kind === 'console' ? 'local' : '123456789012345678',
  place: { kind },
  store: memoryStore(zone),
  talk: newTalkMemory(),
  replies: newLastReplies(),
  nowMs,
  logged: [],
})

/** The same person once more: what the copy does, the first knows nothing of. */
export async function copyOf(talker: Talker): Promise<Talker> {
  const { userId, place, store, talk, replies, nowMs } = talker
  const copy = { ...talkerAt('console', nowMs), userId, place }
  const person = await store.read(userId)
  await copy.store.update(userId, () => person)
  const who = whoAt(userId, placeOf(dispatchOf(talker)))
  copy.talk.keep(who, talk.of(who, nowMs), nowMs)
  const last = replies.lastOf(userId, nowMs)
  const reply = last === null ? null : replies.of(userId, last, nowMs)
  if (last !== null && reply !== null) copy.replies.keep(userId, last, reply)
  return copy
}

const dispatchOf = ({ logged, ...talker }: Talker) => ({
  ...talker,
  assumedZone: 'UTC',
  language: en,
  commands,
  log: (text: string) => void logged.push(text),
})

const inDiscord = (talker: Talker): CallDispatch => ({
  ...dispatchOf(talker),
  locale: 'en-GB',
  isAlone: true,
  slow: () => undefined,
})

/** What the terminal prints for a line. */
export const printed = async (talker: Talker, line: string, width = 44) => {
  const said = await answer(line, dispatchOf(talker), speech, showText({ width, colour: false }), async (name) => name)
  return {
    code: said.failure?.error.code ?? null,
    text: said.text.replaceAll('\u00a0', ' '),
  }
}

type Shown = Parameters<typeof buttonsOf>[0]

/** What Discord shows for a line, and the buttons under it. */
const shownIn = (messages: readonly MessagePayload[]) => {
  const json = messages.map((each) => ({ content: '', embeds: [], ...each }) as unknown as Shown)
  return {
    text: json.map(textOf).join('\n'),
    buttons: json
      .flatMap(buttonsOf)
      .flatMap(({ label, customId }) => (customId === undefined ? [] : [{ label, customId }])),
  }
}

/** What Discord answers in private to what somebody writes. */
export const written = async (talker: Talker, line: string) => {
  const said = await saidToSentence(line, inDiscord(talker))
  return { code: null, ...shownIn(said.messages) }
}

/** What a press of a button comes to: the code of what failed, null where nothing did. */
export async function press(
  talker: Talker,
  customId: string,
): Promise<{ readonly code: string | null; readonly text: string }> {
  const dispatch = inDiscord(talker)
  const read = pressed(customId, talker.userId)
  const line = 'line' in read ? () => keptLine(read.line, dispatch) : null
  if (line === null) return { code: read.kind, text: '' }
  const said = await pressedOn(read.kind, line, dispatch)
  if (said.kind === 'form') return { code: null, text: JSON.stringify(said.form) }
  const { outcome, messages } = said
  return { code: outcome === null || outcome.ok ? null : outcome.error.code, text: shownIn(messages).text }
}

const pressedOn = (kind: Pressed['kind'], line: () => Promise<string>, dispatch: CallDispatch): Promise<CallRun> => {
  if (kind === 'more') return saidMore(line, dispatch)
  return kind === 'retype' ? saidRetype(line, dispatch) : saidTo(line, dispatch)
}
