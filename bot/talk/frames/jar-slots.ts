import { freeName } from '../../../core/jar/entry/jar-name.ts'
import { textFrom } from '../../../core/quantity/read/tokens.ts'
import { type Bit, bit, type Sentence } from '../bits/bit.ts'
import { jarsNamed, jarsOf, runningAmong } from '../bits/jars-of.ts'
import { nameTold } from '../bits/name-told.ts'
import { bottleCount } from './bottle-count.ts'
import type { SlotKind } from './frame.ts'
import { jarsMeant } from './jars-meant.ts'
import { jarOfPart, plantsInside, pouredOff } from './part-slots.ts'
import type { Fill, SlotFilled } from './plant-slots.ts'

/** Poured into the other: `tipped the orange into the lemon` is the lemon's. */
const INTO = /^(?:into|in|onto|to|nel|nella|nello|dentro)$/

interface Pair {
  readonly first: string
  readonly second: string
  readonly bits: readonly Bit[]
}

/** The two jars that were poured together; both where there are only two. */
function pairIn({ bits, jars, typed, has }: Sentence): Pair | null {
  const named = jarsNamed(bits, jars)
  const [one, other] = named
  if (one !== undefined && other !== undefined && named.length === 2) {
    const between = typed.tokens.slice(one.bit.to, other.bit.from)
    const isInto = between.some(({ text }) => INTO.test(text))
    const [first, second] = isInto ? [other, one] : [one, other]
    return { first: first.jar.name, second: second.jar.name, bits: [one.bit, other.bit] }
  }
  const running = runningAmong(jars)
  const [first, second] = running
  if (!has('both_of_them') || running.length !== 2 || first === undefined || second === undefined) return null
  return { first: first.name, second: second.name, bits: [] }
}

const firstOfTwo: Fill = (sentence) => {
  const pair = pairIn(sentence)
  return pair === null ? null : { text: pair.first, bits: pair.bits.slice(0, 1) }
}

const secondOfTwo: Fill = (sentence) => {
  const pair = pairIn(sentence)
  return pair === null ? null : { text: pair.second, bits: pair.bits.slice(1) }
}

const CALLED =
  /\b(?:(?:called|named|naming|calling|call|name) (?:it|that|this|them)(?: one| jar)?|called|named|(?:aside|apart|off|jar) as|chiamal[oa]|chiamat[oa]|l[oaei] chiam(?:o|iamo)|di nome)\s+(?!(?:a|the|well|soon|usual|normal|before) )(.+?)[.!]*$/i

/** The words of a name, which are used. */
function nameBit({ tokens, text }: Sentence['typed'], match: RegExpExecArray): readonly Bit[] {
  const begin = text.length - match[0].length + match[0].lastIndexOf(match[1]!)
  const from = tokens.findIndex((token) => token.from >= begin)
  return from === -1 ? [] : [bit('jar', from, tokens.length, 0, match[1]!)]
}

/** `Off into another jar, brunch`: one word behind a comma, which is all there is behind the vessel. */
const BEHIND_VESSEL =
  /\b(?:another|second|new|separate|other|spare) (?:jar|kilner|vessel|batch),\s+(\p{L}[\p{L}’'-]{2,}(?: \p{L}[\p{L}’'-]{2,})?)[.!]*$/iu
const NO_NAME = /\b(?:today|yesterday|now|please|thanks|done|tonight|just|for|earlier|and|then|so|with|the)\b/i

/** What the second jar is called; without a name the first one's with a number, which is said. */
const otherJarName: Fill = (sentence) => {
  const { typed, bits, jars } = sentence
  const behind = BEHIND_VESSEL.exec(typed.text)
  const match = CALLED.exec(typed.text) ?? (behind !== null && !NO_NAME.test(behind[1]!) ? behind : null)
  if (match !== null) {
    const at = typed.text.length - match[0].length
    return {
      text: match[1]!.trim(),
      bits: [...bits.filter(({ from }) => (typed.tokens[from]?.from ?? 0) > at), ...nameBit(typed, match)],
    }
  }
  const { text } = jarsMeant(sentence, 'jar split')
  if (text === null) return null
  const names = jars.map(({ name }) => name)
  return { text: freeName(text, names), bits: [], isAssumed: true }
}

const PREPOSITION =
  /^(?:in|into|on|onto|to|under|behind|beside|below|above|at|by|from|a|sotto|dietro|nel|nella|nello|su|sul|sulla|sullo|sull|nell|down|up|dentro|accanto|:)$/
