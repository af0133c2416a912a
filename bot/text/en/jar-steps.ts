import type { HappeningKind, Started } from '../../../core/jar/entry/entry.ts'
import type { Clearing } from '../../../core/jar/state/clearing.ts'
import type { HiddenStrength } from '../../../core/jar/state/hidden-strength.ts'
import type { Expected } from '../../../core/jar/state/judge-measurement.ts'
import { ENDLESS } from '../../../core/jar/tasks/duty.ts'
import { dayFromIso } from '../../../core/quantity/time/calendar-day.ts'
import { lineTyped } from '../../calls/write-line.ts'
import type { Format } from '../format.ts'
import type { Feature, Part } from '../language.ts'
import type { SpiritSaid } from '../messages/ingredients.ts'
import type { NowSaid } from '../messages/jar-recorded.ts'
import type { CautionName, CorrectedStep, StartDays, StepMessages } from '../messages/jar-steps.ts'
import { areWord, cookName, plantName } from './cook-names.ts'
import { didWords, untilText } from './jar-entries.ts'
import { inFreezer, noSugarSaid, UNSWEETENED } from './jar-note.ts'
import { drinkText, isText, onDayText, recordedText, undoneText } from './jar-recorded.ts'
import { nextText, OUT_OF_FREEZER, tasksText } from './jar-tasks.ts'
import { hasHave, isAre } from './jar-verbs.ts'
import { finingNames } from './label.ts'
import {
  articleOf,
  capital,
  counted,
  countWord,
  firstNames,
  listed,
  monthText,
  plural,
  shortDayWords,
  spanText,
} from './phrases.ts'
import { bottlesMade } from './planned-bottles.ts'
import { fillerName, sweetenerText } from './sweeteners.ts'
import {
  daysText,
  jarText,
  nameText,
  noteText,
  plantInText,
  spiritText,
  sweeteningTexts,
  vesselText,
  waterText,
} from './words.ts'

/** What a caution is about, for who has read it in full; one that is not here is always said in full. */
const cautionNames: Readonly<Record<CautionName, string>> = {
  flame: 'no flame or heat near it',
  cool_first: 'let the syrup cool first',
  sugar_alone: 'stir the sugar in, without heat',
  may_crystallise: 'the sugar may crystallise',
  sugar_limit_not_known: 'the sugar may not all dissolve',
  bottle_bursts: 'a full bottle can burst in the freezer',
  honey_infant: 'it’s not for children, and honey is never for a baby',
  plan_hazard: 'the cautions about its plants (see /cautions)',
}

const expectedText = ({ amount, abvPercent }: Expected, format: Format): string => {
  const kind = amount?.by === 'mass' ? 'mass' : 'volume'
  return [
    ...(amount === null ? [] : [`about ${format.round[kind](amount.amount.value)}`]),
    ...(abvPercent === null ? [] : [`${amount === null ? 'about ' : ''}${format.round.strength(abvPercent)}`]),
  ].join(' at ')
}

/** From so many on the rest is counted. */
const MOST_NAMES = 6

/** What is unusual about a step that was recorded all the same. */
const unusualNotes = {
  jar_added_spirit_after_straining: ({ isStronger }) => {
    if (isStronger === null) return 'It’s strained already, and its strength stays as it was.'
    return `That makes it ${isStronger ? 'stronger' : 'weaker'} than planned.`
  },
  jar_enzyme_after_spirit: () =>
    'Spirit stops an enzyme, so it may do little now. Next time, put it on the mashed fruit, stones out, before the spirit.',
  jar_bottled_unsweetened: ({ name }) => `I have no sugar recorded for ${name}. If you added some, undo this first.`,
  jar_shaken_after_straining: () => 'It’s strained already, so there’s no need to shake it.',
  jar_strained_early: () => 'That’s earlier than planned, so it may be mild.',
  jar_reading_surprising: (expected, format) =>
    `I expected ${expectedText(expected, format)}. If it’s a typo, correct it.`,
  jar_sweetened_again: () => 'You’ve sweetened this twice, and I’ve counted both. Typed twice by accident? Undo one.',
  jar_changed_after_bottling: () => 'It’s already bottled, so I’ve assumed it went into every bottle.',
  jar_opened_unbottled: () => 'I have no record of bottling this one.',
  jar_opened_early: () => 'It’s early. It’ll be better after its rest.',
  jar_tasted_after_end: () => 'That jar is finished. I’ve kept your note with it.',
} satisfies Part<StepMessages['notes']>

