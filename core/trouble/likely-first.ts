import type { Ask, Finding } from './finding.ts'
import type { Cause } from './row.ts'

interface Open {
  readonly cause: Cause
  readonly finding: Finding
}

/** From this place on among the causes of a symptom a danger is unlikely. */
const UNLIKELY_RANK = 4

/** Whether something harmless is likelier by far than every danger that is open. */
export const isDangerUnlikely = (causes: readonly Open[]): boolean =>
  causes.some(({ cause }) => !cause.isDangerous && cause.rank < UNLIKELY_RANK) &&
  causes.every(({ cause }) => !cause.isDangerous || cause.rank >= UNLIKELY_RANK)

/** From this place on a label that nobody told of is no question where the drink’s own figures explain what is seen. */
const NOT_ASKED_RANK = 5

const LABEL: ReadonlySet<Ask> = new Set(['bought'])
const NOTHING: ReadonlySet<Ask> = new Set()

/** A figure of its own speaks for it, not only what is in it. */
const isExplaining = ({ cause, finding }: Open): boolean =>
  !cause.isDangerous &&
  cause.rank < UNLIKELY_RANK &&
  finding.is === 'yes' &&
  finding.whys.some(({ key }) => key !== 'plants')

/** What is not asked about any more; it stays among what would have it thrown away. */
export const unasked = (causes: readonly Open[]): ReadonlySet<Ask> =>
  causes.some(isExplaining) && causes.every(({ cause }) => !cause.isDangerous || cause.rank >= NOT_ASKED_RANK)
    ? LABEL
    : NOTHING

/** Dangers that nothing but such a question would decide come after what explains it. */
export const afterExplained = <Each extends Open>(causes: readonly Each[]): readonly Each[] => {
  const unneeded = unasked(causes)
  const isLeft = ({ finding: { asks } }: Each): boolean => asks.length > 0 && asks.every((each) => unneeded.has(each))
  return [...causes.filter((each) => !isLeft(each)), ...causes.filter(isLeft)]
}
