import fc from 'fast-check'
import { expect, it } from 'vitest'
import { DomainError } from '../../../core/domain-error.ts'
import type { Happening, JarEntry } from '../../../core/jar/entry/entry.ts'
import { effective } from '../../../core/jar/entry/standing-entries.ts'
import { expectFollows } from '../../../core/jar/record/check-sequence.ts'
import { correct, record, undo } from '../../../core/jar/record/record.ts'
import { contentsOf } from '../../../core/jar/state/contents.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { liquidAfter } from '../../../core/jar/state/liquid-after.ts'
import { stepsOf } from '../../../core/jar/state/liquid-steps.ts'
import { massG } from '../../../core/liquid/liquid.ts'
import { valuesOf } from '../../../core/recipe/propagate.ts'
import { runs, SEED } from '../../runs.ts'
import { ENTRY_KINDS, NEWER_KINDS } from './entry-kinds.ts'
import { META } from './jars.ts'
import { type Try, tries } from './random-stories.ts'

const law = { seed: SEED, numRuns: runs(30, 2000) }

interface Told {
  readonly entries: readonly JarEntry[]
  /** A stack of its own: what was entered and not taken back. */
  readonly standing: readonly JarEntry[]
}

function tryOut({ entries, standing }: Told, what: Try): Told {
  if (what.do === 'undo') {
    if (standing.length === 0) return { entries, standing }
    // Not caught: whatever was recorded can be taken back.
    return { entries: undo(entries, META).entries, standing: standing.slice(0, -1) }
  }
  try {
    const made =
      what.do === 'record'
        ? record(entries, what.happening, what.moment, META)
        : correct(entries, what.seq, bySameKind(entries, what), what.moved, META)
    if (made.isAlready) return { entries, standing }
    return { entries: made.entries, standing: [...standing, made.entries.at(-1)!] }
  } catch (error) {
    if (error instanceof DomainError && error.code !== 'internal') return { entries, standing }
    throw error
  }
}

/** Half of the corrections are of the right kind. */
const bySameKind = (entries: readonly JarEntry[], { seq, by }: Extract<Try, { do: 'correct' }>): Happening => {
  const wrong = effective(entries).find((entry) => entry.seq === seq)
  return wrong === undefined || seq % 2 === 0 ? by : wrong
}

const tell = (all: readonly Try[]): Told => all.reduce(tryOut, { entries: [], standing: [] })

it('folds to what is left when all that was undone is gone, and that always follows', () => {
  fc.assert(
    fc.property(tries, (all) => {
      const { entries, standing } = tell(all)
      const story = jarStateOf(entries)
      expect(story).toEqual(jarStateOf(standing))
      if (story === null) return
      expectFollows(entries)
      const contents = contentsOf(story)
      expect(contents).toEqual(contentsOf(jarStateOf(standing)!))
      for (const { value, plusMinus } of [
        contents.outcome.volumeMl,
        contents.outcome.abvPercent,
        contents.outcome.massG,
      ]) {
        expect(value >= 0 && plusMinus >= 0 && Number.isFinite(value + plusMinus)).toBe(true)
      }
    }),
    law,
  )
})

it('records a fair share of what is tried, so that the law above is not an empty one', () => {
  const told = fc.sample(tries, { seed: SEED, numRuns: 100 }).map(tell)
  expect(told.filter(({ entries }) => entries.length > 5).length).toBeGreaterThan(20)
  const kinds = new Set(told.flatMap(({ entries }) => entries.map(({ kind }) => kind)))
  expect([...kinds].sort()).toEqual([...ENTRY_KINDS, ...NEWER_KINDS].sort())
})

it('makes no grams where nothing is measured', () => {
  fc.assert(
    fc.property(tries, (all) => {
      const story = jarStateOf(tell(all).entries)
      const steps = stepsOf(story?.happened ?? []).map(({ step }) => step)
      if (steps.some((step) => step.kind === 'measured' || ('measured' in step && step.measured !== null))) return
      if (steps.some((step) => step.kind === 'strained' && step.strength !== null)) return
      const { liquid, most } = liquidAfter(valuesOf(steps))
      expect(massG(liquid)).toBeLessThanOrEqual(massG(most) * (1 + 1e-9))
    }),
    law,
  )
})
