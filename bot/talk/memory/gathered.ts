import { nameWords } from '../../../core/spelling/normalise-name.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import { amountOf, recipeSpan } from '../frames/amount-slots.ts'
import { leftOutOf } from '../frames/left-out.ts'
import { isPlant, plantText } from '../frames/plant-slots.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { DEEDS } from '../lexicon/lexicon.ts'
import { withOption } from './change-call.ts'
import type { Remembered } from './remembered.ts'
import { callReading } from './rule.ts'

/** A line of a recipe has no more words. */
const MOST_PIECES = 10

/** A plant more is told, and none in place of another. */
const MORE = /^(?:oh )?(?:and|plus|also|with|e|anche|più)\b/i

const sugar = amountOf('of_sugar', 'sugar')

/** Said of how long it lies: `let it sit 6 weeks`. */
const LIES =
  /^(?:let|leave|sit|sits|it|them|to|soak|soaks|steep|steeps|stand|rest|infuse|macerate|for|about|in|the|dark|then|lascia|lasciare|riposare|per|circa|al|buio|infusione|macerare)$/

/** The plan that is being told: the one that still lacks something, else the last one. */
function planOpen({ question, call }: Remembered): { readonly plan: CallRead; readonly isOpen: boolean } | null {
  if (question !== null)
    return question.about.kind === 'lacks' && question.call.command === 'plan'
      ? { plan: question.call, isOpen: true }
      : null
  return call?.command === 'plan' && call.options.from === undefined ? { plan: call, isOpen: false } : null
}

/** The last word of a name, as names are compared. */
const kindOf = (name: string): string | undefined => nameWords(name).at(-1)

/** With one more plant; a name that had no amount yet is told with it. */
function withPlant(plan: CallRead, plant: string, name: string): CallRead {
  const { of } = plan.options
  if (of === undefined) return withOption(plan, 'of', plant)
  const items = of.split(/\s*\+\s*/)
  const same = items.findIndex((item) => kindOf(item) === kindOf(name))
  return withOption(plan, 'of', (same === -1 ? [...items, plant] : items.with(same, plant)).join(' + '))
}

/** `1 1/2 cups sugar`, `a pinch of cinnamon`, `let it sit 6 weeks`, each a line by itself behind a plan: a recipe that is pasted line by line. */
export function gathered(sentence: Sentence, said: Remembered): TalkReading | null {
  const { bits, typed, has } = sentence
  const open = planOpen(said)
  if (open === null || typed.tokens.length > MOST_PIECES || typed.tokens.some(({ text }) => text === '?')) return null
  if (has(...DEEDS, 'asking', 'instead', 'without', 'not_so', 'may_i', 'would_it', 'how_much', 'how_long')) return null
  const done = (call: CallRead, used: readonly Bit[]): TalkReading =>
    callReading(
      call,
      'compute',
      leftOutOf(sentence, used).filter((word) => !LIES.test(word.toLowerCase())),
    )
  const isAll = (used: readonly Bit[]): boolean => bits.every((bit) => used.includes(bit))
  const sweet = sugar(sentence, 'plan')
  if (sweet !== null && isAll(sweet.bits)) return done(withOption(open.plan, 'sugar', sweet.text), sweet.bits)
  const span = recipeSpan(bits)
  if (span !== null && isAll([span]))
    return typed.tokens.every(({ text }, at) => LIES.test(text) || (span.from <= at && at < span.to))
      ? done(withOption(open.plan, 'days', span.text), [span])
      : null
  const [plant, another] = bits.filter(isPlant)
  const amount = plant?.with === undefined ? undefined : bits[plant.with]
  const used = [plant, amount].filter((bit) => bit !== undefined)
  if (plant === undefined || another !== undefined || !isAll(used)) return null
  const isPinch = /\b(?:pinch|dash|pizzico)\b/i.test(typed.text)
  // Behind a plan that is whole a plant with its amount is a plan of its own.
  const isOne = open.isOpen && /\b(?:an?|una?)\s/i.test(typed.text) && MORE.test(typed.text.trim())
  if (!isPinch && !isOne && (!open.isOpen || amount === undefined)) return null
  return done(withPlant(open.plan, plantText(bits, plant, typed), plant.text), used)
}

/** `And 3 cloves`, where a plan asked which cinnamon: that stays asked. */
export const moreGathered = (sentence: Sentence, said: Remembered): TalkReading | null =>
  said.question?.call.options.of !== undefined && MORE.test(sentence.typed.text.trim())
    ? gathered(sentence, said)
    : null
