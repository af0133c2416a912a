import type { APIMessage, REST } from 'discord.js'
import type { NudgeFound } from '../../reminders/delivery.ts'
import { decodeCustomId } from '../buttons/custom-id.ts'

const PAGE = 100
/** So far back that everybody's nudges of a morning in one channel are within it. */
const MOST_PAGES = 10
/** Discord's clock and this machine's may differ. */
const SKEW_MS = 60_000

export interface Searched {
  readonly channelId: string
  readonly nudgeId: string
  readonly madeMs: number
  /** In direct messages there is nothing that the bot may not read. */
  readonly isPrivate: boolean
}

const ROW = 1

/** Whether one of its buttons has the nudge's id. */
const carries = ({ components = [] }: APIMessage, nudgeId: string): boolean =>
  components
    .flatMap((node) => (node.type === ROW ? node.components : []))
    .some((button) => 'custom_id' in button && decodeCustomId(button.custom_id)?.nudgeId === nudgeId)

/**
 * Looks for a nudge among the messages of its place since it was made. Without the right to read history Discord shows
 * an empty list, so that of a channel says nothing. What the network or Discord fail at comes out.
 */
export async function findNudge(
  rest: Pick<REST, 'get'>,
  botUserId: string,
  { channelId, nudgeId, madeMs, isPrivate }: Searched,
): Promise<NudgeFound> {
  let before: string | null = null
  for (let page = 0; page < MOST_PAGES; page++) {
    const query = new URLSearchParams({ limit: String(PAGE), ...(before === null ? {} : { before }) })
    const messages = (await rest.get(`/channels/${channelId}/messages`, { query })) as readonly APIMessage[]
    if (messages.some((each) => each.author.id === botUserId && carries(each, nudgeId))) return 'there'
    const last = messages.at(-1)
    if (last === undefined) return page > 0 || isPrivate ? 'absent' : 'unknown'
    if (messages.length < PAGE || Date.parse(last.timestamp) < madeMs - SKEW_MS) return 'absent'
    before = last.id
  }
  return 'unknown'
}
