import type { SaidOfHarm, WordClass, WordSpan } from './said.ts'

/** What burns a mouth by its taste alone. */
const HOT =
  /\b(?:chill?i(?:e?s)?|chiles?|jalape\S+|habaner\S+|scotch bonnets?|cayenne|ginger|horse ?radish|mustard|wasabi|galangal|pepper(?:s|corns?|y)?|capsaicin|peperoncin[oi]|zenzero|rafano|cren|senape|pepe)\b/

/** What harms, or whom: then it is no taste. */
const HARMS: readonly WordClass[] = [
  'alarm',
  'senseless',
  'breathless',
  'fit',
  'limp',
  'vomiting',
  'ill',
  'swelling',
  'sightless',
  'dying',
  'unwell',
  'slack',
  'shock',
  'toxic',
  'mistaken',
  'misread',
  'intoEye',
  'eye',
]

/** Hot from the hob. */
const SCALDING =
  /\b(?:scald\w*|boil\w*|steam\w*|syrup|sugar|caramel|pans?|hob|stove|kettle|bollent[ei]|sciroppo|caramello|pentola)\b/

const MOUTH = /\b(?:throat|mouth|tongue|lips|gums|palate|on it|gola|bocca|lingua|labbra|palato)\b/

/**
 * `The chilli vodka set my mouth on fire`: what somebody tasted, told by themselves, where nothing tells of harm. Of anybody else, and
 * beside any other sign, it is none.
 */
const isHotTaste = (said: SaidOfHarm): boolean =>
  HOT.test(said.plain) &&
  !SCALDING.test(said.plain) &&
  said.mentions().every(({ kind }) => kind === 'self') &&
  HARMS.every((name) => said.spans(name).length === 0)

/** The same of one stretch: it burns a mouth, no hand. */
export const isMouthful = (said: SaidOfHarm, { from, to }: WordSpan): boolean =>
  MOUTH.test(said.between(from, to + 2)) && isHotTaste(said)
