import type { DangerKind } from '../../../core/jar/limits/judge-jar.ts'
import type { Stage } from '../../../core/jar/state/jar-state.ts'
import { ENDLESS } from '../../../core/jar/tasks/duty.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import { dayFromIso, type IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import { lineTyped } from '../../calls/write-line.ts'
import type { Format } from '../format.ts'
import type { Feature } from '../language.ts'
import type {
  Both,
  ComparedBatches,
  ComparedDoubt,
  ComparedName,
  CompareMessages,
  InTheirUnits,
  JarProgress,
  JarStanding,
  JobSaid,
  ListMessages,
  NotebookBatch,
  NotebookMessages,
  ShowMessages,
  Sourced,
  WholeNotebookBatch,
} from '../messages/jar-views.ts'
import { dangerWords } from './jar-danger.ts'
import { entryNumber, entryText } from './jar-entries.ts'
import { drinkText } from './jar-recorded.ts'
import { askedText, comingText, dutyVerbs, nextText, tasksText } from './jar-tasks.ts'
import { isAre, wasWere } from './jar-verbs.ts'
import {
  capital,
  counted,
  countWord,
  daysWords,
  dayWords,
  firstNames,
  listed,
  MONTHS,
  monthText,
  plural,
  shortDayWords,
} from './phrases.ts'
import { sweetenerText } from './sweeteners.ts'
import { inJarText, nameText, noteText, vesselText, wishedStrength } from './words.ts'

/** Keeps the parts of a row together and under each other. */
const NBSP = '\u00a0'

const BAR = 10

const LONGEST_STAGE = 'sweetened'.length

const USUAL_DAY = 'day 12 of 300'.length

const padded = (text: string, width: number): string => text.replaceAll(' ', NBSP).padEnd(width, NBSP)

/** `███████░░░`: full only on the last day. */
export const bar = (day: number, ofDays: number): string => {
  const full = Math.min(BAR, Math.max(0, Math.floor((BAR * day) / ofDays)))
  return '█'.repeat(full) + '░'.repeat(BAR - full)
}
/** `day 12 of 30`; what is ready has arrived, and is late for nothing. */
export const dayOfText = ({ stage, day, ofDays }: JarProgress): string =>
  ofDays === null || stage === 'ready' ? `day ${day}` : `day ${day} of ${ofDays}`
/** From so many on the rest is counted. */
const MOST_NAMES = 4

/** `510 g sugar in 1.51 l water`, `190 g sugar, no water`. */
const syrupText = ({ sweetener, sugarG, waterMl }: NonNullable<JobSaid['syrup']>, format: Format): string => {
  const [sugar, water] = [sweetenerText(sugarG, sweetener, format), `${format.round.volume(waterMl)} water`]
  if (sugarG === 0) return water
  return waterMl === 0 ? `${sugar}, no water` : `${sugar} in ${water}`
}

/** `strain by 8 November`, `sweeten: 510 g sugar in 1.51 l water`, `add the cloves`. */
function jobText({ task, plants, syrup, isFruit, today, kitchen }: JobSaid, format: Format): string {
  const { kind, byDay, state } = task
  const verb = kind === 'add' && plants.length > 0 ? `add the ${listed(plants.map(nameText))}` : dutyVerbs[kind].todo
  if (kind === 'sweeten' && isFruit) return 'pour back what the sugared fruit gave'
  if (kind === 'sweeten') return syrup === null ? verb : `${verb}: ${syrupText(syrup, format.in(kitchen))}`
  if (kind !== 'strain') return verb
  if (state === 'overdue') return `${verb} now`
  return byDay === null || byDay === today ? `${verb} today` : `${verb} by ${dayWords(byDay, today, format)}`
}

