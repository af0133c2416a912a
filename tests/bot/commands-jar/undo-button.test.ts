import { describe, expect, it } from 'vitest'
import { lineOf } from '../../../bot/calls/write-line.ts'
import { newAsker } from '../asker.ts'
import { jarDesk, LEMON } from './desk.ts'

/** Two jars where lines are kept and pressed. */
const pressed = async () => {
  const desk = jarDesk('2026-11-01', { ...newAsker(), place: { kind: 'private' } })
  await desk.ask(LEMON)
  await desk.ask(LEMON.replace('lemon', 'sunny'))
  desk.at('2026-11-02')
  const kindsOf = async (name: string) => (await desk.storyOf(name)).happened.map(({ kind }) => kind)
  /** The last line that a reply offers. */
  const undoOf = async (line: string): Promise<string> => {
    const outcome = await desk.run(line)
    const last = outcome.ok ? outcome.reply.actions.at(-1) : undefined
    expect(last).toMatchObject({ isButtonOnly: true, label: { key: 'jar_undo' } })
    return lineOf(last!.call)
  }
  return { desk, undoOf, kindsOf }
}

const STEPS = [
  '/jar shake lemon',
  '/jar taste lemon rating:3',
  '/jar add lemon of:20 g ginger',
  '/jar later lemon until:in 3 days',
  '/jar correct lemon of:11 lemons',
  '/jar strain lemon measured:900 ml strength:85%',
  '/jar sweeten lemon water:700 ml sugar:500 g',
  '/jar filter lemon measured:1.5 l',
  '/jar bottle lemon bottles:2 x 500 ml',
  '/jar open lemon',
  '/jar empty lemon',
]

describe('Undo', () => {
  it('takes back every step just as it was recorded, and says so', async () => {
    const { desk, undoOf, kindsOf } = await pressed()
    for (const step of STEPS) {
      const before = await kindsOf('lemon')
      const undo = await undoOf(step)
      expect(undo).toMatch(/^\/jar undo #\w+ after:\d+$/)
      expect((await desk.headlineOf(undo)).key).toBe('jar_undone')
      expect(await kindsOf('lemon')).toEqual(before)
      await desk.ask(step)
    }
    expect(await kindsOf('lemon')).toHaveLength(STEPS.length)
  })

  it('takes back nothing once another entry was made, and says which is which when pressed twice', async () => {
    const { desk, undoOf } = await pressed()
    const undo = await undoOf('/jar shake lemon')
    await desk.ask('/jar taste lemon rating:3')
    const before = await desk.person()
    expect((await desk.headlineOf(undo)).key).toBe('jar_undo_held')
    expect(await desk.person()).toEqual(before)
    await desk.ask('/jar undo lemon')
    expect(await desk.headlineOf(undo)).toMatchObject({ key: 'jar_undone', values: { happening: { kind: 'shaken' } } })
    const after = await desk.person()
    expect((await desk.headlineOf(undo)).key).toBe('jar_undone_before')
    expect(await desk.person()).toEqual(after)
  })

  it('takes back a start, and knows that jar still when pressed twice', async () => {
    const { desk, undoOf } = await pressed()
    const undo = await undoOf(LEMON.replace('lemon', 'third'))
    expect((await desk.headlineOf(undo)).key).toBe('jar_gone')
    expect((await desk.headlineOf(undo)).key).toBe('jar_undone_before')
  })

  it('takes back of all jars what was said of all of them, or of none', async () => {
    const { desk, undoOf, kindsOf } = await pressed()
    await desk.ask('/jar taste sunny rating:2')
    const undo = await undoOf('/jar shake all')
    expect(undo).toMatch(/^\/jar undo #\w+ #\w+ after:2 3$/)
    await desk.ask('/jar taste sunny rating:3')
    expect((await desk.headlineOf(undo)).key).toBe('jar_undo_held')
    expect(await kindsOf('lemon')).toEqual(['started', 'shaken'])
    await desk.ask('/jar undo sunny')
    expect(await desk.headlineOf(undo)).toMatchObject({ key: 'jar_all_undone', values: { names: ['lemon', 'sunny'] } })
    expect(await kindsOf('lemon')).toEqual(['started'])
    expect(await kindsOf('sunny')).toEqual(['started', 'tasted'])
    expect((await desk.headlineOf(undo)).key).toBe('jar_undone_before')
  })

  it('is of those only that were shaken', async () => {
    const { desk, undoOf, kindsOf } = await pressed()
    await desk.ask('/jar shake lemon')
    await desk.ask(await undoOf('/jar shake all'))
    expect(await kindsOf('lemon')).toEqual(['started', 'shaken'])
    expect(await kindsOf('sunny')).toEqual(['started'])
  })

  it('is not offered where nothing was recorded, nor where lines are typed', async () => {
    const { desk } = await pressed()
    await desk.ask('/jar shake lemon')
    for (const line of ['/jar shake lemon', '/jar undo lemon', '/jar show lemon']) {
      const outcome = await desk.run(line)
      expect(outcome.ok && outcome.reply.actions.filter(({ label }) => label.key === 'jar_undo')).toEqual([])
    }
    const typing = jarDesk()
    await typing.ask('/settings zone:UTC')
    expect(await typing.textOf(LEMON)).not.toMatch(/undo|next you can/i)
  })
})
