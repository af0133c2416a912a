import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { jarsNamed } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { DEEDS } from '../lexicon/lexicon.ts'
import { withoutMarks } from '../lexicon/plain-text.ts'
import type { Remembered } from '../memory/remembered.ts'
import { ASKED, ofJar, set } from './reminders-switched.ts'

const SHAKES = /\b(?:shak\p{L}*|swirl\p{L}*|scuot\p{L}*|agit\p{L}*)\b/u
const REMINDS =
  /\b(?:remind\p{L}*|nudg\p{L}*|nagg?\p{L}*|ping\p{L}*|tell(?:ing)? me|pester\p{L}*|bother\p{L}*|bugg?\p{L}*|notif\p{L}*|alert\p{L}*|promemoria|ricord\p{L}*|avvis\p{L}*)\b/u
const OFF =
  /\b(?:no more|no|stop|quit|dont|do not|never|enough|without|off|mute|silence|cancel|drop|basta|niente|smett\p{L}*|non|disattiva|spegni|togli)\b/u
const AGAIN = /\b(?:again|back on|on again|(?:start|resume|restart|begin) (?:remind|nudg|nagg|tell)ing|di nuovo)\b/u

/** What is spoken of is switched on: `turn them back on`. */
const THEM_ON =
  /^(?:(?:ok|okay|please|now|right|and|can you|could you|you can|per favore|ora) )*(?:(?:turn|switch|put) (?:(?:them|those|it)(?: all)? (?:back )?on|(?:back )?on (?:them|those))|(?:ri)?attivali|riaccendili|(?:ri)?accendili)(?: (?:again|now|please|then|di nuovo))*$/

/** `No more shaking reminders for the lemon`: of that jar alone; `remind me to shake it again`, `turn them on again`: all of those. */
export function shakingSwitched(sentence: Sentence, said: Remembered): TalkReading | null {
  const { typed, has, bits, jars } = sentence
  const words = withoutMarks(wordsFrom(typed)).replace(/\s+/g, ' ').trim()
  if (typed.text.includes('?') || ASKED.test(typed.tokens[0]?.text ?? '')) return null
  if (bits.length === 0 && THEM_ON.test(words)) return themOn(said.call, / (?:them|those)\b|li\b/.test(words))
  const isShaken = SHAKES.test(words)
  if (!(isShaken || has('remind', 'be_quiet')) || has(...DEEDS)) return null
  const isOff = OFF.test(words)
  const [named, another] = jarsNamed(bits, jars)
  const isOfJar = named !== undefined && another === undefined
  const isReminder = REMINDS.test(words) || /\bno more shak/.test(words)
  if (isOff && isOfJar && isReminder) return ofJar(sentence, [])
  if (!isShaken || !isReminder || bits.length > (isOfJar ? 1 : 0)) return null
  if (isOff && !isOfJar) return set({ shake: 'off' }, [])
  return !isOff && AGAIN.test(words) ? set({ shake: 'daily' }, []) : null
}

function themOn(call: CallRead | null, isPlural: boolean): TalkReading | null {
  if (call?.command !== 'reminders') return isPlural ? set({ 'pause-until': 'none' }, []) : null
  return call.options.shake === 'off' ? set({ shake: 'daily' }, []) : set({ 'pause-until': 'none' }, [])
}
