import { expect, it } from 'vitest'
import { testDesk } from '../test-desk.ts'

const { firstOf } = testDesk({ nowMs: Date.UTC(2026, 8, 5, 12) })

// From 60 % vol on nobody drinks it neat: common practice, no source (`core/liquid/neat.ts`).
it.each([
  ['/plan of:10 lemons spirit:1 l 95% to-strength:65%', true],
  ['/plan of:10 lemons spirit:1 l 95% to-strength:60%', true],
  ['/plan of:10 lemons spirit:1 l 95% to-strength:59%', false],
  ['/plan of:10 lemons spirit:1 l 95%', false],
  ['/syrup infusion:920 ml strength:82% to-strength:62% to-sweetness:100 g/L', true],
  ['/syrup infusion:920 ml strength:82% to-strength:40% to-sweetness:100 g/L', false],
  ['/adjust liqueur:1 l strength:70% sweetness:100 g/L to-strength:65%', true],
  // A spirit that is thinned may be one to steep in.
  ['/dilute spirit:1 l strength:95% to-strength:65%', false],
])('%s: not to be drunk neat on the first screen: %s', async (line, isSaid) => {
  expect((await firstOf(line)).includes('! Don’t drink it neat')).toBe(isSaid)
})
