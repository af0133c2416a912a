import type { Person } from '../../../store/person.ts'
import type { Invocation } from '../../calls/invocation.ts'
import { kitchenOfLast } from '../../commands/jar/known/jar-kitchen.ts'
import { kitchenInText } from '../../commands/options/input-units.ts'
import { type Kitchen, kitchenIn } from '../../text/messages/kitchen.ts'
import { personOf } from '../own-language.ts'

/** All that a line says. */
export const textOf = (line: string | Invocation): string =>
  typeof line === 'string' ? line : Object.values(line.options).join(' ')

/** What somebody has chosen for everything, else that of the last jar. */
export const usualOf = ({ settings, jars }: Person): Kitchen => settings.units ?? kitchenOfLast(jars) ?? 'metric'

/** In whose measures a line is answered that was not read: those it speaks of, else those of whoever typed it. */
export const kitchenSaid = (line: string | Invocation, person: Person): Kitchen =>
  kitchenIn(person.settings.units, kitchenInText(textOf(line)) ?? usualOf(person))

/** The same, where nothing is known of them yet. */
export const kitchenOfWhoever = async (
  line: string | Invocation,
  asker: Parameters<typeof personOf>[0],
): Promise<Kitchen> => kitchenSaid(line, await personOf(asker))
