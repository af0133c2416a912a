import { lineTyped } from '../../calls/write-line.ts'
import { againText } from './again.ts'
import { costText } from './cost.ts'
import { bottlesText, keepingText } from './keeping.ts'
import { measureText } from './measure.ts'
import { remindersText } from './reminders.ts'
import { settingsText } from './settings.ts'
import { shoppingText } from './shopping.ts'
import { troubleText } from './trouble.ts'

/** Help for `/botanical`. */
const botanicalText = {
  summary: 'How much of a plant, how long, and what can hurt',
  options: {
    of: 'The plant: ginger, zenzero, dried bay. Leave it out for all I know',
    spirit: 'How much spirit it’s for: 70 cl gin, 1 l 95%',
    month: 'What’s ripe then: October, ottobre, 10 or now',
  },
  examples: ['/botanical ginger', '/botanical sloes spirit:70 cl gin', '/botanical dried sage', '/botanical month:now'],
}

/** Help for `/cautions`. */
const cautionsText = {
  summary: 'Everything that can hurt with these plants, and in the making',
  options: { of: 'The plants, with + between them: 8 lemons + 30 g ginger, or lemon + ginger' },
  examples: ['/cautions of:8 lemons + 30 g ginger', '/cautions elderflower'],
}

/** Texts of the commands that show jars and batches. */
const jarListText = {
  summary: 'What to do today, what comes next, and every running jar',
  options: { picture: 'yes for a picture of the shelf, no for none' },
  examples: ['/jar list', '/jar list picture:yes'],
}

const jarShowText = {
  summary: 'One jar: what’s in it, its story entry by entry, what comes next',
  options: {
    jar: 'Its name, the first letters of it, or its # and id',
    'ready-by': 'Will it be ready by then: 24 December',
  },
  examples: ['/jar show lemon'],
}

export const notebookText = {
  summary: 'Finished and running batches, or what differed between two of them',
  options: {
    compare: 'Two batches: lemon + walnut',
    export: 'All you have here as a file: json to bring back later, csv for a spreadsheet',
    import: `A file that ${lineTyped('notebook', { export: 'json' })} wrote. What’s here already isn’t doubled`,
  },
  examples: [
    '/notebook',
    '/notebook compare:lemon + walnut',
    '/notebook export:json',
    '/notebook import:larderbell.json',
  ],
}

export const calendarText = {
  summary: 'Your coming reminders as a file for your calendar',
  options: { jar: 'One jar: its name, or # and id. Leave it out for all of them' },
  examples: ['/calendar', '/calendar lemon'],
}

const forgetText = {
  summary: 'Delete everything I have about you, after asking once',
  options: { jar: 'One jar: tells you how to throw away just that one', confirm: 'yes, to do it' },
  examples: ['/forget'],
}

/** What help says of `/plan`. */
export const planCommandText = {
  summary: 'Plan a batch: what to buy, what goes in the jar, the days, what comes out',
  options: {
    of: 'The plants, with + between them: 8 lemons + 30 g ginger. Just lemon means the usual amount',
    from: 'The code of a shared batch. Then of: is how much you have of its plants',
    spirit: 'The spirit you have: 1 l, or 750 ml 75.5% + 375 ml 40%. Leave it out and I’ll say how much',
    strength: 'Its strength, if it isn’t beside the amount: 95%',
    bottles: 'Bottles to fill: 4 x 500 ml. With spirit: only their size counts (usually 500 ml)',
    'to-strength': 'The strength you want: 30%, which is also the usual',
    'to-sweetness': 'The sweetness you want: 250 g/L, or dry, everyday (the usual) or rich',
    start: 'The day it goes into the jar: 1 June. Leave it out for today',
    'ready-by': 'The day you want it ready: 24 December',
    'steep-at': 'Dilute the spirit to this first: 60%',
    sugar: 'In with the plants: 300 g. At the end: honey',
    water: 'Your own: 1 l. Or apple juice',
    'unknown-ok': 'yes: plan a food I’ve no amounts for, with your own grams and days',
    days: 'How long you want to steep it, if not as usual: 10 days, 2 weeks',
    'all-in': 'yes: everything goes in on the first day',
    have: 'What you’ve got already, so you needn’t buy it: 1 l 95% + 500 g sugar',
  },
  examples: [
    '/plan of:8 lemons + 30 g ginger spirit:0.7 l strength:95% to-strength:30% to-sweetness:250 g/L',
    '/plan of:lemon bottles:4 x 500 ml strength:95% to-strength:30% to-sweetness:rich',
    '/plan from:11NCHSTJ8P501JQH0JNHC00VV9SW4H50HFEB52FV6N spirit:700 ml 70%',
  ],
}

