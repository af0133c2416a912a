/** Help for `/serving`. */
export const servingText = {
  summary: 'How much alcohol a glass holds, in grams and standard drinks',
  options: {
    pour: 'What goes into the glass: 30 ml, or 1.5 fl oz',
    strength: 'Strength of the drink: 30%',
    country: 'Whose standard drinks to count: Italy, US, regno unito',
  },
  examples: ['/serving pour:30 ml strength:30% country:Italy', '/serving pour:40 ml strength:28%'],
}

/** Help for `/label`. */
export const labelText = {
  summary: 'What the finished drink may be called, and what a label has to say',
  options: {
    strength: 'Its strength, as computed when it was made: 30%',
    sweetness: 'Its sugar: 250 g/L',
    of: 'What it is of: lemon, or lemon + ginger; some names depend on it',
    region: 'Whose law: EU (or a country in it), US, UK; the EU and the US where left out',
  },
  examples: [
    '/label strength:30% sweetness:250 g/L of:lemon region:EU',
    '/label strength:25% sweetness:80 g/L of:gentian',
  ],
}
