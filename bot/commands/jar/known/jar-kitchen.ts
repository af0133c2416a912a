import { type JarState, jarStateOf } from '../../../../core/jar/state/jar-state.ts'
import { once } from '../../../../core/once.ts'
import type { Jar } from '../../../../store/person.ts'
import { callOfTexts } from '../../../calls/call.ts'
import type { InputOf } from '../../../calls/signatures.ts'
import type { Context } from '../../../chat/command.ts'
import { type Kitchen, kitchenIn, withKinds } from '../../../text/messages/kitchen.ts'
import { kitchenOfUnits, tellsUnits, type UnitsTyped, unitsOfBottles, unitsTyped } from '../../options/input-units.ts'
import { kindsTyped } from '../../options/kinds-typed.ts'

/** Amounts of a start that tell its maker's kitchen; bottles are sold in millilitres. */
const AMOUNTS: ReadonlySet<string> = new Set(['of', 'spirit', 'strength', 'sugar', 'water'])

type Started = Pick<JarState, 'started'>

/** Of so many of the last jars one tells, or nothing does. */
const MOST_LOOKED_AT = 8

/** The kitchen of the jar that somebody began last, of those whose amounts tell one; null where none does. */
export function kitchenOfLast(jars: readonly Jar[]): Kitchen | null {
  for (const { entries } of jars.slice(-MOST_LOOKED_AT).toReversed()) {
    const story = jarStateOf(entries)
    const typed = story === null ? null : unitsOf(story)
    if (typed !== null && tellsUnits(typed)) return kitchenOfUnits([typed])
  }
  return null
}

/** Who is told, where and in which units. */
export interface JarAsker {
  readonly place: Context['place']
  readonly settings: Pick<Context['settings'], 'units'>
}

// Reading a line costs time, and a list of jars asks for it of each of them more than once.
const readStart = once(({ typed }: Started['started']): Partial<InputOf<'plan'>> => {
  const amounts = typed.filter(([option]) => AMOUNTS.has(option))
  return (callOfTexts('plan', amounts)?.values ?? {}) as Partial<InputOf<'plan'>>
})

/** What went into it, as its maker typed it; nothing where that is not known. */
export const startTyped = ({ started }: Started): Partial<InputOf<'plan'>> => readStart(started)

const unitsOf = (story: Started): UnitsTyped => unitsTyped(startTyped(story))

/** The kitchen in which something is said of jars together: of the amounts that were typed now, else of those of the first that tells. */
export const kitchenOfJars = (input: object, stories: readonly Started[]): Kitchen =>
  withKinds(
    kitchenOfUnits([unitsTyped(input), ...stories.map(unitsOf), unitsOfBottles(input)]),
    kindsTyped([input, ...stories.map(startTyped)]),
  )

/** The same of one jar; null: of none, so that only what was typed tells. */
export const kitchenOfJar = (input: object, story: Started | null): Kitchen =>
  kitchenOfJars(input, story === null ? [] : [story])

/** That of a jar among others, each of which is told in its own. What somebody has chosen for everything goes before. */
export const kitchenAmong = (story: Started, { units }: Pick<Context['settings'], 'units'>): Kitchen =>
  kitchenIn(units, kitchenOfJar({}, story))
