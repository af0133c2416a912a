import type { Measured } from '../../../../core/quantity/measured/measured.ts'
import { dayFromIso, type IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import type { Targets } from '../../../../core/recipe/targets.ts'
import type { Format } from '../../format.ts'
import { nameText } from '../plan/plan-words.ts'
import { daysWords } from './day-words.ts'
import { noteText } from './note-words.ts'
import { monthWords } from './notebook-sentences.ts'

/** A batch by its name, and by its month where both have the same. */
export interface BatchName {
  readonly name: string
  readonly startedOn: IsoDay | null
}

const called = ({ name, startedOn }: BatchName): string =>
  startedOn === null ? name : `${name} (${monthWords(startedOn)})`

/** The same of both batches, the first named first. */
type Both<Fact> = { readonly both: readonly [one: Fact, other: Fact] }

const pair = <Fact>({ both }: Both<Fact>, text: (fact: Fact & {}) => string): string =>
  both.map((fact) => (fact === null || fact === undefined ? '–' : text(fact))).join(' | ')

/** Whether the ± leave the difference open. */
interface Doubt {
  readonly isClose: boolean
}

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

const close = ({ isClose }: Doubt): string => (isClose ? ' (too close to tell)' : '')

interface Compared {
  readonly names: readonly [one: BatchName, other: BatchName]
  readonly ratings: readonly [one: number | null, other: number | null]
}

const verdict = ({ names, ratings: [one, other] }: Compared): string => {
  const [first, second] = names.map(called)
  if (one === null && other === null) return 'Neither is rated yet, so I cannot say which you liked better.'
  if (one === null || other === null) return `Only ${one === null ? second : first} is rated: ${one ?? other} of 5.`
  if (one === other) return `You liked ${first} and ${second} alike: ${one} of 5.`
  return one > other
    ? `You liked ${first} better than ${second}: ${one} to ${other}.`
    : `You liked ${second} better than ${first}: ${other} to ${one}.`
}

/** What `/notebook compare:` says. */
export const compareSentences = {
  headlines: {
    compared: (values: Compared & { readonly count: number }) => {
      const names = values.names.map(called).join(' | ')
      return `${verdict(values)} ${values.count === 0 ? 'Nothing that I know of differed.' : `What differed, ${names}:`}`
    },
  },

  rows: {
    compare_spirit: () => 'Spirit',
    compare_plant: (plant: { readonly id: string | null; readonly name: string }) => {
      const text = nameText(plant)
      return `${text.charAt(0).toUpperCase()}${text.slice(1)}`
    },
    compare_jar_water: () => 'Water in the jar',
    compare_jar_sugar: () => 'Sugar in the jar',
    compare_begun: () => 'Begun',
    compare_planned: () => 'Planned for',
    compare_days: () => 'Steeped',
    compare_strength: () => 'Strength',
    compare_sweetness: () => 'Sweetness',
    compare_rest: () => 'Rested',
    compare_rating: () => 'Rating',
    compare_notes: () => 'Notes',
  },

  cells: {
    compare_spirit: (values: Both<{ readonly volumeMl: Measured; readonly abvPercent: Measured }>, format: Format) =>
      pair(values, ({ volumeMl, abvPercent }) => `${format.volume(volumeMl)} of ${format.strength(abvPercent)}`),
    /** Grams for a litre of the spirit poured. */
    compare_dose: (values: Both<Measured | null>, format: Format) =>
      values.both.includes(null)
        ? pair(values, (massG) => `${format.mass(massG)} a litre of spirit`)
        : `${pair(values, format.mass)} a litre of spirit`,
    compare_begun: (values: Both<IsoDay>, format: Format) => pair(values, (day) => format.day(dayFromIso(day))),
    compare_planned: (values: Both<Targets | null>, format: Format) =>
      pair(
        values,
        ({ abvPercent, sugarGPerL }) => `${format.plain(abvPercent, 1)} % vol with ${format.plain(sugarGPerL, 0)} g/L`,
      ),
    compare_days: (values: Both<number | null>) => pair(values, daysWords),
    compare_strength: (values: Both<Measured> & Doubt, format: Format) => pair(values, format.strength) + close(values),
    compare_sweetness: (values: Both<Measured> & Doubt, format: Format) =>
      pair(values, format.sweetness) + close(values),
    compare_rating: (values: Both<number | null>) => `${pair(values, String)} of 5`,
    compare_notes: (values: Both<readonly string[]>) =>
      pair(values, (notes) => (notes.length === 0 ? '–' : shortened(notes.map(noteText).join(' ')))),
  },
}
