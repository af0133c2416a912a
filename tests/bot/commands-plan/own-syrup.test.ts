import { describe, expect, it } from 'vitest'
import { ask, askAny, number } from './desk.ts'

const RECIPE = '/plan of:8 lemons spirit:1 pint 190 proof sugar:2 cups water:2 cups'

const own = (json: Awaited<ReturnType<typeof ask>>) => json.notes.find(({ key }) => key === 'plan_own_syrup')?.text

// A US pint is 473 ml and a cup of sugar 200 g (27 CFR 5.1; USDA FoodData Central); strength by masses, common practice, no source.
describe('a recipe with its own water and sugar', () => {
  it('says what it comes to, and uses its water', async () => {
    const json = await ask(RECIPE)
    expect(number(json, 'waterMl')).toBeCloseTo(473, 0)
    expect(number(json, 'sugarG')).toBeCloseTo(400, 0)
    expect(number(json, 'abvPercent')).toBeGreaterThan(30)
    expect(own(json)).toBe('Your own water and sugar make it 66 proof.')
    expect(own(await ask('/plan of:8 lemons spirit:1 l 95% sugar:600 g water:1.2 l'))).toMatch(
      /^Your own water and sugar make it 35.%, very sweet/,
    )
  })

  it('says what gave way to a wish', async () => {
    expect(own(await ask(`${RECIPE} to-sweetness:dry`))).toContain('For that sweetness I’ve changed the sugar.')
    expect(own(await ask(`${RECIPE} to-strength:50 proof`))).toBe('For that strength I’ve changed the water.')
    expect(own(await ask(`${RECIPE} to-strength:50 proof to-sweetness:dry`))).toContain(
      'and the sugar for that sweetness',
    )
  })

  it('takes for its usual sweetness what no recipe says', async () => {
    const json = await ask('/plan of:8 lemons spirit:1 l 95% water:1 l')
    expect(own(json)).toMatch(/^Your own water makes it 40.%\.$/)
    expect(json.notes.find(({ key }) => key === 'plan_assumed')?.text).toMatch(/^I’ve gone for medium sweet/)
  })

  it('puts sugar of two kinds in with the plants', async () => {
    const json = await ask('/plan of:8 lemons spirit:1 l 95% sugar:200 g + 100 g honey water:1 l')
    expect(number(json, 'sugarG')).toBe(0)
    expect(number(json, 'waterMl')).toBeCloseTo(1000, 0)
  })

  it('needs a spirit, and no code', async () => {
    expect((await askAny('/plan of:8 lemons strength:95% bottles:4 water:1 l')).error?.option).toBe('spirit')
    const code = '11NCHSTJ8P501JQH0JNHC00VV9SW4H50HFEB52FV6N'
    expect((await askAny(`/plan from:${code} water:1 l`)).error?.option).toBe('water')
  })
})
