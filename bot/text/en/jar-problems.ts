import type { DangerKind } from '../../../core/jar/limits/judge-jar.ts'
import type { JarProblems } from '../../../core/jar/state/problems.ts'
import { KEEPS_ABV_PERCENT, type Weakness } from '../../../core/liquid/keeping.ts'
import { dayFromIso, type IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import { call } from '../../calls/call.ts'
import { lineOf, lineTyped, quoted, shortLineTyped } from '../../calls/write-line.ts'
import type { Format } from '../format.ts'
import type { Written } from '../language.ts'
import type { SafetyProblems } from '../messages/safety-problems.ts'
import { didWords, untilText } from './jar-entries.ts'
import { hasHave, isAre, isnt, itThem, wasnt, wasWere } from './jar-verbs.ts'
import { finingNames } from './label.ts'
import { either, listed } from './phrases.ts'
import { toldText } from './told-of-jar.ts'
import { nameText, vesselText } from './words.ts'

/** The first so many of what is left. */
function soMany(left: JarProblems['bottles_of_sizes']['left'], wanted: number): string {
  let lacking = wanted
  const taken = left.flatMap(({ count, volumeMl }) => {
    const now = Math.min(count, lacking)
    lacking -= now
    return now === 0 ? [] : [`${now} x ${volumeMl} ml`]
  })
  return taken.join(' + ')
}

/** Strengths nearer than that are told as one, % vol. */
const TOLD_APART_PERCENT = 1

const on = (iso: IsoDay, format: Format): string => `on ${format.day(dayFromIso(iso))}`

type CannotFollow = JarProblems['cannot_follow']

const toShow = (jar: string): string => lineOf(call('jar show', { jar }))

const toUndo = (jar: string): string => lineOf(call('jar undo', { jar }))

const cannotFollow = ({ jar, did, stage, first, day, into }: CannotFollow, format: Format): string => {
  const when = day === null ? '' : ` ${on(day, format)}`
  const name = quoted(jar)
  if (first !== null) {
    const orDiscard =
      did === 'emptied'
        ? ` Strain ${itThem(jar)} first, or throw ${itThem(jar)} away:`
        : ` Strain ${itThem(jar)} first:`
    return `${jar} ${isAre(jar)} still ${stage}.${orDiscard} ${did === 'emptied' ? `/jar discard ${name}` : `/jar strain ${name}`}`
  }
  if (did === 'shaken' && stage !== 'emptied' && stage !== 'discarded') {
    return `No more shaking: ${jar} ${wasWere(jar)} strained${when}. Nothing was recorded.`
  }
  if (did === 'taken_out' && stage !== 'emptied' && stage !== 'discarded') {
    return `${jar} ${isAre(jar)} strained, so there’s nothing left in it to lift out.`
  }
  if ((did === 'parted' || did === 'poured_in') && stage !== 'emptied' && stage !== 'discarded') {
    return `${jar} ${wasWere(jar)} bottled${when}, so I can’t pour it from jar to jar any more.`
  }
  if (into !== undefined && did !== 'started') {
    return `${jar} ${wasWere(jar)} all poured into ${into}${when}. Is it still by itself? To undo that: ${toUndo(jar)}`
  }
  if (did === 'started') return `You already started ${jar}${when}. What else could this one be called?`
  if (stage === 'emptied' || stage === 'discarded') {
    return `You ${stage === 'emptied' ? 'finished' : 'threw away'} ${jar}${when}. Still got some? To undo that: ${toUndo(jar)}`
  }
  if (did === 'strained') {
    return `You strained ${jar}${when}. Is there something to fix? See ${toShow(jar)}`
  }
  return `${jar} ${wasWere(jar)} strained${when}, so it takes no more plants. Spirit, water and sugar can still go in.`
}

const NAME_WRONG: Readonly<Record<JarProblems['bad_jar_name']['why'], string>> = {
  empty: 'It needs at least one letter.',
  too_long: 'It’s longer than 40 characters.',
  control: 'There are invisible characters in it.',
  all: '“all” means every jar.',
  begins: 'It starts with # or /.',
  colon: 'It ends in a colon.',
}

const MOST_NAMES = 5

/** Names of so many letters together stand in two lines of a phone. */
const MOST_LISTED = 80

/** `lemon or lemon peel`. */
const oneOf = (names: readonly string[]): string => {
  const named = names.slice(0, MOST_NAMES)
  const more = names.length - named.length
  return either(more === 0 ? named : [...named, `${more} more`])
}

/** What was wrong with what was said of a jar. */
export const jarProblems = {
  cannot_follow: cannotFollow,
  pour_too_much: ({ jar, volumeMl }, format) => `There’s only about ${format.round.volume(volumeMl.value)} in ${jar}.`,
  split_all: ({ jar }) => `That’s all there is in ${jar}. Pour less of it into the new jar.`,
  pour_same_jar: ({ jar }) => `${jar} ${isAre(jar)} already in ${jar}. Which other jar goes in?`,
  pour_where: ({ jar, other, free, line }) =>
    `Some of ${jar} and ${other} makes a jar of its own. Give it a name, such as ${free}${line == null ? '.' : `: ${line}`}`,
  undo_other_first: ({ jar, other }) =>
    `${jar} ${wasWere(jar)} poured together with ${other}, and ${other} ${hasHave(other)} moved on since. Undo that first: ${lineOf(call('jar undo', { jar: other }))}`,
  two_batches: ({ jar, other }) =>
    `${jar} ${hasHave(jar)} ${other} poured in, and I can only share one batch. Next time, share them before you pour them together.`,
  second_steep_unshared: ({ jar, other }) =>
    `${jar} is a second steep on the plants of ${other}: it has no recipe of its own. Share or plan ${other} instead.`,
  second_not_strained: ({ jar }) =>
    `${jar} ${isAre(jar)} still steeping. Strain ${itThem(jar)} first: /jar strain ${quoted(jar)}`,
  second_sugared: ({ jar }) =>
    `There’s still sugar on that fruit. Pour back what it drew first: ${lineTyped('jar sweeten', { jar, 'from-fruit': 'yes' })}`,
  second_taken: ({ jar, by, line }) =>
    `The plants of ${jar} are already in ${by}.${line == null ? '' : ` For a third steep: ${line}`}`,
  second_begun: ({ jar, by }) =>
    `The plants of ${jar} are in ${by} now, and what they soaked up counts there. If that never happened: ${lineOf(call('jar undo', { jar: by }))}`,
  second_begun_since: ({ jar, by }) =>
    `The plants of ${jar} are in ${by} now, and what they soaked up counts there. Undo that first: ${lineOf(call('jar undo', { jar: by }))}`,
  not_in_jar: ({ jar, typed, plants }) =>
    plants.length === 0
      ? `There’s nothing in ${jar} to lift out.`
      : `There’s no ${typed} in ${jar}. It has ${listed(plants.map(nameText))}.`,
  part_lifted: ({ jar, typed, plant }) =>
    `I can’t note part of the ${nameText(plant)} coming out of ${jar}, only all of it. Once it’s all out: ${lineTyped('jar take-out', { jar, of: typed })}`,
  no_fruit: ({ jar }) => `${jar} had no plants in it, so there’s no fruit to put sugar on.`,
  fruit_not_sugared: ({ jar }, format) =>
    `There’s no sugar on the fruit of ${jar} yet. If you’ve put some on: ${format.example(lineTyped('jar sweeten', { jar, sugar: '250 g', 'on-fruit': 'yes' }))}`,
  more_than_in_fruit: ({ measuredMl, mostMl }, format) =>
    `${format.round.volume(measuredMl.value)} is more than the fruit can give: ${format.round.volume(mostMl)} at most with its sugar. How much was it?`,
  no_added_as: ({ typed, line }) =>
    `“${typed}” is neither a layer nor a top-up. Which is it?${line == null ? '' : ` If it’s neither: ${line}`}`,
  no_fining: ({ typed, ids }) =>
    `I don’t know the fining “${typed}”. Which one was it: ${either(ids.map((id) => finingNames[id]))}?`,
  before_straining: ({ jar, day, line }, format) =>
    `${jar} ${wasWere(jar)} strained ${on(day, format)}, so this came later. Which day was it?${line == null ? '' : ` For example: ${line}`}`,
  in_the_way: ({ jar, later, laterDay, laterSeq }, format) =>
    `${jar} ${wasWere(jar)} ${didWords[later]} ${on(laterDay, format)} (entry ${laterSeq}). Is that day wrong? See ${toShow(jar)}`,
  sweet_strength: ({ abvPercent, line }, format) =>
    `So much is dissolved in it that a hydrometer can’t show ${format.round.strength(abvPercent)}. If a lab says so, say “really ${format.round.strength(abvPercent)}”. If not, leave it out and I’ll work it out${line == null ? '.' : `: ${line}`}`,
  more_than_went_in: ({ jar, measuredMl, mostMl }, format) =>
    `${format.round.volume(measuredMl.value)} is more than went into ${jar} (${format.round.volume(mostMl)} at most).` +
    ` Is there an amount to fix? See ${toShow(jar)}`,
  stronger_than_went_in: (values, format) => {
    const { jar, measuredMl, abvPercent, readPercent, mostAbvPercent, line = null } = values
    const [read, meant] = [format.round.strength(readPercent), format.round.strength(abvPercent)]
    const isHidden = abvPercent.value - readPercent.value >= TOLD_APART_PERCENT
    const hidden = isHidden ? ` Read through its sugar, that means ${meant}.` : ''
    return (
      `${format.round.volume(measuredMl.value)} at ${read} has more alcohol than went into ${jar}.${hidden}` +
      ` It can be ${format.wished.strength(mostAbvPercent, 1)} at most.` +
      (isHidden && line !== null
        ? ` Is the reading right? Without it I’ll work it out: ${line}`
        : ` Is there an amount to fix? See ${toShow(jar)}`)
    )
  },
  stronger_than_spirit: ({ jar, abvPercent, mostAbvPercent }, format) =>
    `${format.round.strength(abvPercent)} is stronger than what went into ${jar}: ${format.wished.strength(mostAbvPercent, 1)} at most.` +
    ` Is there a strength to fix? See ${toShow(jar)}`,
  other_kind: ({ jar, seq, kind, by }) =>
    `Entry ${seq} says ${jar} ${wasWere(jar)} ${didWords[kind]}, not ${didWords[by]}. To undo the last entry: ${toUndo(jar)}`,
  before_start: ({ jar, day }, format) => `${jar} ${wasnt(jar)} started yet ${on(day, format)}. Which day was it?`,
  in_the_future: ({ typed, line }) =>
    `“${typed}” hasn’t come yet. Which day was it?${line == null ? '' : ` If it’s today: ${line}`}`,
  no_such_bottles: ({ jar, volumeMl, sizesMl }, format) => {
    const pour = (ml: number): string => vesselText(ml, format)
    return sizesMl.length === 0
      ? `${jar} ${isnt(jar)} in bottles yet. If you’ve filled some: ${lineTyped('jar bottle', { jar })}`
      : `${jar} has no bottles of ${pour(volumeMl)}, only of ${either(sizesMl.map(pour))}. Which ones, and how many?`
  },
  bottles_not_left: ({ jar, left, volumeMl }, format) =>
    left === 0
      ? `There are no ${vesselText(volumeMl, format)} bottles of ${jar} left. Was one counted twice? See ${toShow(jar)}`
      : `There ${left === 1 ? 'is' : 'are'} only ${left} of the ${vesselText(volumeMl, format)} bottles of ${jar} left. How many was it?`,
  bottles_of_sizes: ({ jar, use, left, wanted }, format) => {
    const there = listed(left.map(({ count, volumeMl }) => `${count} of ${vesselText(volumeMl, format)}`))
    return `Which sizes? There’s ${there} left of ${jar}. For example: ${lineTyped('bottles', { jar, [use]: soMany(left, wanted) })}`
  },
  no_such_jar: ({ typed, nearest, begun, several = [], all = [] }) => {
    if (begun?.line !== undefined) return `Did you mean ${begun.name}? Type: ${begun.line}`
    if (begun) return `You have no jar “${typed}”. Did you mean ${begun.name}?`
    if (several.length > 0) return `Which one: ${oneOf(several)}?`
    if (nearest !== null) return `You have no jar “${typed}”. Did you mean ${nearest}?`
    if (typed.toLowerCase() === 'all') return 'Which jar? I can only do this one by one. See /jar list'
    if (all.length === 0 || all.join().length > MOST_LISTED)
      return `You have no jar “${typed}”. See which ones you have: /jar list`
    return `You have no jar “${typed}”. ${all.length === 1 ? 'Yours is' : 'Yours are'} ${listed(all)}.`
  },
  jar_begins_so: ({ name }) => `Nothing was changed. For this I need the jar’s full name: ${name}`,
  jar_too_weak: ({ jar, toAbvPercent, line }, format) => {
    const what = `Only more spirit gets ${jar} up to ${format.wished.strength(toAbvPercent, 1)}.`
    return line === undefined ? what : `${what} To see how much: ${line}`
  },
  no_jars: (_values, format) => `You have no jars yet. What are you making? ${format?.example(PLAN_LINE) ?? PLAN_LINE}`,
  none_to_remind: () => 'Nothing is due, so there’s nothing to postpone.',
  none_due_until: (until, format) =>
    `Nothing is due before ${untilText(until, format)}, so there’s nothing to postpone.`,
  no_bottle_filled: ({ jar, leftMl, bottleMl }, format) =>
    `There’s only about ${format.round.volume(leftMl.value)} of ${jar} left. That doesn’t fill a bottle of ${format.round.volume(bottleMl)}. How many did you fill?`,
  bottles_too_many: ({ jar, bottlesMl, leftMl }, format) =>
    `That’s ${format.round.volume(bottlesMl)}, but only about ${format.round.volume(leftMl.value)} of ${jar} is left. Nothing was recorded.` +
    ` Is there an amount to fix? See ${toShow(jar)}`,
  jar_name_taken: ({ name, free }) => `You already have a jar called “${name}”. How about “${free}”?`,
  bad_jar_name: ({ typed, why }) => `“${typed}” can’t be a jar’s name. ${NAME_WRONG[why]}`,
  nothing_to_undo: ({ jar }) => `There’s nothing left to undo on ${jar}.`,
  no_such_entry: ({ jar, seq }) => `${jar} has no entry ${seq}. See which ones it has: ${toShow(jar)}`,
  too_many_jars: ({ most }) =>
    `You have ${most} jars on the go, and I can’t keep more. Which one is done? See /jar list`,
  too_many_entries: ({ jar, most }) =>
    `${jar} has ${most} entries, and I can’t keep more. You can still finish it or throw it away.`,
  jar_full: ({ jar }) => `I can’t keep any more about ${jar}. You can still finish it or throw it away.`,
  too_many_changes: ({ jar, most }) =>
    `You’ve filled, measured and sweetened ${jar} ${most} times. I can’t follow any more.`,
  note_too_long: ({ length, most }) => `That’s ${length} characters long. Could you say it in ${most}?`,
  no_rhythm: ({ typed }) =>
    `“${typed}”: how often is that? I can do daily, every other day, or off. For example: ${lineTyped('reminders', { shake: 'every other day' })}`,
  no_format: ({ typed }) => `“${typed}”: is that json, which I can read back, or csv, for a spreadsheet?`,
  no_place: ({ typed }) => `I don’t know the place “${typed}”. Here or private?`,
  place_elsewhere: ({ typed, isTerminal }) =>
    isTerminal
      ? `“${typed}” only works in Discord. In this window, reminders come here.`
      : `I can’t remind you at “${typed}” from here. Here or private?`,
  bad_rating: ({ typed }) => `“${typed}”: how good is that, from 1 (poor) to 5 (superb)?`,
  not_ahead_today: ({ typed, line }) =>
    `“${typed}” is past the end of today. Until when?${line == null ? '' : ` For example: ${line}`}`,
  not_ahead: ({ typed, line }) =>
    `“${typed}” is over already. Until when?${line == null ? '' : ` For example: ${line}`}`,
  pause_long: ({ typed }) =>
    `“${typed}” would switch reminders off for more than three months. If you mean it, add the year.`,
  bad_entry_number: ({ typed }) => `“${typed}” isn’t the number of an entry. Which one is it: 1, 2, 3 …?`,
  none_to_shake: () => 'Nothing is steeping, so there’s nothing to shake.',
  nothing_to_correct: ({ jar, seq, options }) => {
    const said = either(options.map((option) => `“${option}”`))
    return `I have no ${said} to correct in ${seq === null ? jar : `entry ${seq} of ${jar}`}. See what there is: ${toShow(jar)}`
  },
  sweetener_planned: ({ typed, example }) => `How much ${typed} went in? For example: ${example}`,
  compare_two: ({ typed, line }) =>
    `“${typed}”: which two are those? Join them with a +.${line == null ? '' : ` For example: ${line}`}`,
} satisfies Written<JarProblems>

const LEAST_SUGAR_G_PER_L = 1

/** To a whole percent, as a kitchen says it; what is too weak is never rounded up to what would keep. */
const roughly = (percent: number, enough: number): string => {
  const rounded = Math.round(percent)
  return percent < enough && rounded >= enough ? `just under ${enough}\u00a0%` : `about ${rounded}\u00a0%`
}

const downTo = (lowPercent: number, abvPercent: number): string => {
  const low = Math.floor(lowPercent)
  return low < Math.round(abvPercent) ? `perhaps as little as ${low}\u00a0%` : 'perhaps a little less'
}

/** Where to begin. */
const PLAN_LINE = shortLineTyped('plan', { of: '10 lemons', spirit: '1 l 95%' })

/** `about 10 % with 12 g/L of sugar`, `about 17 % (perhaps as little as 13 %)`. */
export const weakText = (
  { abvPercent, lowAbvPercent, sugarGPerL }: Weakness,
  format: Format,
  enoughPercent: number = KEEPS_ABV_PERCENT,
): string => {
  const about = roughly(abvPercent, enoughPercent)
  const strength = lowAbvPercent === null ? about : `${about} (${downTo(lowAbvPercent, abvPercent)})`
  return sugarGPerL < LEAST_SUGAR_G_PER_L ? strength : `${strength} with ${format.round.sweetness(sugarGPerL)} of sugar`
}

/** How weak it may be, in a few words. */
const weakestText = ({ abvPercent, lowAbvPercent }: Weakness): string =>
  roughly(lowAbvPercent ?? abvPercent, KEEPS_ABV_PERCENT)

const makeItKeep = (fix: string | null): string =>
  fix === null ? 'If it fizzes or smells wrong, bin it.' : `Add spirit first: ${fix}.`

/** What is wrong with a jar, in a sentence. */
const WRONG: { readonly [Kind in DangerKind]: string } = {
  refused_plant: 'is in it, and that’s not for drinking',
  refused_spirit: 'is in it, and that’s not for drinking',
  unknown_plant: 'is in it, and I don’t know that as food',
  over_ceiling: 'has more of something in it than is safe',
  ferments: 'can ferment, and a closed bottle of it can burst',
  weak_low_acid: 'is too weak for the vegetables in it',
  undecided: 'may or may not keep',
  to_throw_away: 'is to be thrown away',
  not_yet: 'isn’t to be drunk yet',
  in_question: 'has a question open',
}

/** Why something is not planned or not done, with the line that is right. */
export const safetyProblems = {
  plan_ferments: ({ where, line, ...weak }, format) => {
    const what =
      where === 'jar'
        ? `It would steep at ${weakText(weak, format)}. That can ferment and burst the jar.`
        : `At ${weakText(weak, format)} it can ferment and burst the bottle.`
    return line === null ? `${what} Use more spirit, or less of the rest.` : `${what} This keeps: ${line}`
  },
  plan_too_sweet: ({ sugarGPerL, toSugarGPerL, line }, format) =>
    `That sugar alone makes it ${format.wished.sweetness(sugarGPerL, 0)}, sweeter than ${format.wished.sweetness(toSugarGPerL, 0)}. With less: ${line}`,
  already_poured: ({ jar, line, ...weak }) =>
    `That would take ${jar} down to ${weakestText(weak)}. It can ferment and burst the jar, so I’ve recorded nothing. Is it in already? Then type: ${line}`,
  sweeten_bottled: ({ jar, line }) =>
    `${jar} ${isAre(jar)} all in bottles, so I’ve recorded nothing. Did this go into the bottles? Then type: ${line}`,
  bottle_ferments: ({ jar, fix, line, ...weak }) =>
    `At ${weakestText(weak)}, ${jar} can ferment and burst the bottles. ${makeItKeep(fix)} Bottled already? Then type: ${line}`,
  label_ferments: ({ jar, fix, line, ...weak }) =>
    `At ${weakestText(weak)}, ${jar} can ferment and burst the bottles. Don’t give it away. ${makeItKeep(fix)} Bottled already? Then type: ${line}`,
  jar_not_for_drinking: ({ jar, kind, typed }) =>
    `${typed === null ? jar : `${jar}: “${typed}”`} ${WRONG[kind]}. Don’t drink it or give it away. What to do: ${toShow(jar)}`,
  jar_told_held: ({ line, ...told }) =>
    `${toldText(told)} So I’ve done nothing. If it turned out to be nothing, type: ${line}`,
  nothing_told: ({ jar }) => `You’ve told me of nothing wrong with ${jar} that’s still open. See it: ${toShow(jar)}`,
} satisfies Written<SafetyProblems>
