import type { TroubleFacts } from './facts.ts'
import type { Ask } from './finding.ts'
import { isBadSign } from './signs.ts'

/** By a sign that is there, or that is not, or by what is weaker than so many % vol. */
export type Stake = { readonly if: 'so' | 'not' } | { readonly if: 'weaker'; readonly percent: number }

/** Below these there are stop lines. */
const WEAK_PERCENT = [20, 15] as const

/** By which answer to its question a jar has to go, as far as that answer alone decides it. */
export function stakeOf(
  question: Ask,
  goesWith: (more: Partial<TroubleFacts>) => boolean,
  { signs }: TroubleFacts,
): Stake | null {
  if (question === 'plants') return null
  if (question === 'strength') {
    const percent = WEAK_PERCENT.find((each) => goesWith({ weakestPercent: each - 0.1 }))
    return percent === undefined ? null : { if: 'weaker', percent }
  }
  const isBad = isBadSign(question)
  if (!goesWith({ signs: { ...signs, [question]: isBad } })) return null
  return { if: isBad ? 'so' : 'not' }
}
