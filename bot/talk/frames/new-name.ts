import type { Bit, Sentence } from '../bits/bit.ts'
import { NEXT_DEED, newNameAt } from '../bits/new-name-at.ts'
import type { Fill } from './plant-slots.ts'

/** Said behind a name, not of it. */
const FROM_NOW =
  /[\s,]+(?:from (?:now|today|here) on(?:wards)?|from today|now|please|instead|thanks|thank you|d ora in poi|d[’']ora in poi|da ora|da oggi|adesso|per favore)$/i

/** `call the lemon jar midwinter`: its jar is no part of the name. */
const A_JAR = /^(?:jar|one|batch|bottle|bottles|lot|vaso|barattolo)$/

const trimmed = (text: string): string => {
  let name = text
    .replace(NEXT_DEED, '')
    .trim()
    .replace(/[.!?\s]+$/, '')
  while (FROM_NOW.test(name)) name = name.replace(FROM_NOW, '')
  return name
}

/** `rename the lemon to midwinter`, `call the lemon midwinter`: as it was typed. */
export const newName: Fill = ({ typed, bits, spans }) => {
  const within = (at: number, name: string) =>
    bits.filter(({ from }) => {
      const place = typed.tokens[from]?.from ?? 0
      return place >= at && place < at + name.length
    })
  const called = newNameAt(typed.text)
  if (called !== null) {
    const name = trimmed(called.text)
    return name === '' ? null : { text: name, bits: within(called.at, name) }
  }
  const next = NEXT_DEED.exec(typed.text)?.index ?? typed.text.length
  const at = typed.tokens.findLastIndex(({ text, from }) => from < next && (text === 'to' || text === 'in'))
  const deed = spans.find(({ concept }) => concept === 'renamed')
  const isJar = ({ kind }: Bit): boolean => kind === 'plant' || kind === 'jar'
  // `Call the sloe mild and make the plum again`: the name stands behind the first.
  const last = bits.find((bit) => isJar(bit) && deed !== undefined && bit.from >= deed.to) ?? bits.findLast(isJar)
  let from = at === -1 ? last?.to : at + 1
  if (from === undefined) return null
  while (at === -1 && typed.tokens[from + 1] !== undefined && A_JAR.test(typed.tokens[from]!.text)) from++
  const first = typed.tokens[from]
  const name = first === undefined ? '' : trimmed(typed.text.slice(first.from))
  return name === '' ? null : { text: name, bits: within(first!.from, name) }
}

/** `Rename it navel orange`: what it is to be called is not what it is called. */
export function withoutNewName(sentence: Sentence): Sentence {
  const { typed, bits } = sentence
  const called = newNameAt(typed.text)
  if (called === null) return sentence
  return { ...sentence, bits: bits.filter(({ from }) => (typed.tokens[from]?.from ?? 0) < called.at) }
}
