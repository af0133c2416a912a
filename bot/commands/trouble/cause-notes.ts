import type { Diagnosis, OpenCause } from '../../../core/trouble/diagnose.ts'
import { isBadSign, isSign } from '../../../core/trouble/signs.ts'
import { type Deep, inMore } from '../../chat/depth.ts'
import type { Message } from '../../text/words.ts'

export type Said = Message<'notes'> & Deep

/** Whether the likeliest cause stands before the question. */
export const isLikelyFirst = (diagnosis: Diagnosis, first: OpenCause | null): first is OpenCause =>
  diagnosis.isLikelyFirst && first !== null && !first.cause.isDangerous

export const otherNote = (
  { id, finding }: OpenCause,
  { symptom }: Diagnosis,
  key: 'trouble_other' | 'trouble_rule_out' = 'trouble_other',
): Message<'notes'> => ({
  group: 'notes',
  key,
  values: { symptom, cause: id, whys: finding.whys },
})

/** What is said of a cause one question deeper. */
export function deeper(open: OpenCause, diagnosis: Diagnosis, isFirst: boolean): readonly Said[] {
  const { trust, sources } = open.cause
  const values = { symptom: diagnosis.symptom, cause: open.id, trust, sources }
  const known: Message<'notes'> = { group: 'notes', key: 'trouble_known', values }
  return inMore(isFirst ? [known] : [otherNote(open, diagnosis), known])
}

/** By which answer to the open question the likeliest cause holds. */
const afterOf = ({ verdict, question }: Diagnosis): 'nothing' | 'yes' | 'no' => {
  if (verdict.kind !== 'ask' || question === null || !isSign(question)) return 'nothing'
  return isBadSign(question) ? 'no' : 'yes'
}

/** Its own figures tell it, and the first line says why it is harmless. */
const isExplained = ({ verdict }: Diagnosis, { finding: { is, whys } }: OpenCause): boolean =>
  verdict.kind === 'keep' && verdict.because !== null && is === 'yes' && whys.some(({ key }) => key !== 'plants')

/** The cause, what to do and, where there is room beside amounts and dangers, how it is told. */
export function causeNotes(first: OpenCause, diagnosis: Diagnosis, isLong: boolean): readonly Said[] {
  const { symptom, verdict, causes } = diagnosis
  const said = { symptom, cause: first.id }
  const values = { ...said, whys: first.finding.whys, after: afterOf(diagnosis) }
  const cause: Said = { group: 'notes', key: 'trouble_cause', values }
  const tell: Said = { group: 'notes', key: 'trouble_tell', values: said }
  const todo: Said = { group: 'notes', key: 'trouble_todo', values: said }
  switch (verdict.kind) {
    case 'throw_away':
      return inMore([cause, tell])
    case 'ask': {
      const { whys } = values
      const isTold = isLikelyFirst(diagnosis, first)
      // What is at stake takes the room of what speaks for the cause.
      if (!isTold && (diagnosis.stake === null || whys.length === 0)) return [cause, ...inMore([tell]), todo]
      const bare: Said = { group: 'notes', key: 'trouble_cause', values: { ...values, whys: [] } }
      const spoken: Said = { group: 'notes', key: 'trouble_whys', values: { whys } }
      return [...(isTold ? [] : [bare]), ...inMore([...(whys.length > 0 ? [spoken] : []), tell]), todo]
    }
    case 'hold':
      if (verdict.because === 'danger') return [...inMore([tell]), todo]
      // What is to be done is what the open question is about.
      if (verdict.because === 'recurs' && isLong) return [...inMore([cause, tell]), todo]
      return isLong ? inMore([cause, tell, todo]) : [cause, ...inMore([tell]), todo]
    default:
      if (isLong) return [cause, ...inMore([tell, todo])]
      return causes.length > 1 && !isExplained(diagnosis, first)
        ? [cause, tell, todo]
        : [cause, ...inMore([tell]), todo]
  }
}
