import { ownDrink } from '../../../core/jar/limits/spirit-to-add.ts'
import type { JarState } from '../../../core/jar/state/jar-state.ts'
import { shown } from '../../../core/quantity/read/tokens.ts'
import type { Diagnosis, OpenCause } from '../../../core/trouble/diagnose.ts'
import { isSymptomName } from '../../../core/trouble/find-symptom.ts'
import type { SolvedRemedy } from '../../../core/trouble/remedy.ts'
import { isOfTaste, isPlainTaste } from '../../../core/trouble/rows.ts'
import type { SymptomId } from '../../../core/trouble/symptoms.ts'
import { troubleTold } from '../../../core/trouble/trouble-told.ts'
import { inMore } from '../../chat/depth.ts'
import type { Action, Data, Reply } from '../../chat/reply.ts'
import type { Message } from '../../text/words.ts'
import { dangerCautions } from '../jar/known/jar-dangers.ts'
import { jarBrief } from '../jar/known/jar-data.ts'
import { kitchenOfJar } from '../jar/known/jar-kitchen.ts'
import { heldFirst, toldIn } from '../jar/known/told-trouble.ts'
import { note } from '../reply/outcome-reply.ts'
import { aboutNotes, besideBottles, givenCautions, isRefused } from './asked-behind.ts'
import type { Asking } from './asking.ts'
import { besideOther } from './beside-other.ts'
import { causeNotes, deeper, isLikelyFirst, otherNote, type Said } from './cause-notes.ts'
import { ifDrunkCautions } from './if-drunk.ts'
import { answered } from './known-facts.ts'
import { dangersBefore, isForGood, toldFirst } from './told-first.ts'
import { remediesFor, troubleActions } from './trouble-actions.ts'

const MOST_IN_MORE = 6

function headlineOf(
  diagnosis: Diagnosis,
  first: OpenCause | null,
  isMended: boolean,
  isNo: boolean,
): Reply['headline'] {
  const { symptom, verdict, question, stake, causes } = diagnosis
  switch (verdict.kind) {
    case 'emergency':
    case 'cannot_tell':
      return { group: 'headlines', key: 'trouble_cannot_tell', values: { isTaste: isOfTaste(symptom), isMended } }
    case 'throw_away':
      return { group: 'headlines', key: 'trouble_throw_away', values: { because: verdict.because, isRefused: isNo } }
    case 'hold': {
      const [worst] = causes
      if (verdict.because !== 'danger' || worst === undefined) {
        const isAir = verdict.because === 'fizz' && causes.every(({ cause }) => !cause.isDangerous)
        const because = isAir ? 'air' : verdict.because === 'danger' ? 'weak' : verdict.because
        return { group: 'headlines', key: 'trouble_hold', values: { because } }
      }
      const values = { symptom, cause: worst.id, whys: worst.finding.whys, isForGood: isForGood(diagnosis) }
      return { group: 'headlines', key: 'trouble_hold_for', values }
    }
    case 'ask': {
      const asked = { question: question!, stake }
      if (!isLikelyFirst(diagnosis, first)) return { group: 'headlines', key: 'trouble_ask', values: asked }
      return { group: 'headlines', key: 'trouble_likely', values: { symptom, cause: first.id, ...asked } }
    }
    case 'keep':
      return { group: 'headlines', key: 'trouble_keep', values: { because: verdict.because } }
  }
}

/** The amounts that a remedy takes, as they are measured out. */
const takes = ({ adjustment, spiritPercent }: SolvedRemedy, story: JarState | null, isPerLitre: boolean): Said => {
  const { spiritMl, waterMl, sugarG, outcome } = adjustment
  const { abvPercent, sugarGPerL } = outcome
  const drink = story === null || spiritPercent === null ? null : ownDrink(story, spiritPercent)
  const values = { spiritMl, spiritPercent, drink, waterMl, sugarG, abvPercent, sugarGPerL, isPerLitre }
  return { group: 'notes', key: 'trouble_takes', values }
}

const causeData = ({ id, cause, finding }: OpenCause): Data => ({
  id,
  dangerous: cause.isDangerous,
  fits: finding.is,
  why: finding.whys.map(({ key }) => key),
  trust: cause.trust,
  sources: cause.sources,
})

/** For scripts. */
export const troubleData = (
  { symptom, verdict, question, causes, unless }: Diagnosis,
  also: readonly SymptomId[],
): Reply['data'] => ({
  symptom,
  also,
  causes: causes.map(causeData),
  discard: { verdict: verdict.kind, because: 'because' in verdict ? verdict.because : null, question, unless },
})

/** Whether anything is known by which one jar differs from another. */
const isUnknown = ({ facts }: Asking): boolean => facts.abvPercent === null && facts.plants === null

/** How more words than a name were read. */
const readAs = ({ input }: Asking): readonly Message<'notes'>[] => {
  const typed = input.symptom?.typed ?? ''
  const symptoms = input.symptom?.is ?? []
  const isWhole = typed === '' || isSymptomName(typed)
  return isWhole ? [] : [{ group: 'notes', key: 'trouble_read_as', values: { typed: shown(typed), symptoms } }]
}

/** How it is thrown away: what fizzes is cooled and let out first, and what may carry botulism stays shut. */
function awayNotes({ verdict, facts }: Diagnosis): readonly Said[] {
  if (verdict.kind === 'throw_away' && verdict.because === 'weak_low_acid') {
    return [{ group: 'notes', key: 'trouble_todo', values: { symptom: 'pressure', cause: 'low_acid' } }]
  }
  const cool: Said = { group: 'notes', key: 'trouble_todo', values: { symptom: 'fermenting', cause: 'yeast' } }
  return [...(facts.signs.fizz === true ? [cool] : []), note('trouble_how_to_throw_away')]
}

