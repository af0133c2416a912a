import type { Json } from './json.ts'

/** Discord's own error codes, with the status and the message each is sent with. */
const KNOWN = {
  0: [401, '401: Unauthorized'],
  10003: [404, 'Unknown Channel'],
  10004: [404, 'Unknown Guild'],
  10007: [404, 'Unknown Member'],
  10008: [404, 'Unknown Message'],
  10013: [404, 'Unknown User'],
  10015: [404, 'Unknown Webhook'],
  10062: [404, 'Unknown interaction'],
  40060: [400, 'Interaction has already been acknowledged.'],
  40094: [403, 'This interaction has hit the maximum number of follow up messages.'],
  50001: [403, 'Missing Access'],
  50005: [403, 'Cannot edit a message authored by another user'],
  50007: [403, 'Cannot send messages to this user'],
  50013: [403, 'Missing Permissions'],
  50027: [401, 'Invalid Webhook Token'],
  50035: [400, 'Invalid Form Body'],
} as const

export type ApiCode = keyof typeof KNOWN

/** An answer of Discord's in its error shape: `{ code, message, errors? }`. */
export class ApiError extends Error {
  readonly status: number
  readonly body: Json

  constructor(code: ApiCode, errors?: Json) {
    const [status, message] = KNOWN[code]
    super(message)
    this.status = status
    this.body = { code, message, ...(errors && { errors }) }
  }
}