/** What `/jar list` says. */
export const listSentences = {
  headlines: {
    jars_none: () => 'No jars yet.',
    jars_today: ({ held, jobs }) => {
      const first = held.length === 0 ? '' : `Look after ${firstNames(held, MOST_NAMES)} first. `
      if (jobs === 0) return `${first}${held.length === 0 ? 'Nothing to do today.' : 'Nothing else to do today.'}`
      return `${first}${capital(countWord(jobs))} ${plural(jobs, 'job')} today.`
    },
  },

  rows: {
    jar: ({ name }) => name,
    jobs_shake: () => 'shake',
  },

  cells: {
    job: jobText,
    job_shake: ({ names }) => firstNames(names, MOST_NAMES),
    jar_progress: (values, format) => {
      const { stage, day, ofDays, tasks, today, danger } = values
      const parts = [
        padded(stage, LONGEST_STAGE),
        ofDays === null ? NBSP.repeat(BAR) : bar(day, ofDays),
        padded(dayOfText(values), USUAL_DAY),
        [danger === null ? '' : `! ${dangerWords[danger]}`, tasksText(tasks, today, format)]
          .filter((text) => text !== '')
          .join('. '),
      ]
      return parts.join(' ').trimEnd()
    },
  },

  notes: {
    jobs_more: ({ count }) => `And ${countWord(count)} more ${plural(count, 'job')}.`,
    jars_coming: ({ next, today }, format) =>
      `Coming: ${next.map((coming) => comingText(coming, today, format)).join(', ')}.`,
    jars_strong: ({ names }) => `Rested, but don’t drink it neat: ${firstNames(names, MOST_NAMES)}. Dilute it first.`,
    jars_ready: ({ names }) => `Ready to drink: ${firstNames(names, MOST_NAMES)}.`,
    jars_ready_about: ({ ready, today }, format) =>
      `Ready: ${ready.map(({ name, day }) => `${name} about ${dayWords(day, today, format)}`).join(', ')}.`,
    jars_finished: ({ count }) =>
      `${capital(countWord(count))} finished ${plural(count, 'jar is', 'jars are')} in your notebook: /notebook`,
    jars_set_aside: ({ file, day }, format) => {
      const kept = `I couldn’t read your jars and settings, so I’ve started a new file. The old one is kept${file === null ? '' : ` as ${file}`}.`
      return day === null
        ? kept
        : file === null
          ? `${kept} The copy of ${format.day(dayFromIso(day))} still has jars. Whoever runs me can bring it back.`
          : `${kept} The copy of ${day} still has jars. To bring it back, close me and type: npm run doctor -- restore local ${day}`
    },
    jars_unsent: ({ asked, today }, format) =>
      `I couldn’t send: ${asked.map((each) => `${askedText(each)} (${shortDayWords(each.day, today, format)})`).join(', ')}. To choose another place: /reminders`,
    jars_paused: ({ until, today }, format) =>
      until === ENDLESS
        ? `I’ve stopped reminding you. To start again: ${lineTyped('reminders', { 'pause-until': 'off' })}`
        : `No reminders until ${dayWords(until, today, format)}. To start them again: ${lineTyped('reminders', { 'pause-until': 'off' })}`,
  },

  actions: {
    jars_plan: () => 'Plan one',
    jars_shaken: ({ count }) => (count === 1 ? 'Shaken' : 'All shaken'),
  },
} satisfies Feature<ListMessages>
const sources = { measured: 'measured', computed: 'worked out from what you measured', estimated: 'estimated' } as const

const sourced = (text: string, { source }: Sourced): string => `${text}, ${sources[source]}`

/** `day 12 of 30: 2.5 l at 30 %`. */
function standingText(values: JarStanding, format: Format): string {
  const { stage, day, ofDays, became, steepsAt } = values
  const isLate = ofDays !== null && day > ofDays && stage !== 'ready'
  const days = isLate ? `day ${day}, due by day ${ofDays}` : dayOfText(values)
  if (became !== null) return `${days}: ${drinkText(became, format)}`
  return steepsAt === null ? days : `${days}, at about ${format.round.strength(steepsAt)}`
}

