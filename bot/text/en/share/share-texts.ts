/** Texts of the commands that show batches to others, or print them. */
export const shareText = {
  summary: 'Show a batch to everybody, with its picture and a button to make it too',
  options: {
    jar: 'The jar to show as it is now: lemon; left out, all that you share is listed',
    withdraw: 'The batch you share no longer, by its name or the share’s id; its message says so',
    make: 'What its button fills in, to plan the batch that somebody shared',
    of: 'With make: how much you have of its plants: 5 lemons',
    spirit: 'With make: the spirit you have: 700 ml, or 700 ml 40%',
    strength: 'With make: its strength, where it is not said beside it: 40%',
    bottles: 'With make: the bottles to fill: 4 x 500 ml, or 4',
    'to-strength': 'With make: the strength wanted, where it cannot be or is not to be the same: 22%',
  },
  examples: ['/share', '/share lemon'],
}

export const jarTagText = {
  summary: 'A tag for the jar, to print: what is in it, when it was started, when to strain it',
  options: { jar: 'Its name, the beginning of it, or its # and id' },
  examples: ['/jar tag lemon'],
}

export const jarLabelText = {
  summary: 'A label for each size of its bottles, to print',
  options: {
    jar: 'Its name, the beginning of it, or its # and id',
    already: 'yes: a label all the same, of what should not be in bottles',
  },
  examples: ['/jar label lemon'],
}
