import type { REST } from 'discord.js'
import type { PlaceCheck } from '../../chat/command.ts'
import type { Lacking } from '../../text/messages/lacking.ts'
import { nudgeFault } from '../rest/nudge-fault.ts'

/** Discord's bits of what an app may do in a channel. */
const BITS: Readonly<Record<'view' | 'write' | 'history', bigint>> = {
  view: 1n << 10n,
  write: 1n << 11n,
  history: 1n << 16n,
}
const WRITE_IN_THREADS = 1n << 38n
const ADMINISTRATOR = 1n << 3n

/** Kinds of channel that are threads. */
const THREADS = [10, 11, 12]

/** Under this key stands the server that the app was installed to; without it the app is a person's own. */
const IN_SERVER = '0'

/** What an interaction says of its place, as Discord sends it. */
export interface PlaceFacts {
  readonly userId: string
  readonly channelType: number | null
  /** Bits; null where Discord said nothing. */
  readonly appPermissions: bigint | null
  readonly owners: Readonly<Record<string, string>>
}

const lackingIn = ({ channelType, appPermissions, owners }: PlaceFacts): readonly Lacking[] => {
  if (!Object.hasOwn(owners, IN_SERVER)) return ['server']
  if (appPermissions === null) return []
  const may = (bit: bigint): boolean => (appPermissions & (bit | ADMINISTRATOR)) !== 0n
  const write = THREADS.includes(channelType ?? 0) ? WRITE_IN_THREADS : BITS.write
  return (['view', 'write', 'history'] as const).filter((right) => !may(right === 'write' ? write : BITS[right]))
}

/** What keeps reminders from the place that somebody chooses, at once: the rights of the channel, or closed messages. */
export const placeCheck =
  (facts: PlaceFacts, rest: Pick<REST, 'post'>): PlaceCheck =>
  async ({ kind }) => {
    if (kind === 'channel') return lackingIn(facts)
    try {
      await rest.post('/users/@me/channels', { body: { recipient_id: facts.userId } })
      return []
    } catch (error) {
      // On a day on which Discord does not answer the choice is taken; sending will tell.
      return nudgeFault(error) === 'impossible' ? ['messages'] : []
    }
  }
