import type { IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { LeftJar } from '../../chat/file-problems.ts'
import type { Format } from '../format.ts'
import { leftJars } from './file-problems.ts'
import { dayWords } from './jar/day-words.ts'
import { listed } from './phrases.ts'

const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`

const jarsWith = ({ jars, entries }: { readonly jars: number; readonly entries: number }): string =>
  `${counted(jars, 'jar')} with ${counted(entries, 'entry', 'entries')}`

/** What `/calendar`, `/notebook export:` and `/notebook import:` say. */
export const exportSentences = {
  headlines: {
    calendar: (
      values: {
        readonly count: number
        readonly jars: number
        readonly firstDay: IsoDay
        readonly lastDay: IsoDay
        readonly today: IsoDay
      },
      format: Format,
    ) => {
      const { count, jars, firstDay, lastDay, today } = values
      const when =
        firstDay === lastDay
          ? `on ${dayWords(firstDay, today, format)}`
          : `from ${dayWords(firstDay, today, format)} to ${dayWords(lastDay, today, format)}`
      return `A calendar with ${counted(count, 'reminder')} of ${counted(jars, 'jar')}, ${when}.`
    },
    calendar_empty: ({ isOneJar }: { readonly isOneJar: boolean }) =>
      isOneJar
        ? 'This jar asks for nothing more, so there is nothing for a calendar.'
        : 'No jar asks for anything to come, so there is nothing for a calendar.',
    exported: (values: { readonly jars: number; readonly entries: number; readonly files: number }) =>
      `Your notebook: ${jarsWith(values)}${values.files === 1 ? '' : `, in ${values.files} files`}.`,
    imported: (values: {
      readonly added: number
      readonly longer: number
      readonly same: number
      readonly entries: number
      readonly isSettled: boolean
    }) => {
      const { added, longer, same, entries, isSettled } = values
      const done = [
        ...(added === 0 ? [] : [`${counted(added, 'jar')} added`]),
        ...(longer === 0 ? [] : [`${counted(longer, 'jar')} brought up to date`]),
      ]
      const kept = same === 0 ? '' : `; ${counted(same, 'jar')} ${same === 1 ? 'was' : 'were'} here already`
      return done.length === 0
        ? isSettled
          ? `Taken in: the settings${kept}.`
          : 'Everything in that file was here already, so nothing was changed.'
        : `Taken in: ${listed(done)}, ${counted(entries, 'entry', 'entries')} in all${kept}.`
    },
  },

  notes: {
    calendar_again: () =>
      'Import it again after a change: reminders that have moved are moved there too. Those no longer needed stay until you delete them.',
    export_json: () => 'It can be taken in again, here or where another Larderbell runs. /help notebook says how.',
    export_json_parts: ({ files }: { readonly files: number }) =>
      `That is more than one file can hold to be taken in again: take in all ${files}, in any order.`,
    export_csv: () =>
      'Two tables: one line for each batch, and one for each entry with everything that was recorded. An apostrophe before a sign such as = keeps a spreadsheet from reckoning with it.',
    import_renamed: ({ names }: { readonly names: readonly (readonly [from: string, to: string])[] }) =>
      `Another running jar has the same name, so ${listed(names.map(([from, to]) => `${from} is now ${to}`))}.`,
    import_left: ({ left }: { readonly left: readonly LeftJar[] }) =>
      `${left.length === 1 ? 'One jar is' : `${left.length} jars are`} left out. ${leftJars(left)}`,
    import_settings: () => 'Settings came along where you had chosen none here.',
    import_past: () => 'What fell due before now is not said again; reminders come where they are set here.',
  },

  actions: {
    import_list: () => 'Show jars',
  },

  files: {
    calendar_file: ({ count }: { readonly count: number }) => `Calendar with ${counted(count, 'reminder')}`,
    notebook_json: ({ part, parts }: { readonly part: number; readonly parts: number }) =>
      parts === 1 ? 'Your notebook, to be taken in again' : `Your notebook, part ${part} of ${parts}`,
    csv_batches: ({ count }: { readonly count: number }) => `Table of ${counted(count, 'batch', 'batches')}`,
    csv_entries: ({ count }: { readonly count: number }) => `Table of ${counted(count, 'entry', 'entries')}`,
  },
}