/** How what was strained becomes clear. */
const CLEARING: Readonly<Record<Clearing, string>> = {
  filter_before_syrup:
    'Bits in it? Before the syrup goes in, pour it through a coffee filter, covered and away from flames. Tell me what’s left, and I’ll work out the syrup again.',
  stand_then_rack: 'Let it stand somewhere cold for a week, then pour the clear part off what has sunk.',
  rest_then_rack:
    'If it turns hazy, leave it somewhere cold for two weeks, then pour the clear part off. Only the rest needs a filter.',
  leave_cloudy:
    'If it turns cloudy, that’s oil from the peel or the anise: harmless. Don’t filter it out, the flavour goes with it.',
}

/** What goes in at once, without the plants of later days. */
const firstDay = (started: Started): Started => ({
  ...started,
  plants: started.plants.filter(({ addOn }) => addOn === null),
})

/** `200 g`, of which `200 g honey` tells more. */
const BARE_AMOUNT = /^[\d.,/½¼¾±\s]+(?:k?g|[mcd]?l|lb|oz|fl\.? oz|cups?|tsp|tbsp|lit(?:re|er)s?|grams?)?\.?$/iu

/** `90 g sugar`: what an option says, without its name where its value tells. */
const valueText = (option: string, text: string, format: Format): string => {
  if (option === 'when') return format.day(dayFromIso(text))
  if (option === 'sugar' || option === 'water') return BARE_AMOUNT.test(text) ? `${text} ${option}` : text
  if (option === 'rating') return `${text} of 5`
  return option === 'note' ? noteText(text) : text
}

const correctedText = ({ option, was, now }: CorrectedStep, format: Format): string =>
  `${valueText(option, now, format)}${was === null ? '' : ` (was ${valueText(option, was, format)})`}`

/** What can be corrected, as a thing. */
const STEPS: Readonly<Record<HappeningKind, string>> = {
  started: 'start',
  shaken: 'shaking',
  tasted: 'tasting',
  added: 'addition',
  strained: 'straining',
  filtered: 'filtering',
  measured: 'measuring',
  sweetened: 'sweetening',
  fruit_sugared: 'sugar on the fruit',
  bottled: 'bottling',
  bottles_out: 'counting of bottles',
  opened: 'opening',
  emptied: 'emptying',
  discarded: 'throwing away',
  renamed: 'renaming',
  put_off: 'putting off',
  noted: 'note',
  parted: 'splitting',
  poured_in: 'combining',
  taken_out: 'taking out',
}

/** What is done with something else, and of what no jar is marked. */
const INTO: ReadonlySet<HappeningKind> = new Set([
  'added',
  'bottles_out',
  'fruit_sugared',
  'noted',
  'parted',
  'poured_in',
  'taken_out',
])

/** Of more things the liquids are a sentence of their own. */
const MOST_THINGS = 3

/** `In the jar: peel of 10 lemons and 1 l of 95 % spirit.` */
const startedWith = (started: Started, spirits: readonly SpiritSaid[], format: Format): string => {
  const { plants, waterG, sweetenings } = firstDay(started)
  const again = started.secondOf === undefined ? [] : [`the plants of ${started.secondOf.other} once more`]
  const solids = [...again, ...plants.map((plant) => plantInText(plant, format))]
  const rest = [
    ...spirits.map((spirit) => spiritText(spirit, format)),
    ...(waterG.value > 0 ? [waterText(waterG, format)] : []),
    ...sweeteningTexts(sweetenings, format),
  ]
  return solids.length + rest.length <= MOST_THINGS
    ? `In the jar: ${listed([...solids, ...rest])}.`
    : `In the jar: ${listed(solids)}. Over them: ${listed(rest)}.`
}

/** `2 to 6 hours`. */
const hoursText = ({ min, max }: { readonly min: number; readonly max: number }): string =>
  min === max ? counted(min, 'hour') : `${min} to ${max} hours`

