import type { HelpText } from '../help-text.ts'

/** The page of help that comes first. */
export const helpText: HelpText = {
  startHere: () => 'Start here',
  first: () => [
    { line: '/plan of:10 lemons spirit:1 l 95%', what: 'what to buy, and what to do when' },
    { line: '/jar start lemon of:10 lemons spirit:1 l 95%', what: 'when it’s in the jar' },
    { line: '/jar list', what: 'what’s due today' },
  ],
  byTopic: () => 'More, by topic',
  topics: {
    planning: 'plans, plants, and what can hurt',
    jars: 'what you did to a jar, and what comes next',
    sums: 'syrup, mixing, diluting, fixing a drink',
    sharing: 'making it again, sharing, calendar, notebook',
    you: 'reminders, units, time zone, your data',
  },
  everything: () => 'every command',
  oneCommand: () => 'For one command: /help syrup. If somebody’s hurt, type: emergency',
}
