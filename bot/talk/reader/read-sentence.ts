import type { Path } from '../../calls/signatures.ts'
import type { Sentence, Surroundings } from '../bits/bit.ts'
import { sentenceIn } from '../bits/sentence.ts'
import { sentenceOnce } from '../bits/sentence-once.ts'
import type { TalkReading } from '../frames/reading.ts'
import { symptomDenied, symptomIn } from '../frames/symptoms.ts'
import type { Hunch } from '../hunch/hunch.ts'
import { ofJarSpokenOf } from '../memory/half-words.ts'
import { wished } from '../memory/wishes-apart.ts'
import { accidentTold } from './accident-told.ts'
import { asInPlan } from './as-in-plan.ts'
import { askedBehind } from './asked-behind.ts'
import { askedBeside } from './asked-beside.ts'
import {
  isBeforeFrame,
  isBeforeSymptom,
  isBySuiting,
  isFullCall,
  isOfAmounts,
  isOfHandbook,
  isUnpoured,
  leadOfTold,
  MAY_BURST,
  SURE,
} from './asked-of-handbook.ts'
import { askedPlainly, isFreezingAsked } from './asked-plainly.ts'
import { byHunch } from './by-hunch.ts'
import { dangerFirst } from './danger-first.ts'
import { dayOpen } from './day-open.ts'
import { jarTold } from './deed-alone.ts'
import { deedBefore } from './deed-before.ts'
import { deedOrPlan } from './deed-or-plan.ts'
import { deniedReading } from './denied-symptom.ts'
import { eitherOf } from './either-of.ts'
import { entryOfClause } from './entry-of-clause.ts'
import { isDeedRead, isDeedTold } from './frame-reading.ts'
import { heldBehind } from './held-behind.ts'
import { hiddenDanger, hiddenPlant } from './hidden-danger.ts'
import { isAsked } from './is-told.ts'
import { jarNotThere } from './jar-not-there.ts'
import { type FindsInText, keptFinds } from './kept-finds.ts'
import { notMeant } from './not-meant.ts'
import { type KnowsNudge, nudgeDone } from './nudge-done.ts'
import { otherOfOne } from './other-of-one.ts'
import { partTaken } from './part-taken.ts'
import { placeUnknown } from './place-unknown.ts'
import { topic } from './read-otherwise.ts'
import { dangerTopic, isElsewhere, smallTalk } from './small-talk.ts'
import { ofMeantJar } from './spoken-of.ts'
import { startTold } from './start-told.ts'
import { isStillGoodAsked, oddSmell } from './still-good.ts'
import { insideTold, symptomReading, symptomTold } from './symptom-reading.ts'
import { LEAST, tried } from './tried-frames.ts'
import { unitsWished } from './units-wished.ts'
import { withSlips } from './unknown-word.ts'
import { supposedOnly, wasNothingTold } from './was-nothing-told.ts'
import { wholeReading } from './whole-reading.ts'
import { isAllExplained, isWhollyAsked } from './wholly-asked.ts'

export interface Knows extends Surroundings, FindsInText, KnowsNudge {
  /** What sentences like it are after. */
  readonly hunch: Hunch
  /** The command that a line began with, where it did. */
  readonly command?: Path
}

/** An entry that is less likely stands before nothing else that was understood. */
const LIKELY = 0.15

/** A sentence, as the command, the question, the symptom or the entry that it means. Never throws; nothing is looked up or kept. */
export function readSentence(text: string, knows: Knows): TalkReading {
  return supposedOnly(hiddenPlant(readPlainly(text, { ...knows, ...keptFinds(knows) }), text), text)
}

