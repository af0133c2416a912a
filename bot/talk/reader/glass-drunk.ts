import type { Sentence, TalkJar } from '../bits/bit.ts'
import { jarCalled, jarsNamed, runningAmong } from '../bits/jars-of.ts'
import { findHarm } from '../emergency/find-harm.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { plainWords } from '../lexicon/plain-text.ts'
import { NOTHING_SAID, type Remembered } from '../memory/remembered.ts'
import { whichJar } from '../memory/rule.ts'

const WHO =
  '(?:(?:i|we|ive|weve|have|just|both|all|then|and|so|my (?:husband|wife|partner|sister|brother|mum|dad|mother|father|friend|friends|neighbour|neighbours|guests)|friends|guests|the guests|ho|abbiamo|ne|mi sono|ci siamo) )*'
const DRANK = '(?:drank|drunk|had|enjoyed|sipped|shared|poured (?:myself|ourselves|us)|bevut[oa]|fatt[oi]|gustat[oa])'
const GLASS =
  '(?:(?:a|one|another|half a|the first|our first|my first|each a|un|uno|mezzo|il primo|a couple of|two|due) )?(?:(?:small|little|wee|nice|quick|tiny|cheeky|lovely|cold|first|shot|sherry|liqueur|whole|piccolo|bel) )*(?:glass(?:es)?|glassfuls?|thimblefuls?|nips?|drams?|tots?|shots?|tipples?|snifters?|noggins?|bicchier(?:e|i|ino|ini)|goccetto|cicchett[oi])'
const OF =
  '(?: (?:each|apiece|between us|of it|of that|of this|of them|of (?:the|my|our|your) (?:\\p{L}+ ){0,2}\\p{L}+|of \\p{L}+(?: (?:gin|vodka|brandy|liqueur|rum))?|del?l?[aoei]? \\p{L}+))?'
const WHEN =
  '(?: (?:last night|yesterday|tonight|today|just now|earlier|this evening|this afternoon|after dinner|after supper|with dinner|with friends|with (?:my|our) \\p{L}+|on \\p{L}+|last \\p{L}+|together|ieri(?: sera)?|stasera|oggi|dopo cena|already|now|it was (?:lovely|good|nice|great|delicious|fine)|and it was (?:lovely|good|nice|great|delicious|fine)))*'

/** A glass or two, by grown-up people, and no word of how anybody is. */
const DRUNK = new RegExp(`^${WHO}${DRANK} ${GLASS}${OF}${WHEN}$`, 'u')

const tastedOf = (jar: TalkJar): CallRead => ({ command: 'jar taste', options: { jar: jar.name } })

/** The jar that a glass came from: the one that is named, else the one that was spoken of, else those that are strained or in bottles. */
function jarsMeant({ bits, jars }: Sentence, { call }: Remembered): readonly TalkJar[] {
  const [named, another] = jarsNamed(bits, jars)
  if (named !== undefined) return another === undefined ? [named.jar] : []
  const running = runningAmong(jars)
  const spoken = jarCalled(call?.options.jar, running)
  if (spoken !== undefined) return [spoken]
  const liquid = running.filter(({ stage }) => stage !== 'steeping')
  return liquid.length > 0 ? liquid : running
}

/**
 * `Drank a glass`, `had a glass of the plums last night`: a glass is drunk, and how it was is asked. Null where anything stands of that
 * jar, where anybody is harmed by the words, and where there is no jar.
 */
export function glassDrunk(sentence: Sentence, said: Remembered = NOTHING_SAID): TalkReading | null {
  const { text } = sentence.typed
  if (text.includes('?') || said.danger !== null || !DRUNK.test(plainWords(text).trim()) || findHarm(text) !== null)
    return null
  const meant = jarsMeant(sentence, said)
  const [only, another] = meant
  if (only === undefined && runningAmong(sentence.jars).length === 0) return { kind: 'small_talk', key: 'right' }
  if (only === undefined || meant.some(({ isTroubled }) => isTroubled)) return null
  if (another !== undefined) return whichJar({ command: 'jar taste', options: {} }, meant.map(tastedOf))
  const about = { kind: 'lacks', option: 'rating', sample: '4' } as const
  return { kind: 'question', call: tastedOf(only), about, choices: [], leftOut: [] }
}
