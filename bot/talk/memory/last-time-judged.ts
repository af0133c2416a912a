import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence, TalkJar } from '../bits/bit.ts'
import { jarCalled, jarsNamed } from '../bits/jars-of.ts'
import type { TalkReading } from '../frames/reading.ts'
import { jarAgain } from './named-again.ts'
import type { Remembered } from './remembered.ts'
import { callReading, whichJar } from './rule.ts'

export const MADE: ReadonlySet<TalkJar['stage']> = new Set(['emptied', 'ready', 'resting', 'sweetened'])

/** The jar that is made once more: the one spoken of, else the only one, of those that are through if there is one. */
export function jarsMade(jars: readonly TalkJar[], { call, step }: Remembered): readonly TalkJar[] {
  const spoken = jarCalled(call?.options.jar, jars) ?? jarCalled(step?.options.jar, jars)
  if (spoken !== undefined) return [spoken]
  const made = jars.filter(({ stage }) => MADE.has(stage))
  return made.length > 0 ? made : jars
}

/** Of a batch that is through, or of the one to come. */
const LAST_TIME =
  /\b(?:(?:last|this|next|previous) (?:time|year|batch|one|round|winter)|another (?:batch|one|lot)|(?:do|make|redo|try) (?:it|that|this)? ?(?:again|over|once more)|(?:l)?a?ltra volta|(?:volta|anno) scors[oa]|scors[oa] (?:volta|anno)|ultima volta|(?:sta|questa |prossima )volta|rifall[oa]|rifacciamol[oa])\b/

const JUDGED = ['too_weak', 'too_strong', 'too_sweet', 'too_dry'] as const
const INSTEAD = { too_weak: 'stronger', too_strong: 'weaker', too_sweet: 'drier', too_dry: 'sweeter' } as const
const WISHED = ['stronger', 'weaker', 'drier', 'sweeter'] as const

/** `Too weak last time, make it stronger`: the batch once more, as it is wished, or the other way from what it was. */
export function lastTimeJudged(sentence: Sentence, said: Remembered): TalkReading | null {
  const { has, bits, jars, typed } = sentence
  if (!has(...JUDGED) || !LAST_TIME.test(wordsFrom(typed)) || typed.text.includes('?')) return null
  const [named, another] = jarsNamed(bits, jars)
  if (another !== undefined || bits.length > (named === undefined ? 0 : 1)) return null
  const isWished = has(...WISHED) || /\b(?:make|do|redo|try|rifa\p{L}*|fac\p{L}*)\b/u.test(wordsFrom(typed))
  if (!isWished) return null
  const wishes = new Set<string>([
    ...WISHED.filter((wish) => has(wish)),
    ...(has(...WISHED) ? [] : JUDGED.filter((judged) => has(judged)).map((judged) => INSTEAD[judged])),
  ])
  const wish: Sentence = { ...sentence, bits: [], has: (...concepts) => concepts.some((each) => wishes.has(each)) }
  const made = named === undefined ? jarsMade(jars, said) : [named.jar]
  const calls = made.filter(({ stage }) => MADE.has(stage)).map((jar) => jarAgain(jar, wish))
  const [first, ...others] = calls
  if (first === undefined || Object.keys(first.options).length === 1) return null
  return others.length === 0 ? callReading(first) : whichJar(first, calls)
}
