import type { ConnectionFault } from '../../text/discord-text.ts'
import { restFault } from '../rest/rest-fault.ts'

/** What discord.js says of a gateway that does not let the bot in; it has no codes for it. */
const SAID: readonly (readonly [said: RegExp, fault: ConnectionFault])[] = [
  [/^Authentication failed$/, 'wrong_token'],
  [/^Not enough sessions remaining/, 'too_often'],
  [/^Used (?:in|dis)\S+ intents$|^Sharding is required$/, 'refused'],
  [/^Unexpected server response: 5\d\d$/, 'server_fault'],
  [/^Unexpected server response: [34]\d\d$/, 'refused'],
]

/** Why a login failed; `unknown` is a fault of ours. */
export const loginFault = (error: unknown): ConnectionFault => {
  if (!(error instanceof Error)) return 'unknown'
  if ((error as { readonly code?: unknown }).code === 'TokenInvalid') return 'wrong_token'
  const said = SAID.find(([message]) => message.test(error.message))
  if (said !== undefined) return said[1]
  const fault = restFault(error)
  if (fault === null) return 'unknown'
  return fault === 'no_rights' || fault === 'not_taken' ? 'refused' : fault
}
