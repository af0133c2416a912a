import type { Sentence } from '../bits/bit.ts'
import { runningAmong } from '../bits/jars-of.ts'
import type { TalkReading } from '../frames/reading.ts'
import type { Concept } from '../lexicon/lexicon.ts'
import { isAsked } from './is-told.ts'

/** What is done to a jar as a whole, and not to one bottle of it. */
const TO_A_JAR: readonly Concept[] = [
  'shook',
  'strained',
  'sweetened',
  'filtered',
  'fined',
  'bottled',
  'tasted',
  'opened',
  'took_out',
]

const CHEAP = /(?:other|second[oa]?|2nd|third|3rd|altr[oa]|terz[oa])\b/i

const ARTICLE = '(?:the|my|our|that|il|la|lo|mio|mia)'
const JAR =
  '(?:ones?|jars?|batch|kilner|demijohn|carboy|vas[oi]|vasett[oi]|barattol[oi]|boccia|boccione|damigiana|liquor[ei]|infus[oi])'

/** `The other one`, `my second jar`, `l’altro vaso`: no part of one (`the other half`), no time (`the other day`, `the second time`). */
const OTHER = new RegExp(
  `(?<!\\b(?:into|in|to|from|with|on|of|and|than|no|any|each|every|per|an?|nel|dal|con|per|un|ogni)\\s+(?:${ARTICLE}\\s+)?)` +
    `(?:\\b${ARTICLE}\\s+|\\bl[’'\\s]\\s*|\\b(?=(?:other|second|2nd)\\s+${JAR}))` +
    '(?:other|second|2nd|third|3rd|altr[oa]|second[oa]|terz[oa])' +
    `(?:\\s+(?:\\p{L}+\\s+){0,2}?${JAR}\\b(?!\\s+(?:of|di)\\b)|(?=\\s*(?:[.,;!]|$|l[’'\\s]?\\s*h[oa]\\b|(?:today|oggi|now|too|anche)\\b)))`,
  'iu',
)

/** What tells of another jar than the one that there is, where there is one only; null where nothing does. */
function otherSaid(text: string, { jars }: Sentence): { readonly jar: string; readonly text: string } | null {
  if (!CHEAP.test(text)) return null
  const [only, more] = runningAmong(jars)
  if (only === undefined || more !== undefined || !OTHER.test(text)) return null
  return { jar: only.name, text: text.replace(OTHER, only.name) }
}

/**
 * `Strained the other one`, where there is one jar only: nothing is written down, and it is asked whether that one is meant. Null where
 * nothing of the kind is told.
 */
export function otherOfOne(
  sentence: Sentence,
  text: string,
  readAgain: (text: string) => { readonly sentence: Sentence; readonly reading: TalkReading },
): TalkReading | null {
  const other = otherSaid(text, sentence)
  if (other === null) return null
  // An English name among Italian words: then as it was said.
  const named = readAgain(other.text)
  const { sentence: own, reading } = named.reading.kind === 'lost' ? readAgain(text) : named
  if (!own.has(...TO_A_JAR) || isAsked(own)) return null
  const isRecorded = reading.kind === 'call' && reading.does === 'record'
  const isOfJar = (isRecorded || reading.kind === 'question') && reading.call.command.startsWith('jar ')
  if (!isOfJar || reading.call.command === 'jar start') return null
  const choices = isRecorded ? [reading.call] : []
  return {
    kind: 'question',
    call: reading.call,
    about: { kind: 'only_jar', jar: other.jar },
    choices,
    leftOut: [],
  }
}
