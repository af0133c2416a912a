import { lineTyped } from '../../calls/write-line.ts'
import type { HelpText } from '../help-text.ts'

/** The page of help that comes first. */
export const helpText: HelpText = {
  startHere: () => 'Start here',
  first: () => [
    { line: lineTyped('plan', { of: '10 lemons', spirit: '1 l 95%' }), what: 'what to buy, and what to do when' },
    {
      line: lineTyped('jar start', { name: 'lemon', of: '10 lemons', spirit: '1 l 95%' }),
      what: 'when it’s in the jar',
    },
    { line: lineTyped('jar list'), what: 'what’s due today' },
  ],
  said: () => [
    { said: '10 lemons and a litre of 95%', line: lineTyped('plan', { of: '10 lemons', spirit: '1 l 95%' }) },
    { said: 'how much ginger per litre?', line: lineTyped('botanical', { of: 'ginger' }) },
    { said: 'what’s on?', line: lineTyped('jar list') },
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
