import { z } from 'zod'
import { callsMeant } from '../../chat/hear/hear.ts'
import { inOwnLanguage } from '../../chat/own-language.ts'
import { emergencyIn } from '../../chat/run/emergency.ts'
import { trace } from '../../chat/trace.ts'
import { type CallDispatch, messagesOf, type SaidMessages, sentenceSaid } from '../answer/answer-messages.ts'
import { isPersonal, privatelyOffered, saidToSentence } from '../answer/heard-messages.ts'
import { restFault } from '../rest/rest-fault.ts'
import type { MessagePayload } from '../show/message-payload.ts'
import type { InteractionDesk } from './interaction-context.ts'
import type { Rate } from './rate-limit.ts'

/** An ordinary message, and a reply to one. */
const KINDS: readonly number[] = [0, 19]

/** What is looked at of a message; of one that is not for the bot nothing but these is ever touched. */
const envelope = z.object({
  id: z.string(),
  channel_id: z.string(),
  guild_id: z.string().optional(),
  type: z.number(),
  author: z.object({ id: z.string(), bot: z.boolean().optional() }),
  webhook_id: z.string().optional(),
  content: z.string(),
  mentions: z.array(z.object({ id: z.string() })),
})

export type MessageForBot = z.output<typeof envelope>

/** A message in private, or one that names the bot or answers it with a ping; null for every other, of which nothing is kept. */
export function messageForBot(data: unknown, botId: string): MessageForBot | null {
  const read = envelope.safeParse(data)
  if (!read.success) return null
  const message = read.data
  const isFromSomebody = message.author.bot !== true && message.webhook_id === undefined && message.author.id !== botId
  const isForBot = message.guild_id === undefined || message.mentions.some(({ id }) => id === botId)
  return isFromSomebody && isForBot && KINDS.includes(message.type) ? message : null
}

/** Without the name of the bot. */
const textOf = ({ content }: MessageForBot, botId: string): string =>
  content
    .replace(new RegExp(`<@!?${botId}>`, 'g'), ' ')
    .replace(/\s+/g, ' ')
    .trim()

const UNKNOWN_LOCALE = 'en-GB'

const dispatchFor = (message: MessageForBot, desk: InteractionDesk): CallDispatch => {
  const { commands, language, languageOf, store, assumedZone, now, closed, doubts, replies, talk, log, commandIds } =
    desk
  const userId = message.author.id
  return {
    userId,
    place: message.guild_id === undefined ? { kind: 'private' } : { kind: 'channel', channelId: message.channel_id },
    assumedZone,
    store,
    isClosed: (place) => closed.has(userId, place),
    newAttempt: () => message.id,
    ...(doubts !== undefined && { doubts }),
    ...(replies !== undefined && { replies }),
    ...(talk !== undefined && { talk }),
    ...(commandIds !== undefined && { commandIds }),
    commands,
    nowMs: now(),
    log,
    language,
    ...(languageOf !== undefined && { languageOf }),
    locale: UNKNOWN_LOCALE,
    // An answer to a message is one that all see who see the message.
    isAlone: true,
    slow: () => undefined,
  }
}

/** A message under the one that it answers; nobody is pinged. */
async function post(
  { rest }: Pick<InteractionDesk, 'rest'>,
  { id, channel_id }: MessageForBot,
  payload: MessagePayload,
): Promise<void> {
  const { files, withoutFiles: _, ...body } = payload
  await rest.post(`/channels/${channel_id}/messages`, {
    body: { ...body, message_reference: { message_id: id, fail_if_not_exists: false } },
    ...(files !== undefined && {
      files: files.map(({ name, mime, bytes }) => ({ name, contentType: mime, data: Buffer.from(bytes) })),
    }),
  })
}

export interface HearingDesk {
  readonly desk: InteractionDesk
  readonly rate: Rate
  readonly isStopping: () => boolean
}

/** Answers a message that is for the bot where it was written. Never throws; the log says nothing of what was written. */
export async function hearMessage(
  message: MessageForBot,
  botId: string,
  { desk, rate, isStopping }: HearingDesk,
): Promise<SaidMessages | null> {
  const { log } = desk
  try {
    const own = await inOwnLanguage({ ...desk, userId: message.author.id })
    const dispatch = dispatchFor(message, { ...desk, language: own.language })
    const said = await answerTo(textOf(message, botId), message, dispatch, { desk, rate, isStopping })
    for (const payload of said.messages) await post(desk, message, payload)
    return said
  } catch (error) {
    if (restFault(error) === null) log(`message: ${trace(error)}`)
    return null
  }
}

async function answerTo(
  text: string,
  message: MessageForBot,
  dispatch: CallDispatch,
  { rate, isStopping }: HearingDesk,
): Promise<SaidMessages> {
  const { calls, discord } = dispatch.language
  const emergency = await emergencyIn(text, dispatch)
  if (emergency !== null) return messagesOf(emergency, dispatch)
  if (isStopping()) return sentenceSaid(calls.stopping(), dispatch)
  const seconds = rate.take(dispatch.userId, dispatch.nowMs)
  if (seconds > 0) return sentenceSaid(calls.tooFast({ seconds }), dispatch)
  if (text === '') return sentenceSaid(discord.hello(), dispatch)
  const meant = message.guild_id === undefined ? [] : await callsMeant(text, dispatch)
  return meant.some((call) => isPersonal(call, dispatch.commands))
    ? privatelyOffered(meant, dispatch)
    : saidToSentence(text, dispatch)
}
