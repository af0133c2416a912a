import { DomainError } from '../../../core/domain-error.ts'
import { isLongPause } from '../../../core/jar/tasks/duty.ts'
import { shown } from '../../../core/quantity/read/tokens.ts'
import { daysBetween, type IsoDay, isoDay } from '../../../core/quantity/time/calendar-day.ts'
import { dayAt } from '../../../core/quantity/time/zone.ts'
import type { Place, Settings } from '../../../store/person.ts'
import { asOptionProblem, type Given } from '../../calls/option.ts'
import type { PlaceTyped } from '../../calls/person-options.ts'
import type { DateTyped } from '../../calls/plan-options.ts'
import { signature } from '../../calls/signatures.ts'
import { ChatError } from '../../chat/chat-error.ts'
import { type Context, defineCommand, type Proof } from '../../chat/command.ts'
import type { Lacking } from '../../text/messages/lacking.ts'
import { changeSettings } from './change-settings.ts'
import { remindersReply } from './reminders-reply.ts'

/** The terminal has no private messages, and nothing else a terminal. */
const placeIn = ({ is: wanted, typed }: Given<PlaceTyped>, { place }: Context): Place => {
  if (wanted === 'here' || wanted === place.kind) return place
  const isTerminal = place.kind === 'console'
  if (isTerminal || wanted === 'console') {
    throw new DomainError('bad_value', 'place_elsewhere', { typed: shown(typed), isTerminal })
  }
  return { kind: 'private' }
}

/** What a place lacks that took no message. */
const REFUSED: Readonly<Record<Place['kind'], Lacking>> = { console: 'write', channel: 'write', private: 'messages' }

/** The place and what came of trying it, where nothing keeps reminders from it. Throws `place_closed`. */
const openPlace = async (wanted: Given<PlaceTyped>, context: Context): Promise<Chosen> => {
  const place = asOptionProblem('place', () => placeIn(wanted, context))
  const isSent = place.kind === 'private' && context.provePlace !== undefined
  // Sending tells more of private messages than asking does.
  const lacking = isSent ? [] : ((await context.lackingAt?.(place)) ?? [])
  const proof = lacking.length > 0 ? 'closed' : ((await context.provePlace?.(place)) ?? null)
  if (proof !== 'closed') return { place, proof }
  throw new ChatError(
    'refused',
    'place_closed',
    { lacking: lacking.length > 0 ? lacking : [REFUSED[place.kind]] },
    { command: 'reminders', option: 'place' },
  )
}

interface Chosen {
  readonly place: Place
  /** Null where nothing was sent. */
  readonly proof: Proof | null
}

const pauseIn = ({ is: date, typed }: Given<DateTyped | null>, { nowMs, settings }: Context, zone: string) => {
  if (date === null) return null
  const today = dayAt(zone, nowMs)
  const day = date.read({ today, country: settings.country })
  const until: IsoDay = isoDay(day)
  if (until <= isoDay(today)) throw new DomainError('bad_value', 'not_ahead', { typed: shown(typed) })
  if (day.yearAssumed && isLongPause(daysBetween(day, today))) {
    throw new DomainError('bad_value', 'pause_long', { typed: shown(typed), until })
  }
  return until
}

/**
 * From when on reminders come. Another rhythm, or a pause that ends early, counts from today: what it would have asked for
 * before is past.
 */
const heldUntil = (
  pause: IsoDay | null | undefined,
  isOtherRhythm: boolean,
  { pausedUntil }: Settings,
  today: IsoDay,
) => {
  const until = pause === undefined ? pausedUntil : pause
  const isLifted = pausedUntil !== null && until === null
  return isLifted || isOtherRhythm ? ([until ?? today, today].toSorted().at(-1) ?? null) : until
}

export const remindersCommand = defineCommand({
  ...signature('reminders'),
  topic: 'you',
  async run(input, context) {
    const { place, time, zone, shake, drink, 'pause-until': pause } = input
    const zoneNow = (zone === undefined ? context.settings.zone : zone.is) ?? context.assumedZone
    const until = pause && asOptionProblem('pause-until', () => pauseIn(pause, context, zoneNow))
    const isOtherRhythm = shake !== undefined && shake.is !== context.settings.shake
    const today = isoDay(dayAt(zoneNow, context.nowMs))
    const opened = place === undefined ? null : await openPlace(place, context)
    const chosen: Partial<Settings> = {
      ...(opened && { place: opened.place }),
      ...(time && { atMinutes: time.is }),
      ...(zone && { zone: zone.is }),
      ...(shake && { shake: shake.is }),
      ...(drink && { drink: drink.is ? 'on' : 'off' }),
      ...((pause || isOtherRhythm) && { pausedUntil: heldUntil(until, isOtherRhythm, context.settings, today) }),
    }
    const isChanged = Object.keys(chosen).length > 0
    const person = isChanged ? await changeSettings(context, chosen) : await context.store.read(context.userId)
    return remindersReply(person, { isChanged, proof: opened?.proof ?? null }, context)
  },
})
