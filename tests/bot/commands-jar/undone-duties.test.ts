import { describe, expect, it } from 'vitest'
import { untold } from '../../../store/due.ts'
import { jarDesk, LEMON } from './desk.ts'

const begun = async () => {
  const desk = jarDesk()
  await desk.ask(LEMON)
  const pressing = async (nowIso: string) => {
    const due = untold(await desk.person(), 'UTC').filter(({ duty }) => duty.dueMs <= Date.parse(nowIso))
    return due.map(({ duty }) => duty.key)
  }
  return { ...desk, pressing }
}

describe('an undo brings up nothing that fell due before it', () => {
  it.each(['discard', 'later'])('of /jar %s', async (how) => {
    const { at, ask, pressing } = await begun()
    at('2026-11-02T08:00:00Z')
    await ask(how === 'discard' ? '/jar discard lemon' : '/jar later lemon until:in 60 days')
    expect(await pressing('2026-12-20T12:00:00Z')).toEqual([])
    at('2026-12-20')
    const { data } = await ask('/jar undo lemon')
    expect(data.next).toMatchObject({ duty: 'strain' })
    expect(await pressing('2026-12-20T12:00:00Z')).toEqual([])
    // The jar is not forgotten: the next morning asks for what it wants.
    expect(await pressing('2026-12-21T08:59:00Z')).toEqual([])
    expect((await pressing('2026-12-21T09:00:00Z')).some((key) => key.startsWith('strain.'))).toBe(true)
  })

  it('nor of what was emptied', async () => {
    const { at, ask, pressing } = await begun()
    at('2026-11-25')
    await ask('/jar strain lemon measured:900 ml')
    await ask('/jar sweeten lemon water:1.3 l sugar:540 g')
    at('2026-11-26')
    await ask('/jar empty lemon')
    at('2027-01-15')
    await ask('/jar undo lemon')
    expect(await pressing('2027-01-15T12:00:00Z')).toEqual([])
  })

  it('and keeps what was due before', async () => {
    const { at, ask, pressing } = await begun()
    await ask('/jar taste lemon rating:3')
    at('2026-12-20')
    const before = await pressing('2026-12-20T12:00:00Z')
    expect(before.length).toBeGreaterThan(0)
    await ask('/jar undo lemon')
    expect(await pressing('2026-12-20T12:00:00Z')).toEqual(before)
  })
})
