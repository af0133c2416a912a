import type { StorageProblems } from '../../../store/storage-error.ts'
import { copyBack } from './storage-problems.ts'

/** The terminal's own words: greeting, help, usage and the marks around a reply. */
export const consoleText = {
  prompt: () => 'larderbell> ',
  greeting: ({ example }: { example: string }) => [
    'Larderbell works out homemade liqueurs: how much of what, and what comes out.',
    `Try: ${example}`,
    'To have me in Discord, set DISCORD_TOKEN (see the README) and start me again.',
    '/help lists the commands, Tab completes them, /quit leaves.',
  ],
  remindersElsewhere: ({ folder, pid, host, isHere }: StorageProblems['locked']) =>
    isHere
      ? `Reminders come from the other Larderbell that works on your jars (process ${pid}). Here you can look, not change.`
      : `Reminders come from the Larderbell on ${host} that works on your jars. Here you can look, not change. If it's gone for good, or ${host} is an old name of this machine, empty the folder ${folder}/lock.`,
  setAside: ({ file, day, folder, userId }: { file: string; day: string | null; folder: string; userId: string }) =>
    `The file with your jars could not be read: I kept it as ${folder}/users/${file} and began a new one. ${copyBack({ userId, day })}`,
  tokenShown: () => 'Others on this machine can read the token in .env. To keep it to yourself, type: chmod 600 .env',
  noReminders: ({ sentence }: { sentence: string }) => `No reminders come for now: ${sentence}`,
  goodbye: () => 'Goodbye.',
  caution: (text: string) => `Caution: ${text}`,
  fileSaved: ({ path }: { path: string }) => `Written to ${path}`,
  fileFailed: ({ name, code }: { name: string; code: string | null }) => {
    if (code === null) return `The file ${name} could not be made; the answer holds without it.`
    const why = code === 'ENOSPC' ? 'the disk is full' : code === 'EACCES' ? 'I may not write there' : code
    return `The file ${name} could not be written into the folder of data: ${why}.`
  },
  next: () => 'Next you can type:',
  action: (label: string, line: string) => `${label}: ${line}`,
  atLine: (number: number, sentence: string) => `Line ${number}: ${sentence}`,
  commands: () => 'Commands',
  more: () => '/help and the name of a command shows its options. A value may hold spaces; quotes keep it whole.',
  options: () => 'Options',
  option: (text: string, required: boolean) => (required ? text : `${text} (may be left out)`),
  examples: () => 'Examples',
  usage: ({ example }: { example: string }) => [
    `npm run -s ask -- '${example}'   answers one command`,
    'npm run -s ask -- -   answers every line of standard input; blank lines and lines that begin with # are skipped',
    'npm run -s ask -- /help   lists the commands',
    '--json   prints one JSON object a line, errors too',
    '--now 2026-12-24T18:00:00Z   takes that instant for now',
  ],
}

export type ConsoleText = typeof consoleText
