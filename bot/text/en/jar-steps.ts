import type { Happening, Started } from '../../../core/jar/entry/entry.ts'
import type { Clearing } from '../../../core/jar/state/clearing.ts'
import type { HiddenStrength } from '../../../core/jar/state/hidden-strength.ts'
import type { Expected } from '../../../core/jar/state/judge-measurement.ts'
import { dayFromIso, type IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import { quoted } from '../../calls/write-line.ts'
import type { Format } from '../format.ts'
import type { Feature, Part } from '../language.ts'
import type { AgainMessages, CautionName, CorrectedStep, NowSaid, StepMessages } from '../messages/jar-steps.ts'
import { calculateSentences } from './calculate.ts'
import { cookName, plantName } from './cook-names.ts'
import { didWords, happeningText, ingredientsText, untilText } from './jar-entries.ts'
import { tasksText } from './jar-tasks.ts'
import { listed, plural } from './phrases.ts'
import { sweetenerName } from './sweeteners.ts'
import { daysText, nameText, noteText, plantInText } from './words.ts'

/** What a caution is about, for who has read it in full; one that is not here is always said in full. */
const cautionNames: Readonly<Record<CautionName, string>> = {
  flame: 'no flame or heat near it',
  cool_first: 'let the syrup cool first',
  sugar_alone: 'stir the sugar in, without heat',
  may_crystallise: 'the sugar may crystallise',
  sugar_limit_not_known: 'the sugar may not all dissolve',
  bottle_bursts: 'a full bottle can burst in the freezer',
  plan_hazard: 'what its plants can do (/cautions says it)',
}

const expectedText = ({ amount, abvPercent }: Expected, format: Format): string => {
  const kind = amount?.by === 'mass' ? 'mass' : 'volume'
  return [
    ...(amount === null ? [] : [format.spread[kind](amount.amount)]),
    ...(abvPercent === null ? [] : [format.spread.strength(abvPercent)]),
  ].join(' at ')
}

/** What is unusual about a step that was recorded all the same. */
const unusualNotes = {
  jar_added_spirit_after_straining: ({ isStronger }) => {
    if (isStronger === null) return 'It’s strained already. Its strength stays as it was.'
    return `It’s strained already, so this makes it ${isStronger ? 'stronger' : 'weaker'} than planned.`
  },
  jar_bottled_unsweetened: ({ name }) =>
    `No sugar went in, as far as I know. If some did, /jar sweeten ${quoted(name)} asks how much.`,
  jar_shaken_after_straining: () => 'It is strained already and needs no more shaking.',
  jar_strained_early: () => 'That is earlier than planned; it may taste faint.',
  jar_reading_surprising: (expected, format) =>
    `I expected ${expectedText(expected, format)}; if a number slipped, /jar correct puts it right.`,
  jar_sweetened_again: ({ name }) =>
    `It was sweetened before; I count both. If that was typed twice, /jar undo ${quoted(name)} takes one back.`,
  jar_changed_after_bottling: () => 'It is in bottles already; I count this as if it went into all of it.',
  jar_opened_unbottled: () => 'It was never bottled, as far as I know.',
  jar_opened_early: () => 'It has not rested as long as planned; it will be better later.',
  jar_tasted_after_end: () => 'That jar is done; I keep what you tasted with it.',
} satisfies Part<StepMessages['notes']>

/** How what was strained becomes clear. */
const CLEARING: Readonly<Record<Clearing, string>> = {
  filter_before_syrup:
    "If there are bits in it, pour it through a coffee filter before the syrup goes in, covered and away from flames. Tell me what's left, and I'll work out the syrup again.",
  stand_then_rack: 'Let it stand somewhere cold for a week, then pour the clear part off what has sunk.',
  rest_then_rack:
    'If it turns hazy, leave it somewhere cold for two weeks, then pour the clear part off. Only the rest needs a filter.',
  leave_cloudy:
    "If it turns cloudy, that's oil from the peel or the anise: harmless. Don't filter it out, the flavour goes with it.",
}

/** With its year, so that a day typed without one can be checked; nothing where it is today. */
const onDayText = (day: IsoDay | null, format: Format): string =>
  day === null ? '' : ` on ${format.day(dayFromIso(day))}`
/** What goes in at once, without the plants of later days. */
const firstDay = (started: Started): Started => ({
  ...started,
  plants: started.plants.filter(({ addOn }) => addOn === null),
})

/** `; add 80 g coffee beans, whole on 17 September 2026`; empty where nothing goes in later. */
const laterText = ({ plants }: Started, format: Format): string => {
  const later = plants.flatMap((plant) => (plant.addOn === null ? [] : [{ ...plant, addOn: plant.addOn }]))
  const days = [...new Set(later.map(({ addOn }) => addOn))].sort()
  return days
    .map((day) => {
      const names = later.filter(({ addOn }) => addOn === day).map((plant) => plantInText(plant, format))
      return `; add ${listed(names)} on ${format.day(dayFromIso(day))}`
    })
    .join('')
}

const correctedText = ({ option, was, now }: CorrectedStep, format: Format): string => {
  const said = (text: string) => (option === 'when' ? format.day(dayFromIso(text)) : text)
  return was === null
    ? `${option}: ${said(now)}, where nothing was said`
    : `${option}: ${said(now)}, no longer ${said(was)}`
}

const keptText = ({ kind }: Happening, name: string): string => {
  if (kind === 'discarded') return `; it stays in /notebook, and /jar undo ${quoted(name)} takes it back`
  return kind === 'emptied' ? '; it stays in /notebook' : ''
}

/** First lines after something was recorded of a jar: which jar, what, and when if that is not today. */
export const stepHeadlines = {
  jar_started: ({ name, day, started }, format) =>
    `${name}: started${onDayText(day, format)}. Put in ${ingredientsText(firstDay(started), format)}${laterText(started, format)}.`,
  jar_recorded: ({ name, happening, day }, format) =>
    `${name}: ${happeningText(happening, format, onDayText(day, format))}${keptText(happening, name)}.`,
  jar_strained: ({ name, happening, day, syrup }, format) =>
    `${name}: ${happeningText(happening, format, onDayText(day, format))}.` +
    (syrup === null
      ? ''
      : ` ${calculateSentences.headlines.syrup(syrup, format)} ${calculateSentences.headlines.makes(syrup, format)}`),
  jar_split: ({ name, into, leftMl, outMl }, format) =>
    `Done: ${format.pour(outMl.value)} of ${name} is now “${into}”, and ${format.pour(leftMl.value)} stays in ${name}.`,
  jar_combined: ({ names: [first, second], into, volumeMl }, format) =>
    `Done: ${first} and ${second} are together in “${into}”, about ${format.pour(volumeMl.value)}.`,
  jar_renamed: ({ before, name }) => `“${before}” is now “${name}”.`,
  jar_all_shaken: ({ names, day }, format) => `Shaken${onDayText(day, format)}: ${listed(names)}.`,
  jar_all_put_off: ({ names, ...until }, format) => `Quiet until ${untilText(until, format)}: ${listed(names)}.`,
  jar_already: ({ names, kind, day }, format) =>
    `${listed(names)}: recorded as ${didWords[kind]}${day === null ? ' today' : onDayText(day, format)} already; nothing changed.`,
  jar_open_since: ({ name, day }, format) =>
    `${name} is open already, since ${day === null ? 'today' : format.day(dayFromIso(day))}; nothing changed.`,
  jar_moved_on: ({ name }) => `${name} has moved on since that line was made for it, so nothing was recorded.`,
  jar_same_again: ({ name, happening, day }, format) =>
    `${name}: it was ${happeningText(happening, format)}${day === null ? ' today' : onDayText(day, format)} already, so I recorded nothing; did you really do it twice?`,
  jar_begun_again: ({ name, day }, format) =>
    `${name} was begun just so${day === null ? ' today' : onDayText(day, format)} already, so I began no other.`,
  jar_corrected: (values, format) =>
    `${values.name}, ${values.entry === null ? didWords[values.kind] : `entry ${values.entry} (${didWords[values.kind]})`}: ${values.changes.map((change) => correctedText(change, format)).join('; ')}.` +
    (values.syrup === null
      ? ''
      : ` ${calculateSentences.headlines.syrup(values.syrup, format)} ${calculateSentences.headlines.makes(values.syrup, format)}`),
  /** Without a happening: what was taken back is a correction. */
  jar_undone: (values, format) => {
    const { name, happening, day } = values
    const when = onDayText(day, format)
    const what = happening === null ? `the correction${when}` : happeningText(happening, format, when)
    return `${name}: taken back: ${what}.`
  },
  jar_all_undone: ({ names, happening }, format) =>
    `${listed(names)}: taken back${happening === null ? '' : `: ${happeningText(happening, format)}`}.`,
  jar_kept_after_all: ({ names }) =>
    `That was kept after all${names.length === 0 ? '' : `: ${listed(names)}`}. I haven't written it twice. If you did it again, say it once more.`,
  jar_undone_before: ({ names }) => `${listed(names)}: that is taken back already; nothing changed.`,
  jar_undo_held: ({ names }) =>
    `${listed(names)}: another entry was made since, so nothing was taken back; /jar undo and the name takes back the last one.`,
  jar_gone: ({ name }) => `${name}: its start is taken back, so the jar is gone; /jar start begins it again.`,
} satisfies Part<StepMessages['headlines']>
/** What follows from what was said, or not said, of the plants in a jar. */
export const correctNotes = {
  jar_plants_dropped: ({ plants }) =>
    `of: tells all that went in then; no longer in it: ${listed(plants.map(nameText))}.`,
  /** Null days: none is known any more. */
  jar_strain_moved: ({ days }, format) =>
    days === null
      ? 'With these plants I know no days for straining.'
      : `Straining moves: with these plants it is due ${daysText(dayFromIso(days.from), dayFromIso(days.by), format)}.`,
  jar_later_counted: ({ name, plants }, format) => {
    const texts = plants.map((plant) => `the ${nameText(plant)} as added on ${format.day(dayFromIso(plant.addOn))}`)
    return `I count ${listed(texts)}, as planned; if ${plural(plants.length, 'it', 'any')} never went in, /jar correct ${quoted(name)} with of: and what did puts it right.`
  },
  jar_later_left_out: ({ name, plants }, format) => {
    const texts = plants.map((plant) => `the ${nameText(plant)}, planned for ${format.day(dayFromIso(plant.addOn))}`)
    return `I count it as strained without ${listed(texts)}; if it was to wait for ${plural(plants.length, 'it', 'them')}, /jar undo ${quoted(name)} takes the straining back.`
  },
} satisfies Part<StepMessages['notes']>
/** What `/again` adds to the reply about the new jar. */
export const againSentences = {
  notes: {
    again_as: ({ name, factor, isOther, line, targets }, format) => {
      const amounts = isOther
        ? `As ${name} was, times ${format.plain(factor, 2)}: by the alcohol in this spirit, so that a glass holds as much of the plants`
        : `As ${name} was, in the same amounts`
      const aim =
        targets === null
          ? ''
          : ` It is to become ${format.plain(targets.abvPercent, 1)} % vol with ${format.plain(targets.sugarGPerL, 0)} g/L of sugar.`
      return `${amounts}.${aim} ${line} takes it back.`
    },
  },
} satisfies Feature<AgainMessages>
/** What hides strength from a hydrometer: `What’s dissolved of cracked coffee`. */
const dissolved = (plants: HiddenStrength['plants'], isSweetened: boolean): string =>
  `What’s dissolved of ${listed([...plants.map(({ id, name }) => (id === null ? name : cookName(id))), ...(isSweetened ? ['the sugar'] : [])])}`

/** What a number goes back to. */
const from = {
  measured: 'as you measured',
  computed: 'computed from what you measured',
  estimated: 'estimated',
} as const

const nowText = ({ volumeMl, abvPercent, sugarGPerL, volume, strength }: NowSaid, format: Format): string => {
  const much = format.spread.volume(volumeMl)
  const sweet = sugarGPerL.value > 0 ? `, ${format.spread.sweetness(sugarGPerL)} of sugar` : ''
  const strong = `at ${format.spread.strength(abvPercent)}${sweet}`
  return volume === strength
    ? `${much} ${strong} (${from[volume]})`
    : `${much} (${from[volume]}) ${strong} (${from[strength]})`
}

/** What every recorded step of a jar says. */
export const stepSentences = {
  headlines: stepHeadlines,
  rows: {
    jar_next: () => 'Next',
    jar_now: () => 'In it now',
    jar_ready: () => 'Ready',
  },
  cells: {
    jar_next: ({ tasks, today }, format) => tasksText(tasks, today, format),
    jar_now: nowText,
    jar_ready: ({ day }, format) => `from ${format.day(dayFromIso(day))}`,
  },
  notes: {
    ...unusualNotes,
    jar_named: ({ name }) =>
      `I call it after what is in it, ${name}. /jar rename ${quoted(name)} asks for another name.`,
    jar_zone_assumed: ({ zone }) => `I take ${zone} for your time zone; all days and reminders go by it.`,
    jar_not_measured: ({ name, entry, isStrengthRead }) =>
      `${isStrengthRead ? 'How much it is was not' : 'Nothing was'} measured, so I reckon with what I expect; once you have a reading, /jar correct ${quoted(name)} entry:${entry} asks for it.`,
    /** `at20`: what was read, brought to 20 °C; null where it was read there. */
    jar_reading: ({ abvPercent, at20 }, format) =>
      at20 === null
        ? `What the plants give off hides some strength from a hydrometer, so it’s about ${format.strength(abvPercent)}.`
        : `At ${format.temperature({ value: 20, plusMinus: 0 })} your reading is ${format.strength(at20)}. What the plants give off hides some strength from a hydrometer, so it’s about ${format.strength(abvPercent)}.`,
    jar_reading_hidden: ({ read, expected, plants, isSweetened }, format) =>
      `${dissolved(plants, isSweetened)} hides strength from a hydrometer. I expect ${format.strength(expected)}, and your ${format.strength(read)} fits that, so I go by what went in.`,
    jar_targets_unreached: ({ abvPercent, sugarGPerL }, format) =>
      `Water and sugar cannot make ${format.plain(abvPercent, 1)} % vol with ${format.plain(sugarGPerL, 0)} g/L of this, as planned; ask for another strength or sweetness.`,
    jar_clearing: ({ way }) => CLEARING[way],
    /** What a jar was taken for. */
    jar_held: ({ name, ...now }, format) => `I took the ${name} jar: ${nowText(now, format)}.`,
    jar_bottled_more: ({ bottledMl, volumeMl }, format) =>
      `The bottles hold ${format.pour(bottledMl)}, but I reckoned with ${format.volume(volumeMl)}; if a number slipped, /jar correct puts it right.`,
    jar_sweetened_otherwise: (values, format) => {
      const { name, sweetener, sugarG, waterMl, isFarOff } = values
      const [sugar, water] = [`${format.weigh(sugarG)} ${sweetenerName(sweetener)}`, `${format.pour(waterMl)} water`]
      const planned = sugarG === 0 ? water : waterMl === 0 ? `${sugar} and no water` : `${sugar} in ${water}`
      if (isFarOff) return `Planned were about ${planned}: typed right? /jar undo ${quoted(name)} takes it back.`
      return `The plan was ${planned}; if a number slipped, /jar undo ${quoted(name)} takes it back.`
    },
    jar_share_stands: ({ ids }) =>
      ids.length === 1
        ? `Its share (${ids[0]}) still stands, so that others can make it; /share withdraw:${ids[0]} takes it back.`
        : `Its shares (${listed(ids)}) still stand, so that others can make it; /share withdraw: and the id takes one back.`,
    jar_note_swallowed: ({ text }) =>
      `I kept ${noteText(text)} as part of the note, which takes the rest of the line; put it before note:.`,
    jar_usual_amount: ({ plants }, format) =>
      `You did not say how much, so I took the usual ${listed(plants.map(({ id, massG }) => `${format.mass(massG)} ${plantName(id)}`))}.`,
    jar_bottled_left: ({ leftMl }, format) => `About ${format.volume(leftMl)} are not in bottles yet.`,
    jar_later_past: ({ name, lastDay }, format) =>
      `That is after the days for straining ${name}, the last of which is ${format.day(dayFromIso(lastDay))}.`,
    ...correctNotes,
    jar_no_targets: () => 'What it is to become was not planned; say the strength and sweetness you want.',
  },
  cautions: {
    jar_not_neat: ({ abvPercent, isDiluted }, format) =>
      `${format.strength(abvPercent)}${isDiluted ? '' : ', undiluted'}: never drink it neat; it burns mouth and throat, and little of it is too much. Dilute it first, /dilute says with how much water.`,
    jar_sugar_crystallises: ({ outcome: { abvPercent, sugarGPerL }, mostGPerL }, format) =>
      `${format.sweetness(sugarGPerL)} of sugar does not stay dissolved at ${format.strength(abvPercent)}; about ${format.number(mostGPerL, 0)} g/L does (known to about 10 %). Add water, or put right what was typed.`,
    caution_again: ({ names }) => `As before: ${names.map((name) => cautionNames[name]).join('; ')}.`,
  },
  actions: {
    jar_sweeten: () => 'Once that is in',
    jar_all_in: () => 'It all went in at once',
    jar_show: () => 'See the jar',
    jar_syrup: () => 'Work out a syrup',
    jar_undo: () => 'Undo',
    jar_once_more: () => 'Once more',
    jar_as_planned: () => 'If it was as planned',
    jar_show_kept: () => 'Show it',
    jar_enter_again: () => 'Enter it again',
    jar_begin_again: () => 'Begin it again',
    jar_begin_another: () => 'Begin another',
    settings_zone: () => 'Keep it, or put yours there',
  },
} satisfies Feature<StepMessages>
