import { computeFrames } from './compute-frames.ts'
import type { Frame } from './frame.ts'
import { jarFrames } from './jar-frames.ts'

/** All that a sentence may be understood as. */
export const frames: readonly Frame[] = [...computeFrames, ...jarFrames]
