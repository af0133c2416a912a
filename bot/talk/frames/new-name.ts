import type { Fill } from './plant-slots.ts'

/** Said behind a name, not of it. */
const FROM_NOW =
  /[\s,]+(?:from (?:now|today|here) on(?:wards)?|from today|now|please|instead|thanks|thank you|d ora in poi|d[’']ora in poi|da ora|da oggi|adesso|per favore)$/i

/** `is to be called`, `call it`: the name is all that follows. */
const CALLED =
  /\b(?:to be (?:called|named|known as)|(?:shall be|is now|are now) (?:called|named)|(?:name|call) (?:it|this|that)|chiamal[oa])\s+(.+)$/i

/** `call the lemon jar midwinter`: its jar is no part of the name. */
const A_JAR = /^(?:jar|one|batch|bottle|bottles|lot|vaso|barattolo)$/

const trimmed = (text: string): string => {
  let name = text.trim().replace(/[.!?\s]+$/, '')
  while (FROM_NOW.test(name)) name = name.replace(FROM_NOW, '')
  return name
}

/** `rename the lemon to midwinter`, `call the lemon midwinter`: as it was typed. */
export const newName: Fill = ({ typed, bits }) => {
  const called = CALLED.exec(typed.text)
  if (called !== null) {
    const at = typed.text.length - called[1]!.length
    const name = trimmed(called[1]!)
    return name === '' ? null : { text: name, bits: bits.filter(({ from }) => (typed.tokens[from]?.from ?? 0) >= at) }
  }
  const at = typed.tokens.findLastIndex(({ text }) => text === 'to' || text === 'in')
  const last = bits.findLast(({ kind }) => kind === 'plant' || kind === 'jar')
  let from = at === -1 ? last?.to : at + 1
  if (from === undefined) return null
  while (at === -1 && typed.tokens[from + 1] !== undefined && A_JAR.test(typed.tokens[from]!.text)) from++
  const first = typed.tokens[from]
  const name = first === undefined ? '' : trimmed(typed.text.slice(first.from))
  return name === '' ? null : { text: name, bits: bits.filter((bit) => bit.from >= from) }
}
