import type { Nudge, Person } from '../../store/person.ts'
import type { Store } from '../../store/store.ts'
import { trace } from '../chat/trace.ts'
import { type ClosedPlaces, closedPlaces } from './closed-places.ts'
import { isSent, type NudgeFound, type Sent, type Sought, type Surface } from './delivery.ts'
import { type AskedJar, askedOf } from './due-jars.ts'
import { replyOf } from './nudge-reply.ts'
import { isSamePlace, placesFrom } from './places-from.ts'
import { cutOff, type Intent, intend, type Now } from './prepare-nudge.ts'
import { recordFailed, recordKept, recordMoved, recordSent } from './record-delivery.ts'
import { sentNudge } from './sent-nudge.ts'

/** One pass over what is due. */
export interface Round extends Now {
  readonly store: Pick<Store, 'read' | 'update' | 'claimDue'>
  readonly surface: Surface
  /** What is known of places from one round to the next; left out where there is only one. */
  readonly closed?: ClosedPlaces
  /** Takes ids and stack frames, nothing that was typed. */
  readonly log: (text: string) => void
}

const sought = (userId: string, { id, place, madeMs }: Nudge): Sought => ({ nudgeId: id, userId, place, madeMs })

const find = async (userId: string, nudge: Nudge, { surface, log }: Round): Promise<NudgeFound> => {
  try {
    return (await surface.findSent?.(sought(userId, nudge))) ?? 'unknown'
  } catch (error) {
    log(`looking for nudge ${nudge.id}: ${trace(error)}`)
    return 'unknown'
  }
}

interface Sending {
  readonly userId: string
  readonly person: Person
  readonly nudge: Nudge
  readonly asked: readonly AskedJar[]
  readonly mayHaveBeenSeen: boolean
  /** It comes elsewhere than was chosen, and its person does not know yet. */
  readonly isMoved: boolean
}

/** Null: nobody knows what became of it. */
const send = async (sending: Sending, round: Round): Promise<Sent | null> => {
  const { userId, person, nudge, asked, mayHaveBeenSeen } = sending
  try {
    const reply = replyOf(asked, { ...sending, settings: person.settings, place: nudge.place }, round)
    const { settings } = person
    const delivery = { ...sought(userId, nudge), reply, settings, mayHaveBeenSeen, attempt: nudge.attempts }
    return await round.surface.send(delivery)
  } catch (error) {
    round.log(`nudge ${nudge.id}: ${trace(error)}`)
    return null
  }
}

/** Sends a nudge whose intent is on record, falling back from place to place, and records what became of it. */
async function deliver(sending: Omit<Sending, 'isMoved' | 'asked'>, round: Round): Promise<void> {
  const { store, surface, closed = closedPlaces(), nowMs } = round
  const { userId, person, nudge, mayHaveBeenSeen } = sending
  const chosen = surface.placeOf(userId, person.settings.place) ?? nudge.place
  const asked = askedOf(person, nudge, round)
  let [sent, isMoved]: [Sent | null, boolean] = ['impossible', false]
  for (const [falls, place] of placesFrom(nudge.place, surface.after).entries()) {
    if (falls > 0) await store.update(userId, (now) => recordMoved(now, nudge, place))
    const isChosen = isSamePlace(place, chosen)
    isMoved = !isChosen && closed.isNews(userId, chosen)
    sent = await send({ ...sending, asked, nudge: { ...nudge, place }, isMoved }, round)
    if (isChosen && sent === 'impossible') closed.close(userId, chosen)
    if (isChosen && isSent(sent)) closed.open(userId, chosen)
    if (isMoved && isSent(sent)) closed.told(userId, chosen)
    if (sent !== 'impossible') break
  }
  const kept =
    sent !== null && typeof sent === 'object'
      ? sentNudge(person, nudge.id, asked, { ...sending, isMoved }, sent, nowMs)
      : null
  await store.update(userId, (now) => {
    if (isSent(sent)) return recordSent(now, nudge, nowMs, kept)
    if (sent === 'impossible') return recordKept(now, nudge)
    return recordFailed(now, nudge, sent === null || mayHaveBeenSeen, nowMs)
  })
}

/**
 * Says to one person what is due by now, once: looks what became of a nudge that was cut off, records the intent of a new
 * one, sends it, records that. Throws what the store throws.
 */
export async function remind(userId: string, round: Round): Promise<void> {
  const { store, surface, nowMs } = round
  const known = await store.read(userId)
  if (surface.placeOf(userId, known.settings.place) === null) return
  const verdicts = new Map<string, NudgeFound>()
  for (const nudge of cutOff(known, nowMs)) verdicts.set(nudge.id, await find(userId, nudge, round))
  let intent: Intent | null = null
  const person = await store.update(userId, (now) => {
    intent = intend(userId, now, verdicts, round, surface)
    return intent?.person ?? null
  })
  const nudge = (intent as Intent | null)?.nudge ?? null
  if (nudge === null) return
  const mayHaveBeenSeen = [...verdicts.values()].includes('unknown')
  await deliver({ userId, person, nudge, mayHaveBeenSeen }, round)
}
