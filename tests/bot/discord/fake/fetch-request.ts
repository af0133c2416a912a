import type { RESTOptions } from 'discord.js'

/**
 * Sends discord.js' requests through the global `fetch`, which nock intercepts and can block; undici, its default, nock
 * neither sees nor blocks. Looked up at each call, because nock replaces it.
 */
export const fetchRequest: RESTOptions['makeRequest'] = async (url, init) => {
  const { dispatcher: _, ...rest } = init as unknown as RequestInit & { readonly dispatcher?: unknown }
  return (await fetch(url, rest)) as unknown as Awaited<ReturnType<RESTOptions['makeRequest']>>
}
