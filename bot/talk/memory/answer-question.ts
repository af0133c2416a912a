import type { Path } from '../../calls/signatures.ts'
import type { Sentence } from '../bits/bit.ts'
import { jarCalled, jarsOf, runningAmong } from '../bits/jars-of.ts'
import { frames } from '../frames/frames.ts'
import { halfNamed } from '../frames/half-of-day.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { tryFrame } from '../frames/score.ts'
import { symptomIn } from '../frames/symptoms.ts'
import { DEEDS } from '../lexicon/lexicon.ts'
import { askedAgain, type Question, ranOrAsked, run } from './asked-again.ts'
import { isAskedBack } from './asks-back.ts'
import { withOption } from './change-call.ts'
import { isGoAhead } from './go-ahead.ts'
import { isRead, lackedByFrame, lackedText } from './lacked.ts'
import { otherKind } from './other-kind.ts'
import { isNumberAlone, placeSaid } from './place-said.ts'
import { plantNamedWithin } from './plant-answered.ts'
import { NOTHING_SAID } from './remembered.ts'
import { deedsTold, isOnly } from './step-rules.ts'
import { tasteTold } from './taste-told.ts'
import { usualKind } from './usual-kind.ts'

const MOST_ANSWER = 16

/** `The ginger one, I should have said so at once`: of a longer answer only the jar counts, where it tells and asks nothing else. */
function jarNamedAtLength({ bits, typed, jars, has }: Sentence, choices: readonly CallRead[]): CallRead | null {
  const [only, another] = bits
  if (only === undefined || another !== undefined || (only.kind !== 'plant' && only.kind !== 'jar')) return null
  if (
    typed.tokens.length > MOST_ANSWER ||
    typed.text.includes('?') ||
    has(...DEEDS, 'asking', 'why', 'remind', 'be_quiet', 'show_jar')
  )
    return null
  if (/\b(?:not|neither|except|non|tranne)\b/i.test(typed.text)) return null
  const named = new Set(jarsOf(only, jars).flatMap(({ name, id }) => [name, `#${id}`]))
  const meant = choices.filter(({ options }) => options.jar !== undefined && named.has(options.jar))
  return meant.length === 1 ? meant[0]! : null
}

/** One of the answers that were offered, by its place or by a word of it. */
function chosen(sentence: Sentence, { choices, about, call }: Question): CallRead | null {
  const { typed, bits, jars } = sentence
  // A jar is lacking: any that runs may be told by its age.
  if (choices.length === 0 && about.kind === 'lacks' && about.option === 'jar')
    return byAge(
      typed.tokens.map(({ text }) => text),
      runningAmong(jars).map(({ name }) => withOption(call, 'jar', name)),
      jars,
    )
  const words = typed.tokens.filter(({ kind }) => kind !== 'sign').map(({ text }) => text)
  if (words.length === 0) return null
  const place = choices.length > 1 ? placeSaid(sentence, choices.length) : null
  if (place !== null) return place.at === null ? null : choices[place.at]!
  if (words.length > 5) return about.kind === 'which_jar' ? jarNamedAtLength(sentence, choices) : null
  const half = choices.length === 2 && choices[1]!.options.time !== undefined ? halfNamed(words) : null
  if (half !== null) return choices[half === 'am' ? 0 : 1]!
  const differing = choices.filter(({ options, command }) =>
    [command, ...Object.values(options)].some((text) =>
      words.some((word) => word.length > 2 && text.toLowerCase().split(/\s+/).includes(word)),
    ),
  )
  const plant = bits.find(({ kind }) => kind === 'plant' || kind === 'jar')
  const named = plant === undefined ? [] : jarsOf(plant, jars).map(({ name }) => name.toLowerCase())
  const byPlant =
    plant === undefined || about.kind !== 'which_jar'
      ? []
      : choices.filter(({ options }) =>
          Object.values(options).some(
            (text) =>
              named.includes(text.toLowerCase()) ||
              text.toLowerCase().startsWith(plant.text.toLowerCase().replace(/s$/, '')),
          ),
        )
  if (byPlant.length === 1) return byPlant[0]!
  if (differing.length === 1) return differing[0]!
  return byAge(words, choices, jars)
}

/** `The older of the two`: by when they were begun; null where two were on one day. */
function byAge(words: readonly string[], choices: readonly CallRead[], jars: Sentence['jars']): CallRead | null {
  const way = words.some((word) => OLDER.test(word)) ? 1 : words.some((word) => NEWER.test(word)) ? -1 : 0
  const begun = choices.map((call) => ({ call, on: jarCalled(call.options.jar, jars)?.startedOn ?? '' }))
  const [first, second] = begun.toSorted((one, other) => way * one.on.localeCompare(other.on))
  if (way === 0 || first === undefined || begun.some(({ on }) => on === '') || first.on === second?.on) return null
  return first.call
}

const OLDER = /^(?:older|oldest|elder|eldest|vecchi[oa])$/
const NEWER = /^(?:newer|newest|younger|youngest|latest|nuov[oa]|recente)$/

/** A place by its capital letters, alone. */
const PLACE = /^\p{Lu}[\p{L}’'-]+(?:\s\p{Lu}[\p{L}’'-]+){0,2}$/u

/** From here on a frame is meant. */
const LEAST = 2.5

