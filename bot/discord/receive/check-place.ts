import type { BaseInteraction, REST } from 'discord.js'
import type { Place } from '../../../store/person.ts'
import type { PlaceCheck, ProvePlace } from '../../chat/command.ts'
import type { Lacking } from '../../text/messages/lacking.ts'
import { nudgeFault } from '../rest/nudge-fault.ts'
import { codeOf } from '../rest/rest-fault.ts'
import type { MessagePayload } from '../show/message-payload.ts'

/** Discord's number for direct messages with the bot itself. */
const BOT_DM = 1

/** Where somebody asks: the channel, or in private with the bot. */
export const placeOf = ({ context, guildId, channelId }: BaseInteraction): Place => {
  const isPrivate = context === null ? guildId === null : context === BOT_DM
  return isPrivate || channelId === null ? { kind: 'private' } : { kind: 'channel', channelId }
}

/** Whether nobody else reads along; not so in a group, nor where Discord does not say. */
export const isAloneIn = ({ context }: Pick<BaseInteraction, 'context'>): boolean => context === BOT_DM

/** Whoever chooses waits for it. */
const MOST_MS = 8000

interface Proving {
  readonly userId: string
  readonly rest: Pick<REST, 'post'>
  /** Says that reminders come there. */
  readonly message: () => MessagePayload
  readonly log: (text: string) => void
}

/** Sends one message by the bot's own rights, as reminders are, to the place that somebody chooses. */
export const provePlaceBy =
  ({ userId, rest, message, log }: Proving): ProvePlace =>
  async (place) => {
    if (place.kind === 'console') return 'failed'
    const signal = AbortSignal.timeout(MOST_MS)
    const channel = async (): Promise<string> => {
      if (place.kind === 'channel') return place.channelId
      const opened = await rest.post('/users/@me/channels', { body: { recipient_id: userId }, signal })
      return (opened as { readonly id: string }).id
    }
    try {
      await rest.post(`/channels/${await channel()}/messages`, { body: message(), signal })
      return 'sent'
    } catch (error) {
      log(`proving a place of ${userId}: Discord says ${String(codeOf(error))}`)
      return nudgeFault(error) === 'impossible' ? 'closed' : 'failed'
    }
  }

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
