import { expect, it } from 'vitest'
import { contentsOf } from '../../../core/jar/state/contents.ts'
import { massG } from '../../../core/liquid/liquid.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { added, entriesOf, started, storyFrom, strained } from './jars.ts'
import { gramsOf, liquidsIn, SLOES } from './liquids.ts'

it('holds no less than nothing where less stays than anybody could measure', () => {
  const kept = { value: 0.001, plusMinus: 0.01 }
  const story = storyFrom(
    started(),
    { kind: 'parted', kept, other: 'aside', isNew: false },
    added({ spirits: [], sweetenings: whiteSugar(exactly(1e-6)) }),
    strained({ rinseWaterG: exactly(50) }),
  )
  const { volumeMl, abvPercent } = contentsOf(story).outcome
  for (const { value, plusMinus } of [volumeMl, abvPercent]) {
    expect(value >= 0 && Number.isFinite(value + plusMinus)).toBe(true)
  }
})

it('leaves nothing in cloth or fruit either of a share that is less than nothing', () => {
  const after = (kept: number) =>
    liquidsIn(entriesOf(SLOES, strained(), { kind: 'parted', kept: exactly(kept), other: 'aside', isNew: false }))
  const [whole, none] = [after(1), after(-0.01)]
  expect(whole.keptBackMl).toBeGreaterThan(0)
  expect(massG(whole.inFruit.soaked)).toBeGreaterThan(0)
  expect(none.keptBackMl).toBeCloseTo(0, 12)
  for (const liquid of [none.liquid, none.inFruit.soaked, none.inFruit.juice]) {
    for (const grams of gramsOf(liquid)) expect(grams).toBeCloseTo(0, 12)
  }
})
