import { dayFromIso } from '../../../core/quantity/time/calendar-day.ts'
import type { StorageProblems } from '../../../store/storage-error.ts'
import { call } from '../../calls/call.ts'
import { lineOf, lineTyped } from '../../calls/write-line.ts'
import type { Written } from '../language.ts'
import type { ConsoleText } from '../terminal-text.ts'
import { listed } from './phrases.ts'

/** Why a file could not be written, by the system's name of the failure. */
const NOT_WRITTEN: Readonly<Record<string, string>> = {
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk is full',
  EACCES: 'I’m not allowed to write there',
  EPERM: 'I’m not allowed to write there',
  EROFS: 'I’m not allowed to write there',
}

/** Which nightly copy stands in for a person's file, and the line that puts it back. */
const copyBack = ({ userId, day }: { readonly userId: string; readonly day: string | null }): string =>
  day === null
    ? 'No copy of it has a jar in it. Only npm start makes copies, when it starts and every night.'
    : `The copy from ${day} still has jars in it. To get it back, stop me and type: npm run doctor -- restore ${userId} ${day}`

/** What a maker says in place of a line, by the label of what is offered. */
const SAYINGS: ReadonlyMap<string, string> = new Map([
  ['start_jar', 'start it'],
  ['plan_drier', 'drier'],
  ['plan_stronger', 'stronger'],
  ['shopping_plan', 'shopping list'],
  ['jar_sweeten', 'done'],
  ['jar_bottle', 'bottled it'],
  ['jar_undo', 'undo'],
  ['jar_labels', 'labels'],
  ['jar_again', 'make it again'],
  ['trouble_yes', 'yes'],
  ['trouble_no', 'no'],
])

/** The line that shows what became of something. */
const look = (jar: string | undefined): string => (jar === undefined ? '/jar list' : lineOf(call('jar show', { jar })))

/** What was wrong with the folder of data, and what to do about it: at the terminal, where the folder is. */
export const storageProblems: Written<StorageProblems> = {
  locked: ({ folder, host, pid, isHere }) =>
    isHere
      ? `Another Larderbell (process ${pid}) works on the jars in ${folder}. Use that one, or stop it first. Nothing was changed.`
      : `A Larderbell on ${host} (process ${pid}) works on the jars in ${folder}. Stop it there first. If it’s gone for good, or ${host} is an old name of this machine, empty the folder ${folder}/lock. Nothing was changed.`,
  no_rights: ({ path }) =>
    `I’m not allowed to read or write ${path}, so nothing was changed. Give me the rights to it.`,
  disk_full: ({ path }) => `The disk is full (${path}). Nothing was changed. Make room and try again.`,
  disk_failed: ({ path, code }) => `The disk failed at ${path} (${code}). Nothing was changed. Please try again.`,
  unsure: ({ path, code, jar, isRemembered }) =>
    `The disk failed at ${path} (${code}) just as I wrote that down, so I may have kept it or not. See ${look(jar)}${
      isRemembered === true ? '. You can try again: I won’t write it twice.' : ' before you try again.'
    }`,
  half_erased: ({ path, code }) =>
    `The disk failed at ${path} (${code}) while I was erasing, so some of it may be gone already. Type ${lineTyped('forget', { confirm: 'yes' })} and I’ll erase the rest.`,
  too_large: ({ mostBytes }) =>
    `Your jars and notes would be more than the ${Math.floor(mostBytes / 1_000_000)} MB that I keep for one person, so nothing was changed. To save what’s there, type ${lineTyped('notebook', { export: 'json' })}`,
  newer_version: ({ path, version, known }) =>
    `${path} was written by a newer Larderbell (version ${version}, I know up to ${known}). Nothing was changed. Update me.`,
  unreadable: ({ path, userId, day }) =>
    `I can’t read ${path}, and I couldn’t set it aside either. Nothing was changed. ${copyBack({ userId, day })}`,
  no_copy: ({ userId, day, days }) => {
    const none = `There’s no copy of ${userId} from ${day}, so nothing was changed.`
    const [latest] = days
    return latest === undefined
      ? `${none} There’s none from another day either.`
      : `${none} There’s one from ${listed(days)}. For the latest, type: npm run doctor -- restore ${userId} ${latest}`
  },
  bad_copy: ({ path }) => `The copy ${path} can’t be read. Nothing was changed. Try another day.`,
  bad_user_id: () => 'I don’t know who that is, so I keep nothing for them.',
  closed: () => 'I’m restarting. Please try again in a minute.',
}

