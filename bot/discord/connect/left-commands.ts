import type { Client } from 'discord.js'
import { trace } from '../../chat/trace.ts'
import type { ConnectionText } from '../../text/discord-text.ts'
import { restFault } from '../rest/rest-fault.ts'
import { newPace } from '../rest/send-pace.ts'
import type { StartTimer } from '../rest/timeout.ts'

/**
 * Between two servers: nobody waits for it, and refusals, of which Discord counts 10,000 in ten minutes before it shuts
 * everybody of an address out, stay below a third of that.
 */
const APART_MS = 200

interface LeftDesk {
  /** Where the commands are registered now; null: everywhere. */
  readonly guildId: string | null
  readonly language: { readonly connection: Pick<ConnectionText, 'takenAway' | 'notLookedAt'> }
  readonly ended: AbortSignal
  readonly after: StartTimer
  readonly log: (text: string) => void
}

type Look = Pick<Client<true>, 'rest' | 'application'>

/** Whether there was something to take away. */
async function takeAway({ rest, application }: Look, guildId: string): Promise<boolean> {
  const route = `/applications/${application.id}/guilds/${guildId}/commands` as const
  try {
    const left = (await rest.get(route)) as readonly unknown[]
    if (left.length === 0) return false
    await rest.put(route, { body: [] })
    return true
  } catch (error) {
    // Where it was invited without commands, none can be left.
    if (restFault(error) === 'no_rights') return false
    throw error
  }
}

/**
 * Takes away the commands that an earlier start registered in one server only, where each would be offered twice: looks
 * into the servers of each connection once it is there, slowly, one after the other. Never throws.
 */
export async function takeAwayLeft(client: Client<true>, desk: LeftDesk): Promise<void> {
  const { guildId: kept, language, ended, after, log } = desk
  const { connection } = language
  const seen = new Set<string>()
  const turn = newPace(APART_MS, after)
  const look = async (): Promise<void> => {
    for (const guildId of client.guilds.cache.keys()) {
      if (guildId === kept || seen.has(guildId)) continue
      seen.add(guildId)
      await turn()
      if (ended.aborted) return
      if (await takeAway(client, guildId)) log(connection.takenAway({ guildId }))
    }
  }
  let isWell = true
  const guarded = async (): Promise<void> => {
    if (!isWell) return
    try {
      await look()
    } catch (error) {
      isWell = false
      if (ended.aborted) return
      if (restFault(error) === null) log(trace(error))
      log(connection.notLookedAt())
    }
  }
  client.on('shardReady', guarded)
  await guarded()
}
