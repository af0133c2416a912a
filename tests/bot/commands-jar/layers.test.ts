import { describe, expect, it } from 'vitest'
import { jarDesk, numberIn } from './desk.ts'

const rumpot = async () => {
  const desk = jarDesk('2026-06-15')
  await desk.ask('/jar start rumpot of:500 g strawberries spirit:1 l 54% sugar:250 g')
  desk.at('2026-07-20')
  return desk
}

describe('/jar add as:layer', () => {
  it('says from when the days count now, and the list follows', async () => {
    const desk = await rumpot()
    const { under: said = [] } = await desk.replyOf(
      '/jar add rumpot of:500 g cherries sugar:250 g spirit:500 ml 54% as:layer',
    )
    expect(said.map(({ key }) => key)).toEqual(['jar_became', 'layer_days'])
    expect(said.find(({ key }) => key === 'layer_days')?.values).toMatchObject({
      days: { strainFrom: '2026-08-29', strainBy: '2026-09-18' },
    })
    expect(await desk.textOf('/jar list')).not.toContain('strain today')
  })

  it('asks before it makes a jar ferment', async () => {
    const desk = await rumpot()
    const error = await desk.refused('/jar add rumpot of:3 kg raspberries as:layer')
    expect([error.code, error.option]).toEqual(['ambiguous', 'already'])
    await desk.ask('/jar add rumpot of:3 kg raspberries as:layer already:yes')
  })

  it('offers the line that lifts out what would be in too long', async () => {
    const desk = jarDesk('2026-06-15')
    await desk.ask('/jar start green of:20 g basil spirit:1 l 60%')
    const { notes, actions } = await desk.replyOf('/jar add green of:500 g plums as:layer')
    expect(notes.map(({ key }) => key)).toContain('layer_overdone')
    expect(await desk.textOf('/jar show green')).toContain('layered in')
    const out = actions.find(({ label }) => label.key === 'jar_take_out')
    expect(out?.call.command).toBe('jar take-out')
    await desk.ask('/jar take-out green of:basil')
  })

  it('offers to lift out only what is in already', async () => {
    const desk = jarDesk('2026-11-01')
    await desk.ask('/jar start plum of:1 kg plums + 1 cinnamon stick, ceylon spirit:1 l 60%')
    desk.at('2026-11-20')
    const { notes, actions } = await desk.replyOf('/jar add plum of:500 g cherries as:layer')
    expect(notes.map(({ key }) => key)).toContain('layer_overdone')
    expect(actions.map(({ label }) => label.key)).not.toContain('jar_take_out')
    await expect(desk.ask('/jar take-out plum of:cinnamon')).rejects.toThrow()
  })

  it.each([
    ['/jar add rumpot as:layer', 'layer_needs_fruit', 'of'],
    ['/jar add rumpot sugar:100 g as:layer', 'layer_needs_fruit', 'of'],
    ['/jar add rumpot as:top-up', 'top_up_needs_liquid', 'spirit'],
    ['/jar add rumpot of:100 g cherries as:top up', 'top_up_needs_liquid', 'of'],
    ['/jar add rumpot water:1 l as:soup', 'no_added_as', 'as'],
  ])('refuses %s', async (line, problem, option) => {
    const desk = await rumpot()
    const refused = await desk.problemOf(line)
    expect([refused.problem, refused.option]).toEqual([problem, option])
  })
})

describe('/jar add as:top-up', () => {
  it('covers the fruit again, as said', async () => {
    const desk = await rumpot()
    const before = numberIn(await desk.ask('/jar show rumpot'), 'volumeMl')
    const text = await desk.textOf('/jar add rumpot spirit:200 ml 54% as:top-up')
    expect(text).toContain('Topped up rumpot')
    expect(numberIn(await desk.ask('/jar show rumpot'), 'volumeMl') - before).toBeGreaterThan(180)
    expect(await desk.textOf('/jar show rumpot')).toContain('topped up with 200')
  })
})

describe('an enzyme', () => {
  it('goes on the fruit before the spirit, and is told late where there is spirit', async () => {
    const desk = jarDesk('2026-09-01')
    const begun = await desk.ask('/jar start plum of:1 kg plums spirit:1 l 50% enzyme:1 tsp')
    expect(begun.notes.map(({ key }) => key)).toContain('enzyme_first')
    const late = await desk.ask('/jar add plum enzyme:1 tsp')
    expect(late.notes.map(({ key }) => key)).toContain('jar_enzyme_after_spirit')
    expect((await desk.storyOf('plum')).started.enzyme).toBe('1 tsp')
    expect(await desk.textOf('/jar show plum')).toContain('pectic enzyme (1 tsp)')
  })
})