const startDaysText = ({ days, later, today }: StartDays, format: Format): string => {
  const { tasteFrom, strainFrom, strainBy, isHours, steepHours } = days
  const adds = later.map(
    ({ day, plants }) => `Add the ${listed(plants.map(nameText))} on ${shortDayWords(day, today, format)}.`,
  )
  if (isHours && steepHours !== null)
    return [...adds, `Taste as it goes, and strain after ${hoursText(steepHours)}.`].join(' ')
  const tasting = tasteFrom === null ? [] : [`Taste from ${shortDayWords(tasteFrom, today, format)}`]
  const straining =
    strainFrom === null || strainBy === null ? [] : [`strain ${spanText(strainFrom, strainBy, today, format)}`]
  const both =
    tasteFrom !== null && tasteFrom === strainFrom && tasteFrom === strainBy
      ? `taste and strain on ${shortDayWords(tasteFrom, today, format)}`
      : [...tasting, ...straining].join(', ')
  return ['Shake it every day or two.', ...adds, ...(both === '' ? [] : [`${capital(both)}.`])].join(' ')
}

const stirText = (
  { sugarG, waterMl, sweetener, filler, isSyrup }: StepMessages['headlines']['jar_stir_in'],
  format: Format,
): string => {
  const water = `${format.round.volume(waterMl)} ${fillerName(filler)}`
  const sugar = sweetenerText(sugarG, sweetener, format)
  if (sugarG === 0 && waterMl === 0) return 'There’s nothing to add: it’s already where you want it.'
  if (sugarG === 0) return `Now stir in ${water}.`
  if (waterMl > 0 && isSyrup) return `Now dissolve ${sugar} in ${water}, cool it completely and stir it in.`
  return `Now put ${sugar}${waterMl === 0 ? '' : ` and ${water}`} straight into the jar. Shake it daily until it’s dissolved.`
}

/** Nobody can tell more of the room in a jar, ml. */
const inJugs = (ml: number): number => Math.max(50, 50 * Math.round(ml / 50))