function readPlainly(text: string, knows: Knows): TalkReading {
  const sentence = sentenceOnce(text, knows)
  const danger = dangerFirst(sentence, text, knows)
  if (danger !== null) return danger
  const other = knows.command === undefined ? otherOfOne(sentence, text, (again) => readAgain(again, knows)) : null
  if (other !== null) return other
  const told = knows.command === undefined ? dangerTopic(sentence) : null
  if (told === null && knows.command === undefined && isElsewhere(sentence)) return { kind: 'lost', nearest: [] }
  const reading = partTaken(ofMeantJar(readOnce(sentence, text, knows), sentence, knows), sentence)
  if (told !== null) {
    // A deed is not lost over it: it is done, or asked about, and the danger is said too.
    if (isDeedRead(reading)) return hiddenDanger({ ...reading, beside: told }, sentence)
    const before = deedBefore(sentence, {
      isDangerous: (part) => dangerTopic(part) !== null,
      partOf: (part) => sentenceIn(part, knows),
      read: (part) => partTaken(ofMeantJar(readOnce(part, part.typed.text, knows), part, knows), part),
    })
    return before === null ? topic({ id: told, others: [] }) : hiddenDanger({ ...before, beside: told }, sentence)
  }
  if (knows.command !== undefined) return byRules(reading, sentence, text, knows)
  const read = askedBeside(byRules(reading, sentence, text, knows), sentence, text, knows.findEntry)
  const thought = byHunch(read, sentence, text, knows, () => readFirst(sentence, text, knows) !== null)
  const sure = asInPlan(askedBehind(thought, sentence, text, knows), knows.said)
  const last = wasNothingTold(sentence, text) ?? notMeant(jarNotThere(sure, sentence), sentence, read)
  return dayOpen(heldBehind(last, sentence, knows.said), sentence)
}

function readAgain(text: string, knows: Knows) {
  const sentence = sentenceIn(text, knows)
  return { sentence, reading: readOnce(sentence, text, knows) }
}

function byRules(reading: TalkReading, sentence: Sentence, text: string, knows: Knows): TalkReading {
  const once = (each: Sentence) => hiddenDanger(readOnce(each, text, knows), each)
  if (reading.kind !== 'lost') return withSlips(reading, sentence, once) ?? hiddenDanger(reading, sentence)
  const forgiving = once(sentence.forgiving())
  if (forgiving.kind !== 'lost' || knows.command !== undefined) return forgiving
  const place = placeUnknown(sentence)
  if (place !== null) return place
  const symptom = symptomTold(sentence, text, knows.findSymptom)
  if (symptom !== null) return ofMeantJar(symptomReading(sentence, symptom.id), sentence, knows)
  const respelt = knows.findRespelt(text)
  return respelt === null || isOfAmounts(sentence) || !isOfHandbook(respelt.share, sentence)
    ? forgiving
    : topic(respelt)
}

/** What is told or asked before any command is looked for in it; null where it is none of that. */
function readFirst(sentence: Sentence, text: string, knows: Knows): TalkReading | null {
  const read = (part: string): Sentence => sentenceIn(part, knows)
  const whole = nudgeDone(sentence, knows) ?? wholeReading(sentence, knows.said, read)
  if (whole !== null) return whole
  const accident = accidentTold(sentence) ?? insideTold(text)
  if (accident !== null)
    return 'entry' in accident ? topic({ id: accident.entry, others: [] }) : symptomReading(sentence, accident.symptom)
  if (isFreezingAsked(sentence)) return topic({ id: 'freezes', others: [] })
  const after = knows.said === undefined ? null : wished(sentence, knows.said, read)
  const told = after ?? jarTold(sentence, read, knows.said) ?? unitsWished(sentence)
  if (told !== null) return told
  const plainly = askedPlainly(sentence)
  return plainly === null ? null : topic({ id: plainly, others: [] })
}

