import { describe, expect, it } from 'vitest'
import { recipeOf } from '../../../core/jar/state/recipe-of.ts'
import { encodeBatch } from '../../../core/recipe/code/batch-code.ts'
import { jarDesk, type StepJson } from './desk.ts'

const START = 'of:84 g lemon peel + 3.5 g dried chilli spirit:1 l 95% to-strength:30% to-sweetness:250 g/L'

const codeOf = async (options: string) => {
  const desk = jarDesk()
  await desk.ask(`/jar start theirs ${options}`)
  return encodeBatch(recipeOf(await desk.storyOf('theirs')))
}

/** Their recipe made with 700 ml at 70 % vol. */
const begun = async (options = START, mine = 'spirit:700 ml 70%') => {
  const desk = jarDesk()
  await desk.ask(`/jar start mine from:${await codeOf(options)} ${mine}`)
  const at = async () => (await desk.storyOf('mine')).started
  const grams = async () => (await at()).plants.map(({ id, massG }) => [id, Number(massG.value.toFixed(3))])
  return { ...desk, at, grams }
}

const noteOf = ({ notes }: StepJson, key: string) => notes.find((note) => note.key === key)?.text

describe('/jar correct of a jar that a code began', () => {
  it('takes the lemons that went in, keeps the spirit and names what is gone', async () => {
    const { ask, at, grams } = await begun()
    const before = await at()
    const reply = await ask('/jar correct mine of:2 lemons')
    const after = await at()
    expect(after.plants).toMatchObject([{ id: 'lemon_peel', count: 2 }])
    expect((await grams())[0]![1]).toBe(21)
    expect(after.spirits[0]!.amount.value).toBeCloseTo(700, 6)
    expect(after.waterG).toEqual(before.waterG)
    expect(after.targets).toEqual(before.targets)
    expect(noteOf(reply, 'jar_plants_dropped')).toMatch(/chill?i.*\.$/)
    expect(after.days.strainBy).not.toBe(before.days.strainBy)
    expect(noteOf(reply, 'jar_strain_moved')).toMatch(/from .* to /)
  })

  it('takes grams as they are typed, and keeps the days', async () => {
    const { ask, at, grams } = await begun()
    const before = await at()
    const reply = await ask('/jar correct mine of:48 g lemon peel + 2 g dried chilli')
    expect((await grams()).map(([, value]) => value)).toEqual([48, 2])
    const after = await at()
    expect(after.days).toEqual(before.days)
    expect(after.spirits[0]!.amount.value).toBeCloseTo(700, 6)
    expect(noteOf(reply, 'jar_plants_dropped')).toBeUndefined()
    expect(noteOf(reply, 'jar_strain_moved')).toBeUndefined()
  })

  it('keeps plants, water and days where only the spirit was another', async () => {
    const { ask, at } = await begun()
    const before = await at()
    await ask('/jar correct mine spirit:600 ml 70%')
    const after = await at()
    expect(after.plants).toEqual(before.plants)
    expect(after.spirits[0]!.amount.value).toBe(600)
    expect(after.days).toEqual(before.days)
    await ask('/jar correct mine strength:72%')
    expect((await at()).spirits).toMatchObject([{ amount: { value: 600 }, abvPercent: { value: 72 } }])
  })

  it('keeps the water that went in first', async () => {
    const { ask, at } = await begun(`${START} steep-at:60%`, 'spirit:700 ml 95%')
    const before = await at()
    expect(before.waterG.value).toBeGreaterThan(100)
    await ask('/jar correct mine spirit:600 ml 95%')
    expect((await at()).waterG).toEqual(before.waterG)
    expect((await at()).plants).toEqual(before.plants)
  })
})

describe('/jar correct of a jar that was typed in', () => {
  it('names the plants that are gone', async () => {
    const desk = jarDesk()
    await desk.ask(`/jar start mine ${START}`)
    const reply = await desk.ask('/jar correct mine of:10 lemons')
    expect(noteOf(reply, 'jar_plants_dropped')).toMatch(/chill?i/)
  })
})