/** First lines after something was recorded of a jar: which jar, what, and when if that is not today. */
const stepHeadlines = {
  jar_started: ({ name, day, started, spirits, isNamed }, format) => {
    const at = onDayText(day, format)
    const begun = isNamed ? `${name} ${isText(name, day)} started${at}` : `Started${at}. I’ve named it ${name}`
    return `${begun}. ${startedWith(started, spirits, format)}`
  },
  jar_start_days: startDaysText,
  jar_recorded: recordedText,
  jar_next_is: ({ tasks, today }, format) => nextText(tasks, today, format),
  jar_out_now: () => 'Take it out now: it only gets stronger from here. Strain it today, or lift the plants out.',
  jar_stir_in: stirText,
  jar_makes: ({ bottleMl, short, ...made }, format) =>
    `Makes ${drinkText(made, format)}: ${bottlesMade(made.volumeMl.value, bottleMl, short, format)}.`,
  second_left: ({ share }, format) =>
    `Expect less: about ${format.plain(Math.max(1, Math.round(100 * share.value)), 0)} % of what the last steep drew is still in them.`,
  jar_in_freezer: inFreezer,
  jar_no_sugar: noSugarSaid,
  jar_vessel: ({ vesselMl, filledMl, fit, betterMl }, format) => {
    const [size, filled, better] = [
      vesselText(vesselMl, format),
      format.round.volume(filledMl),
      jarText(betterMl, format),
    ]
    if (fit === 'too_small')
      return `That’s too small: ${size} for about ${filled}. ${capital(articleOf(better))} ${better} jar would do.`
    if (fit === 'brim')
      return `That’s full to the brim: about ${filled} in ${size}. ${capital(articleOf(better))} ${better} jar leaves room to shake.`
    if (fit === 'empty')
      return `There’s a lot of air over it, about ${filled} in ${size}, and air browns what’s in it. ${capital(articleOf(better))} ${better} jar would do.`
    return `It fits: about ${filled} in ${size}, with about ${format.round.volume(inJugs(vesselMl - filledMl))} of room.`
  },
  layer_days: ({ days, today }, format) => {
    const counted = startDaysText({ days, later: [], today }, format).replace('Shake it every day or two.', '').trim()
    const said = 'I’m counting the days from this layer now.'
    return counted === '' ? said : `${said} ${counted}`
  },
  fruit_gives: ({ volumeMl, abvPercent }, format) =>
    `Shake the fruit every day. The sugar dissolves in a week or two. Then pour about ${format.round.volume(volumeMl.value)} off it (about ${format.round.strength(abvPercent)}, very sweet) and back into the jar.`,
  jar_became: (made, format) => `It’s now ${drinkText(made, format)}.`,
  jar_split: ({ name, into, leftMl, outMl }, format) =>
    `Done: ${format.round.volume(outMl.value)} of ${name} is now “${into}”, and ${format.round.volume(leftMl.value)} stays in ${name}.`,
  jar_combined: ({ names: [first, second], into, volumeMl }, format) =>
    `Done: ${first} and ${second} are together in “${into}”, about ${format.round.volume(volumeMl.value)}.`,
  jar_renamed: ({ before, name }) => `“${before}” is now “${name}”.`,
  jar_all_shaken: ({ names, day }, format) => `Shaken${onDayText(day, format)}: ${firstNames(names, MOST_NAMES)}.`,
  jar_all_put_off: ({ names, ...until }, format) =>
    `I’ll remind you about ${firstNames(names, MOST_NAMES)} again from ${untilText(until, format)}.`,
  jar_already: ({ names, kind, day }, format) =>
    INTO.has(kind)
      ? `You’ve already entered that for ${listed(names)}${onDayText(day, format)}. Nothing changed.`
      : `${listed(names)} ${isAre(names)} already marked as ${didWords[kind]}${onDayText(day, format)}. Nothing changed.`,
  jar_open_since: ({ name, day }, format) =>
    day === null
      ? `${name} ${isAre(name)} already open.`
      : `${name} ${hasHave(name)} been open since ${format.day(dayFromIso(day))}.`,
  jar_moved_on: ({ name }) => `${name} ${hasHave(name)} moved on since, so nothing was recorded.`,
  jar_same_again: ({ name, day }, format) =>
    `You’ve already entered that for ${name}${day === null ? ' today' : onDayText(day, format)}, so I left it. Did you do it twice?`,
  jar_begun_again: ({ name, day }, format) =>
    `You already started this exact jar${day === null ? ' today' : onDayText(day, format)}: ${name}. I didn’t start a second one.`,
  jar_corrected: ({ name, kind, changes }, format) =>
    // What nobody had said before is no correction.
    `${changes.every(({ was }) => was === null) ? 'Noted for' : 'Corrected'} the ${STEPS[kind]} of ${name}: ${changes.map((change) => correctedText(change, format)).join(', ')}.`,
  /** Without a happening: what was taken back is a correction. */
  jar_undone: ({ name, happening, day }, format) => undoneText([name], happening, onDayText(day, format), format),
  jar_all_undone: ({ names, happening }, format) => undoneText(names, happening, '', format),
  jar_kept_after_all: ({ names }) =>
    `That was saved after all${names.length === 0 ? '' : `: ${listed(names)}`}. I haven’t saved it twice. If you did it again, say it once more.`,
  jar_undone_before: ({ names }) => `That’s already undone for ${listed(names)}. Nothing changed.`,
  jar_undo_held: ({ names }) => `Something newer is on record for ${listed(names)}, so I haven’t undone anything.`,
  jar_gone: ({ name }) => `${name} ${isAre(name)} deleted.`,
} satisfies Part<StepMessages['headlines']>
/** What follows from what was said, or not said, of the plants in a jar. */
const correctNotes = {
  jar_plants_dropped: ({ plants }) => `No longer in it: ${listed(plants.map(nameText))}.`,
  /** Null days: none is known any more. */
  jar_strain_moved: ({ days }, format) =>
    days === null
      ? 'I don’t know how long these plants steep, so say when you strain it.'
      : `With these plants, strain it ${daysText(dayFromIso(days.from), dayFromIso(days.by), format)}.`,
  jar_later_counted: ({ name, plants }) =>
    `I’ve counted the ${listed(plants.map(nameText))} as added, as planned. Never went in? ${lineTyped('jar correct', { jar: name })} asks what did.`,
  jar_later_left_out: ({ plants }) => {
    const [{ id = null } = { id: null }, another] = plants
    const isOne = another === undefined && (id === null || areWord(id) === 'is')
    return `The ${listed(plants.map(nameText))} ${isOne ? 'was' : 'were'} still to come. If you meant to wait, undo this.`
  },
} satisfies Part<StepMessages['notes']>
/** What hides strength from a hydrometer: `What’s dissolved from cracked coffee`. */
const dissolved = (plants: HiddenStrength['plants'], isSweetened: boolean): string =>
  `What’s dissolved from ${listed([...plants.map(({ id, name }) => (id === null ? name : cookName(id))), ...(isSweetened ? ['the sugar'] : [])])}`

