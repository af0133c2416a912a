import { describe, expect, it } from 'vitest'
import { jarDesk } from '../commands-jar/desk.ts'

/** Begun on 1 November: lemon peel is strained 14 to 30 days later and rests 30 days, a day after it was strained. */
async function begun() {
  const desk = jarDesk('2026-11-01')
  await desk.ask('/jar start lemon of:10 lemons spirit:1 l 95%')
  return desk
}

const said = async (desk: Awaited<ReturnType<typeof begun>>, by: string): Promise<string> =>
  (await desk.textOf(`/jar show lemon ready-by:${by}`)).split('\n')[0]!

describe('/jar show with a day', () => {
  it('says yes, yes if it is strained by then, and no, by hand', async () => {
    const desk = await begun()
    // Strained on the last day, 1 December, and a day and 30 days more.
    expect(await said(desk, '10 January')).toBe(
      'Yes, lemon should be ready about 1 January 2027, in time for 10 January 2027.',
    )
    // 31 days before.
    expect(await said(desk, '25 December')).toBe(
      'Yes, lemon can be ready by 25 December if you strain it by 24 November.',
    )
    // Strained on the first day, 15 November, and 31 days more.
    expect(await said(desk, '10 December')).toBe('No, lemon won’t be ready before about 16 December.')
  })

  it('reckons from the day on which it is sweetened', async () => {
    const desk = await begun()
    desk.at('2026-11-20')
    await desk.ask('/jar strain lemon measured:930 ml strength:87%')
    expect(await said(desk, '25 December')).toBe(
      'Yes, lemon can be ready by 25 December if you sweeten it by 25 November.',
    )
    expect(await said(desk, '1 December')).toBe('No, lemon won’t be ready before about 20 December.')
    await desk.ask('/jar sweeten lemon water:1.5 l sugar:510 g')
    expect(await said(desk, '25 December')).toMatch(/^Yes, lemon should be ready about 20 December/)
    expect(await said(desk, '19 December')).toMatch(/^No, /)
    desk.at('2026-12-21')
    expect(await said(desk, '25 December')).toBe('Yes, lemon is ready now.')
  })

  it('says how it stands where it is empty', async () => {
    const desk = await begun()
    desk.at('2026-11-20')
    await desk.ask('/jar strain lemon')
    await desk.ask('/jar empty lemon')
    expect(await said(desk, '25 December')).toBe('Lemon is empty.')
  })
})
