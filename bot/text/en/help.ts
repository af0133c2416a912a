import { lineTyped } from '../../calls/write-line.ts'
import type { AboutWord, HelpText } from '../help-text.ts'

/** What people look for that is no command, and what to type for it. */
const ABOUT: readonly AboutWord[] = [
  {
    words: ['freezer', 'freeze', 'freezing', 'ice'],
    lines: [
      { line: lineTyped('settings', { freezer: '-22 C' }), what: 'how cold yours is, so I can say what pours' },
      {
        line: lineTyped('syrup', { infusion: '920 ml', strength: '82%' }),
        what: 'says which syrup still pours from it',
      },
    ],
  },
  {
    words: [
      'unit',
      'units',
      'cup',
      'cups',
      'ounce',
      'ounces',
      'oz',
      'metric',
      'imperial',
      'us',
      'uk',
      'litre',
      'litres',
    ],
    lines: [
      { line: lineTyped('settings', { units: 'us' }), what: 'or metric, or imperial, for everything I say' },
      {
        line: lineTyped('mix', { spirit: '2 cups 95%', water: '3 cups' }),
        what: 'or just type them: I answer in the same',
      },
    ],
  },
  {
    words: ['honey', 'maple', 'agave', 'sweetener', 'sweeteners', 'sugar', 'molasses'],
    lines: [
      {
        line: lineTyped('plan', { of: '10 lemons', spirit: '1 l 95%', sugar: 'honey' }),
        what: 'sweetened with honey at the end',
      },
      {
        line: lineTyped('plan', { of: '500 g sloes', spirit: '700 ml 40%', sugar: '200 g' }),
        what: 'with sugar in the jar from the first day',
      },
      {
        line: lineTyped('syrup', { infusion: '920 ml', strength: '82%', sugar: 'honey' }),
        what: 'how much to stir in after straining',
      },
    ],
  },
  {
    words: [
      'sweet',
      'sweeter',
      'sweetness',
      'dry',
      'drier',
      'strong',
      'stronger',
      'weak',
      'weaker',
      'strength',
      'abv',
      'proof',
    ],
    lines: [
      {
        line: lineTyped('plan', { of: '10 lemons', spirit: '1 l 95%', 'to-strength': '30%', 'to-sweetness': 'dry' }),
        what: 'how strong and how sweet it should come out',
      },
      {
        line: lineTyped('adjust', {
          liqueur: '1 l',
          strength: '33%',
          sweetness: '300 g/L',
          'to-strength': '28%',
          'to-sweetness': '250 g/L',
        }),
        what: 'fixes what’s made already',
      },
      { line: lineTyped('dilute', { spirit: '1 l 95%', 'to-strength': '40%' }), what: 'water for a spirit' },
    ],
  },
  {
    words: ['hydrometer', 'brix', 'refractometer', 'alcoholmeter', 'test'],
    lines: [{ line: lineTyped('measure'), what: 'ways to find out how strong and sweet it is' }],
  },
  {
    words: [
      'cloudy',
      'haze',
      'mould',
      'mold',
      'bitter',
      'problem',
      'problems',
      'wrong',
      'bad',
      'spoiled',
      'fizz',
      'safe',
    ],
    lines: [
      { line: lineTyped('trouble', { symptom: 'cloudy' }), what: 'whether to throw it away, and what to do' },
      { line: lineTyped('cautions', { of: 'elderflower' }), what: 'what can hurt, before you start' },
    ],
  },
  {
    words: ['emergency', 'poison', 'hurt', 'fire', 'burn'],
    lines: [{ line: 'emergency', what: 'the number to call, and what to do first' }],
  },
  {
    words: ['mistake', 'edit', 'change', 'correct', 'fix', 'delete', 'remove', 'undo'],
    lines: [
      { line: lineTyped('jar undo', { jar: 'lemon' }), what: 'undoes the last entry of a jar' },
      { line: lineTyped('jar correct', { jar: 'lemon', measured: '930 ml' }), what: 'changes a number' },
      { line: lineTyped('forget'), what: 'deletes everything I have about you, after asking' },
    ],
  },
  {
    words: ['label', 'labels', 'print', 'sticker', 'tag', 'tags'],
    lines: [
      { line: lineTyped('jar label', { jar: 'lemon' }), what: 'a label for its bottles, to print' },
      { line: lineTyped('jar tag', { jar: 'lemon' }), what: 'a tag for the jar, to print' },
    ],
  },
  {
    words: ['filter', 'filtering', 'rack', 'racked', 'fining', 'clear', 'strain', 'straining', 'sieve'],
    lines: [
      { line: lineTyped('jar strain', { jar: 'lemon', measured: '930 ml' }), what: 'when you’ve strained it' },
      { line: lineTyped('jar filter', { jar: 'lemon', measured: '900 ml' }), what: 'when you’ve filtered it' },
      { line: lineTyped('trouble', { symptom: 'cloudy' }), what: 'when it won’t clear' },
    ],
  },
  {
    words: ['price', 'prices', 'money', 'budget'],
    lines: [
      { line: lineTyped('cost', { prices: 'sugar 1.20/kg + spirit 95% 18/l' }), what: 'tell me what you pay' },
      { line: lineTyped('cost', { jar: 'lemon' }), what: 'then I can say what a bottle costs' },
    ],
  },
  {
    words: ['buy', 'shop', 'list'],
    lines: [
      { line: lineTyped('shopping'), what: 'what your jars still need' },
      { line: lineTyped('jar list'), what: 'what’s due today' },
    ],
  },
  {
    words: ['zone', 'timezone', 'time', 'clock', 'remind', 'reminder', 'holiday', 'pause', 'quiet'],
    lines: [
      { line: lineTyped('reminders', { time: '19:30' }), what: 'when I remind you' },
      { line: lineTyped('reminders', { zone: 'London' }), what: 'by which clock' },
      { line: lineTyped('reminders', { 'pause-until': '7 January' }), what: 'not before that day' },
    ],
  },
  {
    words: ['country', 'numbers', 'law'],
    lines: [
      { line: lineTyped('settings', { country: 'Ireland' }), what: 'whose emergency numbers and standard drinks' },
      {
        line: lineTyped('label', { strength: '30%', sweetness: '250 g/L', of: 'lemon' }),
        what: 'what it may be called',
      },
    ],
  },
  {
    words: ['picture', 'photo', 'shelf'],
    lines: [{ line: lineTyped('jar list', { picture: 'yes' }), what: 'a picture of your shelf' }],
  },
  {
    words: ['friend', 'friends', 'recipe', 'code', 'repeat'],
    lines: [
      { line: lineTyped('share', { jar: 'lemon' }), what: 'a picture and a code for friends' },
      { line: lineTyped('again', { jar: 'lemon' }), what: 'plans it once more' },
    ],
  },
  {
    words: ['backup', 'export', 'import', 'save', 'file', 'csv'],
    lines: [{ line: lineTyped('notebook', { export: 'json' }), what: 'all you have here, as a file' }],
  },
  {
    words: ['alcohol', 'drink', 'drinks', 'drunk', 'glass'],
    lines: [{ line: lineTyped('serving', { pour: '30 ml', strength: '30%' }), what: 'how much alcohol is in a glass' }],
  },
  {
    words: ['gift', 'give', 'given', 'bottle', 'bottling'],
    lines: [
      { line: lineTyped('jar bottle', { jar: 'lemon', bottles: '5 x 500 ml' }), what: 'when you’ve filled bottles' },
      { line: lineTyped('bottles', { jar: 'lemon', given: '1' }), what: 'when you’ve given one away' },
    ],
  },
  {
    words: ['plant', 'plants', 'fruit', 'herb', 'herbs', 'spice', 'spices', 'season', 'ripe', 'dose', 'how much'],
    lines: [
      { line: lineTyped('botanical', { of: 'ginger' }), what: 'how much, how long, what can hurt' },
      { line: lineTyped('botanical', { month: 'now' }), what: 'what’s ripe now' },
    ],
  },
  {
    words: ['jar', 'steep', 'infuse', 'infusion', 'start', 'spirit', 'vodka', 'limoncello', 'liqueur', 'recipes'],
    lines: [
      { line: lineTyped('plan', { of: '10 lemons', spirit: '1 l 95%' }), what: 'what to buy, and what to do when' },
      {
        line: lineTyped('jar start', { name: 'lemon', of: '10 lemons', spirit: '1 l 95%' }),
        what: 'when it’s in the jar',
      },
    ],
  },
]

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
  rest: (line) => `The rest: ${line}`,
  also: (line) => `See also: ${line}`,
  about: () => ABOUT,
}