const jar = 'Which jar: its name or first letters'

const whole = 'Which jar: its whole name, or its #id'

const after = 'Its last entry by number: only if it’s still as it was then'

const already = 'yes: it’s done, so record it'

const when = 'The day, if not today: Saturday, 24 December'

const { start: _, have: _have, ...planOptions } = planCommandText.options

/** What help says of the commands that record what happened to a jar. */
const stepTexts = {
  'jar start': {
    summary: 'Start a jar: what goes in, and what comes when',
    options: {
      name: 'What to call it, if not by what’s in it: lemon',
      ...planOptions,
      enzyme: 'Pectic enzyme on the fruit before the spirit: 1 tsp',
      'second-of': 'The strained jar whose plants steep once more: lemon',
      when: 'The day you started it, if not today: 2 months ago',
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
      of: 'Plants, with + between them: 1 stick cinnamon + 20 g ginger',
      spirit: 'Spirit: 200 ml 95%',
      strength: 'Its strength, if it isn’t beside the amount: 95%',
      water: 'Water or juice: 100 ml',
      sugar: 'Sugar: 50 g, 50 g honey',
      as: 'layer: the days count from this fruit. top-up: covers it again',
      enzyme: 'Pectic enzyme, as its packet says: 1 tsp',
      'unknown-ok': 'yes: add a food I’ve no amounts for, with your own grams',
      when,
      after,
      already,
    },
    examples: ['/jar add lemon of:20 g ginger', '/jar add rumpot of:500 g cherries sugar:250 g as:layer'],
  },
  'jar strain': {
    summary: 'You strained it: says how much syrup to add',
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
    summary: 'You added the syrup: what it is now and when it’s ready',
    options: {
      jar,
      water: 'Water or juice: 750 ml',
      sugar: 'Sugar: 560 g, 620 g honey, or just honey',
      'on-fruit': 'yes: dry sugar on the strained fruit',
      'from-fruit': 'Juice the sugar drew out, going back in: yes, 230 ml',
      when,
      after,
      again: 'yes: you did it twice that day, so count it twice',
    },
    examples: ['/jar sweeten lemon water:750 ml sugar:560 g', '/jar sweeten sloe sugar:250 g on-fruit:yes'],
  },
  'jar filter': {
    summary: 'You filtered or racked it',
    options: {
      jar,
      measured: 'What is left, if you measured it: 1.5 l',
      racked: 'yes: poured off what had sunk',
      fining: 'What cleared it: bentonite, egg white',
      when,
      again: 'yes: you did it twice that day, so count it twice',
    },
    examples: ['/jar filter lemon measured:1.5 l', '/jar filter lemon racked:yes fining:bentonite'],
  },
  'jar take-out': {
    summary: 'Take out a plant and let the rest steep on',
    options: { jar, of: 'What comes out: chilli + cloves', when },
    examples: ['/jar take-out ginger of:chilli'],
  },
  'jar split': {
    summary: 'Pour some into a new jar',
    options: { jar, amount: 'How much: 500 ml, half, a third, 25 %', into: 'The new jar’s name', when },
    examples: ['/jar split lemon amount:500 ml into:lemon with honey', '/jar split lemon amount:half into:lemon 2'],
  },
  'jar combine': {
    summary: 'Pour two jars together',
    options: {
      jar,
      with: 'The jar that goes in: orange',
      amount: 'Of the first, if not all: 500 ml',
      'with-amount': 'Of the other, if not all: 200 ml',
      into: 'A new name for both: citrus',
      when,
    },
    examples: ['/jar combine lemon with:orange', '/jar combine lemon with:orange with-amount:200 ml into:citrus'],
  },
  'jar note': {
    summary: 'Write down anything about a jar',
    options: {
      jar,
      where: 'Where it stands: cellar',
      vessel: 'What it’s in: 2 l jar',
      was: 'What a trouble was',
      when,
      note: 'Anything, to the end of the line: it comes last',
    },
    examples: ['/jar note lemon where:cellar shelf', '/jar note lemon note:smells of marzipan'],
  },
  'jar bottle': {
    summary: 'You bottled it',
    options: { jar, bottles: 'Bottles you filled: 4 x 500 ml, or 3 x 500 ml + 1 x 250 ml', when, already },
    examples: ['/jar bottle lemon bottles:3 x 500 ml'],
  },
  'jar open': {
    summary: 'You poured the first glass',
    options: { jar, when },
    examples: ['/jar open lemon'],
  },
  'jar empty': {
    summary: 'It’s all gone: it moves to the notebook',
    options: { jar: whole, when },
    examples: ['/jar empty lemon'],
  },
  'jar discard': {
    summary: 'You threw it away: it moves to the notebook',
    options: { jar: whole, when },
    examples: ['/jar discard lemon'],
  },
  'jar rename': {
    summary: 'Call a jar something else',
    options: { jar: whole, to: 'The new name: midwinter lemon' },
    examples: ['/jar rename lemon to:midwinter lemon'],
  },
  'jar later': {
    summary: 'No reminders for a jar, or for all, until a day or an hour',
    options: { jar: `${jar}, or all`, until: 'When you want them again: Saturday, in 2 weeks, 18:00, 3 hours' },
    examples: ['/jar later all until:in 2 weeks', '/jar later lemon until:18:00'],
  },
  'jar correct': {
    summary: 'Fix a wrong entry: the latest that has it, or the one you number',
    options: {
      jar,
      entry: 'The entry’s number in /jar show, if it isn’t the latest: 3',
      of: 'Plants that went in, all of them: 11 lemons + 20 g ginger',
      spirit: 'Spirit that went in: 1 l 96%',
      measured: 'What was measured: 930 ml',
      strength: 'The strength that was read, or the spirit’s while it steeps: 77%',
      rinse: 'Water the plants were rinsed with: 100 ml',
      water: 'Water that went in: 700 ml',
      sugar: 'Sugar that went in: 550 g, or what it’s to be sweetened with: honey',
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
    summary: 'Undo the last entry of a jar, and again the one before',
    options: { jar: whole, after: 'An entry by number: only if it is still the last' },
    examples: ['/jar undo lemon'],
  },
}

/** Help for `/serving`. */
const servingText = {
  summary: 'How much alcohol is in a glass, in grams and standard drinks',
  options: {
    pour: 'What goes into the glass: 30 ml, or 1.5 fl oz',
    strength: 'Strength of the drink: 30%',
    country: 'Whose standard drinks to count: Italy, US, regno unito',
  },
  examples: ['/serving pour:30 ml strength:30% country:Italy', '/serving pour:40 ml strength:28%'],
}

/** Help for `/label`. */
const labelCommandText = {
  summary: 'What the finished drink may be called, and what a label has to say',
  options: {
    strength: 'Its strength, as worked out when it was made: 30%',
    sweetness: 'Its sugar: 250 g/L',
    of: 'What it’s made from: lemon, or lemon + ginger',
    sugar: 'What it’s sweetened with, if not white sugar: honey',
    region: 'Whose law: EU (or a country in it), US or UK. Leave it out for the EU and the US',
  },
  examples: [
    '/label strength:30% sweetness:250 g/L of:lemon region:EU',
    '/label strength:25% sweetness:80 g/L of:gentian',
  ],
}

/** Texts of the commands that show batches to others, or print them. */
const shareCommandText = {
  summary: 'Show a batch to everybody, with its picture and a button to make it too',
  options: {
    jar: 'The jar to show as it is now: lemon. Leave it out for all that you share',
    withdraw: 'The batch to stop sharing, by its name or the share’s id. Its message then says so',
    make: 'What its button fills in, to plan the batch that somebody shared',
    of: 'With make: how much you have of its plants: 5 lemons',
    spirit: 'With make: the spirit you have: 700 ml, or 700 ml 40%',
    strength: 'With make: its strength, if it isn’t beside the amount: 40%',
    bottles: 'With make: the bottles to fill: 4 x 500 ml, or 4',
    'to-strength': 'With make: the strength you want, if not the same: 22%',
  },
  examples: ['/share', '/share lemon'],
}

const jarTagText = {
  summary: 'A tag for the jar, to print',
  options: { jar: 'Its name, the first letters of it, or its # and id' },
  examples: ['/jar tag lemon'],
}

const jarLabelText = {
  summary: 'A label for each size of its bottles, to print',
  options: {
    jar: 'Its name, the first letters of it, or its # and id',
    by: 'Who made it, to print: Hillside Allotment Society',
    already: 'yes: a label even for what shouldn’t be in bottles',
  },
  examples: ['/jar label lemon', '/jar label lemon by:Hillside Allotment Society'],
}

/** What help and Discord say of every command. */
export const commandTexts = {
  syrup: {
    summary: 'How much sugar and water to add after straining',
    options: {
      infusion: 'The strained liquid: 920 ml, or better 770 g',
      jar: 'One of your strained jars, instead of infusion and strength',
      strength: 'Strength of that liquid, not of the spirit’s bottle: 90%, or 90.6% at 28 C',
      'to-strength': 'The strength you want: 30%',
      'to-sweetness': 'The sweetness you want: 250 g/L, or dry, everyday, rich',
      ratio: 'Sugar to water in the syrup, by weight: 1:1. Use it instead of the strength or the sweetness',
      'at-most': 'Largest volume to end with: 2 l',
      of: 'What went into the jar, if you can’t measure its strength: 8 lemons + 30 g ginger',
      spirit: 'The spirit it went into: 1 l 95%',
      sugar: 'What to sweeten with, if not white sugar: honey',
      water: 'What to use instead of water: apple juice',
    },
    examples: [
      '/syrup infusion:920 ml strength:90% to-strength:30% to-sweetness:250 g/L',
      '/syrup infusion:920 ml strength:90% to-strength:30% to-sweetness:250 g/L sugar:honey',
      '/syrup infusion:920 ml strength:90%',
      '/syrup infusion:930 ml of:8 lemons spirit:1 l 95% to-strength:30% to-sweetness:250 g/L',
    ],
  },
  mix: {
    summary: 'What these amounts make together',
    options: {
      spirit: 'Spirit, one or several: 1 l, or 750 ml 75.5% + 375 ml 40%',
      strength: 'Its strength, if it isn’t beside the amount: 95%',
      water: 'Water, or juice, coffee or tea: 750 ml, 700 ml apple juice + 50 ml lemon juice',
      sugar: 'Sugar or the like: 500 g, 2 ½ cups, 400 g honey + 100 g',
      freezer: 'How cold a freezer it’s for: -18 C',
    },
    examples: [
      '/mix spirit:1 l strength:95% water:750 ml sugar:500 g',
      '/mix spirit:1 l strength:95% water:700 ml sugar:600 g honey',
    ],
  },
  dilute: {
    summary: 'How much water brings a spirit down to a strength',
    options: {
      spirit: 'Spirit, one or several: 1 l, or 750 ml 75.5% + 375 ml 40%',
      strength: 'Its strength, if it isn’t beside the amount: 95%',
      'to-strength': 'The strength you want: 65%',
    },
    examples: ['/dilute spirit:1 l strength:95% to-strength:65%'],
  },
  blend: {
    summary: 'What several liquids make when poured together',
    options: {
      parts: 'The liquids with strength and sweetness: 600 ml 47% 250 g/L + 300 ml 33% 350 g/L',
      freezer: 'How cold a freezer it’s for: -18 C',
    },
    examples: ['/blend parts:600 ml 47% 250 g/L + 300 ml 33% 350 g/L'],
  },
  adjust: {
    summary: 'Fix a liqueur that’s too strong, weak, sweet or dry',
    options: {
      liqueur: 'How much there is: 1.8 l',
      jar: 'Or one of your jars: I know its strength and sugar, and can record what you add',
      strength: 'Its strength, as worked out when it was made: 33%',
      sweetness: 'Its sugar: 300 g/L',
      'to-strength': 'The strength you want: 30%',
      'to-sweetness': 'The sweetness you want: 250 g/L, or dry, everyday, rich',
      'spirit-strength': 'Strength of your spirit, if it needs some: 95%',
      sugar: 'What to sweeten with, if not white sugar: honey',
      glass: 'With a jar: how much of it you tried in a glass: 50 ml',
      'glass-spirit': 'What you stirred into that glass, for all of the jar: 5 ml 40%',
      'glass-water': 'Water you stirred into it: 3 ml',
      'glass-sugar': 'Sugar you stirred into it: 4 g',
    },
    examples: [
      '/adjust liqueur:1.8 l strength:33% sweetness:300 g/L to-strength:30% to-sweetness:250 g/L spirit-strength:95%',
    ],
  },
  measure: measureText,
  trouble: troubleText,
  keeping: keepingText,
  shopping: shoppingText,
  cost: costText,
  bottles: bottlesText,
  plan: planCommandText,
  serving: servingText,
  label: labelCommandText,
  botanical: botanicalText,
  cautions: cautionsText,
  settings: settingsText,
  reminders: remindersText,
  'jar list': jarListText,
  'jar show': jarShowText,
  notebook: notebookText,
  calendar: calendarText,
  share: shareCommandText,
  'jar tag': jarTagText,
  'jar label': jarLabelText,
  again: againText,
  forget: forgetText,
  ...stepTexts,
}
