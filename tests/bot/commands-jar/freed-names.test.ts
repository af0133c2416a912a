import { describe, expect, it } from 'vitest'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { unsoundIn } from '../../core/jar/jars.ts'
import { jarDesk, LEMON } from './desk.ts'

type Desk = ReturnType<typeof jarDesk>

const ofLime = LEMON.replace('jar start lemon', 'jar start lime')

const namesOf = async (desk: Desk): Promise<readonly string[]> =>
  (await desk.person()).jars.flatMap(({ entries }) => {
    const story = jarStateOf(entries)
    return story === null || story.ended !== null ? [] : [story.name]
  })

const soundIn = async (desk: Desk): Promise<void> => {
  for (const { entries } of (await desk.person()).jars) {
    expect(unsoundIn(entries)).toBeNull()
  }
}

/** A lemon jar that was given up, and another one since. */
const twice = async (...giveUp: readonly string[]) => {
  const desk = jarDesk()
  await desk.ask(LEMON)
  await desk.ask('/jar taste lemon rating:4')
  const { id } = (await desk.person()).jars[0]!
  for (const line of giveUp) await desk.ask(line)
  desk.at('2026-11-02')
  await desk.ask(LEMON)
  desk.at('2026-11-03')
  return { desk, id }
}

describe('a name that is taken when a jar comes back', () => {
  it.each([
    ['discarded', '/jar discard lemon'],
    ['emptied', '/jar strain lemon measured:900 ml', '/jar empty lemon'],
    ['renamed', '/jar rename lemon to:lime'],
  ])('is made free, and that is said: %s', async (_, ...giveUp) => {
    const { desk, id } = await twice(...giveUp)
    const reply = await desk.ask(`/jar undo #${id}`)
    expect(await namesOf(desk)).toEqual(['lemon 2', 'lemon'])
    expect(reply.notes.map(({ text }) => text)).toEqual([
      'You already have a running jar of that name, so lemon is now lemon 2.',
    ])
    expect(reply.data.name).toBe('lemon 2')
    // What is said of the one goes to that one.
    await desk.ask('/jar taste lemon rating:1')
    await desk.ask('/jar taste "lemon 2" rating:5')
    const [first, second] = (await desk.person()).jars
    expect(first!.entries.at(-1)).toMatchObject({ kind: 'tasted', rating: 5 })
    expect(second!.entries.at(-1)).toMatchObject({ kind: 'tasted', rating: 1 })
    await soundIn(desk)
  })

  it('is left as it is where it is free', async () => {
    const desk = jarDesk()
    await desk.ask(LEMON)
    await desk.ask('/jar discard lemon')
    expect((await desk.ask('/jar undo lemon')).notes).toEqual([])
    expect(await namesOf(desk)).toEqual(['lemon'])
  })

  it('keeps no undo from going further back, to the start', async () => {
    const { desk, id } = await twice('/jar discard lemon')
    await desk.ask(`/jar undo #${id}`)
    const second = await desk.run(`/jar undo #${id}`)
    expect(second).toMatchObject({
      ok: true,
      reply: { headline: { key: 'jar_undone', values: { happening: { kind: 'tasted' } } } },
    })
    expect(await namesOf(desk)).toEqual(['lemon 2', 'lemon'])
    expect(await desk.run(`/jar undo #${id}`)).toMatchObject({ ok: true, reply: { headline: { key: 'jar_gone' } } })
    expect(await namesOf(desk)).toEqual(['lemon'])
    await soundIn(desk)
  })

  it('comes back by itself once nobody has it', async () => {
    const { desk, id } = await twice('/jar discard lemon')
    await desk.ask(`/jar undo #${id}`)
    await desk.ask('/jar rename lemon to:lime')
    await desk.ask(`/jar undo #${id}`)
    expect(await namesOf(desk)).toEqual(['lemon', 'lime'])
  })

  it('is made free for each of several that come back at once', async () => {
    const desk = jarDesk()
    for (const line of [LEMON, '/jar discard lemon', ofLime, '/jar discard lime']) await desk.ask(line)
    const ids = (await desk.person()).jars.map(({ id }) => `#${id}`).join(' ')
    for (const line of [LEMON, ofLime]) await desk.ask(line)
    const after = (await desk.person()).jars.slice(0, 2).map(({ entries }) => entries.at(-1)!.seq)
    await desk.ask(`/jar undo jar:${ids} after:${after.join(' ')}`)
    expect(await namesOf(desk)).toEqual(['lemon 2', 'lime 2', 'lemon', 'lime'])
  })

  it('is made free whatever the clock was when it was renamed', async () => {
    const desk = jarDesk('2031-11-01')
    await desk.ask(LEMON)
    const { id } = (await desk.person()).jars[0]!
    await desk.ask('/jar rename lemon to:lime')
    desk.at('2026-11-01')
    await desk.ask(LEMON)
    await desk.ask(`/jar undo #${id}`)
    expect(await namesOf(desk)).toEqual(['lemon 2', 'lemon'])
  })

  it('is no way to more running jars than are kept', async () => {
    const desk = jarDesk()
    await desk.ask(LEMON)
    await desk.ask('/jar discard lemon')
    const { id } = (await desk.person()).jars[0]!
    for (let index = 0; index < 100; index++) await desk.ask(LEMON.replace('start lemon', `start jar ${index} x`))
    expect((await desk.refused(`/jar undo #${id}`)).code).toBe('limit')
  })
})
