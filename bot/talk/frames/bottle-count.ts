import { type Token, wordsFrom } from '../../../core/quantity/read/tokens.ts'
import { onlyBit } from './amount-slots.ts'
import type { Fill } from './plant-slots.ts'

const COUNTS: Readonly<Record<string, number>> = {
  a: 1,
  one: 1,
  another: 1,
  un: 1,
  una: 1,
  unaltra: 1,
  two: 2,
  due: 2,
  three: 3,
  tre: 3,
  four: 4,
  quattro: 4,
}

const MOST_GIVEN = 48

const WHOSE = /^(?:my|our|his|her|their|the|a|mio|mia|al|alla|a)$/

/** `And my brother two`, `and Tom one`: whom they went to stands before the count, and nothing behind it. */
function isBehindWhom(tokens: readonly Token[], from: number, at: number): boolean {
  const joined = tokens.findLastIndex(({ text }, place) => place >= from && place < at && JOINS.test(text))
  const whom = joined === -1 ? [] : tokens.slice(joined + 1, at)
  const isWhom = whom.length === 1 || (whom.length > 1 && whom.length <= 3 && WHOSE.test(whom[0]!.text))
  const behind = tokens[at + 1]?.text ?? '.'
  return (
    isWhom && whom.every(({ kind }) => kind === 'word') && /^(?:and|e|ed|[,.;!]|bottles?|bottigli[ae])$/.test(behind)
  )
}

const JOINS = /^(?:and|e|ed|,|plus|&)$/

/** `One bottle to my neighbour and two to the hall`, `and my brother two`: those that are only counted, each with whom it went to. */
function oneMoreEach(
  tokens: readonly Token[],
  from: number,
): { readonly count: number; readonly places: readonly number[] } {
  const given = tokens.flatMap(({ text }, at) => {
    const isJoined = at > from && JOINS.test(tokens[at - 1]!.text)
    const next = /^(?:bottles?|more|other|bottigli[ae])$/.test(tokens[at + 1]?.text ?? '') ? at + 2 : at + 1
    const isGiven = /^(?:to|for|went|a|al|allo|alla|ai|alle|per)$/.test(tokens[next]?.text ?? '')
    const count = COUNTS[text] ?? (/^\d{1,2}$/.test(text) ? Number(text) : 0)
    const isWithWhom = (isJoined && isGiven) || isBehindWhom(tokens, from, at)
    return isWithWhom && count >= 1 && count <= MOST_GIVEN ? [{ at, count }] : []
  })
  return { count: given.reduce((sum, { count }) => sum + count, 0), places: given.map(({ at }) => at) }
}

/** `A second bottle`: one more. */
const NTH =
  /\b(?:second|third|fourth|fifth|sixth|next|last) (?:bottle|one)\b|\b(?:second|terz|quart|quint|ultim)a(?: bottiglia)?\b/u

/** `The 20cl`, `a 35 cl one`, `two 20cl`: bottles by their size alone. */
function ofSize({ bits, typed }: Pick<Parameters<Fill>[0], 'bits' | 'typed'>): ReturnType<Fill> {
  const [size, another] = bits.filter(({ kind }) => kind === 'volume')
  if (size === undefined || another !== undefined || size.value < LEAST_ML || size.value > MOST_ML) return null
  const count = bits.find(({ kind, to }) => kind === 'bare' && to === size.from)
  if (count !== undefined) return { text: `${count.value} x ${size.text}`, bits: [count, size] }
  return A_SIZE.test(typed.tokens[size.from - 1]?.text ?? '') ? { text: `1 x ${size.text}`, bits: [size] } : null
}

const A_SIZE = /^(?:the|a|an|one|my|our|last|first|il|la|una|un|quella|quello|da)$/
/** Sizes of bottles that are given and opened, ml. */
const [LEAST_ML, MOST_ML] = [40, 2000]

/** How many bottles were given or opened: `two bottles`, `one raspberry`, `a bottle of it`. */
export const bottleCount: Fill = ({ bits, typed }) => {
  const bottles = bits.filter(({ kind }) => kind === 'bottles')
  const [only, other] = bottles
  if (only?.isSizeAssumed === true && other === undefined) {
    const more = oneMoreEach(typed.tokens, only.to)
    const within = bits.filter(({ kind, from }) => kind === 'bare' && more.places.includes(from))
    return { text: String((only.count ?? 1) + more.count), bits: [only, ...within] }
  }
  if (bottles.length > 0)
    return {
      text: bottles
        .map(({ text, isSizeAssumed, count }) => (isSizeAssumed === true ? String(count) : text))
        .join(' + '),
      bits: bottles,
    }
  const sized = ofSize({ bits, typed })
  if (sized !== null) return sized
  const bare = bits.find(
    ({ kind, value }) => kind === 'bare' && Number.isInteger(value) && value >= 1 && value <= MOST_GIVEN,
  )
  if (bare !== undefined) {
    const more = oneMoreEach(typed.tokens, bare.to)
    const within = bits.filter(({ kind, from }) => kind === 'bare' && more.places.includes(from))
    return more.count === 0 ? onlyBit(bare) : { text: String(bare.value + more.count), bits: [bare, ...within] }
  }
  const isOne = typed.tokens.some(({ text }) => /^(?:one|another|una|uno)$/.test(text)) || NTH.test(wordsFrom(typed))
  // `Handed a raspberry to the vicar`.
  const isArticle = bits.some(
    ({ kind, from }) =>
      (kind === 'plant' || kind === 'jar') && /^(?:a|an|another|un)$/.test(typed.tokens[from - 1]?.text ?? ''),
  )
  // `Drank one and another one`.
  const another = /\bone and (?:then )?another\b|\buna e (?:poi )?un[’' ]?altra\b/.test(wordsFrom(typed)) ? 1 : 0
  if (!isOne && !isArticle) return null
  // `One to my sister and one to my brother`.
  const first = typed.tokens.findIndex(({ text }) => /^(?:one|una|uno)$/.test(text))
  const more = first === -1 ? { count: 0, places: [] } : oneMoreEach(typed.tokens, first + 1)
  const within = bits.filter(({ kind, from }) => kind === 'bare' && more.places.includes(from))
  return { text: String(1 + another + more.count), bits: within }
}
