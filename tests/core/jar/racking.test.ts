import { expect, it } from 'vitest'
import type { Filtered, Happening } from '../../../core/jar/entry/entry.ts'
import { pourApart } from '../../../core/jar/pour/pour-apart.ts'
import { pourTogether } from '../../../core/jar/pour/pour-together.ts'
import { undo } from '../../../core/jar/record/record.ts'
import { finedWith } from '../../../core/jar/state/batch-facts.ts'
import { contentsOf } from '../../../core/jar/state/contents.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { entriesOf, META, ml, on, started, storyFrom, strained, sweetened } from './jars.ts'

const filtered = (how: Partial<Filtered> = {}): Happening => ({ kind: 'filtered', measured: null, ...how })
const mlOf = (...more: readonly Happening[]) =>
  contentsOf(storyFrom(started(), strained({ measured: ml(900) }), ...more)).outcome.volumeMl

it('leaves three hundredths on the lees each time, whatever filters took, give or take two', () => {
  // Estimated; nobody has published it.
  expect(mlOf(filtered({ isRacked: true })).value).toBeCloseTo(0.97 * 900, 6)
  expect(mlOf(filtered({ isRacked: true }), filtered({ isRacked: true })).value).toBeCloseTo(0.97 * 0.97 * 900, 6)
  expect(mlOf(filtered({ isRacked: true }), filtered()).value).toBeCloseTo(0.97 * 0.985 * 900, 6)
  expect(mlOf(filtered(), filtered({ isRacked: true })).value).toBeCloseTo(0.97 * 0.985 * 900, 6)
  expect(mlOf(filtered({ isRacked: true })).plusMinus).toBeCloseTo(Math.hypot(0.97 * 18, 18), 0)
})

it('takes of the liquid, not of its strength or sweetness, and is measured where its maker measures it', () => {
  const story = [started(), strained({ measured: ml(900) }), sweetened(900, 450)]
  const [before, after] = [storyFrom(...story), storyFrom(...story, filtered({ isRacked: true, measured: ml(1900) }))]
  const [was, now] = [contentsOf(before), contentsOf(after)]
  expect(now.outcome.abvPercent.value).toBeCloseTo(was.outcome.abvPercent.value, 9)
  expect(now.outcome.sugarGPerL.value).toBeCloseTo(was.outcome.sugarGPerL.value, 9)
  expect(now.outcome.volumeMl.value).toBeCloseTo(1900, 6)
  expect(now.volume).toBe('measured')
})

it('is undone, fining and all', () => {
  const before = entriesOf(started(), strained())
  const after = entriesOf(started(), strained(), filtered({ isRacked: true, fining: 'egg_white' }))
  expect(finedWith(jarStateOf(after)!)).toEqual(['egg_white'])
  expect(jarStateOf(undo(after, META).entries)).toEqual(jarStateOf(before))
})

it('goes along when jars are poured apart and together', () => {
  const fined = { id: 'fined', entries: entriesOf(started(), strained(), filtered({ fining: 'milk' })) }
  const plain = { id: 'plain', entries: entriesOf(started({ name: 'sun' }), strained()) }
  const apart = pourApart(fined, { share: exactly(0.5), into: 'half' }, on(9), META)
  expect(finedWith(jarStateOf(apart.portion.entries)!)).toEqual(['milk'])
  const pouring = { target: plain, source: fined, share: exactly(0.5), into: null }
  const together = pourTogether(pouring, on(9), META).target.entries
  expect(finedWith(jarStateOf(together)!)).toEqual(['milk'])
  const again = pourTogether({ ...pouring, target: fined, source: { entries: together } }, on(10), META).target.entries
  expect(finedWith(jarStateOf(again)!)).toEqual(['milk'])
})
