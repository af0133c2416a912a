import { expect, it } from 'vitest'
import { contentsOf } from '../../../core/jar/state/contents.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { added, started, storyFrom, strained } from './jars.ts'

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
