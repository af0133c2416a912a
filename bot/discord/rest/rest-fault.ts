/** Why Discord did not do what was asked of it, as far as its keeper can mend it. */
export type RestFault = 'wrong_token' | 'no_network' | 'server_fault' | 'no_rights' | 'not_taken'

const NETWORK = /^(?:E[A-Z]+|UND_ERR_(?!INVALID_ARG)[A-Z_]+|CERT_[A-Z_]+|[A-Z_]*CERT[A-Z_]*)$/

const ofStatus = (status: number): RestFault => {
  if (status === 401) return 'wrong_token'
  if (status === 403 || status === 404) return 'no_rights'
  return status >= 500 ? 'server_fault' : 'not_taken'
}

/** Whether a request has not even reached Discord; `fetch` puts the reason into `cause`. */
const isOfNetwork = (error: Error): boolean => {
  if (error.name === 'AbortError' || error.name === 'TimeoutError') return true
  const codes = [error, error.cause].map((each) => (each as { readonly code?: unknown } | undefined)?.code)
  return codes.some((code) => typeof code === 'string' && NETWORK.test(code))
}

/** What went wrong with a request of discord.js's, or null where that was no answer of Discord's and no network's. */
export const restFault = (error: unknown): RestFault | null => {
  if (!(error instanceof Error)) return null
  const { status } = error as { readonly status?: unknown }
  if (typeof status === 'number') return ofStatus(status)
  return isOfNetwork(error) ? 'no_network' : null
}

/** Discord's own number of what it refused; null or undefined where it gave none. */
export const codeOf = (error: unknown): unknown =>
  error instanceof Error ? (error as { readonly code?: unknown }).code : null
