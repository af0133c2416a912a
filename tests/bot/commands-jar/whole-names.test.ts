import { describe, expect, it } from 'vitest'
import { newAsker } from '../asker.ts'
import { linesOf } from '../call-typed.ts'
import { jarDesk, LEMON } from './desk.ts'

const lemons = async () => {
  const desk = jarDesk()
  await desk.ask(LEMON)
  await desk.ask(LEMON.replace('lemon', 'lemon 2'))
  return desk
}

describe('what takes something away', () => {
  it.each(['/jar undo', '/jar discard', '/jar empty', '/jar rename to:x'])('%s wants the whole name', async (line) => {
    const desk = await lemons()
    await desk.ask('/jar undo lemon')
    const before = await desk.person()
    const { code, message } = await desk.refused(`${line} jar:lemon`)
    expect([code, message]).toEqual(['not_found', 'Nothing was changed. For this I need the jar’s full name: lemon 2'])
    expect(await desk.person()).toEqual(before)
  })

  it('takes the whole name in any case, and the id', async () => {
    const desk = await lemons()
    await desk.ask('/jar undo LEMON 2')
    const [{ id }] = (await desk.person()).jars as never as [{ id: string }]
    await desk.ask(`/jar discard #${id}`)
    await desk.ask('/jar undo lemon')
  })

  it('leaves a beginning to what harms nothing', async () => {
    const desk = await lemons()
    await desk.ask('/jar undo lemon')
    expect((await desk.ask('/jar shake lem')).data.name).toBe('lemon 2')
  })
})

describe('a start that is taken back', () => {
  const undoneOf = async (line: string, laterDay?: string) => {
    const desk = jarDesk()
    await desk.ask(line)
    const [jar] = (await desk.person()).jars
    if (laterDay !== undefined) desk.at(laterDay)
    const outcome = await desk.run(`/jar undo #${jar!.id}`)
    const lines = outcome.ok ? linesOf(outcome.reply.actions) : []
    return { desk, jar: jar!, lines }
  }
  const withoutTyping = ({ typed: _, enteredMs: _e, ...entry }: { typed: unknown; enteredMs: unknown }) => entry

  it('can be begun again as it was, also days later', async () => {
    const { desk, jar, lines } = await undoneOf(`${LEMON} when:24 October`, '2026-11-20')
    expect(lines).toEqual([`${LEMON} when:2026-10-24`])
    await desk.ask(lines[0]!)
    const [entry] = (await desk.person()).jars.at(-1)!.entries
    expect(withoutTyping(entry!)).toEqual(withoutTyping(jar.entries[0]!))
  })

  it('with its name where none was typed', async () => {
    const { lines } = await undoneOf('/jar start of:lemon peel spirit:1 l 95%')
    expect(lines).toEqual(['/jar start lemon of:lemon peel spirit:1 l 95% when:2026-11-01'])
  })

  it('is offered no other jar', async () => {
    const quick = '/jar start quick of:10 g black tea spirit:1 l 60%'
    expect((await undoneOf(quick)).lines).toEqual([])
    const named = '/jar start odd of:30 g jaboticaba spirit:1 l 60% unknown-ok:yes days:20 days'
    expect((await undoneOf(named, '2026-11-03')).lines).toEqual([`${named} when:2026-11-01`])
  })

  it('is one press away in Discord', async () => {
    const desk = jarDesk('2026-11-01', { ...newAsker(), place: { kind: 'private' } })
    await desk.ask(LEMON)
    expect(await desk.textOf('/jar undo lemon')).toContain(`Start it again: ${LEMON} when:2026-11-01`)
  })
})
