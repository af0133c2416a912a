/** Words that are shortened, at a telephone or in talk, or with a figure for a sound in them, as they are typed on a telephone. */
const TEXTED: Readonly<Record<string, string>> = {
  b4: 'before',
  '2day': 'today',
  '2nite': 'tonight',
  '2moro': 'tomorrow',
  '2morrow': 'tomorrow',
  l8r: 'later',
  nite: 'night',
  tonite: 'tonight',
  tmrw: 'tomorrow',
  tomoz: 'tomorrow',
  yday: 'yesterday',
  arvo: 'afternoon',
  arv: 'afternoon',
  brekkie: 'breakfast',
  brekky: 'breakfast',
}

const EACH = new RegExp(`(?<![\\p{L}\\p{N}])(?:${Object.keys(TEXTED).join('|')})(?![\\p{L}\\p{N}])`, 'giu')

/** A sentence with those words written out. */
export const writtenOut = (text: string): string => text.replace(EACH, (word) => TEXTED[word.toLowerCase()]!)
