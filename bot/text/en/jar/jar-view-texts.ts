/** Texts of the commands that show jars and batches. */
export const jarListText = {
  summary: 'What to do today, what comes next, and every running jar',
  options: { picture: 'yes, for a picture of the shelf; no, for none' },
  examples: ['/jar list', '/jar list picture:yes'],
}

export const jarShowText = {
  summary: 'One jar: what is in it, its story entry by entry, what comes next',
  options: { jar: 'Its name, the beginning of it, or its # and id' },
  examples: ['/jar show lemon'],
}

export const notebookText = {
  summary: 'Finished and running batches, or what differed between two of them',
  options: {
    compare: 'Two batches: lemon + walnut',
    export: 'Everything of yours as a file: json can be taken in again, csv is for a spreadsheet',
    import: 'A file that export:json wrote; what is here already is not doubled',
  },
  examples: [
    '/notebook',
    '/notebook compare:lemon + walnut',
    '/notebook export:json',
    '/notebook import:larderbell.json',
  ],
}

export const calendarText = {
  summary: 'Your coming reminders as a file for any calendar',
  options: { jar: 'One jar: its name, or # and id; left out, all of them' },
  examples: ['/calendar', '/calendar lemon'],
}

export const againText = {
  summary: 'Start a new jar as an earlier one was, scaled to the spirit you have',
  options: {
    jar: 'The earlier jar: lemon',
    spirit: 'The spirit at hand: 700 ml, or 700 ml 75.5%; left out, the same amounts again',
    strength: 'Its strength, where it is not said beside it: 95%',
    'to-strength': 'Strength wanted, if not as before: 28%',
    'to-sweetness': 'Sugar wanted, if not as before: 200 g/L',
    name: 'What to call the new jar; left out, the old name with a number',
  },
  examples: ['/again lemon spirit:700 ml 75.5%', '/again lemon spirit:1 l 95% name:lemon for the fair'],
}

export const forgetText = {
  summary: 'Erase all that is kept about you, after asking once',
  options: { jar: 'One jar: says how to be rid of it alone', confirm: 'yes, to do it' },
  examples: ['/forget'],
}
