import type { OverCeiling } from '../../botanical/limits/ceilings.ts'
import { contentsOf } from '../state/contents.ts'
import type { JarState } from '../state/jar-state.ts'
import { limitsPassed } from './limits-passed.ts'
import { type SpiritToAdd, spiritToAdd, withSpirit } from './spirit-to-add.ts'

/** A jar that holds more of something than is safe. */
export interface OverInJar {
  /** The worst first. */
  readonly over: readonly OverCeiling[]
  /** The spirit that brings it within its limits; null where none does. */
  readonly add: SpiritToAdd | null
}

/** What a jar holds too much of; null where every limit is kept. */
export function overInJar(story: JarState): OverInJar | null {
  const over = limitsPassed(story)
  if (over.length === 0) return null
  const isWithin = (add: SpiritToAdd): boolean => limitsPassed(withSpirit(story, add)).length === 0
  return { over, add: spiritToAdd(story, contentsOf(story).outcome.volumeMl.value, isWithin) }
}
