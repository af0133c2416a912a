import type { APIModalInteractionResponseCallbackData, REST } from 'discord.js'
import { type After, pause } from './after.ts'
import { EPHEMERAL, type MessageFile, type MessagePayload } from './message-payload.ts'
import type { Offer } from './offer.ts'
import { restFault } from './rest-fault.ts'

/** Discord's numbers of first answers. */
const CALLBACK = { message: 4, promise: 5, choices: 8, form: 9 } as const

/** Discord's numbers of what it says where a first answer came before, or too late. */
const ALREADY = 40060
const TOO_LATE = 10062

/** `too_late`: nobody sees it any more. */
export type Answered = 'answered' | 'too_late'

/** One interaction, as far as it is answered. What the network or Discord fail at comes out after some tries. */
export interface Wire {
  /** One without files; what has any is promised first. */
  message(payload: MessagePayload): Promise<Answered>
  /** Says that an answer will come, for its asker alone or for all; `fulfil` gives it. */
  promise(isPublic?: boolean): Promise<Answered>
  form(form: APIModalInteractionResponseCallbackData): Promise<Answered>
  choices(offers: readonly Offer[]): Promise<Answered>
  fulfil(payload: MessagePayload): Promise<SentMessage>
  /** Another message after the first. */
  more(payload: MessagePayload): Promise<SentMessage>
}

/** A message as Discord tells of it. */
export interface SentMessage {
  readonly id: string
  readonly channel_id: string
  readonly flags?: number
}

/** Of a first answer, which soon is too late; and of later ones, which have a quarter of an hour. */
const SOON_MS = [0, 100]
const LATER_MS = [300, 2000, 8000]

const isOutage = (error: unknown): boolean => ['no_network', 'server_fault'].includes(restFault(error) ?? '')

const codeOf = (error: unknown): unknown => (error instanceof Error ? (error as { code?: unknown }).code : null)

const rawFile = ({ name, mime, bytes }: MessageFile) => ({ name, contentType: mime, data: Buffer.from(bytes) })

/** The interaction's own routes: no token is sent along, and Discord does not count them into the bot's pace. */
export const wireOf = (
  { answers: rest, rest: uploads }: { readonly answers: REST; readonly rest: REST },
  { id, token, applicationId }: { readonly id: string; readonly token: string; readonly applicationId: string },
  after: After,
): Wire => {
  const persistently = async <Result>(send: () => Promise<Result>, pausesMs: readonly number[]): Promise<Result> => {
    for (const ms of pausesMs) {
      try {
        return await send()
      } catch (error) {
        if (!isOutage(error)) throw error
        await pause(ms, after)
      }
    }
    return send()
  }
  /** A file may take longer than a first answer can wait for. */
  const sending = ({ files = [], ...body }: MessagePayload) =>
    files.length === 0
      ? { by: rest, data: { body, auth: false } as const }
      : { by: uploads, data: { body, files: files.map(rawFile), auth: false } as const }
  const callback = async (type: number, data: object): Promise<Answered> => {
    const send = () => rest.post(`/interactions/${id}/${token}/callback`, { body: { type, data }, auth: false })
    try {
      await persistently(send, SOON_MS)
      return 'answered'
    } catch (error) {
      // One of the tries before arrived although its own answer was lost.
      if (codeOf(error) === ALREADY) return 'answered'
      if (codeOf(error) === TOO_LATE) return 'too_late'
      throw error
    }
  }
  const webhook = `/webhooks/${applicationId}/${token}` as const
  return {
    message: (payload) => callback(CALLBACK.message, payload),
    promise: (isPublic = false) => callback(CALLBACK.promise, isPublic ? {} : { flags: EPHEMERAL }),
    form: (form) => callback(CALLBACK.form, form),
    choices: (choices) => callback(CALLBACK.choices, { choices }),
    async fulfil(payload) {
      // Who sees it was settled when it was promised.
      const { by, data } = sending({ ...payload, flags: payload.flags & ~EPHEMERAL })
      return (await persistently(() => by.patch(`${webhook}/messages/@original`, data), LATER_MS)) as SentMessage
    },
    async more(payload) {
      const { by, data } = sending(payload)
      return (await persistently(() => by.post(webhook, data), LATER_MS)) as SentMessage
    },
  }
}