/** Whoever keeps the bot running reads its log, which names everything. */
const TELL = 'Tell whoever runs me.'

/** The same where others are, who shall read no path, no process and no host. */
export const storageInDiscord: Written<StorageProblems> = {
  locked: () => `Another copy of me is looking after the jars, so nothing was changed. ${TELL}`,
  no_rights: () => `I can’t get at your jars just now, so nothing was changed. ${TELL}`,
  disk_full: () => `My disk is full, so nothing was changed. ${TELL}`,
  disk_failed: () => 'My disk failed just now. Nothing was changed. Please try again.',
  unsure: ({ jar }) =>
    `My disk failed just as I wrote that down, so I may have kept it or not. See ${look(jar)}. You can try again: I won’t write it twice.`,
  half_erased: () =>
    `My disk failed while I was erasing, so some of it may be gone already. Type ${lineTyped('forget', { confirm: 'yes' })} and I’ll erase the rest.`,
  too_large: ({ mostBytes }) =>
    `Your jars and notes would be more than the ${Math.floor(mostBytes / 1_000_000)} MB that I keep for one person, so nothing was changed. To save what’s there, type ${lineTyped('notebook', { export: 'json' })}`,
  newer_version: () => `Your jars were written by a newer me, so I left them as they are. ${TELL}`,
  unreadable: ({ day }, format) =>
    day === null
      ? `I can’t read your jars, so I left everything as it is. ${TELL}`
      : `I can’t read your jars, so I left everything as it is. There’s a copy from ${format.day(dayFromIso(day))}. ${TELL}`,
  no_copy: ({ day }, format) => `There’s no copy of your jars from ${format.day(dayFromIso(day))}.`,
  bad_copy: () => `I can’t read that copy of your jars. ${TELL}`,
  bad_user_id: () => 'I don’t know who you are, so I keep nothing for you.',
  closed: () => 'I’m restarting. Please try again in a minute.',
}

/** The terminal's own words: greeting, help, usage and the marks around a reply. */
export const consoleText: ConsoleText = {
  prompt: () => 'larderbell> ',
  greeting: ({ example }: { example: string }) => ['What are you making? For example:', example, 'Lost? Type: /help'],
  remindersElsewhere: ({ folder, pid, host, isHere }: StorageProblems['locked']) =>
    isHere
      ? `Reminders come from the other Larderbell that works on your jars (process ${pid}). Here you can look, not change.`
      : `Reminders come from the Larderbell on ${host} that works on your jars. Here you can look, not change. If it’s gone for good, or ${host} is an old name of this machine, empty the folder ${folder}/lock.`,
  setAside: ({ file, day, folder, userId }: { file: string; day: string | null; folder: string; userId: string }) =>
    `I couldn’t read the file with your jars. I kept it as ${folder}/users/${file} and started a new one. ${copyBack({ userId, day })}`,
  tokenShown: () => 'Others on this machine can read the token in .env. To keep it to yourself, type: chmod 600 .env',
  noReminders: ({ sentence }: { sentence: string }) => `No reminders for now. ${sentence}`,
  goodbye: () => 'Goodbye.',
  fileSaved: ({ path }: { path: string }) => `Written to ${path}`,
  fileFailed: ({ name, code }: { name: string; code: string | null }) => {
    if (code === null) return `I couldn’t make ${name}, but everything else here is right.`
    return `I couldn’t save ${name}: ${NOT_WRITTEN[code] ?? code}.`
  },
  readAs: (line: string) => `read as ${line}`,
  saying: (key) => SAYINGS.get(key) ?? null,
  action: (label: string, line: string) => `${label}: ${line}`,
  atLine: (number: number, sentence: string) => `Line ${number}: ${sentence}`,
  commands: () => 'Commands',
  more: () => 'For one command: /help syrup',
  options: () => 'Options',
  option: (text: string, required: boolean) => (required ? `${text} (needed)` : text),
  examples: () => 'Examples',
  usage: ({ example }: { example: string }) => [
    `npm run -s ask -- '${example}'   answers one command`,
    'npm run -s ask -- -   answers every line of standard input, except blank ones and those that start with #',
    'npm run -s ask -- /help   says where to start',
    '--full   shows all of a reply, not only its first screen',
    '--json   prints one JSON object a line, errors too',
    '--now 2026-12-24T18:00:00Z   uses that instant as now',
  ],
}
