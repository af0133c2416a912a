import { standingTroubles } from '../../../core/jar/state/standing-troubles.ts'
import type { JarView } from '../../../core/jar/tasks/jar-view.ts'
import { abvPercent, sugarGPerL } from '../../../core/quantity/measured/precision.ts'
import type { TroubleFacts } from '../../../core/trouble/facts.ts'
import { factsOfJar } from '../../../core/trouble/facts-of-jar.ts'
import { factsOfLine } from '../../../core/trouble/facts-of-line.ts'
import { isSign, type Sign } from '../../../core/trouble/signs.ts'
import { signOfSolvent } from '../../../core/trouble/signs-in-words.ts'
import type { InputOf } from '../../calls/signatures.ts'
import type { Context } from '../../chat/command.ts'
import { todayOf } from '../jar/known/view-of.ts'
import { freezerOf } from '../reply/outcome-reply.ts'

export type TroubleInput = InputOf<'trouble'>

/** What the words for a symptom tell by themselves. */
const inWords = ({ symptom }: TroubleInput): readonly Sign[] => {
  const sign = symptom?.is.includes('solvent') ? signOfSolvent(symptom.typed) : null
  return sign === null ? [] : [sign]
}

/** What the maker has answered so far, over what their words tell. */
export const answered = (input: TroubleInput): TroubleFacts['signs'] => {
  const all = (signs: readonly Sign[] = [], is: boolean) => signs.map((sign) => [sign, is] as const)
  return Object.fromEntries([...all(inWords(input), true), ...all(input.no?.is, false), ...all(input.yes?.is, true)])
}

/** What was answered when it was held back for the same, which stands until it is answered otherwise. */
export function toldBefore({ symptom, 'what-if': whatIf }: TroubleInput, held: JarView | null): TroubleFacts['signs'] {
  if (held === null || whatIf?.is === true) return {}
  const standing = standingTroubles(held.story).find((each) => symptom?.is.some((id) => id === each.symptom))
  if (standing?.verdict !== 'hold') return {}
  const all = (signs: readonly string[], is: boolean) => signs.filter(isSign).map((sign) => [sign, is] as const)
  return Object.fromEntries([...all(standing.no, false), ...all(standing.yes, true)])
}

/** What a line tells counts before what a jar's record does. */
export function knownFacts(input: TroubleInput, held: JarView | null, context: Context): TroubleFacts {
  const { of, strength, sweetness, days } = input
  const told = factsOfLine({
    abvPercent: strength === undefined ? null : abvPercent(strength.is, 'hydrometer'),
    sugarGPerL: sweetness === undefined ? null : sugarGPerL(sweetness.is),
    plants: of === undefined ? null : of.is.flatMap((each) => ('botanical' in each ? [each.botanical] : [])),
    days: days === undefined ? null : Math.round(days.is.nominalDays),
    freezerC: freezerOf(context),
  })
  if (held === null) return told
  const jar = factsOfJar(held.story, { today: todayOf(context), freezerC: freezerOf(context) })
  const said = Object.fromEntries(Object.entries(told).filter(([, value]) => value !== null))
  const weakestPercent = leastOf(jar.weakestPercent, told.weakestPercent)
  return { ...jar, ...said, weakestPercent, signs: { ...jar.signs, ...told.signs } }
}

const leastOf = (one: number | null, other: number | null): number | null =>
  one === null || other === null ? (one ?? other) : Math.min(one, other)
