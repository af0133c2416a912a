import type { Source } from '../../../../core/jar/state/contents.ts'
import type { Measured } from '../../../../core/quantity/measured/measured.ts'
import type { IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import type { Format } from '../../format.ts'
import { type TaskSaid, tasksText } from './duty-words.ts'
import { type EntrySaid, entryNumber, entryText } from './entry-words.ts'
import { type InJar, inJarText } from './in-jar-words.ts'
import { dayOfText, type Progress } from './list-sentences.ts'

interface Given {
  readonly source: Source
}

const sources = { measured: 'measured', computed: 'computed from what you measured', estimated: 'estimated' } as const

const spread = (shown: string, give: string, { source }: Given): string => `${shown} ± ${give}, ${sources[source]}`

/** What `/jar show` says. */
export const showSentences = {
  headlines: {
    jar_shown: (
      values: Progress & {
        readonly name: string
        readonly tasks: readonly TaskSaid[]
        readonly today: IsoDay
      },
      format: Format,
    ) => {
      const { name, stage, tasks, today } = values
      const ended = stage === 'emptied' || stage === 'discarded'
      const first = `${name}: ${stage}${ended ? '' : `, ${dayOfText(values)}`}.`
      if (tasks.length === 0) return first
      const text = tasksText(tasks, today, format)
      return `${first} ${text.charAt(0).toUpperCase()}${text.slice(1)}.`
    },
  },

  rows: {
    jar_holds: () => 'Went in',
    jar_volume: () => 'Volume',
    jar_strength: () => 'Strength',
    jar_sweetness: () => 'Sugar',
    jar_planned: () => 'Planned',
    jar_rating: () => 'Rating',
    jar_taken_back: () => 'Taken back',
    jar_entry: (values: Parameters<typeof entryNumber>[0], format: Format) => entryNumber(values, format),
  },

  cells: {
    jar_holds: (values: InJar, format: Format) => inJarText(values, format),
    jar_volume: ({ volumeMl, ...given }: Given & { readonly volumeMl: Measured }, format: Format) =>
      spread(format.volume(volumeMl), format.give.volume(volumeMl), given),
    jar_strength: ({ abvPercent, ...given }: Given & { readonly abvPercent: Measured }, format: Format) =>
      abvPercent.value === 0 ? 'none' : spread(format.strength(abvPercent), format.give.strength(abvPercent), given),
    jar_sweetness: ({ sugarGPerL }: { readonly sugarGPerL: Measured }, format: Format) =>
      sugarGPerL.value === 0 ? 'none' : `${format.sweetness(sugarGPerL)} ± ${format.give.sweetness(sugarGPerL)}`,
    jar_planned: (
      { abvPercent, sugarGPerL }: { readonly abvPercent: number; readonly sugarGPerL: number },
      format: Format,
    ) => `${format.plain(abvPercent, 1)} % vol, ${format.plain(sugarGPerL, 0)} g/L`,
    jar_rating: ({ ratings }: { readonly ratings: readonly number[] }) => `${ratings.join(', then ')} of 5`,
    jar_taken_back: ({ count }: { readonly count: number }) => `${count} ${count === 1 ? 'entry' : 'entries'}`,
    jar_entry: (values: EntrySaid & { readonly today: IsoDay }, format: Format) => entryText(values, format),
  },

  notes: {
    jar_corrects: ({ name }: { readonly name: string }) =>
      `The numbers name the entries: /jar correct ${name} puts one right, /jar undo ${name} takes back the last.`,
  },
}
