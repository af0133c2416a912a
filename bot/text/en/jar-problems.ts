import type { DangerKind } from '../../../core/jar/limits/judge-jar.ts'
import type { JarProblems } from '../../../core/jar/state/problems.ts'
import type { Weakness } from '../../../core/liquid/keeping.ts'
import { dayFromIso, type IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import { pouredMl } from '../../../core/recipe/tool-precision.ts'
import { call } from '../../calls/call.ts'
import { lineOf, quoted } from '../../calls/write-line.ts'
import type { Format } from '../format.ts'
import type { Written } from '../language.ts'
import type { SafetyProblems } from '../messages/safety-problems.ts'
import { didWords, untilText } from './jar-entries.ts'
import { listed } from './phrases.ts'

const on = (iso: IsoDay, format: Format): string => `on ${format.day(dayFromIso(iso))}`

type CannotFollow = JarProblems['cannot_follow']

const cannotFollow = ({ jar, did, stage, first, day }: CannotFollow, format: Format): string => {
  const when = day === null ? '' : ` ${on(day, format)}`
  const name = quoted(jar)
  if (first !== null) {
    const orDiscard = did === 'emptied' ? `, or throw it away with /jar discard ${name}` : ''
    return `The ${jar} jar is still ${stage}: strain it first${orDiscard}.`
  }
  if (did === 'shaken' && stage !== 'emptied' && stage !== 'discarded') {
    return `The ${jar} jar was strained${when} and needs no more shaking, so nothing was recorded.`
  }
  if (did === 'started') return `The ${jar} jar was started${when} already; give a new one another name.`
  if (stage === 'emptied' || stage === 'discarded') {
    const what = `The ${jar} jar was ${didWords[stage]}${when}: it can only be tasted or renamed`
    return `${what}. If it is not gone, /jar undo ${name} takes that back, once it is the last entry.`
  }
  if (did === 'strained') {
    return `The ${jar} jar was strained${when} already: /jar correct ${name} puts a wrong measurement right, /jar filter ${name} takes another.`
  }
  return `The ${jar} jar was strained${when}: no plants go in after that. Start a new jar with them; spirit, water and sugar may still be added.`
}

const NAME_WRONG: Readonly<Record<JarProblems['bad_jar_name']['why'], string>> = {
  empty: 'give it at least one letter or sign that can be seen',
  too_long: 'at most 40 characters',
  control: 'no line ends and no characters that cannot be seen',
  all: '“all” means every jar',
  begins: 'it may not begin with # or /',
  colon: 'it may not end in a colon',
}

const MOST_NAMES = 5

/** `lemon and lemon peel begin so`. */
const beginText = (names: readonly string[]): string => {
  const named = names.slice(0, MOST_NAMES)
  const more = names.length - named.length
  return `${listed(more === 0 ? named : [...named, `${more} more`])} begin so`
}

/** What was wrong with what was said of a jar. */
export const jarProblems = {
  cannot_follow: cannotFollow,
  before_straining: ({ jar, did, day }, format) =>
    `The ${jar} jar cannot have been ${didWords[did]} before that: it was strained ${on(day, format)}; give a day from then on.`,
  in_the_way: ({ jar, did, day, later, laterDay, laterSeq }, format) =>
    `The ${jar} jar cannot have been ${didWords[did]} ${on(day, format)}: it was ${didWords[later]} ${on(laterDay, format)} (entry ${laterSeq}).` +
    ' Put that entry right first, or give another day.',
  sweet_strength: ({ sugarGPerL, mostGPerL }, format) =>
    `Sugar spoils a hydrometer’s reading: this holds about ${format.sweetness(sugarGPerL)}, and only up to ${mostGPerL} g/L can I` +
    ' put the reading right. Leave strength: out and I estimate it.',
  more_than_went_in: ({ jar, measuredMl, mostMl }, format) =>
    `${format.volume(measuredMl)} is more than can have been in the ${jar} jar, ${format.pour(mostMl)} at most;` +
    ' measure again, or put right with /jar correct what went in.',
  stronger_than_went_in: ({ jar, measuredMl, abvPercent, mostAbvPercent }, format) =>
    `${format.volume(measuredMl)} at ${format.strength(abvPercent)} holds more alcohol than went into the ${jar} jar:` +
    ` at most ${format.plain(mostAbvPercent, 1)} % vol in that much. Read again, or put right with /jar correct what went in.`,
  stronger_than_spirit: ({ jar, abvPercent, mostAbvPercent }, format) =>
    `${format.strength(abvPercent)} is more than can have been in the ${jar} jar: all that went in makes ${format.plain(mostAbvPercent, 1)} % vol, and plants only weaken that.` +
    ' Read again, or put right with /jar correct what went in.',
  other_kind: ({ jar, seq, kind, by }) =>
    `Entry ${seq} of the ${jar} jar says that it was ${didWords[kind]}, and cannot say that it was ${didWords[by]}; take it back with /jar undo ${quoted(jar)}.`,
  before_start: ({ jar, day }, format) =>
    `The ${jar} jar was not there yet ${on(day, format)}; give a day from its start on.`,
  in_the_future: ({ typed }) => `“${typed}” has not come yet; say when it was, or leave when: out for now.`,
  no_such_jar: ({ typed, nearest, begun, several = [] }) => {
    if (begun?.line !== undefined) return `You have no jar “${typed}”. If it’s ${begun.name}, type: ${begun.line}`
    if (begun) return `You have no jar “${typed}”. Did you mean ${begun.name}?`
    if (several.length > 0) return `You have no jar “${typed}”; ${beginText(several)}: which one?`
    if (nearest !== null) return `You have no jar “${typed}”; did you mean ${nearest}?`
    return typed.toLowerCase() === 'all'
      ? 'Only /jar shake and /jar later take all; name one jar, /jar list shows yours.'
      : `You have no jar “${typed}”; /jar list shows yours.`
  },
  jar_begins_so: ({ typed, name }) =>
    `There is no jar “${typed}”; there is ${name}. What takes something away wants the whole name, so nothing was changed.`,
  jar_too_weak: ({ jar, volumeMl, abvPercent, sugarGPerL, toAbvPercent, toSugarGPerL }, format) => {
    const own = `${format.plain(abvPercent, 1)} % vol`
    const sweet = sugarGPerL >= 0.5 ? ` sweetness:${Math.round(sugarGPerL)} g/L` : ''
    const line =
      `/adjust liqueur:${pouredMl(volumeMl)} ml strength:${format.plain(abvPercent, 1)}%${sweet}` +
      ` to-strength:${format.plain(toAbvPercent, 1)}%${toSugarGPerL === null ? '' : ` to-sweetness:${format.plain(toSugarGPerL, 0)} g/L`}`
    return `The ${jar} jar has ${own}, and water and sugar only lower that; ${format.plain(toAbvPercent, 1)} % vol takes spirit: ${line} spirit-strength:95%, with that of yours.`
  },
  no_jars: () => 'You have no jar yet; /jar start begins one, /plan works out what goes in.',
  none_to_remind: () => 'No jar of yours asks for anything any more, so there is nothing to put off.',
  none_due_until: (until, format) =>
    `No jar of yours asks for anything before ${untilText(until, format)}, so there is nothing to put off.`,
  no_bottle_filled: ({ jar, leftMl, bottleMl }, format) =>
    `About ${format.volume(leftMl)} of the ${jar} jar are not in bottles yet, which does not fill one of ${format.pour(bottleMl)}; say how many you filled, as in bottles:1 x ${pouredMl(bottleMl)} ml.`,
  bottles_too_many: ({ jar, bottlesMl, leftMl }, format) =>
    `These bottles hold ${format.pour(bottlesMl)}, but only about ${format.volume(leftMl)} of the ${jar} jar are not in bottles yet; nothing was recorded. /jar correct ${quoted(jar)} puts a wrong measurement or an earlier bottling right.`,
  jar_name_taken: ({ name, free }) => `You have a jar “${name}” already; call this one “${free}”, or as you like.`,
  bad_jar_name: ({ typed, why }) => `“${typed}” cannot be a jar’s name: ${NAME_WRONG[why]}.`,
  nothing_to_undo: ({ jar }) => `There is nothing left to take back on the ${jar} jar.`,
  no_such_entry: ({ jar, seq }) => `The ${jar} jar has no entry ${seq}; /jar show ${quoted(jar)} lists them.`,
  too_many_jars: ({ most }) => `You have ${most} running jars, which is as many as I keep; empty or discard one first.`,
  too_many_entries: ({ jar, most }) =>
    `The ${jar} jar has ${most} entries, which is as many as I keep; it can still be emptied or thrown away.`,
  jar_full: ({ jar }) =>
    `What's written about the ${jar} jar is as much as I keep for one. It can still be emptied or thrown away.`,
  too_many_changes: ({ jar, most }) =>
    `The ${jar} jar was filled, measured and sweetened ${most} times, which is as often as I reckon with.`,
  note_too_long: ({ length, most }) => `This note has ${length} characters; at most ${most} are kept.`,
  no_rhythm: ({ typed }) => `“${typed}” is no rhythm I know; give daily, every other day, or off.`,
  no_format: ({ typed }) =>
    `“${typed}” is no kind of file that I make; say json, which I can take in again, or csv, for a spreadsheet.`,
  no_place: ({ typed }) => `“${typed}” is no place I know. Say here or private.`,
  place_elsewhere: ({ typed, isTerminal }) =>
    isTerminal
      ? `“${typed}” is a place in the chat rooms; in this terminal reminders come here.`
      : `I can’t remind you at “${typed}” from here. Say here or private.`,
  bad_rating: ({ typed }) => `“${typed}” is no rating; give a whole number from 1 (poor) to 5 (superb).`,
  not_ahead_today: ({ typed }) =>
    `“${typed}” leaves nothing of today; give a time such as until:23:30, or until:tomorrow.`,
  not_ahead: ({ typed }) => `“${typed}” is not ahead; give a day after today, as in until:5 January or “in 3 days”.`,
  pause_long: ({ typed, until }, format) =>
    `The next “${typed}” is ${format.day(dayFromIso(until))}, more than three months of silence; if that is meant, add the year, and pause-until:off ends it early.`,
  bad_entry_number: ({ typed }) => `“${typed}” is no entry’s number; /jar show counts them 1, 2, 3 …`,
  none_to_shake: () => 'No jar of yours is steeping, so there is none to shake.',
  nothing_to_correct: ({ jar, seq, options }) => {
    const said = listed(options.map((option) => `${option}:`))
    return seq === null
      ? `No entry of the ${jar} jar says ${said}; /jar show ${quoted(jar)} lists what is there.`
      : `Entry ${seq} of the ${jar} jar does not say ${said}; /jar show ${quoted(jar)} lists what it does.`
  },
  compare_two: ({ typed }) =>
    `“${typed}” does not name two batches; join two of yours with a +, as in compare:lemon + walnut.`,
} satisfies Written<JarProblems>

const LEAST_SUGAR_G_PER_L = 1

const percent = (value: number): string => `${Number(value.toFixed(1))} % vol`

/** `9.7 % vol with 12 g/L of sugar`, `17.2 % vol, perhaps only 13.8 % vol,`. */
export const weakText = ({ abvPercent, lowAbvPercent, sugarGPerL }: Weakness): string => {
  const strength =
    lowAbvPercent === null ? percent(abvPercent) : `${percent(abvPercent)}, perhaps only ${percent(lowAbvPercent)}`
  return sugarGPerL < LEAST_SUGAR_G_PER_L ? strength : `${strength} with ${Math.round(sugarGPerL)} g/L of sugar`
}

const makeItKeep = (fix: string | null): string =>
  fix === null ? 'If it fizzes or smells off, throw it away.' : `Make it keep first (${fix}).`

/** What is wrong with a jar, in a sentence. */
const WRONG: { readonly [Kind in DangerKind]: string } = {
  refused_plant: 'is in it, and that’s not for drinking',
  refused_spirit: 'is in it, and that’s not for drinking',
  unknown_plant: 'is in it, and I don’t know that as food',
  over_ceiling: 'holds more of something than is safe',
  ferments: 'can ferment, and a closed bottle of it can burst',
  undecided: 'may or may not keep',
}

/** Why something is not planned or not done, with the line that is right. */
export const safetyProblems = {
  plan_ferments: ({ where, line, ...weak }) => {
    const what =
      where === 'jar'
        ? `It would steep at ${weakText(weak)}. That can ferment, and a closed jar of it can burst.`
        : `At ${weakText(weak)} it can ferment, and a closed bottle of it can burst.`
    return line === null ? `${what} It takes more spirit, or less of the rest.` : `${what} This would keep: ${line}`
  },
  already_poured: ({ jar, line, ...weak }) =>
    `That makes ${jar} ${weakText(weak)}, which can ferment and burst the jar. Nothing’s recorded yet. Is it in already? Then say so: ${line}`,
  bottle_ferments: ({ jar, fix, line, ...weak }) =>
    `${jar} is at ${weakText(weak)}. That can ferment and burst the bottles. ${makeItKeep(fix)} In bottles already? Then say so: ${line}`,
  label_ferments: ({ jar, fix, line, ...weak }) =>
    `${jar} is at ${weakText(weak)}. That can ferment and burst the bottles, so don’t give it away. ${makeItKeep(fix)} In bottles already? Then this prints a label that says so: ${line}`,
  jar_not_for_drinking: ({ jar, kind, typed }) =>
    `${typed === null ? jar : `${jar}: “${typed}”`} ${WRONG[kind]}. Don’t drink it or give it away. What to do: ${lineOf(call('jar show', { jar }))}`,
} satisfies Written<SafetyProblems>
