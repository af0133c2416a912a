import { planCommandText } from '../plan/plan-command-text.ts'

const jar = 'Which jar: its name, or the beginning of it'
const whole = 'Which jar: its whole name, or its #id'
const after = 'Its last entry by number: only if what is in the jar has not changed since that one'
const already = 'yes: it has happened, so record it whatever becomes of it'
const when = 'The day, if it was not today: yesterday, Saturday, 24 December'

const { start: _, ...planOptions } = planCommandText.options

/** What help says of the commands that record what happened to a jar. */
export const stepTexts = {
  'jar start': {
    summary: 'Begin a jar: what goes in, and what comes when',
    options: {
      name: 'What you call it, if not after what is in it: lemon',
      ...planOptions,
      when: 'The day it was begun, if not today: 2 months ago',
    },
    examples: ['/jar start lemon of:10 lemons spirit:1 l 95% to-strength:30% to-sweetness:250 g/L'],
  },
  'jar shake': {
    summary: 'You shook a jar, or all that are steeping',
    options: { jar: `${jar}, or all`, when },
    examples: ['/jar shake all', '/jar shake lemon'],
  },
  'jar taste': {
    summary: 'You tasted it',
    options: {
      jar,
      rating: '1 (poor) to 5 (superb)',
      when,
      note: 'What you tasted, to the end of the line: it comes last',
    },
    examples: ['/jar taste lemon rating:4 note:bright, still a little sharp'],
  },
  'jar add': {
    summary: 'Something else went in',
    options: {
      jar,
      of: 'Plants, joined with +: 1 stick cinnamon + 20 g ginger',
      spirit: 'Spirit: 200 ml 95%',
      strength: 'Its strength, where it is not said beside it: 95%',
      water: 'Water: 100 ml',
      sugar: 'Sugar: 50 g',
      'unknown-ok': 'yes: add a food I’ve no amounts for, with your own grams',
      when,
      after,
      already,
    },
    examples: ['/jar add lemon of:20 g ginger'],
  },
  'jar strain': {
    summary: 'It is strained: the syrup for what you measured',
    options: {
      jar,
      measured: 'What came out of it, rinsings included: 920 ml, or better 770 g',
      strength: 'Its strength, if you have a hydrometer: 78%, or 78.6% at 28 C',
      rinse: 'Water you rinsed the plants with: 100 ml',
      when,
    },
    examples: ['/jar strain lemon measured:920 ml strength:78%'],
  },
  'jar sweeten': {
    summary: 'What you really sweetened it with: what it is now, and when it is ready',
    options: {
      jar,
      water: 'Water: 750 ml',
      sugar: 'White sugar: 560 g',
      when,
      after,
      again: 'yes: as much once more, where the same was entered that day',
    },
    examples: ['/jar sweeten lemon water:750 ml sugar:560 g'],
  },
  'jar filter': {
    summary: 'It is filtered',
    options: {
      jar,
      measured: 'What is left, if you measured it: 1.5 l',
      when,
      again: 'yes: once more, where the same was entered that day',
    },
    examples: ['/jar filter lemon measured:1.5 l'],
  },
  'jar bottle': {
    summary: 'It is in bottles',
    options: { jar, bottles: 'Bottles you filled: 4 x 500 ml, or 3 x 500 ml + 1 x 250 ml', when, already },
    examples: ['/jar bottle lemon bottles:3 x 500 ml'],
  },
  'jar open': {
    summary: 'The first glass is poured',
    options: { jar, when },
    examples: ['/jar open lemon'],
  },
  'jar empty': {
    summary: 'It is all drunk or given away; it goes to the notebook',
    options: { jar: whole, when },
    examples: ['/jar empty lemon'],
  },
  'jar discard': {
    summary: 'It went wrong and is thrown away; it goes to the notebook',
    options: { jar: whole, when },
    examples: ['/jar discard lemon'],
  },
  'jar rename': {
    summary: 'Call a jar something else',
    options: { jar: whole, to: 'The new name: midwinter lemon' },
    examples: ['/jar rename lemon to:midwinter lemon'],
  },
  'jar later': {
    summary: 'No reminders of a jar, or of all, until a day or an hour',
    options: { jar: `${jar}, or all`, until: 'When you want them again: Saturday, in 2 weeks, 18:00, 3 hours' },
    examples: ['/jar later all until:in 2 weeks', '/jar later lemon until:18:00'],
  },
  'jar correct': {
    summary: 'Put a wrong entry right: the latest that has what you correct, or the one you number',
    options: {
      jar,
      entry: 'The entry’s number in /jar show, if it is not the latest: 3',
      of: 'Plants that went in, all of them: 11 lemons + 20 g ginger',
      spirit: 'Spirit that went in: 1 l 96%',
      measured: 'What was measured: 930 ml',
      strength: 'The strength that was read, or the spirit’s while it steeps: 77%',
      rinse: 'Water the plants were rinsed with: 100 ml',
      water: 'Water that went in: 700 ml',
      sugar: 'Sugar that went in: 550 g',
      bottles: 'Bottles that were filled: 4 x 500 ml',
      rating: '1 (poor) to 5 (superb)',
      'unknown-ok': 'yes: a food I’ve no amounts for, with your own grams',
      when: 'The day it was: yesterday, 24 December',
      already,
      note: 'What you tasted, to the end of the line: it comes last',
    },
    examples: [
      '/jar correct lemon measured:930 ml',
      '/jar correct lemon of:11 lemons',
      '/jar correct lemon entry:3 when:yesterday',
    ],
  },
  'jar undo': {
    summary: 'Take back the last entry of a jar; again goes further back',
    options: { jar: whole, after: 'An entry by number: only if it is still the last' },
    examples: ['/jar undo lemon'],
  },
}