/** Asked again, it stays as it is. */
function stayingNotes({ story }: NonNullable<Asking['held']>, input: Asking['input']): readonly Said[] {
  const told = toldIn(story)
  if (told === null || told.verdict === 'ask' || told.question !== null || input['what-if']?.is === true) return []
  return [{ group: 'notes', key: 'trouble_stays', values: { name: story.name } }]
}

/** What became of it in the jar. */
function keptNotes({ held, kept, input }: Asking): readonly Said[] {
  if (held === null) return []
  if (kept === null) return stayingNotes(held, input)
  const { name } = held.story
  const { trouble } = kept
  if (trouble === undefined) return [{ group: 'notes', key: 'trouble_settled', values: { name } }]
  const note: Said = { group: 'notes', key: 'trouble_kept', values: { name, verdict: trouble.verdict } }
  return trouble.question === null && trouble.verdict !== 'ask' ? [note] : inMore([note])
}

/** Which jar it is, where it would be kept with one. */
function whichNotes(diagnosis: Diagnosis, { held, input }: Asking, jars: readonly Action[]): readonly Said[] {
  if (held !== null || jars.length === 0 || troubleTold(diagnosis, answered(input)) === null) return []
  const said: Said = { group: 'notes', key: 'trouble_which_jar', values: { count: jars.length } }
  return diagnosis.verdict.kind === 'ask' ? inMore([said]) : [said]
}

/** Where a question is open already, it is said with it. */
const moreKnown = ({ verdict }: Diagnosis): readonly Said[] =>
  verdict.kind === 'ask' ? [note('trouble_more_known')] : inMore([note('trouble_more_known')])

/** What would have it thrown away all the same; of a taste that no danger has, one question deeper. */
function unlessCautions({ symptom, verdict, unless }: Diagnosis): Reply['cautions'] {
  if (verdict.kind !== 'keep' || unless.length === 0) return []
  const said = { group: 'cautions', key: 'trouble_unless', values: { unless } } as const
  return isPlainTaste(symptom) ? inMore([said]) : [said]
}

/** What went wrong: whether it has to go, the likeliest cause by its own figures, what to do. */
export function troubleReply(diagnosis: Diagnosis, asking: Asking, jars: readonly Action[]): Reply {
  const { symptom, verdict, question, causes, anyway } = diagnosis
  const first = toldFirst(diagnosis)
  const isThrown = verdict.kind === 'throw_away'
  const kinds = isThrown ? [] : [...(first?.cause.remedies ?? []), ...anyway]
  const remedies = remediesFor([...new Set(kinds)], asking)
  const solved = remedies.solved.map((each) => takes(each, asking.held?.story ?? null, remedies.isPerLitre))
  const others = causes.filter((each) => each !== first).slice(0, MOST_IN_MORE)
  // A danger that no question rules out is told before whatever is harmless.
  const toldBefore = dangersBefore(first, diagnosis)
  const { held } = asking
  const told = held === null ? null : toldIn(held.story)
  const isOfThis = told !== null && told.symptom === symptom
  // What is answered here is not said beside it.
  const all = held === null ? [] : dangerCautions([held.story])
  const dangers = all.filter(({ values }) => !isOfThis || !('trouble' in (values ?? {})))
  const isLong = solved.length + dangers.length + toldBefore.length > 0
  const handled = (notes: readonly Said[]) => besideBottles(notes, diagnosis, asking.input)
  const reply: Reply = {
    headline: headlineOf(diagnosis, first, remedies.actions.length > 0, isRefused(asking.input)),
    table: [],
    sure: [],
    notes: [
      ...readAs(asking),
      ...aboutNotes(diagnosis, asking.input),
      ...keptNotes(asking),
      ...whichNotes(diagnosis, asking, jars),
      ...(isThrown ? handled(awayNotes(diagnosis)) : []),
      ...(verdict.kind === 'hold' && question !== null
        ? [{ group: 'notes', key: 'trouble_question', values: { question } } as const]
        : []),
      ...toldBefore.map((each) => otherNote(each, diagnosis, 'trouble_rule_out')),
      ...(first === null ? [] : handled(causeNotes(first, diagnosis, isLong))),
      ...(question === null && dangers.length === 0
        ? [...solved.slice(0, 1), ...inMore(solved.slice(1))]
        : inMore(solved)),
      ...(isUnknown(asking) && !isThrown && jars.length === 0 ? moreKnown(diagnosis) : []),
      ...(first === null ? [] : deeper(first, diagnosis, true)),
      ...others.filter((each) => !toldBefore.includes(each)).flatMap((each) => deeper(each, diagnosis, false)),
    ],
    cautions: [
      ...givenCautions(diagnosis, asking.input, asking.context),
      ...ifDrunkCautions(diagnosis, asking.context),
      ...(isThrown || verdict.kind === 'hold' ? inMore(dangers) : dangers),
      ...unlessCautions(diagnosis),
    ],
    actions: [...troubleActions(diagnosis, asking, remedies.actions), ...jars],
    data: { ...(held === null ? {} : { jar: jarBrief(held) }), ...troubleData(diagnosis, asking.also) },
    kitchen: kitchenOfJar(asking.input, held?.story ?? null),
  }
  return held === null || isOfThis || isThrown ? reply : heldFirst(besideOther(reply, told), [held.story])
}
