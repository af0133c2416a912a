import type { Json } from './json.ts'

/** A shard's number, and how many there are. */
export type Shard = readonly [id: number, count: number]

/** Which shard hears of a place: Discord's documentation "Sharding"; what is in no server comes to the first. */
export const shardOf = (guildId: string | undefined, count: number): number =>
  guildId === undefined ? 0 : Number((BigInt(guildId) >> 22n) % BigInt(count))

/** The server that an event is about, if any. */
export const placeOf = (event: string, { id, guild_id: guildId }: Json): string | undefined =>
  (event.startsWith('GUILD_') ? id : guildId) as string | undefined
