import type { TroubleFacts } from './facts.ts'
import type { Ask, Finding } from './finding.ts'
import { judged, withStops } from './judge-stops.ts'
import { afterExplained, isDangerUnlikely, unasked } from './likely-first.ts'
import type { Cause, KeepId, RemedyKind, StopId, Stops, SymptomRow } from './row.ts'
import { troubleRows } from './rows.ts'
import type { Sign } from './signs.ts'
import { type Stake, stakeOf } from './stake.ts'
import { firstStops } from './stops.ts'
import type { SymptomId } from './symptoms.ts'
import { stopOfAllAnswers } from './told-outright.ts'

/** A cause that what is known does not rule out. */
export interface OpenCause {
  /** Unique within its symptom. */
  readonly id: string
  readonly cause: Cause
  readonly finding: Finding
}

/** Whether it has to go. */
export type TroubleVerdict =
  | { readonly kind: 'emergency' }
  | { readonly kind: 'throw_away'; readonly because: StopId }
  /** Not to be drunk, bottled or given away as it is. */
  | { readonly kind: 'hold'; readonly because: 'over_ceiling' | 'fizz' | 'recurs' | 'weak' | 'danger' }
  /** Not known before a question is answered. */
  | { readonly kind: 'ask' }
  /** Why that is harmless, where it is said of this symptom. */
  | { readonly kind: 'keep'; readonly because: KeepId | null }
  | { readonly kind: 'cannot_tell' }

export interface Diagnosis {
  readonly symptom: SymptomId
  /** What it goes by: all that is known, with what the symptom itself says. */
  readonly facts: TroubleFacts
  readonly verdict: TroubleVerdict
  /** What has to be told next; null where nothing has. */
  readonly question: Ask | null
  /** What the question decides: by which answer it has to go. Null where no answer to it alone has it thrown away. */
  readonly stake: Stake | null
  /** The likeliest cause is said before the question: what is dangerous is among the last that it may be. */
  readonly isLikelyFirst: boolean
  /** Dangers first, then what its own figures speak for, then the likeliest. */
  readonly causes: readonly OpenCause[]
  /** Why it would have to go, as far as nobody has said that it is not so. */
  readonly unless: readonly StopId[]
  /** What its maker may want whatever the cause. */
  readonly anyway: readonly RemedyKind[]
}

/** A jar's record does not settle what its maker doubts; the symptom itself says what it assumes. */
function factsFor({ assumes = {}, doubts = [] }: SymptomRow, facts: TroubleFacts, said: TroubleFacts['signs']) {
  const recorded = Object.fromEntries(Object.entries(facts.signs).filter(([sign]) => !doubts.includes(sign as Sign)))
  // Gas that comes back is no air that grew warm.
  const gas = said.recurs === true ? { fizz: true } : {}
  return { ...facts, signs: { ...recorded, ...assumes, ...gas, ...said } }
}

/** A symptom as it is where nothing should live in the drink, or as it is. */
function rowOf(symptom: SymptomId, { keeping }: TroubleFacts): SymptomRow & { readonly waitsFor?: Sign } {
  const row = troubleRows[symptom]
  return keeping === 'keeps' ? { ...row, ...row.strong } : row
}

/** Nobody overlooks a bottle that burst, and what fizzes is asked about where it matters. */
const UNTOLD: readonly StopId[] = ['burst', 'fizzed_weak', 'varnish']

const RANK: Readonly<Record<Finding['is'], number>> = { yes: 0, maybe: 1, no: 2 }

/** Dangers first; of the harmless those that a figure speaks for. */
const weightOf = ({ cause, finding }: OpenCause): number => {
  if (cause.isDangerous) return RANK[finding.is]
  return finding.is === 'yes' && finding.whys.length > 0 ? 2 : 3
}

const openCauses = ({ causes }: SymptomRow, facts: TroubleFacts): readonly OpenCause[] =>
  Object.entries(causes)
    .map(([id, cause]): OpenCause => ({ id, cause, finding: cause.fits(facts) }))
    .filter(({ finding }) => finding.is !== 'no')
    .toSorted((one, other) => weightOf(one) - weightOf(other) || one.cause.rank - other.cause.rank)

/** Its own lines, and those of what a danger that is there leads to. */
const ownStops = (row: SymptomRow, causes: readonly OpenCause[]): Stops =>
  causes
    .filter(({ cause, finding }) => cause.isDangerous && cause.leadsTo !== null && finding.is === 'yes')
    .reduce((all, { cause }) => withStops(all, troubleRows[cause.leadsTo!].stops ?? {}), row.stops ?? {})

/** Why it has to go, where it has. */
function stopOf(row: SymptomRow, own: Stops, facts: TroubleFacts): StopId | null {
  const led = withStops(own, ownStops(row, openCauses(row, facts)))
  return judged(withStops(firstStops, led), facts).find(({ finding }) => finding.is === 'yes')?.id ?? null
}