/** `What’s on?`, `shook the lemon`: a call of its own, by its words, which answers nothing that was asked of another. */
function isOwnCall(sentence: Sentence, asked: Path): boolean {
  const { bits, has } = sentence
  if (bits.length === 0 && has('thanks', 'greeting')) return true
  // Amounts and things alone answer; with them a deed has to be told.
  if (bits.length > 0 && !has(...DEEDS, 'what_is_on', 'show_jar', 'remind', 'be_quiet')) return false
  return frames.some((frame) => {
    if (frame.command === asked) return false
    const tried = tryFrame(frame, sentence)
    return tried !== null && tried.score >= LEAST && tried.lacks.length === 0 && tried.unused.length === 0
  })
}

/** `The one that I bottled` tells which. */
const TELLS_WHICH = /^(?:the|that|my|our|it|it[’']?s|il|la|lo|quello|quella)\b/i

/** `Show me the hedgerow`, `gave the plums to Sue`: asked or told of a jar, where another deed was asked about. */
const looksElsewhere = (sentence: Sentence, asked: Path): boolean =>
  sentence.bits.length > 0 && !TELLS_WHICH.test(sentence.typed.text.trim()) && isOwnCall(sentence, asked)

/** What a sentence says to the question that is open; null where it says nothing to it. */
export function answered(sentence: Sentence, question: Question | null): TalkReading | null {
  if (question === null) return null
  const { about, call, choices } = question
  const isShort = sentence.typed.tokens.length <= 6
  if (about.kind === 'less_of_it')
    return isGoAhead(sentence) ? run(choices[0]!) : otherKind(sentence, call, NOTHING_SAID)
  if (about.kind === 'lacks' && about.option === 'of' && call.options.of !== undefined) {
    const usual = usualKind(call.options.of, sentence.typed.text, (text) => isRead(call.command, 'of', text))
    if (usual === 'unsure') return askedAgain(question)
    const ran = usual === null ? null : run(withOption(call, 'of', usual.of))
    if (usual !== null && ran?.kind === 'call') return { ...ran, kindTaken: usual.kind }
  }
  if (isShort && sentence.has('no') && !sentence.has('yes') && sentence.bits.length === 0)
    return { kind: 'last', what: 'let_be' }
  // A place where nothing stands answers nothing: what was asked is asked once more.
  const place = isNumberAlone(sentence) ? null : placeSaid(sentence, choices.length)
  if (place !== null && place.at === null) return askedAgain(question)
  // Each of several is told by itself: what it takes is asked for there.
  if (
    about.kind === 'which_done' &&
    isShort &&
    sentence.has('both_of_them', 'all_of_them') &&
    call.options.jar !== 'all'
  )
    return question
  const done = about.kind === 'which_done' ? choices.filter(({ command }) => deedsTold(sentence).includes(command)) : []
  if (done.length === 1) return ranOrAsked(done[0]!, about)
  const isOff = isAskedBack(about, sentence) || looksElsewhere(sentence, call.command)
  const choice = isOff ? null : chosen(sentence, question)
  if (choice !== null && about.kind === 'undo_jar') return { kind: 'only_typed', call: choice }
  if (choice !== null) return ranOrAsked(choice, about)
  if (
    (about.kind === 'which_jar' || about.kind === 'undo_jar') &&
    isShort &&
    isOnly(sentence.typed, sentence.spans, 'yes') &&
    sentence.bits.length === 0
  )
    return question
  // `Ok and now sweeten it` takes nothing back.
  const isYes = isOnly(sentence.typed, sentence.spans, 'yes') || /\b(?:undo|take|annull)/i.test(sentence.typed.text)
  const isOther = about.kind.startsWith('undo_') && !isYes
  if (isShort && !isOther && sentence.has('yes', 'done_word') && choices.length === 1 && sentence.bits.length === 0)
    return run(choices[0]!)
  if (about.kind === 'which_jar' && sentence.has('all_of_them') && call.command === 'jar shake')
    return run(withOption(call, 'jar', 'all'))
  // Asked for a city: another one that is named, alone.
  if (about.kind === 'zone_of') {
    const zone = sentence.typed.text.trim()
    if (isRead('settings', 'zone', zone)) return run(withOption(call, 'zone', zone))
    return PLACE.test(zone) ? { ...question, about: { kind: 'zone_of', place: zone } } : null
  }
  // `Start it`: the plan that was asked about is shown as it would be, and none that was made before.
  if ((about.kind === 'number' || about.kind === 'which_reading') && call.command === 'plan' && isGoAhead(sentence))
    return choices.length === 1 ? run(choices[0]!) : question
  if (about.kind !== 'lacks') return null
  // `Lovely`: how it tastes is told without a mark.
  const taste = about.option === 'rating' ? tasteTold(sentence) : null
  if (taste !== null) return run(withOption(call, 'note', taste))
  // Said to this, and to nothing that was offered before: nothing is called so, and what was asked stays open.
  if (isGoAhead(sentence)) return askedAgain(question)
  const { of } = call.options
  const named =
    about.option === 'of' && of !== undefined && !sentence.bits.some(({ value }) => value > 0)
      ? plantNamedWithin(of, sentence.typed.text, (text) => isRead(call.command, 'of', text))
      : null
  if (named !== null) return run(withOption(call, 'of', named))
  if (isOwnCall(sentence, call.command)) return null
  // `Gave a bottle to the neighbour` is no number of bottles that were filled.
  if (sentence.has('gave_away', 'opened') && !/^(?:bottles|jar (?:open|note|taste))$/.test(call.command)) return null
  // `It’s gone brown` is no plant’s name.
  if (about.option === 'of' && symptomIn(sentence) !== null) return null
  const more = lackedByFrame(sentence, call)
  if (more !== null) return run({ command: call.command, options: { ...call.options, ...more } })
  const text = lackedText(sentence, about.option, call)
  return text === null ? null : run(withOption(call, about.option, text))
}
