import { expect, it, test } from 'vitest'
import { fillsOf } from '../../../core/jar/state/fill-weight.ts'
import { jarDesk } from '../../bot/commands-jar/desk.ts'

interface FillData {
  readonly volumeMl: number
  readonly weightG: number
  readonly weightGPlusMinus: number
}

const cloved = async (strength: string) => {
  const desk = jarDesk('2026-10-01')
  await desk.ask('/jar start trial of:1 clove spirit:2 l 50%')
  desk.at('2026-10-20')
  await desk.ask(`/jar strain trial measured:1 l strength:${strength}`)
  return desk
}

/**
 * Density at 20 °C of 40 and 50 % vol by OIML R 22 (1975): 948.05 and 930.14 kg/m³, from memory; less 0.11 % of it in air. A clove
 * changes it by less than a gram.
 */
test.each([
  ['40%', 500 * 0.94805 * 0.9989],
  ['50%', 500 * 0.93014 * 0.9989],
])('half a litre of %s weighs what the tables say', async (strength, weightG) => {
  const { data } = await (await cloved(strength)).ask('/jar show trial')
  const [fill] = data.fills as readonly FillData[]
  expect(fill!.volumeMl).toBe(500)
  expect(Math.abs(fill!.weightG - weightG)).toBeLessThan(1)
  expect(fill!.weightGPlusMinus).toBeGreaterThan(0)
})

it('is told for each size that was filled, one question deeper, and for none before straining', async () => {
  const desk = await cloved('40%')
  await desk.ask('/jar bottle trial bottles:1 x 500 ml + 2 x 200 ml already:yes')
  const story = await desk.storyOf('trial')
  expect(fillsOf(story).map(({ volumeMl }) => volumeMl)).toEqual([500, 200])
  const [large, small] = fillsOf(story)
  expect(small!.weightG.value / large!.weightG.value).toBeCloseTo(0.4, 9)
  expect(await desk.textOf('/jar show trial')).toMatch(
    /To fill on a scale, warm or cold: 500 ml weighs 473\.5 g and 200 ml weighs 189\.4 g without the bottle\./,
  )
  await desk.ask('/jar start young of:1 clove spirit:2 l 50%')
  expect(fillsOf(await desk.storyOf('young'))).toEqual([])
})
