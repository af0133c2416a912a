import type { Bit, Sentence } from '../bits/bit.ts'
import { jarFilledIn, jarSizeWithin } from './jar-filled.ts'

const said = ({ typed }: Sentence, { from, to }: Bit): string =>
  typed.text.slice(typed.tokens[from]!.from, typed.tokens[to - 1]!.to)

const named = (sentence: Sentence, kind: Bit['kind']): string =>
  sentence.bits
    .filter((bit) => bit.kind === kind)
    .map((bit) => said(sentence, bit))
    .join(' and ')

/**
 * `A litre kilner, about two thirds full, topped up with vodka`, where it was asked how large the jar is: the plants that were told of
 * before, in that jar. Null where the answer names no jar with its size, or its own plants.
 */
export function jarAnswered(text: string, told: Sentence, taken: (text: string) => Sentence): string | null {
  if (jarSizeWithin(text) === null) return null
  const answer = taken(text)
  const plants = named(told, 'plant')
  if (plants === '' || answer.bits.some(({ kind }) => kind === 'plant' || kind === 'jar')) return null
  const spirit = named(told, 'spirit')
  const isPoured = answer.bits.some(({ kind }) => kind === 'spirit') || spirit === ''
  const whole = `${plants} in ${text.replace(/[\s.!]+$/u, '')}${isPoured ? '' : `, topped up with ${spirit}`}`
  return jarFilledIn(taken(whole)) === null ? null : whole
}