/** What a number goes back to. */
const from = {
  measured: 'as you measured',
  computed: 'worked out from what you measured',
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
    jar_named: ({ name }) => `Another name suits ${name} better? Type: ${lineTyped('jar rename', { jar: name })}`,
    jar_zone_assumed: ({ zone }) => `I’m using ${zone} time.`,
    jar_not_measured: ({ name, entry, volumeMl }, format) =>
      `These are estimates. Once you’ve measured it: ${lineTyped('jar correct', { jar: name, entry: String(entry), measured: format.round.volume(volumeMl.value) })}`,
    /** `at20`: what was read, brought to 20 °C; null where it was read there. */
    jar_reading: ({ abvPercent, read, at20 }, format) =>
      at20 === null
        ? `With its sugar, ${format.round.strength(read)} means about ${format.strength(abvPercent)}.`
        : `At ${format.temperature({ value: 20, plusMinus: 0 })} your reading is ${format.strength(at20)}. With what the plants gave off in it that’s about ${format.strength(abvPercent)}.`,
    jar_reading_hidden: ({ read, expected, plants, isSweetened }, format) =>
      `${dissolved(plants, isSweetened)} hides strength: I expect ${format.strength(expected)}, and your ${format.strength(read)} fits that.`,
    jar_targets_unreached: ({ abvPercent, sugarGPerL }, format) =>
      `Sugar and water can’t bring this to ${format.wished.strength(abvPercent, 0)} with ${format.wished.sweetness(sugarGPerL, 0)}, as planned. Choose another strength or sweetness.`,
    jar_clearing: ({ way }) => CLEARING[way],
    /** What a jar was taken for. */
    jar_held: ({ name, ...now }, format) => `Your ${name} jar: ${nowText(now, format)}.`,
    jar_best_until: ({ until }) => `Shut, dark and cool it’s at its best until about ${monthText(dayFromIso(until))}.`,
    jar_bottled_more: ({ bottledMl, volumeMl }, format) =>
      `That’s ${format.round.volume(bottledMl)} in bottles, and I expected ${format.round.volume(volumeMl.value)}. If it’s a typo, correct it.`,
    jar_sweetened_otherwise: ({ sweetener, filler, sugarG, waterMl, isFarOff }, format) => {
      const [sugar, water] = [
        sweetenerText(sugarG, sweetener, format),
        `${format.round.volume(waterMl)} ${fillerName(filler)}`,
      ]
      const planned =
        sugarG === 0
          ? waterMl === 0
            ? 'nothing to add'
            : water
          : waterMl === 0
            ? `${sugar}, no ${fillerName(filler)}`
            : `${sugar} and ${water}`
      return isFarOff ? `That’s a long way from the plan (${planned}). Meant it? All good.` : `The plan was ${planned}.`
    },
    jar_share_stands: ({ ids }) =>
      `Others can still make it from your ${plural(ids.length, 'share')} (${listed(ids)}), until you withdraw ${plural(ids.length, 'it', 'them')}.`,
    jar_note_swallowed: ({ text }) => `${noteText(text)} went into the note. Next time, put it before the note.`,
    jar_usual_amount: ({ plants }, format) =>
      `I’ve used the usual amount: ${listed(plants.map(({ id, massG }) => `${format.round.mass(massG.value)} ${plantName(id)}`))}.`,
    jar_later_none: ({ name, nextDay }, format) =>
      `Nothing is due for ${name} before ${format.day(dayFromIso(nextDay))}, so I’ll be back then.`,
    jar_later_paused: ({ untilDay, pausedUntil }, format) =>
      `But reminders are ${
        pausedUntil === ENDLESS ? 'stopped' : `paused until ${format.day(dayFromIso(pausedUntil))}`
      }, and stay so. To hear from me on ${format.day(dayFromIso(untilDay))}: ${lineTyped('reminders', {
        'pause-until': untilDay,
      })}`,
    jar_later_past: ({ name, lastDay }, format) =>
      `That’s after the last day to strain ${name}, ${format.day(dayFromIso(lastDay))}.`,
    ...correctNotes,
    jar_out_of_freezer: () => OUT_OF_FREEZER,
    enzyme_first: () =>
      'Take out any stones and cores, mash the fruit and stir the enzyme in. Let it work as long as its packet says. Then the spirit goes in: it stops the enzyme.',
    layer_overdone: ({ plants }) =>
      `Lift out the ${listed(plants.map(nameText))} before then. Any longer would spoil the drink.`,
    jar_fined: ({ fining, isAllergen }) =>
      isAllergen
        ? `It isn’t vegan any more, and its label names the ${finingNames[fining]}: some people are allergic to it.`
        : `It isn’t vegan any more: ${finingNames[fining]} comes from animals.`,
    second_estimated: ({ soakedMl, ethanolG }, format) =>
      `They bring about ${format.pour(soakedMl.value)} of the first infusion along, with ${format.round.mass(ethanolG.value)} of alcohol. I’ve counted it: that’s my estimate from what plants soak up. Nobody has published what else they still give off.`,
    fruit_estimated: ({ name }, format) =>
      `What the fruit gives back is my estimate. Nobody has published figures for it. Better: measure it and say ${format.example(lineTyped('jar sweeten', { jar: name, 'from-fruit': '250 ml' }))}`,
    jar_unsweetened: UNSWEETENED,
    jar_no_targets: () => 'How strong and how sweet do you want it?',
  },
  cautions: {
    jar_not_neat: ({ abvPercent, isDiluted }, format) =>
      `Don’t drink it neat: at ${format.round.strength(abvPercent)}${isDiluted ? '' : ', undiluted,'} it burns. Dilute it first.`,
    jar_sugar_crystallises: ({ outcome: { abvPercent, sugarGPerL }, mostGPerL }, format) =>
      `${format.sweetness(sugarGPerL)} of sugar won’t stay dissolved at ${format.strength(abvPercent)}. About ${format.wished.sweetness(mostGPerL, 0)} will. Add water, or correct what was typed.`,
    fruit_may_ferment: ({ abvPercent }, format) =>
      `Keep the sugared fruit in the fridge with the lid loose: at about ${format.round.strength(abvPercent)} it may start to ferment.`,
    caution_again: ({ names }) => `Still true: ${listed(names.map((name) => cautionNames[name]))}.`,
  },
  actions: {
    jar_sweeten: () => 'Sweetened as planned',
    jar_true_strength: ({ abvPercent }, format) => `If it’s really ${format.round.strength(abvPercent)}`,
    jar_make_up: ({ planned }) => `To fill all ${countWord(planned)}, first add`,
    jar_all_in: () => 'It all went in at once',
    jar_show: () => 'See the jar',
    jar_syrup: () => 'Work out a syrup',
    jar_take_out: () => 'When it’s out',
    jar_from_fruit: () => 'When it’s back in the jar',
    jar_otherwise: () => 'Sweeter or weaker',
    jar_syrup_in: () => 'Once it’s in',
    jar_filter_first: () => 'For a clear drink, filtered first',
    jar_bottle: () => 'When it’s bottled',
    jar_tag: () => 'Tag it',
    jar_calendar: () => 'Add to calendar',
    jar_labels: () => 'Print labels',
    jar_rate: () => 'Rate it',
    jar_again: () => 'Make it again',
    jar_undo: () => 'Undo',
    jar_once_more: () => 'Yes, twice',
    jar_as_planned: () => 'Sweetened as planned after all',
    jar_show_kept: () => 'Show the jar',
    jar_enter_again: () => 'Enter it again',
    jar_begin_again: () => 'Start it again',
    jar_begin_another: () => 'Start another',
    settings_zone: ({ zone }) => `Use ${zone}`,
  },
} satisfies Feature<StepMessages>
