import { lineTyped } from '../../calls/write-line.ts'
import type { Feature, Written } from '../language.ts'
import type { FileProblems, LeftJar, WrongEntry } from '../messages/file-problems.ts'
import type { ExportMessages } from '../messages/notebook-file.ts'
import { capital, counted, dayWords, listed, plural } from './phrases.ts'

/** `1 MB` */
const megabytes = (bytes: number): string => `${Math.round(bytes / 100_000) / 10} MB`

/** A name or path between quotation marks, and not too much of it. */
const quote = (name: string): string => `“${name.length > 200 ? `${name.slice(0, 199)}…` : name}”`

const noNotebook: Readonly<Record<FileProblems['import_no_notebook']['why'], string>> = {
  no_text: 'it isn’t text',
  no_json: 'it’s not a whole JSON file, or was cut off',
  deep: 'it’s nested deeper than any file of mine',
  other: 'it doesn’t start like one of mine',
}

const wrongEntry: Readonly<Record<WrongEntry, (where: string | null) => string>> = {
  part: (where) => (where === null ? 'it isn’t one of mine' : `its part “${where}” isn’t one I know`),
  amount: () => 'an amount, strength or temperature in it can’t be right',
  day: () => 'its days are out of order',
  name: () => 'a jar can’t have that name',
  plant: () => 'I don’t know one of its plants by that id',
  long: () => 'a text, a list or its corrections are longer than I keep',
  number: () => 'entries have to be numbered 1, 2, 3 and so on',
  amends: () => 'it undoes or corrects an entry that can’t be changed',
  follow: () => 'it can’t come after the entry before it',
  running: () => 'you already have as many running jars as I keep',
  taken: () => 'another running jar has its name, and this one has too many entries to be renamed',
  room: () => 'you already have as many jars as I keep',
}

/** Jars that are named one by one. */
const MOST_NAMED = 8

const leftJar = ({ jar, name, seq, why, where }: LeftJar): string => {
  const which = name === null ? `Jar ${jar}` : `Jar ${jar} (${quote(name)})`
  return `${which}: ${seq === null ? '' : `in entry ${seq}, `}${wrongEntry[why](where)}.`
}

/** Which jars of a file are left out, and why, a sentence each. */
const leftJars = (left: readonly LeftJar[]): string => {
  const more = left.length - MOST_NAMED
  const named = left.slice(0, MOST_NAMED).map(leftJar).join(' ')
  return more > 0 ? `${named} And ${more} more.` : named
}

/** What is wrong with a file that somebody gave; nothing was changed then. */
export const fileProblems = {
  no_files_here: () => 'I can’t read files here. Try it where you can attach or name one.',
  file_not_found: ({ typed, folder }) =>
    `I can’t find ${quote(typed)}. A path without / or ~/ in front starts at ${folder}.`,
  file_unreadable: ({ typed, why }) =>
    ({
      no_file: `${quote(typed)} isn’t a file. Give the path of one that ${lineTyped('notebook', { export: 'json' })} wrote.`,
      rights: `I’m not allowed to read ${quote(typed)}.`,
      failed: `I couldn’t read ${quote(typed)}. Please try again.`,
    })[why],
  file_too_big: ({ name, mostBytes }) =>
    `${quote(name)} is too big: I can read files up to ${megabytes(mostBytes)}. Nothing was changed.`,
  file_not_fetched: ({ name }) =>
    `I couldn’t fetch ${quote(name)} from Discord. Nothing was changed. Please try again.`,
  import_no_notebook: ({ name, why }) =>
    `I can’t read ${quote(name)} as a notebook: ${noNotebook[why]}. Give me a file that ${lineTyped('notebook', { export: 'json' })} wrote. Nothing was changed.`,
  import_newer: ({ version, known }) =>
    `A newer Larderbell wrote this file (version ${version}, I know up to ${known}). Update me, then import it again. Nothing was changed.`,
  import_part: ({ where }) => `I don’t know the part “${where}” of this file. Nothing was changed.`,
  import_too_many: ({ jars, most }) => `That would make ${jars} jars, and I keep up to ${most}. Nothing was changed.`,
  import_jars: ({ left }) => `I can’t import any jar from this file. ${leftJars(left)} Nothing was changed.`,
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
      return `A calendar with ${counted(count, 'reminder')} for ${counted(jars, 'jar')}, ${when}.`
    },
    calendar_empty: ({ isOneJar }) =>
      isOneJar
        ? 'Nothing more to do with this jar, so there’s no calendar to make.'
        : 'Nothing is coming up, so there’s no calendar to make.',
    exported: (values) =>
      `Your notebook: ${jarsWith(values)}${values.files === 1 ? '' : `, in ${values.files} files`}.`,
    imported: (values) => {
      const { added, longer, same, entries, isSettled } = values
      const done = [
        ...(added === 0 ? [] : [`${counted(added, 'jar')} added`]),
        ...(longer === 0 ? [] : [`${counted(longer, 'jar')} brought up to date`]),
      ]
      const kept = same === 0 ? '' : ` ${capital(counted(same, 'jar'))} ${plural(same, 'was', 'were')} here already.`
      return done.length === 0
        ? isSettled
          ? `Imported: the settings.${kept}`
          : 'Everything in that file was here already, so nothing was changed.'
        : `Imported: ${listed(done)}, ${counted(entries, 'entry', 'entries')} in all.${kept}`
    },
  },

  notes: {
    calendar_again: () =>
      'After a change, import it again: reminders that moved move there too. Delete by hand those you no longer need.',
    export_json: () => 'You can import it again, here or in another Larderbell. To see how: /help notebook',
    export_json_parts: ({ files }) =>
      `That’s too much for one file. To bring it back, import all ${files}, in any order.`,
    export_csv: () =>
      'Two tables: one with a line for each batch, one with a line for each entry. An apostrophe in front of a sign like = stops the spreadsheet from working it out.',
    import_renamed: ({ names }) =>
      `You already have a running jar of that name, so ${listed(names.map(([from, to]) => `${from} is now ${to}`))}.`,
    import_left: ({ left }) => `I left out ${left.length === 1 ? 'one jar' : `${left.length} jars`}. ${leftJars(left)}`,
    import_settings: () => 'I took over settings you hadn’t chosen here.',
    import_past: () => 'Old reminders don’t come again. New ones come to the place you chose here.',
  },

  actions: {
    import_list: () => 'Show jars',
  },

  files: {
    calendar_file: ({ count }) => `Calendar with ${counted(count, 'reminder')}`,
    notebook_json: ({ part, parts }) =>
      parts === 1 ? 'Your notebook, to import again' : `Your notebook, part ${part} of ${parts}`,
    csv_batches: ({ count }) => `Table of ${counted(count, 'batch', 'batches')}`,
    csv_entries: ({ count }) => `Table of ${counted(count, 'entry', 'entries')}`,
  },
} satisfies Feature<ExportMessages>
