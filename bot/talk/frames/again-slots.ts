import { textFrom, wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import type { SlotKind } from './frame.ts'
import { jarsMeant } from './jars-meant.ts'
import type { Fill } from './plant-slots.ts'
import { scaledText } from './scaled-text.ts'
import { spirits } from './spirit-slots.ts'

/** `With half the sugar`: of one thing in it, not of the batch. */
const OF_A_PART =
  /\b(?:half|twice|double|triple|meta|doppio|triplo)(?: as much| of| dell\p{L}*| dello| del| di)? (?:the |le |lo )?(?:sugar|peel|zest|fruit|spirit|alcohol|zucchero|scorz\p{L}+|alcol|strength|sweetness)/u

const TIMES: ReadonlySet<string> = new Set(['twice', 'thrice', 'halve'])

/** How many times as much of all of it is said; null where nothing is. */
function timesAsMuch({ typed, has }: Sentence): number | null {
  if (OF_A_PART.test(wordsFrom(typed))) return null
  return has('twice') ? 2 : has('thrice') ? 3 : has('halve') ? 0.5 : null
}

/** The words that say so. */
export const timesSaid = ({ typed, spans }: Sentence): readonly string[] =>
  spans
    .filter(({ concept }) => TIMES.has(concept))
    .slice(0, 1)
    .map(({ from, to }) => textFrom(typed, from, to))

/** Of a batch that is made again, twice as large: what it was started with, twice. */
const spiritsAgain: Fill = (sentence, command) => {
  const times = timesAsMuch(sentence)
  const isSaid = sentence.bits.some(({ kind }) => kind === 'volume' || kind === 'spirit' || kind === 'strength')
  if (times === null || isSaid) return spirits(sentence, command)
  const { text } = jarsMeant(sentence, command)
  const typed = sentence.jars.find(({ name }) => name === text)?.spiritTyped ?? null
  // `Three times as much`: the three is of the times.
  const counted = sentence.bits.filter(
    ({ kind, from }) =>
      kind === 'bare' &&
      sentence.spans.some(({ concept, from: begin, to }) => TIMES.has(concept) && begin <= from && from < to),
  )
  return typed === null ? null : { text: scaledText('spirit', typed, times), bits: counted }
}

/** Of one that was planned by its bottles: so many times as many. */
const bottlesAgain: Fill = (sentence, command) => {
  const times = timesAsMuch(sentence)
  if (times === null || sentence.bits.some(({ kind }) => kind === 'bottles' || kind === 'volume')) return null
  const { text } = jarsMeant(sentence, command)
  const jar = sentence.jars.find(({ name }) => name === text)
  const typed = jar?.spiritTyped === null ? (jar.bottlesTyped ?? null) : null
  return typed === null ? null : { text: scaledText('bottles', typed, times), bits: [] }
}

export const againFills = { spirits_again: spiritsAgain, bottles_again: bottlesAgain } satisfies Partial<
  Record<SlotKind, Fill>
>
