import type { APIModalInteractionResponseCallbackData, REST, RequestData } from 'discord.js'
import { trace } from '../../chat/trace.ts'
import { codeOf, restFault } from '../rest/rest-fault.ts'
import { pause, type StartTimer } from '../rest/timeout.ts'
import { EPHEMERAL, type MessageFile, type MessagePayload } from '../show/message-payload.ts'
import type { Offer } from '../suggest/offer.ts'

/** Discord's numbers of first answers. */
const CALLBACK = { message: 4, promise: 5, choices: 8, form: 9 } as const

/** Discord's numbers of what it says where a first answer came before, or too late. */
const ALREADY = 40060
const TOO_LATE = 10062

/** `too_late`: nobody sees it any more. */
export type Answered = 'answered' | 'too_late'

/** One interaction, as far as it is answered. What the network or Discord fail at comes out after some tries. */
export interface InteractionResponses {
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

/** Of a first answer, which soon is too late; and of later ones, which have a quarter of an hour: until then it is tried. */
const SOON_MS = [0, 100]
const LATER_MS = [300, 2000, 8000, 30_000, 60_000, 120_000, 240_000, 240_000]
/** Of files: what was not taken by then is left out, since nobody shall wait longer for the text. */
const UPLOAD_MS = [300]
const MOST_UPLOAD_MS = 8000

const isOutage = (error: unknown): boolean => ['no_network', 'server_fault'].includes(restFault(error) ?? '')

const rawFile = ({ name, mime, bytes }: MessageFile) => ({ name, contentType: mime, data: Buffer.from(bytes) })

/** Who sees it was settled when it was promised. */
const seenAsPromised = ({ withoutFiles, ...payload }: MessagePayload): MessagePayload => ({
  ...payload,
  flags: payload.flags & ~EPHEMERAL,
  ...(withoutFiles !== undefined && { withoutFiles: seenAsPromised(withoutFiles) }),
})

/** The interaction's own routes: no token is sent along, and Discord does not count them into the bot's pace. */
export const wireOf = (
  { answers: rest, rest: uploads }: { readonly answers: REST; readonly rest: REST },
  { id, token, applicationId }: { readonly id: string; readonly token: string; readonly applicationId: string },
  { after, log }: { readonly after: StartTimer; readonly log: (text: string) => void },
): InteractionResponses => {
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
  type Send = (by: REST, data: RequestData) => Promise<unknown>
  const sendText = ({ files: _, withoutFiles: __, ...body }: MessagePayload, send: Send) =>
    persistently(() => send(rest, { body, auth: false }), LATER_MS)
  /** A file may take longer than a first answer can wait for, and its text does not wait for it for ever. */
  const sendFiles = async ({ files = [], withoutFiles: _, ...body }: MessagePayload, send: Send) => {
    const late = new AbortController()
    const data = { body, files: files.map(rawFile), auth: false, signal: late.signal }
    let cancel = (): void => undefined
    // The signal ends a request, but not the wait that Discord asks for between two.
    const tooLate = new Promise<never>((_, reject) => {
      cancel = after(MOST_UPLOAD_MS, () => {
        late.abort()
        reject(late.signal.reason)
      })
    })
    try {
      return await Promise.race([persistently(() => send(uploads, data), UPLOAD_MS), tooLate])
    } finally {
      cancel()
    }
  }
  const sent = async (payload: MessagePayload, send: Send): Promise<SentMessage> => {
    const { files = [], withoutFiles } = payload
    if (files.length === 0) return (await sendText(payload, send)) as SentMessage
    try {
      return (await sendFiles(payload, send)) as SentMessage
    } catch (error) {
      if (withoutFiles === undefined) throw error
      log(`upload: ${restFault(error) ?? trace(error)}`)
      return (await sendText(withoutFiles, send)) as SentMessage
    }
  }
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
    fulfil: (payload) => sent(seenAsPromised(payload), (by, data) => by.patch(`${webhook}/messages/@original`, data)),
    more: (payload) => sent(payload, (by, data) => by.post(webhook, data)),
  }
}