const KEPT_PREPOSITION = /^(?:under|behind|beside|below|above|by|sotto|dietro|accanto)$/
const ARTICLE = /^(?:the|a|an|my|our|its|il|la|lo|l|i|un|una)$/
const VESSEL = /^(?:jar|demijohn|carboy|kilner|bottle|flagon|crock|vaso|barattolo|damigiana)$/
const WAS = /^(?:was|were|got|gets|is|era|erano)$/
const MOST_BACK = 6

/** Where a jar stands, or what it is in, as it was typed: `cellar`, `under the stairs`, `a 2 l jar`. */
function housedIn({ typed, spans, bits }: Sentence): (SlotFilled & { readonly isVessel: boolean }) | null {
  const places = spans.filter(({ concept }) => concept === 'place_word').toSorted((one, other) => one.from - other.from)
  // `In the cellar now, kitchen was too warm`: it is there no more.
  const last = places.findLast(({ to }) => !WAS.test(typed.tokens[to]?.text ?? '')) ?? places.at(-1)
  if (last === undefined) return null
  const { tokens } = typed
  const isWithin = (at: number, to: number): boolean =>
    tokens.slice(at, to).every(({ text }) => PREPOSITION.test(text) || ARTICLE.test(text) || text === 'of')
  // `The top shelf in the shed`: one place within another.
  let begin = last
  for (const outer of places.toReversed()) if (outer.to < begin.from && isWithin(outer.to, begin.from)) begin = outer
  const place = { from: begin.from, to: last.to }
  let from = place.from
  while (from > 0 && place.from - from < MOST_BACK && !PREPOSITION.test(tokens[from - 1]!.text)) from--
  if (place.from - from === MOST_BACK) from = place.from
  const before = tokens[from - 1]?.text ?? ''
  const isKept = KEPT_PREPOSITION.test(before)
  while (!isKept && from < place.from && ARTICLE.test(tokens[from]!.text)) from++
  if (isKept) from--
  let to = place.to
  while (/^(?:of|in|by|under|beside|behind|della|del|di|in|next|to|the|le)$/.test(tokens[to]?.text ?? '')) {
    const more = tokens.findIndex(({ text }, at) => at > to && !ARTICLE.test(text) && !PREPOSITION.test(text))
    if (more === -1 || more - to > 3) break
    to = more + 1
  }
  const word = tokens[place.to - 1]!.text
  const within = bits.filter((bit) => bit.from >= from && bit.to <= to)
  return { text: textFrom(typed, from, to), bits: within, isVessel: VESSEL.test(word) }
}

const where: Fill = (sentence) => {
  const found = housedIn(sentence)
  return found === null || found.isVessel ? null : found
}

const vessel: Fill = (sentence) => {
  const found = housedIn(sentence)
  return found?.isVessel === true ? found : null
}

/** What is to be noted of a jar, as it was typed. */
const jarNote: Fill = (sentence) => {
  const { typed, spans, bits, jars } = sentence
  const cue = spans.find(({ concept }) => concept === 'noted')
  if (cue === undefined) return null
  const { tokens } = typed
  let from = cue.to
  const jar = bits.find(
    (bit) =>
      bit.from >= from &&
      bit.from - from <= 4 &&
      (bit.kind === 'jar' || bit.kind === 'plant') &&
      jarsOf(bit, jars).length > 0,
  )
  const isBeside =
    jar !== undefined &&
    tokens
      .slice(from, jar.from)
      .every(({ text }) => /^(?:for|on|of|about|to|the|my|that|il|la|lo|per|del|di|l|sul)$/.test(text)) &&
    /^(?:[:,;.-]|that|che|jar|says?)$/.test(tokens[jar.to]?.text ?? '')
  if (isBeside) from = jar.to
  while (
    /^(?:[:,;.-]|that|down|for|che|jar|the|it)$/.test(tokens[from]?.text ?? '') &&
    !(tokens[from]!.text === 'the' && from > cue.to)
  )
    from++
  if (tokens[from] === undefined) return null
  const text = typed.text
    .slice(tokens[from]!.from)
    .trim()
    .replace(/[.!\s]+$/, '')
  return text.length < 3 ? null : { text, bits: bits.filter((bit) => bit.from >= from) }
}

/** What is told of jars, beside liquids. */
export const jarFills = {
  name_told: ({ typed, spans }: Sentence) => {
    const name = nameTold(typed, spans)
    return name === null ? null : { text: name.text, bits: [bit('jar', name.from, name.to, 0, name.text)] }
  },
  bottle_count: bottleCount,
  first_of_two: firstOfTwo,
  second_of_two: secondOfTwo,
  poured_off: pouredOff,
  other_jar_name: otherJarName,
  plants_inside: plantsInside,
  jar_of_part: jarOfPart,
  where,
  vessel,
  jar_note: jarNote,
} as const satisfies Partial<Record<SlotKind, Fill>>
