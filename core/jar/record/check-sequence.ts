import { DomainError } from '../../domain-error.ts'
import type { HappeningEntry, JarEntry } from '../entry/entry.ts'
import { effective } from '../entry/standing-entries.ts'
import { believedSteps } from '../state/believed-steps.ts'
import { type Expected, judgeMeasurement } from '../state/judge-measurement.ts'
import { type LiquidStep, stepsOf } from '../state/liquid-steps.ts'
import { BEFORE_ALL, refusalOf, type UnusualKey, unusualIn, type Walk, walkOn } from './allowed-steps.ts'

/** A step that is allowed, and worth a word. */
export type Unusual =
  | { readonly seq: number; readonly key: UnusualKey }
  /** Something else was read than what was expected. */
  | { readonly seq: number; readonly key: 'reading_surprising'; readonly expected: Expected }

/** The first step that cannot follow those before it, and why. */
export interface Stopped {
  readonly at: HappeningEntry
  readonly because: DomainError
}

/** How far the steps follow one another. */
export interface Followed {
  readonly unusual: readonly Unusual[]
  readonly stopped: Stopped | null
}

/**
 * Walks through what happened, in order of time, up to the first step that cannot be. Not `isJudged`: whatever was measured
 * is believed, as of a state that an undo may bring back.
 */
export function follow(entries: readonly JarEntry[], isJudged = true): Followed {
  const happened = effective(entries)
  const unusual: Unusual[] = []
  const name = happened.find((entry) => entry.kind === 'started')?.name ?? ''
  let walk: Walk = { ...BEFORE_ALL, name }
  for (const entry of happened) {
    const because = refusalOf(walk, entry)
    if (because !== null) return { unusual, stopped: { at: entry, because } }
    const judged = isJudged ? judgeMeasurement(walk.name, stepsUntil(entry, happened)) : null
    if (judged instanceof DomainError) return { unusual, stopped: { at: entry, because: judged } }
    unusual.push(...unusualIn(walk, entry).map((key) => ({ seq: entry.seq, key })))
    if (judged !== null) unusual.push({ seq: entry.seq, key: 'reading_surprising', expected: judged })
    walk = walkOn(walk, entry)
  }
  return { unusual, stopped: null }
}

/** The steps up to one entry, that one as it was read; none where it is no step. */
function stepsUntil({ seq }: HappeningEntry, happened: readonly HappeningEntry[]): readonly LiquidStep[] {
  const read = stepsOf(happened)
  const at = read.findIndex((taken) => taken.seq === seq)
  const before = believedSteps(happened).slice(0, Math.max(0, at))
  return [...before, ...read.slice(at < 0 ? read.length : at, at + 1)].map(({ step }) => step)
}

/** The unusual steps; throws `cannot_follow`, or what else is wrong with the first that cannot be. */
export function expectFollows(entries: readonly JarEntry[]): readonly Unusual[] {
  const { unusual, stopped } = follow(entries)
  if (stopped !== null) throw stopped.because
  return unusual
}
