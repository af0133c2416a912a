import type { TroubleFacts } from './facts.ts'
import type { Ask, Finding } from './finding.ts'
import type { StopId } from './row.ts'
import { isBadSign, isSign } from './signs.ts'

/** What a diagnosis comes to. */
interface Outcome {
  readonly verdict: { readonly kind: string; readonly because?: unknown }
  readonly question: Ask | null
  readonly causes: readonly { readonly cause: { readonly isDangerous: boolean }; readonly finding: Finding }[]
}

/** Weaker than every stop line, % vol. */
const WEAKEST_PERCENT = 1

/** Facts in which what is open of a cause is so. */
const soThat = ({ asks }: Finding, signs: TroubleFacts['signs']): Partial<TroubleFacts> => ({
  ...(asks.includes('strength') && { weakestPercent: WEAKEST_PERCENT }),
  signs: { ...signs, ...Object.fromEntries(asks.filter(isSign).map((sign) => [sign, isBadSign(sign)])) },
})

/**
 * Why it goes whatever is answered, null where an answer changes that: no yes or no leads to anything but throwing it away.
 * A strength or plants that nobody knows do not clear it where each of its causes that is left would have it go.
 *
 * @param ask - the outcome with more signs told
 * @param stopWith - why it goes with more facts told, null where it does not
 */
export function stopOfAllAnswers(
  outcome: Outcome,
  signs: TroubleFacts['signs'],
  ask: (signs: TroubleFacts['signs']) => Outcome,
  stopWith: (more: Partial<TroubleFacts>) => StopId | null,
): StopId | null {
  const { verdict, question, causes } = outcome
  if (verdict.kind === 'throw_away') return verdict.because as StopId
  if (verdict.kind !== 'ask' || question === null) return null
  if (causes.length === 0 || causes.some(({ cause }) => !cause.isDangerous)) return null
  if (!isSign(question)) {
    const stops = causes.map(({ finding }) => stopWith(soThat(finding, signs)))
    return stops.includes(null) ? null : stops[0]!
  }
  const after = (is: boolean): StopId | null => {
    const told = { ...signs, [question]: is }
    return stopOfAllAnswers(ask(told), told, ask, stopWith)
  }
  const cleared = after(!isBadSign(question))
  return cleared === null || after(isBadSign(question)) === null ? null : cleared
}
