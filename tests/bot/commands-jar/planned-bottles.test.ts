import { describe, expect, it } from 'vitest'
import { plannedFill } from '../../../core/recipe/plan/planned-fill.ts'
import { jarDesk } from './desk.ts'

const begun = async (bottles = '6 x 500 ml', spirit = '95%') => {
  const desk = jarDesk('2026-11-02')
  const line = await desk.startLine(`/plan of:lemons strength:${spirit} bottles:${bottles}`)
  await desk.ask(`${line} name:lemon`)
  desk.at('2026-12-01')
  return desk
}

const makesOf = (text: string): string => /^Makes .*$/m.exec(text)?.[0].replaceAll('\u00a0', ' ') ?? text

describe('what was planned and falls short', () => {
  it('is said after straining and at the syrup, of the bottles that were planned', async () => {
    const desk = await begun()
    const strained = await desk.textOf('/jar strain lemon measured:900 ml')
    expect(makesOf(strained)).toMatch(/: five of the six 500 ml bottles you planned\.$/)
    expect(makesOf(await desk.textOf('/syrup jar:lemon'))).toMatch(/: five of the six 500 ml bottles you planned\./)
    expect(makesOf(await desk.textOf('/syrup jar:lemon to-strength:25%'))).toMatch(/: six 500 ml bottles\./)
  })

  it('is made up by the spirit that it offers, and by no less', async () => {
    const desk = await begun()
    const { actions } = await desk.replyOf('/jar strain lemon measured:900 ml')
    expect(actions.map(({ label }) => label.key)).toContain('jar_make_up')
    const text = await desk.textOf('/jar show lemon')
    expect(text).toContain('900 ml')
    const offered = /\/jar add lemon spirit:(\d+) ml 95%/
    const other = await begun()
    const spiritMl = Number(offered.exec(await other.textOf('/jar strain lemon measured:900 ml'))![1])
    await other.ask(`/jar add lemon spirit:${spiritMl} ml 95%`)
    const { data } = await other.ask('/syrup jar:lemon')
    // Six bottles of half a litre: the rounding of the jug makes it no more than a spoonful over.
    expect(data.volumeMl as number).toBeGreaterThanOrEqual(3000)
    expect(data.volumeMl as number).toBeLessThan(3000 + (10 * 95) / 30)
    expect(data.abvPercent).toBeCloseTo(30, 6)
  })

  it('is not made up where that would thin it, or make it weaker than its spirit', async () => {
    const keysOf = async (bottles: string, spirit: string, ml: number) => {
      const desk = await begun(bottles, spirit)
      const { actions } = await desk.replyOf(`/jar strain lemon measured:${ml} ml`)
      return actions.map(({ label }) => label.key)
    }
    expect(await keysOf('6 x 500 ml', '95%', 600)).not.toContain('jar_make_up')
    expect(await keysOf('6 x 500 ml', '95%', 1100)).not.toContain('jar_make_up')
  })
})

// Plain sums.
describe('bottles that were planned', () => {
  it.each([
    [3000, [{ count: 6, volumeMl: 500 }], null],
    [2950, [{ count: 6, volumeMl: 500 }], { filled: 6, planned: 6, sizeMl: 500, isNearly: true, lackingMl: 50 }],
    [2600, [{ count: 6, volumeMl: 500 }], { filled: 5, planned: 6, sizeMl: 500, isNearly: false, lackingMl: 400 }],
    [400, [{ count: 1, volumeMl: 500 }], { filled: 0, planned: 1, sizeMl: 500, isNearly: false, lackingMl: 100 }],
    [1000, [{ count: null, volumeMl: 500 }], null],
    [1000, [], null],
  ])('%d ml into %j: %j', (volumeMl, wanted, short) => {
    expect(plannedFill(volumeMl, wanted)).toEqual(short)
  })

  it('of several sizes are counted together', () => {
    const wanted = [
      { count: 2, volumeMl: 700 },
      { count: 4, volumeMl: 200 },
    ]
    expect(plannedFill(1900, wanted)).toMatchObject({ filled: 4, planned: 6, sizeMl: null, lackingMl: 300 })
  })
})
