import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

describe('of a fruit as much is peeled as was said', () => {
  it.each([
    ['the peel of half a grapefruit, 400 g strawberries, 1 litre of gin', '0.5 grapefruit + 400 g strawberries'],
    ['400 g strawberries, zest of half an orange, 1 litre of gin', '400 g strawberries + 0.5 orange'],
    ['400 g fragole, la scorza di mezzo limone, 1 litro di gin', '400 g fragole + 0.5 limone'],
    ['half a vanilla pod, 400 g strawberries, 1 litre of gin', '0.5 vanilla pod + 400 g strawberries'],
    ['400 g strawberries, 1 tsp lime zest, 1 litre of gin', '400 g strawberries + 1 tsp lime zest'],
    ['400 g strawberries, 2 tablespoons orange zest, 1 litre of gin', '400 g strawberries + 2 tablespoons orange zest'],
    [
      '400 g fragole, un cucchiaino di scorza di limone, 1 litro di gin',
      '400 g fragole + 1 cucchiaino scorza di limone',
    ],
  ])('%s', async (said, of) => {
    const one = await talkerFor({ after: null })
    const { read, code, notes } = await one.say(said)
    expect(read).toMatch(`/plan of:${of} spirit:1 litr`)
    expect([code, notes.includes('left_out')]).toEqual([null, false])
  })

  it.each([
    ['half a bottle of gin and 200 g strawberries', '/plan of:200 g strawberries spirit:350 ml gin 40%'],
    ['half a litre of gin, 1 orange', '/plan of:1 orange spirit:0.5 litre gin 40%'],
  ])('a half of what is no fruit is none: %s', async (said, line) => {
    expect((await (await talkerFor({ after: null })).say(said)).read).toBe(line)
  })

  // USDA’s table has 2 g for a teaspoon and 6 g for a tablespoon of lemon and of orange peel (rows 09156, 09216), from memory.
  it('weighs spoonfuls of zest', async () => {
    const one = await talkerFor({ after: null })
    const massOf = async (of: string) =>
      ((await one.say(`/plan of:${of} spirit:1 l gin 40%`)).data as { botanicals: { massG: number }[] }).botanicals[0]
        ?.massG
    expect(await massOf('1 tsp lemon zest')).toBeCloseTo(2)
    expect(await massOf('1 tbsp orange zest')).toBeCloseTo(6)
    expect(await massOf('1/2 tsp orange zest')).toBeCloseTo(1)
  })
})

describe('a size in brackets is of the bottle beside it', () => {
  it.each([
    ['9 limes, 1 bottle (750 ml) 100 proof rum', '9 limes spirit:750 ml rum 100 proof'],
    ['9 limes, one (750ml) bottle of rum', '9 limes spirit:750 ml rum 40%'],
    ['9 limes, 2 bottles (70 cl each) rum 80 proof', '9 limes spirit:2 x 70 cl rum 80 proof'],
    ['9 lime, una bottiglia (50 cl) di rum', '9 lime spirit:50 cl rum 40%'],
  ])('%s', async (said, line) => {
    expect((await (await talkerFor({ after: null })).say(said)).read).toBe(`/plan of:${line}`)
  })
})
