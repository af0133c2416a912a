import { numberWords } from '../../../core/quantity/read/number-words.ts'
import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence, TalkJar } from '../bits/bit.ts'
import { jarsOf } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { scaledText } from '../frames/scaled-text.ts'
import { callReading } from './rule.ts'

/** What makes a jar again so many times as large: its spirit as it was typed, else its bottles; nothing where neither was. */
export function timesOf({ spiritTyped, bottlesTyped = null }: TalkJar, times: number): CallRead['options'] {
  if (times === 1) return {}
  if (spiritTyped !== null) return { spirit: scaledText('spirit', spiritTyped, times) }
  return bottlesTyped === null ? {} : { bottles: scaledText('bottles', bottlesTyped, times) }
}

const TIMES: ReadonlyMap<string, number> = new Map([...numberWords, ['twice', 2], ['double', 2]])

/** `2 of the orange`, `three more jars of the plum`, `altri due del limone`: before its name, so many of it. */
const SO_MANY =
  /(?:^|\s)(?<count>[2-9]|two|twice|double|three|four|due|tre|quattro) (?:(?:more|other|batch(?:es)?|jars?|lots?|altr[ei]|vas[oi]) ){0,2}(?:(?:of|di|del|della|dello) )?(?:the |my |our )?$/u

const BUY = /\b(?:shopping|buy|to get|spesa|comprare)\b/u

/** `Shopping list for 2 of the orange`: a plan of that jar, twice as large, says what to buy. */
export function severalToBuy(sentence: Sentence): TalkReading | null {
  const { bits, jars, typed, has } = sentence
  const words = wordsFrom(typed)
  if (!has('to_buy') && !BUY.test(words)) return null
  const named = bits.flatMap((bit) => {
    const [jar, another] = bit.kind === 'jar' || bit.kind === 'plant' ? jarsOf(bit, jars) : []
    return jar === undefined || another !== undefined ? [] : [{ bit, jar }]
  })
  const [only, more] = named
  if (only === undefined || more !== undefined) return null
  const count = bits.find((bit) => bit.kind === 'bare' && bit.to <= only.bit.from)
  if (bits.some((bit) => bit !== only.bit && bit !== count)) return null
  const at = words.indexOf(` ${only.bit.text.toLowerCase()}`)
  const said = at === -1 ? undefined : SO_MANY.exec(`${words.slice(0, at)} `)?.groups?.count
  const times = said === undefined ? null : (TIMES.get(said) ?? Number(said))
  const options = times === null ? {} : timesOf(only.jar, times)
  return Object.keys(options).length === 0
    ? null
    : callReading({ command: 'again', options: { jar: only.jar.name, ...options } })
}
