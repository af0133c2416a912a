import type { Person } from '../../../store/person.ts'
import type { Invocation } from '../../calls/invocation.ts'
import { kitchenOfLast } from '../../commands/jar/known/jar-kitchen.ts'
import { kitchenInText } from '../../commands/options/input-units.ts'
import { whoAt } from '../../talk/memory/remembered.ts'
import { type Kitchen, kitchenIn } from '../../text/messages/kitchen.ts'
import { personOf } from '../own-language.ts'
import type { Dispatch } from './call-outcome.ts'

type Speaker = Pick<Dispatch, 'store' | 'userId' | 'talk' | 'place' | 'nowMs'>

/** All that a line says. */
export const textOf = (line: string | Invocation): string =>
  typeof line === 'string' ? line : Object.values(line.options).join(' ')

/** Where something is said: a channel, or with nobody else there. */
export const placeOf = ({ place }: Pick<Speaker, 'place'>): string =>
  place.kind === 'channel' ? place.channelId : place.kind

/** That of the recipe that was worked out a moment ago; null where none was, or it tells none. */
function kitchenSpoken(speaker: Speaker): Kitchen | null {
  const { talk, userId, nowMs } = speaker
  const worked = talk?.of(whoAt(userId, placeOf(speaker)), nowMs).worked ?? null
  return worked === null ? null : kitchenInText(Object.values(worked.call.options).join(' '))
}

/** What somebody has chosen for everything, in proof where they typed proof; else that of the last recipe, else of the last jar. */
export const usualOf = ({ settings, jars }: Person, speaker: Speaker): Kitchen =>
  kitchenIn(settings.units, kitchenSpoken(speaker) ?? kitchenOfLast(jars) ?? settings.units ?? 'metric')

/** In whose measures a line is answered that was not read: those it speaks of, else those of whoever typed it. */
export const kitchenSaid = (line: string | Invocation, person: Person, speaker: Speaker): Kitchen =>
  kitchenIn(person.settings.units, kitchenInText(textOf(line)) ?? usualOf(person, speaker))

/** The same, where nothing is known of them yet. */
export const kitchenOfWhoever = async (line: string | Invocation, speaker: Speaker): Promise<Kitchen> =>
  kitchenSaid(line, await personOf(speaker), speaker)
