import { once } from '../../../core/once.ts'
import type { Sentence, Surroundings } from './bit.ts'
import { sentenceIn } from './sentence.ts'

interface Last extends Pick<Surroundings, 'lexicons' | 'today' | 'isUs'> {
  readonly text: string
  readonly sentence: Sentence
}

/** The last sentence among some jars. */
const lastAmong = once((_: Surroundings['jars']): { last: Last | null } => ({ last: null }))

/** The same as `sentenceIn`, taken apart once where it is read as a whole and looked through for several deeds after that. */
export function sentenceOnce(text: string, surroundings: Surroundings): Sentence {
  const { lexicons, jars, today, isUs } = surroundings
  const kept = lastAmong(jars)
  const { last } = kept
  const isSame =
    last?.text === text && last.lexicons === lexicons && last.today === today && last.isUs === (isUs === true)
  if (last !== null && isSame) return last.sentence
  const sentence = sentenceIn(text, surroundings)
  kept.last = { text, lexicons, today, isUs: isUs === true, sentence }
  return sentence
}