/** The same as `diagnose`, though every answer to its question may end alike. */
function judge(symptom: SymptomId, known: TroubleFacts, said: TroubleFacts['signs']) {
  const row = rowOf(symptom, known)
  const facts = factsFor(row, known, said)
  const causes = openCauses(row, facts)
  const own = ownStops(row, causes)
  const stops = judged(withStops(firstStops, own), facts)
  const thrown = stops.find(({ finding }) => finding.is === 'yes')
  const asked = new Set<StopId>([...(Object.keys(own) as StopId[]), ...(row.asks ?? [])])
  const open = stops.filter(({ finding }) => finding.is === 'maybe')
  const unneeded = unasked(causes)
  const asksOf = ({ finding }: { readonly finding: Finding }) => finding.asks.filter((each) => !unneeded.has(each))
  const question =
    open.filter(({ id }) => asked.has(id)).flatMap(asksOf)[0] ??
    causes.filter(({ cause }) => cause.isDangerous).flatMap(asksOf)[0] ??
    null
  const because = thrown?.id
  const stopWith = (more: Partial<TroubleFacts>): StopId | null => stopOf(row, own, { ...facts, ...more })
  const verdict = because === undefined ? verdictOf(row, facts, causes, question) : throwAway(facts, because)
  const diagnosis: Diagnosis = {
    symptom,
    facts,
    verdict,
    question: verdict.kind === 'throw_away' || verdict.kind === 'emergency' ? null : question,
    stake: question === null ? null : stakeOf(question, (more) => stopWith(more) !== null, facts),
    isLikelyFirst: verdict.kind === 'ask' && isDangerUnlikely(causes),
    causes: afterExplained(causes),
    unless: open.map(({ id }) => id).filter((id) => !UNTOLD.includes(id)),
    anyway: row.anyway ?? [],
  }
  return { diagnosis, stopWith }
}

/**
 * What may be wrong, and first of all whether it has to go. What is known answers the questions that decide it; of the rest
 * the one that kills first is asked, and none whose answers all end in throwing it away: that is said outright. A danger
 * that is open comes before whatever is harmless.
 *
 * @param said - what its maker has answered; it counts before what a jar's record tells
 */
export function diagnose(symptom: SymptomId, known: TroubleFacts, said: TroubleFacts['signs'] = {}): Diagnosis {
  const { diagnosis, stopWith } = judge(symptom, known, said)
  const ask = (signs: TroubleFacts['signs']) => judge(symptom, known, signs).diagnosis
  const because = stopOfAllAnswers(diagnosis, diagnosis.facts.signs, ask, stopWith)
  if (because === null || diagnosis.verdict.kind !== 'ask') return diagnosis
  return {
    ...diagnosis,
    verdict: throwAway(diagnosis.facts, because),
    question: null,
    stake: null,
    isLikelyFirst: false,
  }
}

const GRAVITY: readonly TroubleVerdict['kind'][] = ['emergency', 'throw_away', 'hold', 'ask', 'cannot_tell', 'keep']

/** What only waits to be seen again comes after what has to be answered first. */
const gravityOf = ({ verdict, isLikelyFirst }: Diagnosis): number => {
  if (verdict.kind === 'ask' && isLikelyFirst) return GRAVITY.indexOf('ask') + 0.5
  return GRAVITY.indexOf(verdict.kind) + (verdict.kind === 'hold' && verdict.because === 'recurs' ? 1.2 : 0)
}

const dangersOf = ({ causes }: Diagnosis): number => causes.filter(({ cause }) => cause.isDangerous).length

const assumedOf = (symptoms: readonly SymptomId[], known: TroubleFacts): TroubleFacts['signs'] =>
  Object.assign({}, ...symptoms.map((symptom) => rowOf(symptom, known).assumes ?? {}))

/**
 * The same of several symptoms of one drink, one at least: the worst verdict first, then the one with most dangers open. What
 * the others assume is known of the first: mould in what fizzes is thrown away as what is under pressure.
 */
export function diagnoseAll(
  symptoms: readonly SymptomId[],
  known: TroubleFacts,
  said: TroubleFacts['signs'] = {},
): readonly [Diagnosis, ...Diagnosis[]] {
  const [worst, ...others] = symptoms
    .map((symptom) => diagnose(symptom, known, said))
    .toSorted((one, other) => gravityOf(one) - gravityOf(other) || dangersOf(other) - dangersOf(one))
  if (worst === undefined) throw new RangeError('no symptom')
  return [diagnose(worst.symptom, known, { ...assumedOf(symptoms, known), ...said }), ...others]
}

const throwAway = ({ signs }: TroubleFacts, because: StopId): TroubleVerdict =>
  signs.ill === true ? { kind: 'emergency' } : { kind: 'throw_away', because }

function verdictOf(
  row: ReturnType<typeof rowOf>,
  facts: TroubleFacts,
  causes: readonly OpenCause[],
  question: Ask | null,
): TroubleVerdict {
  if (facts.signs.ill === true) return { kind: 'emergency' }
  if (facts.isOverCeiling === true) return { kind: 'hold', because: 'over_ceiling' }
  if (causes.some(({ cause, finding }) => cause.isDangerous && finding.is === 'yes')) {
    return { kind: 'hold', because: 'danger' }
  }
  if (facts.signs.fizz === true) return { kind: 'hold', because: 'fizz' }
  if (row.waitsFor !== undefined && facts.signs[row.waitsFor] === undefined) return { kind: 'hold', because: 'recurs' }
  if (facts.keeping === 'ferments') return { kind: 'hold', because: 'weak' }
  if (question !== null) return { kind: 'ask' }
  if (causes.length === 0) return { kind: 'cannot_tell' }
  const { keeps } = row
  return { kind: 'keep', because: keeps !== undefined && keeps.when(facts).is !== 'no' ? keeps.id : null }
}
