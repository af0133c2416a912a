const FETCH_MS = 10_000

/** Where Discord keeps files. */
const HOSTS = ['cdn.discordapp.com', 'media.discordapp.net']

const isDiscords = (address: string, api: string | null): boolean => {
  if (!URL.canParse(address)) return false
  const { protocol, hostname, port, origin } = new URL(address)
  if (api !== null && origin === new URL(api).origin) return true
  return protocol === 'https:' && port === '' && HOSTS.includes(hostname)
}

/** All that an answer holds, up to `mostBytes`; null where it is more. */
async function bytesOf(response: Response, mostBytes: number): Promise<Uint8Array | null> {
  const chunks: Uint8Array[] = []
  let length = 0
  for await (const chunk of response.body ?? []) {
    length += chunk.length
    if (length > mostBytes) return null
    chunks.push(chunk)
  }
  return Buffer.concat(chunks)
}

/**
 * Fetches a file from where Discord keeps files, and from nowhere else. Never throws.
 *
 * @param api - base address of Discord's REST where it is not Discord's own; files may come from there too
 */
export async function fetchFile(
  address: string,
  mostBytes: number,
  api: string | null,
): Promise<Uint8Array | 'too_big' | 'unfetched'> {
  if (!isDiscords(address, api)) return 'unfetched'
  try {
    const response = await fetch(address, { redirect: 'error', signal: AbortSignal.timeout(FETCH_MS) })
    if (!response.ok) return 'unfetched'
    return (await bytesOf(response, mostBytes)) ?? 'too_big'
  } catch {
    return 'unfetched'
  }
}
