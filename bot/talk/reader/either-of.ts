import type { Sentence } from '../bits/bit.ts'
import { leftOutOf } from '../frames/left-out.ts'
import type { TalkReading } from '../frames/reading.ts'
import type { FrameTried } from '../frames/score.ts'
import { callOf, readingOf } from './frame-reading.ts'
import { LEAST } from './tried-frames.ts'

/** Two that are nearer than this are a question. */
const APART = 0.4

const isWhole = ({ lacks, unused, frame }: FrameTried): boolean =>
  lacks.length === 0 && unused.length === 0 && frame.does === 'compute'

/** The best reading; of two that are near the one that lacks less, and of two that lack nothing neither, but a question. */
export function eitherOf(
  best: FrameTried,
  second: FrameTried | undefined,
  sentence: Sentence,
  isTyped: boolean,
): TalkReading {
  const isClose =
    second !== undefined &&
    best.score - second.score < APART &&
    second.score >= LEAST &&
    second.frame.command !== best.frame.command
  if (isClose && second.lacks.length < best.lacks.length) return readingOf(second, sentence, isTyped)
  if (!isClose || !isWhole(best) || !isWhole(second)) return readingOf(best, sentence, isTyped)
  const choices = [callOf(best), callOf(second)]
  const leftOut = leftOutOf(sentence, best.used)
  return { kind: 'question', call: choices[0]!, about: { kind: 'which_reading' }, choices, leftOut }
}
