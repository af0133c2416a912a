import type { APIMessageTopLevelComponent } from 'discord.js'
import { isoTime } from '../../../core/quantity/time/calendar-day.ts'
import { minutesAt } from '../../../core/quantity/time/zone.ts'
import type { Invocation } from '../../calls/invocation.ts'
import type { Reply } from '../../chat/reply.ts'
import type { DiscordText } from '../../text/discord-text.ts'
import { decodeCustomId, encodeCustomId } from '../buttons/custom-id.ts'
import { isOfZone } from '../show/reply-blocks.ts'
import { likelyZones } from './likely-zones.ts'

const [ROW, SELECT] = [1, 3] as const
const LINE = '!zone'

interface Choosing {
  readonly owner: string
  /** What Discord calls the person's language: `en-GB`. */
  readonly locale: string
  readonly nowMs: number
  readonly text: DiscordText
}

const cityOf = (zone: string): string => zone.slice(zone.lastIndexOf('/') + 1).replaceAll('_', ' ')

const clockIn = (zone: string, nowMs: number): string => isoTime(minutesAt(zone, nowMs))

/** A row to choose a zone from, under a reply that has assumed one; null under any other. */
export function zoneChoice(
  { notes }: Pick<Reply, 'notes'>,
  { owner, locale, nowMs, text }: Choosing,
): APIMessageTopLevelComponent | null {
  const customId = encodeCustomId({ owner, line: LINE, nudgeId: null })
  if (customId === null || !notes.some(isOfZone)) return null
  const options = likelyZones(locale).map((zone) => ({
    label: cityOf(zone),
    value: zone,
    description: text.zoneNow({ clock: clockIn(zone, nowMs) }),
  }))
  return {
    type: ROW,
    components: [{ type: SELECT, custom_id: customId, placeholder: text.chooseZone(), options }],
  }
}

interface Node {
  readonly custom_id?: string
  readonly components?: readonly Node[]
}

/** Whether a message shows such a row. */
export const hasZoneChoice = (components: readonly Node[]): boolean =>
  components.some(
    ({ custom_id: id = '', components: inner = [] }) => decodeCustomId(id)?.line === LINE || hasZoneChoice(inner),
  )

/** The call that choosing a zone makes; null where the choice is another, or somebody else's. */
export function readZoneChoice(customId: string, values: readonly string[], userId: string): Invocation | null {
  const read = decodeCustomId(customId)
  const [zone] = values
  if (read === null || read.owner !== userId || read.line !== LINE || zone === undefined) return null
  return { path: 'settings', options: { zone } }
}