function readOnce(sentence: Sentence, text: string, knows: Knows): TalkReading {
  const isTyped = knows.command !== undefined
  const first = isTyped ? null : readFirst(sentence, text, knows)
  if (first !== null) return first
  const symptom = isTyped ? null : symptomIn(sentence)
  const talk = symptom === null ? smallTalk(sentence) : null
  if (talk !== null) return talk
  const all = tried(sentence, knows.command)
  const [best, second] = all
  const score = best?.score ?? 0
  // A deed that is told of an own jar is asked about; no entry and no symptom stands in for what it lacks.
  const isDeed = best !== undefined && score >= LEAST && isDeedTold(best, sentence)
  const isOther = isDeed || isOfAmounts(sentence) || isTyped
  const found = isOther ? null : entryOfClause(text, knows)
  const anyEntry = found !== null && isOfHandbook(found.share, sentence) ? found : null
  if (!isTyped && symptom === null && best !== undefined && isWhollyAsked(best, sentence)) {
    const whole = found ?? entryOfClause(text, knows)
    if (whole !== null && isAllExplained(whole)) return topic(whole)
  }
  const isOpenPlan = best !== undefined && isUnpoured(best, sentence)
  const entry = score >= SURE && !isOpenPlan ? null : anyEntry
  const isAskedOf = symptom !== null && sentence.has('may_i', 'would_it') && !MAY_BURST.has(symptom.id)
  // `Gone cloudy, is it safe to drink?`: whether it has to go is what a trouble says first.
  const smell = symptom === null && !isTyped ? oddSmell(text) : null
  if (smell !== null) return smell
  const denied = symptom === null && !isTyped ? symptomDenied(sentence) : null
  if (denied !== null && denied.score >= score - 0.3 && !isFullCall(best))
    return deniedReading(denied, anyEntry, isAsked(sentence))
  if (symptom !== null && isStillGoodAsked(text) && !isFullCall(best)) return symptomReading(sentence, symptom.id)
  if (entry !== null && isAskedOf && !isFullCall(best)) return topic(entry)
  // `Is gran’s decanter safe?`: of the same matter what is asked is answered.
  if (anyEntry !== null && symptom?.id === anyEntry.id && isAsked(sentence)) return topic(anyEntry)
  if (anyEntry !== null && anyEntry.likelihood >= LIKELY && !isFullCall(best)) {
    if (symptom !== null && isBeforeSymptom(anyEntry.share, symptom.id, sentence)) return topic(anyEntry)
    if (symptom === null && best !== undefined && isBeforeFrame(anyEntry.share, best, sentence)) return topic(anyEntry)
  }
  const isBetter =
    symptom !== null &&
    (symptom.score >= score - 0.3 ||
      (best?.frame.command === 'botanical' && symptom.score >= 4 && !sentence.has('how_much', 'per_litre')))
  if (symptom !== null && isBetter && !isFullCall(best)) return symptomReading(sentence, symptom.id)
  // `Quince vodka has set to jelly`: of what is only named, what went wrong is told.
  const isNamedOnly =
    best?.frame.command === 'plan' && best.used.every(({ value, kind }) => value === 0 || kind === 'spirit')
  if (symptom !== null && isNamedOnly) return symptomReading(sentence, symptom.id)
  // `Are waxed lemons any good?` has an answer of its own, `is medlar any good?` is the plant's.
  const isOfSeason = best?.options.month !== undefined && !sentence.has('whats_ripe')
  const isAnyGood = best?.frame.command === 'botanical' && (isBySuiting(sentence) || isOfSeason)
  if (entry !== null && isAnyGood) return topic(entry)
  const isLacking = best !== undefined && score < SURE && best.lacks.length > 0
  const isBare = isOpenPlan || (isLacking && (best.frame.does === 'compute' || isAsked(sentence)))
  if (entry !== null && (best === undefined || score < LEAST || isBare)) {
    const trouble = symptomTold(sentence, text, knows.findSymptom)
    return trouble !== null && trouble.share > entry.share - leadOfTold(sentence)
      ? symptomReading(sentence, trouble.id)
      : topic(entry)
  }
  // `/jar show gone`: no jar’s name.
  if (best === undefined || score < LEAST || (isTyped && best.used.length === 0)) return { kind: 'lost', nearest: [] }
  const deed = isTyped ? null : (startTold(best, sentence) ?? deedOrPlan(best, sentence))
  if (deed !== null) return deed
  return ofJarSpokenOf(eitherOf(best, second, sentence, isTyped), isTyped ? undefined : knows.said, sentence.jars)
}
