import type { TroubleTold } from '../jar/entry/told.ts'
import type { StandingTrouble } from '../jar/state/standing-troubles.ts'
import type { Diagnosis } from './diagnose.ts'
import type { TroubleFacts } from './facts.ts'
import type { StopId } from './row.ts'
import { isOfTaste } from './rows.ts'
import { isSign } from './signs.ts'
import { STOP_ORDER } from './stops.ts'
import type { SymptomId } from './symptoms.ts'

/** What is seen of many a good jar: what is asked about it is asked to be sure, and left open holds nothing up. */
const MOSTLY_HARMLESS: ReadonlySet<SymptomId> = new Set<SymptomId>([
  ...(['cloudy_on_mixing', 'cloudy_in_cold', 'cloudy_later', 'oil_ring', 'separated', 'sediment', 'gelled'] as const),
  ...(['crystals', 'sugar_not_dissolving', 'frozen', 'brown', 'faded', 'fruit_went_pale', 'forgotten'] as const),
  ...(['leaves_went_black', 'hairs_or_spines', 'cloth_or_paper_taste', 'bitter', 'harsh_hot'] as const),
  ...(['too_dry_or_sour', 'too_sour', 'too_weak'] as const),
  ...(['hydrometer_odd', 'leaking_lid', 'stuck_filter', 'weak_taste', 'too_spicy', 'too_sweet'] as const),
])

/** What a maker was told of a jar that must not be forgotten, by what had been answered; null where it goes on as it is. */
export function troubleTold(
  { symptom, verdict, question, stake, isLikelyFirst }: Diagnosis,
  answered: TroubleFacts['signs'],
): TroubleTold | null {
  const of = (is: boolean) => Object.entries(answered).flatMap(([sign, told]) => (told === is ? [sign] : []))
  const told = { symptom, question, yes: of(true), no: of(false) }
  switch (verdict.kind) {
    case 'throw_away':
      return { ...told, verdict: 'throw_away', because: verdict.because, question: null }
    case 'hold':
      // What is over a limit or too weak is judged anew by every reply.
      return verdict.because === 'fizz' || verdict.because === 'recurs' || verdict.because === 'danger'
        ? { ...told, verdict: 'hold', because: verdict.because }
        : null
    case 'ask':
      // What is most likely harmless, or a figure that is lacking, holds nothing up.
      return stake === null || isLikelyFirst || MOSTLY_HARMLESS.has(symptom) || question === null || !isSign(question)
        ? null
        : { ...told, verdict: 'ask', because: null }
    case 'cannot_tell':
      // What nothing known fits, and no taste settles, is in doubt still.
      return isOfTaste(symptom) || MOSTLY_HARMLESS.has(symptom)
        ? null
        : { ...told, verdict: 'hold', because: 'danger', question: null }
    default:
      return null
  }
}

/** Whether an answer that something was thrown away for is given otherwise now. */
const isAnsweredOtherwise = (before: TroubleTold, now: TroubleFacts['signs']): boolean =>
  before.yes.some((sign) => isSign(sign) && now[sign] === false) ||
  before.no.some((sign) => isSign(sign) && now[sign] === true)

/** Whether the one question that it was held for is answered. */
const isWaitAnswered = ({ because, question }: TroubleTold, now: TroubleFacts['signs']): boolean =>
  because === 'recurs' && question !== null && isSign(question) && now[question] !== undefined

/** What becomes of what stands of a jar: something to keep, something that is settled, or neither. */
export interface TroubleKept {
  readonly trouble?: TroubleTold
  readonly settled?: readonly string[]
}

const isSame = (one: TroubleTold, other: TroubleTold): boolean =>
  one.verdict === other.verdict && one.because === other.because && one.question === other.question

/**
 * What is to be kept of what was told now beside what stands; null where that changes nothing. What is to go, or not to be
 * drunk, is let off only by another answer to a question that was answered, never by asking again.
 */
export function troubleToKeep(
  diagnosis: Diagnosis,
  answered: TroubleFacts['signs'],
  standing: readonly StandingTrouble[],
): TroubleKept | null {
  if (diagnosis.verdict.kind === 'emergency') return null
  const told = troubleTold(diagnosis, answered)
  const before = standing.find(({ symptom }) => symptom === diagnosis.symptom)
  if (before === undefined) return told === null ? null : { trouble: told }
  if (told !== null && isSame(before, told)) return null
  const isWorse = told?.verdict === 'throw_away' || (told?.verdict === 'hold' && before.verdict === 'ask')
  const isLetOff = isAnsweredOtherwise(before, answered) || isWaitAnswered(before, answered)
  if (!isWorse && before.verdict !== 'ask' && !isLetOff) return null
  return told === null ? { settled: [before.symptom] } : { trouble: told }
}

/** The same, where the jar was told to be thrown away for what stands still: no harmless trouble and no asking again keeps it. */
export function asItStands(diagnosis: Diagnosis, standing: readonly StandingTrouble[]): Diagnosis {
  const { verdict } = diagnosis
  const [worst] = standing
  if (worst === undefined || worst.verdict !== 'throw_away') return diagnosis
  if (verdict.kind === 'throw_away' || verdict.kind === 'emergency' || !isStop(worst.because)) return diagnosis
  const because = worst.because
  return { ...diagnosis, verdict: { kind: 'throw_away', because }, question: null, stake: null, isLikelyFirst: false }
}

const isStop = (text: string | null): text is StopId => (STOP_ORDER as readonly (string | null)[]).includes(text)
