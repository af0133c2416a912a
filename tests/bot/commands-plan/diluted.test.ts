import { describe, expect, it } from 'vitest'
import { lineOf } from '../../../bot/calls/write-line.ts'
import { testDesk } from '../test-desk.ts'

const desk = testDesk({ nowMs: Date.UTC(2026, 8, 1, 9), width: 100 })

async function planned(line: string) {
  const outcome = await desk.run(line)
  if (!outcome.ok) throw new Error(`${line}: ${outcome.error.problem}`)
  const { notes, actions } = outcome.reply
  const { data } = await desk.jsonOf(line)
  const found = actions.find(({ label }) => label.key === 'plan_with')
  return {
    said: notes.some(({ key, depth }) => key === 'plan_diluted_first' && depth !== 'more'),
    line: found === undefined ? null : lineOf(found.call),
    massOf: (id: string): number => data.botanicals.find((plant: { id: string }) => plant.id === id).massG,
    finishedMl: data.volumeMl as number,
  }
}

describe('spirit that is diluted first', () => {
  it('says that it takes more of a usual amount, and how much does for as much drink', async () => {
    const [plain, diluted] = [
      await planned('/plan of:lemons spirit:1 l 95%'),
      await planned('/plan of:lemons spirit:1 l 95% steep-at:60%'),
    ]
    expect(plain.said).toBe(false)
    expect(diluted.said).toBe(true)
    // % vol is by volume of alcohol: 95 / 60 as much liquid, but for what the two draw together.
    expect(diluted.massOf('lemon_peel') / plain.massOf('lemon_peel')).toBeCloseTo(95 / 60, 1)
    const less = await planned(diluted.line!)
    expect(less.said).toBe(false)
    expect(less.massOf('lemon_peel') / less.finishedMl).toBeCloseTo(plain.massOf('lemon_peel') / plain.finishedMl, 2)
  })

  it('says nothing of amounts that were said', async () => {
    expect((await planned('/plan of:10 lemons spirit:1 l 95% steep-at:60%')).said).toBe(false)
    const mixed = await planned('/plan of:10 lemons + ginger spirit:1 l 95% steep-at:60%')
    expect(mixed.line).toMatch(/^\/plan of:10 lemons \+ \d+ g ginger spirit:1 l 95% steep-at:60%$/)
    expect((await planned(mixed.line!)).massOf('ginger')).toBeLessThan(mixed.massOf('ginger') / 1.4)
  })

  it('says nothing where hardly any water goes in', async () => {
    expect((await planned('/plan of:lemons spirit:1 l 65% steep-at:60%')).said).toBe(false)
  })
})

describe('what is to be bought', () => {
  it.each([
    ['/plan of:raspberries spirit:1 l 95% steep-at:50%', /^Buy 1\.33 kg raspberries/],
    ['/plan of:ginger spirit:1 l 95% steep-at:60%', /^Buy 240 g (?:fresh )?ginger/],
    ['/plan of:4.2 lemons spirit:500 ml 95%', /^Buy 5 unwaxed lemons/],
    ['/plan of:4.05 lemons spirit:500 ml 95%', /^Buy 4 unwaxed lemons/],
  ])('%s', async (line, bought) => {
    expect(await desk.textOf(line)).toMatch(bought)
  })
})

it('reads no twelve bottles as twelve thousand', async () => {
  const said = await desk.textOf('/plan of:lemons bottles:12 strength:95%')
  expect(said).toContain('Makes 12 bottles of 500 ml')
  expect(said).not.toMatch(/12 500 ml/)
})
