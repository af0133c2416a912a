import type { Feature, Written } from '../language.ts'
import type { FileProblems, LeftJar, WrongEntry } from '../messages/file-problems.ts'
import type { ExportMessages } from '../messages/notebook-file.ts'
import { counted, dayWords, listed, plural } from './phrases.ts'

/** `1 MB` */
const megabytes = (bytes: number): string => `${Math.round(bytes / 100_000) / 10} MB`

/** A name or path between quotation marks, and not too much of it. */
const quote = (name: string): string => `“${name.length > 200 ? `${name.slice(0, 199)}…` : name}”`

const noNotebook: Readonly<Record<FileProblems['import_no_notebook']['why'], string>> = {
  no_text: 'it is no text',
  no_json: 'it is no whole JSON file, or was cut off',
  deep: 'it is nested more deeply than one of mine',
  other: 'it does not begin like one',
}

const wrongEntry: Readonly<Record<WrongEntry, (where: string | null) => string>> = {
  part: (where) => (where === null ? 'it is not made as mine are' : `its part “${where}” is not what one can be`),
  amount: () => 'an amount, a strength or a temperature in it is none that a kitchen has',
  day: () => 'its days do not go together',
  name: () => 'it gives a name that a jar cannot have',
  plant: () => 'it has a plant that I do not know by that id',
  long: () => 'one of its texts or lists is longer, or more was corrected, than I keep',
  number: () => 'entries must be numbered 1, 2, 3 and so on',
  amends: () => 'it takes back or corrects what it cannot',
  follow: () => 'it cannot follow what stands before it',
  running: () => 'you have as many running jars as I keep',
  taken: () => 'a running jar has its name, and it has too many entries to be renamed',
  room: () => 'you have as many jars as I keep',
}

/** Jars that are named one by one. */
const MOST_NAMED = 8

const leftJar = ({ jar, name, seq, why, where }: LeftJar): string => {
  const which = name === null ? `Jar ${jar}` : `Jar ${jar} (${quote(name)})`
  return `${which}: ${seq === null ? '' : `in entry ${seq}, `}${wrongEntry[why](where)}.`
}

/** Which jars of a file are left out, and why, a sentence each. */
export const leftJars = (left: readonly LeftJar[]): string => {
  const more = left.length - MOST_NAMED
  const named = left.slice(0, MOST_NAMED).map(leftJar).join(' ')
  return more > 0 ? `${named} And ${more} more.` : named
}

/** What is wrong with a file that somebody gave; nothing was changed then. */
export const fileProblems = {
  no_files_here: () => 'I can take in no file here; type the command where you can give one.',
  file_not_found: ({ typed, folder }) =>
    `There is no file ${quote(typed)}; a path that does not begin with / or ~/ begins at ${folder}.`,
  file_unreadable: ({ typed, why }) =>
    ({
      no_file: `${quote(typed)} is no file; give the path of a .json file that /notebook export:json wrote.`,
      rights: `I may not read ${quote(typed)}.`,
      failed: `${quote(typed)} could not be read; try again.`,
    })[why],
  file_too_big: ({ name, mostBytes }) =>
    `${quote(name)} is too big; I take in files up to ${megabytes(mostBytes)}. Nothing was changed.`,
  file_not_fetched: ({ name }) => `${quote(name)} could not be fetched from Discord; try again. Nothing was changed.`,
  import_no_notebook: ({ name, why }) =>
    `${quote(name)} is no notebook that I can take in: ${noNotebook[why]}. Give a file that /notebook export:json wrote; nothing was changed.`,
  import_newer: ({ version, known }) =>
    `This file was written by a newer Larderbell (version ${version}, I know up to ${known}); bring me up to date, then take it in. Nothing was changed.`,
  import_part: ({ where }) => `The part “${where}” of this file is not what one of mine has; nothing was changed.`,
  import_too_many: ({ jars, most }) =>
    `That would be ${jars} jars; I keep up to ${most}, running and done. Nothing was changed.`,
  import_jars: ({ left }) => `I can't take in any jar of this file. ${leftJars(left)} Nothing was changed.`,
} satisfies Written<FileProblems>

const jarsWith = ({ jars, entries }: { readonly jars: number; readonly entries: number }): string =>
  `${counted(jars, 'jar')} with ${counted(entries, 'entry', 'entries')}`

/** What `/calendar`, `/notebook export:` and `/notebook import:` say. */
export const exportSentences = {
  headlines: {
    calendar: (values, format) => {
      const { count, jars, firstDay, lastDay, today } = values
      const when =
        firstDay === lastDay
          ? `on ${dayWords(firstDay, today, format)}`
          : `from ${dayWords(firstDay, today, format)} to ${dayWords(lastDay, today, format)}`
      return `A calendar with ${counted(count, 'reminder')} of ${counted(jars, 'jar')}, ${when}.`
    },
    calendar_empty: ({ isOneJar }) =>
      isOneJar
        ? 'This jar asks for nothing more, so there is nothing for a calendar.'
        : 'No jar asks for anything to come, so there is nothing for a calendar.',
    exported: (values) =>
      `Your notebook: ${jarsWith(values)}${values.files === 1 ? '' : `, in ${values.files} files`}.`,
    imported: (values) => {
      const { added, longer, same, entries, isSettled } = values
      const done = [
        ...(added === 0 ? [] : [`${counted(added, 'jar')} added`]),
        ...(longer === 0 ? [] : [`${counted(longer, 'jar')} brought up to date`]),
      ]
      const kept = same === 0 ? '' : `; ${counted(same, 'jar')} ${plural(same, 'was', 'were')} here already`
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
    export_json_parts: ({ files }) =>
      `That is more than one file can hold to be taken in again: take in all ${files}, in any order.`,
    export_csv: () =>
      'Two tables: one line for each batch, and one for each entry with everything that was recorded. An apostrophe before a sign such as = keeps a spreadsheet from reckoning with it.',
    import_renamed: ({ names }) =>
      `Another running jar has the same name, so ${listed(names.map(([from, to]) => `${from} is now ${to}`))}.`,
    import_left: ({ left }) =>
      `${left.length === 1 ? 'One jar is' : `${left.length} jars are`} left out. ${leftJars(left)}`,
    import_settings: () => 'Settings came along where you had chosen none here.',
    import_past: () => 'What fell due before now is not said again; reminders come where they are set here.',
  },

  actions: {
    import_list: () => 'Show jars',
  },

  files: {
    calendar_file: ({ count }) => `Calendar with ${counted(count, 'reminder')}`,
    notebook_json: ({ part, parts }) =>
      parts === 1 ? 'Your notebook, to be taken in again' : `Your notebook, part ${part} of ${parts}`,
    csv_batches: ({ count }) => `Table of ${counted(count, 'batch', 'batches')}`,
    csv_entries: ({ count }) => `Table of ${counted(count, 'entry', 'entries')}`,
  },
} satisfies Feature<ExportMessages>
