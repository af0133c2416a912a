import type { Diagnosis, OpenCause } from '../../../core/trouble/diagnose.ts'

/** Kept, or only to be seen again: what is harmless is likelier. */
const isHarmlessFirst = ({ verdict }: Diagnosis): boolean =>
  verdict.kind === 'keep' || (verdict.kind === 'hold' && verdict.because === 'recurs')

/** Where it must not be drunk yet, the danger; else the likeliest of the harmless, or what the open question does not settle. */
export const toldFirst = (diagnosis: Diagnosis): OpenCause | null => {
  const { causes, verdict, question } = diagnosis
  const isDanger = verdict.kind === 'hold' && !isHarmlessFirst(diagnosis)
  return (
    (isDanger ? causes[0] : causes.find(({ cause }) => !cause.isDangerous)) ??
    causes.find(({ finding }) => verdict.kind !== 'ask' || question === null || !finding.asks.includes(question)) ??
    null
  )
}

/** What stands before what is told first, because it may hurt, and the open question does not decide it. */
export function dangersBefore(first: OpenCause | null, diagnosis: Diagnosis): readonly OpenCause[] {
  const { causes, question } = diagnosis
  if (!isHarmlessFirst(diagnosis)) return []
  return causes
    .slice(0, first === null ? causes.length : causes.indexOf(first))
    .filter(({ cause, finding }) => cause.isDangerous && (question === null || !finding.asks.includes(question)))
}

/** Held back for what nothing makes fit to drink: spirit that is not as it was sold. */
export const isForGood = ({ verdict, causes }: Diagnosis): boolean =>
  verdict.kind === 'hold' && verdict.because === 'danger' && causes[0]?.cause.leadsTo === 'wrong_spirit'
