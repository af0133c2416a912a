import { contentsOf } from '../../../../core/jar/state/contents.ts'
import { bottlesThatFit } from '../../../../core/jar/state/jar-bottles.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { plannedSyrup } from '../../../../core/jar/state/planned-syrup.ts'
import type { DutyKind } from '../../../../core/jar/tasks/duty.ts'
import type { IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import { sizeOf } from '../../../../core/quantity/write/made-amounts.ts'
import { type Bottles, parseBottles } from '../../../../core/recipe/plan/parse-bottles.ts'
import type { Jar, Place } from '../../../../store/person.ts'
import { type Call, call } from '../../../calls/call.ts'
import type { Kitchen } from '../../../text/messages/kitchen.ts'
import { addCall } from './add-line.ts'
import { type JarAsker, kitchenAmong } from './jar-kitchen.ts'
import { afterNow, jarRef } from './jar-ref.ts'
import { syrupValues } from './sweeten-options.ts'

/** A jar that asks for something. */
export interface AskingJar {
  readonly jar: Pick<Jar, 'id' | 'entries'>
  readonly story: JarState
}

/** The bottles as planned, as many as what is there fills; null without a plan. */
function plannedBottles(story: JarState): readonly Bottles[] | null {
  const { bottles } = story.started
  if (bottles.length === 0) return null
  return bottlesThatFit(bottles, contentsOf(story).outcome.volumeMl).map(({ count, volumeMl }) => {
    const size = sizeOf(volumeMl)
    return { count, volumeMl: size.volumeMl, size }
  })
}

/** The sweetening as planned; null where that is not known, cannot be, or is nothing. */
export function sweetenCall(
  { jar, story }: AskingJar,
  { place, kitchen }: { readonly place: Place; readonly kitchen: Kitchen },
): Call | null {
  const planned = plannedSyrup(story)
  const values = planned === null ? {} : syrupValues(planned.syrup, kitchen)
  if (Object.keys(values).length === 0) return null
  return call('jar sweeten', { jar: jarRef({ jar, story }, { place }), ...values, ...afterNow(jar.entries, place) })
}

/** What says that what sugar drew out of the strained fruit is in. */
export const fromFruitCall = ({ jar, story }: AskingJar, place: Place): Call =>
  call('jar sweeten', { jar: jarRef({ jar, story }, { place }), 'from-fruit': null, ...afterNow(jar.entries, place) })

/** A surface with buttons asks for what nobody has named. */
function bottleCall(story: JarState, jar: string, place: Place): Call | null {
  if (place.kind !== 'console' && !story.started.named.areBottlesNamed) return call('jar bottle', { jar })
  const bottles = plannedBottles(story)
  return bottles === null ? null : call('jar bottle', { jar, bottles })
}

/**
 * The call that says that a thing was done which a jar asks for; null where it needs what only its maker knows.
 *
 * @param day - the day of what is asked for
 */
export function taskCall(kind: DutyKind, held: AskingJar, day: IsoDay, asker: JarAsker): Call | null {
  const { story } = held
  const { place } = asker
  const jar = jarRef(held, { place })
  switch (kind) {
    case 'sweeten':
      return story.onFruit === null
        ? sweetenCall(held, { place, kitchen: kitchenAmong(story, asker.settings) })
        : fromFruitCall(held, place)
    case 'bottle':
      return bottleCall(story, jar, place)
    case 'add':
      return addCall(story, day, {
        jar,
        after: afterNow(held.jar.entries, place),
        kitchen: kitchenAmong(story, asker.settings),
      })
    case 'drink':
      return call('bottles', { jar, opened: parseBottles('1') })
    case 'ready':
      return call('jar open', { jar })
    case 'taste':
      return null
    default:
      return call(`jar ${kind}`, { jar })
  }
}
