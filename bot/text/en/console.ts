/** The terminal's own words: greeting, help, usage and the marks around a reply. */
export const consoleText = {
  prompt: () => 'larderbell> ',
  greeting: ({ example }: { example: string }) => [
    'Larderbell works out homemade liqueurs: how much of what, and what comes out.',
    `Try: ${example}`,
    '/help lists the commands, Tab completes them, /quit leaves.',
  ],
  goodbye: () => 'Goodbye.',
  caution: (text: string) => `Caution: ${text}`,
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
