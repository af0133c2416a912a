import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'
import type { Hunch } from '../hunch/hunch.ts'
import { isSameCall } from '../memory/change-call.ts'
import { NOTHING_SAID, type Remembered } from '../memory/remembered.ts'
import { askedPlainly } from './asked-plainly.ts'
import { isAsked } from './is-told.ts'
import type { FindsInText } from './kept-finds.ts'
import { otherwiseOf, topic } from './read-otherwise.ts'
import { SURE } from './second-thought.ts'
import { surelyFound } from './surely-asked.ts'

interface Knows extends FindsInText {
  readonly hunch: Hunch
  readonly said?: Remembered
}

/** What an entry has to explain of a `why`, and how likely it has to be. */
const WHY = { share: 0.7, likelihood: 0.5 } as const

/**
 * What is asked behind an answer, and is not of it: `why do I keep it in the dark?` behind a plan, `could I use bottled juice instead of
 * peel?`, and whatever is understood as if nothing had been said. What is asked of the amounts themselves stays with them.
 */
export function askedBehind(reading: TalkReading, sentence: Sentence, text: string, knows: Knows): TalkReading {
  const call = knows.said?.call ?? null
  if (call === null || knows.said?.question !== null) return reading
  if (reading.kind === 'last') {
    if (reading.what !== 'why') return reading
    const found = knows.findEntry(text)
    return found !== null && found.share >= WHY.share && found.likelihood >= WHY.likelihood ? topic(found) : reading
  }
  if (reading.kind === 'lost') {
    const [likeliest] = knows.hunch(sentence, NOTHING_SAID)
    if (likeliest?.aim !== 'handbook' || likeliest.share < SURE) return reading
    return otherwiseOf(sentence, text, knows).handbook(likeliest.share) ?? reading
  }
  const isOfPlants =
    reading.kind === 'call' && reading.call.command === 'plan' && call.command === 'plan' && isOnlyNamed(sentence)
  if (!isOfPlants || !isAsked(sentence)) return reading
  const plainly = isSameCall(reading.call, call) ? askedPlainly(sentence) : null
  return plainly === null ? (surelyFound(text, knows.rankEntries) ?? reading) : topic({ id: plainly, others: [] })
}

/** A plant is named, and nothing is counted or measured. */
const isOnlyNamed = ({ bits }: Sentence): boolean =>
  bits.some(({ kind }) => kind === 'plant') && bits.every(({ value }) => value === 0)
