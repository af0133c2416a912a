import { describe, expect, it } from 'vitest'
import { jarDesk } from './desk.ts'

const bottledLemon = async () => {
  const desk = jarDesk('2026-08-01')
  await desk.ask('/jar start lemon of:10 lemons spirit:1 l 95% to-strength:30% to-sweetness:250 g/L')
  desk.at('2026-08-20')
  await desk.ask('/jar strain lemon measured:920 ml strength:87%')
  await desk.ask('/jar sweeten lemon water:1.4 l sugar:610 g')
  desk.at('2026-08-24')
  await desk.ask('/jar bottle lemon bottles:4 x 500 ml')
  return desk
}

const underOf = async (desk: Awaited<ReturnType<typeof bottledLemon>>, line: string) =>
  ((await desk.replyOf(line)).under ?? []).map(({ key, values }) => [key, values] as const)

describe('/jar note where:freezer', () => {
  // 31 % vol and 240 g/L: free of ice at −18 °C from 25.7 ± 1.5 % vol at 250 g/L (the model of freezing points).
  it('says whether it freezes there, by its numbers and the freezer of its person', async () => {
    const desk = await bottledLemon()
    expect(await underOf(desk, '/jar note lemon where:freezer')).toEqual([['jar_in_freezer', { state: 'pours' }]])
    await desk.ask('/settings freezer:-30 C')
    expect((await underOf(desk, '/jar note lemon where:freezer'))[0]![1]).toEqual({ state: 'slush' })
    expect((await desk.ask('/jar note lemon where:freezer')).data.freezer).toMatchObject({ freezerC: -30 })
    expect((await desk.ask('/jar note lemon where:cellar')).data.freezer).toBeNull()
  })

  it('is told in the story, and when it is ready, until it is out', async () => {
    const desk = await bottledLemon()
    await desk.ask('/jar note lemon where:in the freezer')
    expect(await desk.textOf('/jar show lemon')).toContain('in the freezer')
    desk.at('2026-11-01')
    expect(await desk.textOf('/jar show lemon')).toContain('5 minutes before')
    const keysOf = async (line: string) => (await desk.ask(line)).notes.map(({ key }) => key)
    expect(await keysOf('/jar open lemon')).toContain('jar_out_of_freezer')
    await desk.ask('/jar note lemon where:table')
    expect(await desk.textOf('/jar show lemon')).not.toContain('5 minutes before')
    expect(await keysOf('/jar open lemon')).not.toContain('jar_out_of_freezer')
  })
})

describe('/jar note vessel:', () => {
  it('says whether it fits, and how much room is left', async () => {
    const desk = await bottledLemon()
    expect((await underOf(desk, '/jar note lemon vessel:2 l demijohn'))[0]).toMatchObject([
      'jar_vessel',
      { fit: 'too_small', vesselMl: 2000 },
    ])
    expect((await underOf(desk, '/jar note lemon vessel:3 l demijohn'))[0]).toMatchObject([
      'jar_vessel',
      { fit: 'fits' },
    ])
    expect((await desk.ask('/jar note lemon vessel:3 l demijohn')).data.vessel).toMatchObject({ fit: 'fits' })
    expect(await underOf(desk, '/jar note lemon vessel:the green one')).not.toContainEqual([
      'jar_vessel',
      expect.anything(),
    ])
  })
})
