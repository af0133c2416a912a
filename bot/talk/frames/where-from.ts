import { type TypedText, wordAt } from '../../../core/quantity/read/tokens.ts'
import { isPerson } from '../lexicon/people.ts'

/** Where fruit grows, is picked or is bought, and where somebody lives. */
const PLACE =
  /^(?:trees?|bush|bushes|hedges?|hedgerows?|gardens?|orchards?|allotments?|plots?|field|fields|lane|woods?|market|shop|greengrocers?|stall|door|gate|fence|yard|backyard|patch|storm|alber[oi]|piant[ae]|giardin[oi]|orto|frutteto|siepe|mercato|campagna|bancarella)$/

const FROM =
  /^(?:from|off|of|at|by|in|under|near|down|over|behind|beside|to|d|da|dal|dall|dalla|del|dell|della|nel|nell|nella|al)$/
const WHOSE = /^(?:the|my|our|his|her|their|a|an|your|that|this|il|lo|la|l|un|una|mi[oa]|nostr[oa]|su[oa]|s)$/
const SIDE = /^(?:next|back|front|big|old|little|local|village|corner|farmers|same|outdoor|own|vecchi[oa])$/

/** What of a tree is meant itself: `bark of the tree`, `leaves from the hedge`. */
const PART_OF =
  /^(?:bark|leaf|leaves|wood|roots?|sap|resin|moss|twigs?|needles?|cones?|lichen|corteccia|foglie|foglia|radic[ei]|resina|rametti|aghi)$/

/** `Off the tree next door`, `dall’albero del vicino`: where it comes from, which changes nothing; a part of a tree is another matter. */
export function isWhereFrom(typed: TypedText, at: number): boolean {
  const word = wordAt(typed, at)
  if (word === 'farmers' && wordAt(typed, at + 1) === 'market') return isWhereFrom(typed, at + 1)
  if (!PLACE.test(word)) return false
  if (word === 'door') return /^(?:next|back|front|the)$/.test(wordAt(typed, at - 1))
  let before = at - 1
  while (isBetween(wordAt(typed, before))) before--
  return FROM.test(wordAt(typed, before)) && !PART_OF.test(wordAt(typed, before - 1))
}

const isBetween = (word: string): boolean =>
  word === '’' || word === "'" || SIDE.test(word) || WHOSE.test(word) || isPerson(word.replace(/['’]?s$/u, ''))