/** What `/jar show` says. */
export const showSentences = {
  headlines: {
    jar_shown: (values, format) => {
      const { name, stage } = values
      if (stage === 'emptied') return `${name} ${isAre(name)} empty.`
      if (stage === 'discarded') return `${name} ${wasWere(name)} thrown away.`
      return `${name} ${isAre(name)} ${stage}, ${standingText(values, format)}.`
    },
    jar_stands: (values, format) => {
      const standing = standingText(values, format)
      if (values.stage === 'ready') return `${capital(standing)}.`
      return `${isAre(values.name) === 'is' ? 'It’s' : 'They’re'} ${values.stage}, ${standing}.`
    },
    jar_next_of: ({ name, tasks, ready, today }, format) => {
      const next = nextText(tasks, today, format, name)
      return ready === null ? next : `${next} Ready about ${dayWords(ready, today, format)}.`
    },
    jar_ready_by: ({ name, by, told, today }, format) => {
      const day = (iso: typeof by): string => dayWords(iso, today, format)
      switch (told.kind) {
        case 'ready':
          return `Yes, ${name} is ready now.`
        case 'on_time':
          return `Yes, ${name} should be ready about ${day(told.ready)}, in time for ${day(by)}.`
        case 'if_done':
          return `Yes, ${name} can be ready by ${day(by)} if you ${told.step} it by ${day(told.doneBy)}.`
        case 'late':
          return `No, ${name} won’t be ready before about ${day(told.ready)}.`
        case 'unknown':
          return `I can’t say whether ${name} will be ready by ${day(by)}: I don’t know its days.`
      }
    },
  },

  rows: {
    jar_holds: () => 'Went in',
    jar_volume: () => 'Volume',
    jar_strength: () => 'Strength',
    jar_sweetness: () => 'Sugar',
    jar_best: () => 'Best until',
    jar_planned: () => 'Planned',
    jar_rating: () => 'Rating',
    jar_taken_back: () => 'Undone',
    jar_entry: (values, format) => entryNumber(values, format),
  },

  cells: {
    jar_holds: (values, format) => inJarText(values, format),
    jar_volume: ({ volumeMl, ...given }, format) => sourced(format.spread.volume(volumeMl), given),
    jar_strength: ({ abvPercent, ...given }, format) =>
      abvPercent.value === 0 ? 'none' : sourced(format.spread.strength(abvPercent), given),
    jar_sweetness: ({ sugarGPerL }, format) => (sugarGPerL.value === 0 ? 'none' : format.spread.sweetness(sugarGPerL)),
    jar_best: ({ until }) => `about ${monthText(dayFromIso(until))}, shut`,
    jar_planned: ({ abvPercent, sugarGPerL }, format) =>
      `${wishedStrength(abvPercent, format)}, ${format.wished.sweetness(sugarGPerL, 0)}`,
    jar_rating: ({ ratings }) => `${ratings.join(', then ')} of 5`,
    jar_taken_back: ({ count }) => `${counted(count, 'entry', 'entries')}`,
    jar_entry: (values, format) => entryText(values, format),
  },

  notes: {
    jar_fill_weight: ({ fills }, format) =>
      `To fill on a scale, warm or cold: ${listed(fills.map(({ volumeMl, weightG }) => `${vesselText(volumeMl, format)} weighs ${format.mass(weightG)}`))} without the bottle.`,
    jar_corrects: ({ name }) =>
      `To fix an entry, name its number: /jar correct ${name} asks what. To undo the last: /jar undo ${name}`,
  },
} satisfies Feature<ShowMessages>

/** `Nov 2026`. */
const monthWords = (iso: IsoDay): string => {
  const { year, month } = dayFromIso(iso)
  return `${MONTHS[month - 1]?.slice(0, 3)} ${year}`
}
const running = new Set<Stage>(['steeping', 'strained', 'sweetened', 'resting', 'ready'])

const stageText = ({ stage, steepedDays }: NotebookBatch): readonly string[] => [
  ...(running.has(stage) || stage === 'discarded' ? [stage] : []),
  ...(steepedDays === null ? [] : [steepedDays === 0 ? 'steeped under a day' : `steeped ${daysWords(steepedDays)}`]),
]

const sweetText = (sugarGPerL: Measured, format: Format): readonly string[] =>
  sugarGPerL.value === 0 ? [] : [format.round.sweet(sugarGPerL.value)]

const ratingText = (rating: number | null): readonly string[] => (rating === null ? [] : [`rated ${rating}`])

const dangerText = (danger: DangerKind | null): readonly string[] =>
  danger === null ? [] : [`! ${dangerWords[danger]}`]

const batchText = (batch: WholeNotebookBatch, asked: Format): string => {
  const format = asked.in(batch.kitchen)
  const { startedOn, made, inJar, rating, notes, danger } = batch
  const sentences = [
    ...dangerText(danger),
    [monthWords(startedOn), ...stageText(batch)].join(', '),
    inJarText(inJar, format),
    ...(made === null
      ? []
      : [
          [
            `${format.round.volume(made.volumeMl.value)} at ${format.round.strength(made.abvPercent)}`,
            ...sweetText(made.sugarGPerL, format),
          ].join(', '),
        ]),
    ...ratingText(rating).map((text) => capital(`${text} of 5`)),
    ...notes.map(noteText),
  ]
  return sentences.join('. ')
}

/** What `/notebook` says. */
export const notebookSentences = {
  headlines: {
    notebook: ({ running, finished }) => {
      const [now, past] = [running === 0 ? [] : [`${running} running`], finished === 0 ? [] : [`${finished} finished`]]
      return `Your batches, the newest first: ${[...now, ...past].join(', ')}.`
    },
    notebook_empty: () => 'Nothing in your notebook yet.',
  },

  rows: {
    batch: ({ name }) => name,
  },

  cells: {
    batch: batchText,
    /** Where there are many. */
    batch_short: (batch, asked) => {
      const format = asked.in(batch.kitchen)
      const told = [
        monthWords(batch.startedOn),
        ...stageText(batch),
        ...(batch.made === null
          ? []
          : [format.round.strength(batch.made.abvPercent), ...sweetText(batch.made.sugarGPerL, format)]),
        ...ratingText(batch.rating),
      ].join(', ')
      return [...dangerText(batch.danger), told].join('. ')
    },
  },

  notes: {
    notebook_short: ({ name }) => `For one batch in full: ${lineTyped('jar show', { jar: name })}`,
  },

  actions: {
    notebook_compare: () => 'What differed between the last two',
  },
} satisfies Feature<NotebookMessages>
const called = ({ name, startedOn }: ComparedName): string =>
  startedOn === null ? name : `${name} (${monthWords(startedOn)})`
