import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'
import { type Concept, DEEDS } from '../lexicon/lexicon.ts'
import { begun } from './begun.ts'
import { costed } from './cost-rule.ts'
import { moreOfPlant } from './more-of-plant.ts'
import { corrected } from './number-instead.ts'
import { inJarOfSize, partOfPlant } from './part-of-plan.ts'
import { bottled, otherSpirit, spiritInstead, swapped, withoutPlant } from './plan-rules.ts'
import type { Remembered } from './remembered.ts'
import type { Rule } from './rule.ts'
import { disliked, sameWith, targetAtLength } from './said-at-length.ts'
import { severalInstead } from './several-instead.ts'
import { sharedSweetener } from './shared-sweetener.ts'
import { sugarShare } from './sugar-share.ts'
import { otherSweetener } from './sweetener-rule.ts'
import { resized, styled, tasteChanged } from './taste-rules.ts'

/** What is wished of a recipe that was worked out, in the order in which it is tried. */
export const OF_RECIPE: readonly Rule[] = [
  sharedSweetener,
  sameWith,
  disliked,
  severalInstead,
  partOfPlant,
  moreOfPlant,
  inJarOfSize,
  swapped,
  spiritInstead,
  corrected,
  withoutPlant,
  sugarShare,
  tasteChanged,
  resized,
  bottled,
  otherSpirit,
  otherSweetener,
  begun,
]

/** The same of one that other answers came after. */
const LOOKED_BACK: readonly Rule[] = [...OF_RECIPE, styled, targetAtLength]

const DONE: readonly Concept[] = [...DEEDS].filter((deed) => deed !== 'started')

/** So few words are a wish of what was worked out before. */
const MOST_BACK = 9

/** A wish behind an answer that takes none, of the recipe that was worked out before it; nothing is written down by it unasked. */
export function lookedBack(sentence: Sentence, said: Remembered): TalkReading | null {
  const { worked, call } = said
  const words = sentence.typed.tokens.filter(({ kind }) => kind === 'word').length
  if (worked === null || worked.call === call || words > MOST_BACK) return null
  // A deed is told of a jar: no plan is changed by it.
  if (sentence.has(...DONE)) return null
  // `Make it again, but double`: the jar that was spoken of.
  if (call?.options.jar !== undefined && sentence.has('again')) return null
  // What is wrong with a drink is told of the jar that was spoken of.
  if (sentence.has('too_dry', 'too_sweet', 'too_weak', 'too_strong')) return null
  // What `it` costs is the jar that was spoken of.
  const rules = call?.options.jar === undefined ? [costed, ...LOOKED_BACK] : LOOKED_BACK
  for (const rule of rules) {
    const reading = rule(sentence, worked.call, { ...said, offered: worked.offered, drink: worked.drink })
    if (reading?.kind === 'call' && reading.does === 'record')
      return { ...reading, kind: 'question', about: { kind: 'told_or_asked' }, choices: [reading.call] }
    if (reading !== null) return reading
  }
  return null
}
