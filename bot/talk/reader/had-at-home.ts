import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { atHome } from '../frames/at-home-slot.ts'
import type { TalkReading } from '../frames/reading.ts'
import { fills } from '../frames/slots.ts'
import { isAsked } from './is-told.ts'

const AT_HOME =
  /\b(?:at home|in (?:the|my|our) (?:house|home|cupboard|pantry|kitchen|larder|cabinet)|on hand|a casa|in casa|in dispensa|in cucina)\b/

/** `I have 2 pounds of sugar at home`: what needs no buying, of all jars or of those that a list is asked for; null where it is of anything else. */
export function hadAtHome(sentence: Sentence): TalkReading | null {
  const { typed, bits, has } = sentence
  const have = atHome(sentence, 'shopping')
  if (have === null) return null
  const others = bits.filter((bit) => !have.bits.includes(bit))
  const isList = others.every(({ kind, with: place }) => kind === 'jar' || (kind === 'plant' && place === undefined))
  if (has('to_buy') && has('own_jar') && isList) {
    const jars = fills.jar_list({ ...sentence, bits: others }, 'shopping')?.text
    const options = { ...(jars !== undefined && { jars }), have: have.text }
    return { kind: 'call', call: { command: 'shopping', options }, leftOut: [], does: 'compute' }
  }
  const isOnly = others.length === 0
  if (!isOnly || isAsked(sentence) || has('to_buy') || !AT_HOME.test(wordsFrom(typed))) return null
  return { kind: 'call', call: { command: 'shopping', options: { have: have.text } }, leftOut: [], does: 'compute' }
}