const pair = <Fact>({ both }: Both<Fact>, text: (fact: Fact & {}) => string): string =>
  both.map((fact) => (fact === null || fact === undefined ? '–' : text(fact))).join(' | ')
/** The same, each in its jar's own units. */
const pairIn = <Fact>(
  { both, kitchens }: Both<Fact> & InTheirUnits,
  asked: Format,
  text: (fact: Fact & {}, format: Format) => string,
): string =>
  both
    .map((fact, index) => (fact === null || fact === undefined ? '–' : text(fact, asked.in(kitchens[index]))))
    .join(' | ')
/** Grams for a litre of the spirit poured, as its kitchen weighs for a quart or a litre. */
const doseText = (gPerL: number, { dose, round }: Format): string =>
  dose.each === 'quart' ? dose.mass(gPerL) : round.mass(gPerL)

/** Longer notes are in /jar show. */
const MOST_CHARACTERS = 80

function shortened(text: string): string {
  const all = [...text]
  return all.length <= MOST_CHARACTERS
    ? text
    : `${all
        .slice(0, MOST_CHARACTERS - 1)
        .join('')
        .trimEnd()}…`
}

const close = ({ isClose }: ComparedDoubt): string => (isClose ? ' (too close to tell)' : '')
const verdict = ({ names, ratings: [one, other] }: ComparedBatches): string => {
  const [first, second] = names.map(called)
  if (one === null && other === null) return 'Neither is rated yet, so I can’t say which you liked better.'
  if (one === null || other === null) return `Only ${one === null ? second : first} is rated: ${one ?? other} of 5.`
  if (one === other) return `You liked ${first} and ${second} alike: ${one} of 5.`
  return one > other
    ? `You liked ${first} better than ${second}: ${one} to ${other}.`
    : `You liked ${second} better than ${first}: ${other} to ${one}.`
}

/** What `/notebook compare:` says. */
export const compareSentences = {
  headlines: {
    compared: (values) => {
      const names = values.names.map(called).join(' | ')
      return `${verdict(values)} ${values.count === 0 ? 'I know of no difference.' : `What differed, ${names}:`}`
    },
  },

  rows: {
    compare_spirit: () => 'Spirit',
    compare_plant: (plant) => {
      const text = nameText(plant)
      return `${text.charAt(0).toUpperCase()}${text.slice(1)}`
    },
    compare_jar_water: () => 'Water in the jar',
    compare_jar_sugar: () => 'Sugar in the jar',
    compare_begun: () => 'Started',
    compare_planned: () => 'Planned for',
    compare_days: () => 'Steeped',
    compare_strength: () => 'Strength',
    compare_sweetness: () => 'Sweetness',
    compare_rest: () => 'Rested',
    compare_rating: () => 'Rating',
    compare_notes: () => 'Notes',
  },

  cells: {
    compare_spirit: (values, format) =>
      pairIn(
        values,
        format,
        ({ volumeMl, abvPercent }, own) => `${own.round.volume(volumeMl.value)} of ${own.round.strength(abvPercent)}`,
      ),
    compare_dose: (values, format) => {
      const units = values.kitchens.map((kitchen) => format.in(kitchen).dose.each)
      const isAlike = !values.both.includes(null) && new Set(units).size === 1
      const of = ({ dose }: Format): string => (isAlike ? '' : ` a ${dose.each} of spirit`)
      const doses = pairIn(values, format, (massG, own) => `${doseText(massG.value, own)}${of(own)}`)
      return isAlike ? `${doses} a ${units[0]} of spirit` : doses
    },
    compare_begun: (values, format) => pair(values, (day) => format.day(dayFromIso(day))),
    compare_planned: (values, format) =>
      pair(
        values,
        ({ abvPercent, sugarGPerL }) =>
          `${wishedStrength(abvPercent, format)} with ${format.wished.sweetness(sugarGPerL, 0)}`,
      ),
    compare_days: (values) => pair(values, daysWords),
    compare_strength: (values, format) =>
      pairIn(values, format, (abvPercent, own) => own.round.strength(abvPercent)) + close(values),
    compare_sweetness: (values, format) => pair(values, ({ value }) => format.round.sweetness(value)) + close(values),
    compare_rating: (values) => `${pair(values, String)} of 5`,
    compare_notes: (values) =>
      pair(values, (notes) => (notes.length === 0 ? '–' : shortened(notes.map(noteText).join(' ')))),
  },
} satisfies Feature<CompareMessages>
