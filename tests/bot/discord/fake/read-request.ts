import type { IncomingMessage } from 'node:http'
import type { Upload } from './json.ts'

export interface RestRequest {
  readonly method: string
  /** Below `/api/v10`, without the query. */
  readonly path: string
  readonly query: URLSearchParams
  readonly authorization: string | undefined
  readonly body: unknown
  readonly files: readonly Upload[]
}

const BASE = /^\/api\/v\d+/

const bytesOf = async (request: IncomingMessage): Promise<Buffer> => {
  const chunks: Buffer[] = []
  for await (const chunk of request) chunks.push(chunk as Buffer)
  return Buffer.concat(chunks)
}

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text)
  } catch {
    return text
  }
}

const readMultipart = async (bytes: Buffer, type: string): Promise<Pick<RestRequest, 'body' | 'files'>> => {
  const form = await new Response(new Uint8Array(bytes), { headers: { 'content-type': type } }).formData()
  const payload = form.get('payload_json')
  const files = [...form].flatMap(([key, value]) => {
    const index = /^files\[(\d+)\]$/.exec(key)?.[1]
    return index !== undefined && value instanceof File ? [{ index, value }] : []
  })
  return {
    body: typeof payload === 'string' ? parsed(payload) : undefined,
    files: await Promise.all(
      files.map(async ({ index, value }) => ({
        index,
        name: value.name,
        mime: value.type,
        bytes: new Uint8Array(await value.arrayBuffer()),
      })),
    ),
  }
}

/** Reads a request whole; a body that is not JSON stays text, which no check accepts. */
export const readRequest = async (request: IncomingMessage): Promise<RestRequest> => {
  const url = new URL(request.url ?? '/', 'http://127.0.0.1')
  const bytes = await bytesOf(request)
  const type = request.headers['content-type'] ?? ''
  const content = type.startsWith('multipart/form-data')
    ? await readMultipart(bytes, type)
    : { body: bytes.length > 0 ? parsed(bytes.toString('utf8')) : undefined, files: [] }
  return {
    method: request.method ?? 'GET',
    path: url.pathname.replace(BASE, ''),
    query: url.searchParams,
    authorization: request.headers.authorization,
    ...content,
  }
}
