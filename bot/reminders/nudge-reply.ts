import { isHeldBack } from '../../core/jar/limits/judge-jar.ts'
import { plannedSyrup } from '../../core/jar/state/planned-syrup.ts'
import { isInFreezer } from '../../core/jar/state/where-it-stands.ts'
import { byLastDay, SPOKEN_ORDER } from '../../core/jar/tasks/asked-today.ts'
import type { DutyKind } from '../../core/jar/tasks/duty.ts'
import { type IsoDay, isoDay } from '../../core/quantity/time/calendar-day.ts'
import { dayAt } from '../../core/quantity/time/zone.ts'
import { isSyrup } from '../../core/recipe/solve/syrup.ts'
import type { Nudge, Person, Place, Settings } from '../../store/person.ts'
import type { Reply } from '../chat/reply.ts'
import { dangersReminded } from '../commands/jar/known/jar-dangers.ts'
import { kitchenOfJars } from '../commands/jar/known/jar-kitchen.ts'
import { remindedIn } from '../commands/jar/known/reminded-in.ts'
import { caution } from '../commands/reply/outcome-reply.ts'
import { kitchenIn } from '../text/messages/kitchen.ts'
import type { Message } from '../text/words.ts'
import { type AskedJar, askedOf } from './due-jars.ts'
import { type IsOpen, nudgeActions } from './nudge-actions.ts'
import type { Now } from './prepare-nudge.ts'

/** Shaking is asked for so often that its end is worth a sentence; these too say when they are the last. */
const SAYS_LAST: readonly DutyKind[] = ['shake', 'strain', 'sweeten']

/** What is late comes before all else, and what can wait a while after what is asked for. */
function headlineOf(
  asked: readonly AskedJar[],
  held: readonly string[],
  today: IsoDay,
  settings: Settings,
): Message<'headlines'> {
  const isStrainAside = ({ duty, isAside }: AskedJar): boolean => isAside && duty.kind === 'strain'
  const isLate = ({ duty: { by } }: AskedJar): boolean => by !== null && by < today
  const pressing = byLastDay(asked)
  const asides = pressing.filter(isStrainAside)
  const group = (duty: DutyKind, isAside: boolean, of: readonly AskedJar[]) =>
    of.length === 0 ? [] : [{ duty, jars: of.map(remindedIn(settings)), isAside }]
  const values = {
    asked: [
      ...group('strain', true, asides.filter(isLate)),
      ...SPOKEN_ORDER.flatMap((kind) =>
        group(
          kind,
          false,
          (kind === 'taste' ? pressing : asked).filter((each) => each.duty.kind === kind && !isStrainAside(each)),
        ),
      ),
      ...group(
        'strain',
        true,
        asides.filter((each) => !isLate(each)),
      ),
    ],
    held,
    today,
  }
  return { group: 'headlines', key: 'nudge', values }
}

/** What is to be said of how it comes. */
export interface Arrival {
  readonly mayHaveBeenSeen: boolean
  /** It comes elsewhere than was chosen, and its person does not know yet. */
  readonly isMoved: boolean
}

/** Whether it is sweetened with a syrup, as far as is known. */
function isSyrupAsked({ story, duty }: AskedJar): boolean {
  if (duty.kind !== 'sweeten') return false
  const planned = plannedSyrup(story)
  return planned === null || isSyrup(planned.syrup)
}

function notesOf(asked: readonly AskedJar[], { mayHaveBeenSeen, isMoved }: Arrival): readonly Message<'notes'>[] {
  const how = (['taste', 'strain'] as const).filter((kind) =>
    asked.some(({ duty, isAside }) => duty.kind === kind && (kind === 'taste' || !isAside)),
  )
  const cold = asked
    .filter(({ duty, story }) => duty.kind === 'ready' && isInFreezer(story))
    .map(({ story }) => story.name)
  const last = SAYS_LAST.map((duty) => ({
    duty,
    names: asked.filter((each) => each.isLast && each.duty.kind === duty).map(({ story }) => story.name),
  }))
  const notes = [
    ...(isMoved ? [{ group: 'notes', key: 'nudge_moved', values: undefined }] : []),
    ...(mayHaveBeenSeen ? [{ group: 'notes', key: 'nudge_seen', values: undefined }] : []),
    ...(how.length === 0 ? [] : [{ group: 'notes', key: 'nudge_how', values: { duties: how } }]),
    ...(cold.length === 0 ? [] : [{ group: 'notes', key: 'nudge_freezer', values: { names: cold } }]),
    ...last.flatMap((values) => (values.names.length === 0 ? [] : [{ group: 'notes', key: 'nudge_last', values }])),
  ]
  return notes as readonly Message<'notes'>[]
}

/** Whom it asks, and where. */
interface To extends Arrival {
  readonly settings: Settings
  readonly place: Place
  /** What has not been answered yet; left out: nothing has. */
  readonly isOpen?: IsOpen
}

/** What a nudge says: what to do today, how, what to answer. */
export const nudgeReply = (person: Person, nudge: Nudge, coming: Arrival, now: Now): Reply =>
  replyOf(askedOf(person, nudge, now), { ...coming, settings: person.settings, place: nudge.place }, now)

/** The same of what it asks; of what has been answered it offers no answer. */
export function replyOf(
  all: readonly AskedJar[],
  { settings, place, isOpen, ...coming }: To,
  { nowMs, assumedZone }: Now,
): Reply {
  // Of what must not be drunk as it is nothing else is asked for.
  const asked = all.filter(({ story }) => !isHeldBack(story))
  const stories = all.map(({ story }) => story)
  const held = [...new Set(stories.filter(isHeldBack).map(({ name }) => name))]
  const today = isoDay(dayAt(settings.zone ?? assumedZone, nowMs))
  return {
    headline: headlineOf(asked, held, today, settings),
    table: [],
    sure: [],
    notes: notesOf(asked, coming),
    cautions: [
      ...dangersReminded([...new Set(stories)], settings),
      ...(asked.some(isSyrupAsked) ? [caution('cool_first')] : []),
    ],
    actions: nudgeActions(all, { place, settings }, isOpen),
    data: { duties: all.map(({ jarId, duty }) => ({ jar: jarId, duty: duty.kind, day: duty.day })) },
    kitchen: kitchenIn(settings.units, kitchenOfJars({}, stories)),
  }
}
