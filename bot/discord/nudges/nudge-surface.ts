import type { REST, RESTOptions } from 'discord.js'
import { queueByKey } from '../../../store/queue.ts'
import { StorageError } from '../../../store/storage-error.ts'
import type { Delivery, Sent, Surface } from '../../reminders/delivery.ts'
import { nudgeFault, UNKNOWN_CHANNEL } from '../rest/nudge-fault.ts'
import { codeOf, restFault } from '../rest/rest-fault.ts'
import { APART_MS, newPace } from '../rest/send-pace.ts'
import { after as afterwards, type StartTimer } from '../rest/timeout.ts'
import type { MessagePayload } from '../show/message-payload.ts'
import { directMessages } from './direct-messages.ts'
import { type NudgeWriting, nudgeMessage } from './draw-nudge.ts'
import { findNudge } from './find-nudge.ts'
import { nudgePlaces } from './nudge-place.ts'

/** A send has to settle within two minutes, whatever it waits for. */
const MOST_MS = 100_000

/** Reminders do not wait for a limit that outlasts a send: discord.js's `rejectOnRateLimit`. */
export const rejectsLongWaits: NonNullable<RESTOptions['rejectOnRateLimit']> = ({ retryAfter }) => retryAfter > MOST_MS

export interface DiscordReminding extends NudgeWriting {
  readonly rest: Pick<REST, 'get' | 'post'>
  readonly botUserId: string
  readonly now: () => number
  readonly log: (text: string) => void
  /** Only tests pace it otherwise. */
  readonly apartMs?: number
  readonly after?: StartTimer
}

/** Discord's numbers, of people too; whoever sits at a terminal is not reached here. */
const NUMBER = /^\d{17,20}$/

/** Settles as the work does, or throws after `ms`; what is sent later than that is never sent. */
const within = async <Result>(ms: number, work: (signal: AbortSignal) => Promise<Result>): Promise<Result> => {
  const ended = new AbortController()
  let timer: NodeJS.Timeout | undefined
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => {
      reject(new DOMException('took too long', 'TimeoutError'))
      ended.abort()
    }, ms)
  })
  try {
    return await Promise.race([work(ended.signal), late])
  } finally {
    clearTimeout(timer)
  }
}

/** Reminders in Discord: in the channel somebody chose, else by direct message. */
export function discordSurface(reminding: DiscordReminding): Surface {
  const { rest, botUserId, now, log, apartMs = APART_MS, after = afterwards } = reminding
  const { inTurn } = queueByKey()
  const pace = newPace(apartMs, after)
  const dms = directMessages(rest, pace)
  const places = nudgePlaces({ rest, now, inTurn, pace })

  const post = async (
    channelId: string,
    { nudgeId, userId, place }: Delivery,
    body: MessagePayload,
    signal: AbortSignal,
  ): Promise<Sent> => {
    try {
      // One at a time: discord.js knows a channel's limit only from the answer before.
      return await inTurn(`send ${channelId}`, async () => {
        await pace()
        signal.throwIfAborted()
        const message = await rest.post(`/channels/${channelId}/messages`, {
          body: { ...body, nonce: nudgeId, enforce_nonce: true },
          signal,
        })
        const { id: messageId } = message as { readonly id: string }
        return NUMBER.test(messageId) && NUMBER.test(channelId) ? { channelId, messageId } : 'sent'
      })
    } catch (error) {
      const fault = nudgeFault(error)
      if (fault === 'unknown') throw error
      log(`nudge ${nudgeId}: Discord says ${String(codeOf(error))}`)
      if (place.kind !== 'private') {
        if (restFault(error) === 'no_rights') places.close(channelId)
        return fault
      }
      dms.forget(userId)
      return codeOf(error) === UNKNOWN_CHANNEL ? 'failed' : fault
    }
  }

  /** Before anything is sent, a fault is never unknown. */
  const channelFor = async ({ userId, place }: Delivery, signal: AbortSignal): Promise<string> => {
    if (place.kind === 'channel') {
      return (await places.isOpenTo(place.channelId, userId, signal)) ? place.channelId : 'impossible'
    }
    try {
      return await inTurn('direct messages', () => dms.channelOf(userId, signal))
    } catch (error) {
      log(`direct messages of ${userId}: Discord says ${String(codeOf(error))}`)
      return nudgeFault(error) === 'impossible' ? 'impossible' : 'failed'
    }
  }

  const messageFor = async (delivery: Delivery): Promise<MessagePayload | null> => {
    try {
      return await nudgeMessage(delivery, reminding)
    } catch (error) {
      if (error instanceof StorageError) return null
      throw error
    }
  }

  return {
    placeOf: (userId, chosen) => {
      if (!NUMBER.test(userId)) return null
      return chosen === null || chosen.kind === 'console' ? { kind: 'private' } : chosen
    },
    after: ({ kind }) => (kind === 'channel' ? { kind: 'private' } : null),
    send: (delivery) =>
      within(MOST_MS, async (signal) => {
        const channelId = await channelFor(delivery, signal)
        if (channelId === 'impossible' || channelId === 'failed') return channelId
        const message = await messageFor(delivery)
        return message === null ? 'failed' : post(channelId, delivery, message, signal)
      }),
    findSent: ({ nudgeId, userId, place, madeMs }) =>
      within(MOST_MS, async () => {
        await pace()
        const isPrivate = place.kind !== 'channel'
        const channelId = isPrivate ? await dms.channelOf(userId) : place.channelId
        return findNudge(rest, botUserId, { channelId, nudgeId, madeMs, isPrivate })
      }),
  }
}
