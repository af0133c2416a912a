import type { Path } from '../../calls/signatures.ts'
import type { Sentence } from '../bits/bit.ts'
import { frames } from '../frames/frames.ts'
import { type FrameTried, tryFrame } from '../frames/score.ts'
import { mayBe } from './is-told.ts'

/** From here on a frame is meant. */
export const LEAST = 2.5

/** The frames that a sentence may be, the best first. */
export const tried = (sentence: Sentence, command: Path | undefined): readonly FrameTried[] =>
  frames
    .filter((frame) => (command ?? frame.command) === frame.command && mayBe(frame.command, sentence))
    .flatMap(
      (frame) =>
        tryFrame(
          command === undefined
            ? frame
            : { ...frame, wants: undefined as never, bars: undefined as never, base: LEAST + 1 },
          sentence,
        ) ?? [],
    )
    .toSorted((one, other) => other.score - one.score)
