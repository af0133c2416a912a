import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'

/** Days that everybody has at another time, and feasts that countries keep on different ones. */
const DAY =
  '(?:fair|party|wedding|birthday|bday|anniversary|fete|festival|raffle|reunion|christening|graduation|retirement|housewarming|(?:mother|father|mum|mom|dad)s day|mothering sunday|' +
  'thanksgiving|hanukkah|chanukah|diwali|eid|passover|ramadan|advent|lent|carnival|harvest|matrimonio|compleanno|anniversario|mercatin[oi]|fiera|laurea|nozze|battesimo|festa(?: del(?:la|l) ?\\p{L}+)?|' +
  'spring|summer|autumn|winter|primavera|estate|autunno|inverno)'

const WHOSE = '(?:the|a|an|my|our|his|her|their|your|next|this|la|il|l|le|una?|mi[oa]|nostr[oa]|su[oa]|prossim[oa])'

/** `For my sister’s wedding`, `per la festa della mamma`, `by next summer`. */
const FOR_DAY = new RegExp(
  `\\b(?:for|by|before|in time for|per|entro|prima del(?:la|l)?|in tempo per) (?:${WHOSE} )?(?:\\p{L}+ ){0,2}?(${DAY})(?: (?:day|fair|party|festival|supper|dinner))?\\b`,
  'u',
)

/** A plan for a day that nobody knows but its maker: it is made, and asked for the day. */
export function dayOpen(reading: TalkReading, { typed, bits }: Sentence): TalkReading {
  if (reading.kind !== 'call' || reading.call.command !== 'plan' || reading.does !== 'compute') return reading
  if (reading.call.options['ready-by'] !== undefined || bits.some(({ kind }) => kind === 'date')) return reading
  const [phrase] = FOR_DAY.exec(wordsFrom(typed).replace(/['’]/gu, '')) ?? []
  if (phrase === undefined) return reading
  const words = new Set(phrase.split(' '))
  const leftOut = reading.leftOut.filter((word) => !words.has(word.toLowerCase().replace(/['’]/gu, '')))
  return { ...reading, leftOut, isDayOpen: true }
}
