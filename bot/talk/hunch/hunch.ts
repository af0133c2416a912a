import { lazily } from '../../../core/once.ts'
import type { Path } from '../../calls/signatures.ts'
import type { Sentence } from '../bits/bit.ts'
import type { Remembered } from '../memory/remembered.ts'
import { featuresOf } from './features.ts'
import learnt from './learnt.json' with { type: 'json' }
import { softmax } from './softmax.ts'

/** What a sentence may be after: a command, an entry of the handbook, small talk, a change of what was said last, or nothing here. */
export type Aim = Path | 'handbook' | 'talk' | 'follow' | 'none'

export interface Leaning {
  readonly aim: Aim
  /** 0 to 1; those of a sentence add up to 1. */
  readonly share: number
}

/** What a sentence looks like, by sentences that were read before; the likeliest first. It knows no values, and its word alone records nothing. */
export type Hunch = (sentence: Sentence, said: Remembered | undefined) => readonly Leaning[]

/** For each feature the aims that it speaks for or against: places in the list of aims, each with its weight in hundredths. */
export interface Learnt {
  readonly aims: readonly string[]
  readonly weights: Readonly<Record<string, readonly number[]>>
}

const HUNDREDTH = 0.01

/** By the summed weights of features, the likeliest first. */
export const leaningsBy = <Of extends string>(of: () => Learnt) => {
  const known = lazily(() => new Map(Object.entries(of().weights)))
  return (features: readonly string[]): readonly { readonly aim: Of; readonly share: number }[] => {
    const { aims } = of()
    const scores = aims.map(() => 0)
    for (const feature of features) {
      const weights = known().get(feature) ?? []
      for (let at = 0; at < weights.length; at += 2) scores[weights[at]!]! += HUNDREDTH * weights[at + 1]!
    }
    const shares = softmax(scores)
    return aims.map((aim, at) => ({ aim: aim as Of, share: shares[at]! })).sort((one, other) => other.share - one.share)
  }
}

export const hunchBy = (of: () => Learnt): Hunch => {
  const leanings = leaningsBy<Aim>(of)
  return (sentence, said) => leanings(featuresOf(sentence, said))
}

/** By the sentences in `tests/talk`, as DEVELOPERS.md tells. */
export const hunch: Hunch = hunchBy(() => learnt)
