import { expect, it } from 'vitest'
import { dissolvedBy } from '../../../core/jar/state/hidden-strength.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { plant } from './jars.ts'

/** Plants of no catalogue, which give off a tenth of themselves as dried herbs do. */
const named = (plantsG: readonly number[], sugarG: number) => {
  const { plants, isSweetened } = dissolvedBy({
    plants: plantsG.map((massG) => plant(null, massG, { name: `${massG} g` })),
    sweetenings: whiteSugar(exactly(sugarG)),
  })
  return { names: plants.map(({ name }) => name), isSweetened }
}

// Common practice, no source: a third of what is dissolved.
it('names what gave a third of what is dissolved, the most first', () => {
  expect(named([100, 40], 16)).toEqual({ names: ['100 g'], isSweetened: true })
  expect(named([99, 40], 16)).toEqual({ names: [], isSweetened: true })
  expect(named([120, 150], 0)).toEqual({ names: ['150 g', '120 g'], isSweetened: false })
  expect(named([150, 150], 15.1)).toEqual({ names: [], isSweetened: true })
  expect(named([150, 160], 15)).toEqual({ names: ['160 g'], isSweetened: false })
})
