import { describe, expect, it } from 'vitest'
import { newDoubts } from '../../../bot/chat/doubts.ts'
import { newLastReplies } from '../../../bot/chat/last-replies.ts'
import { commands } from '../../../bot/commands/index.ts'
import { newTalkMemory } from '../../../bot/talk/memory/remembered.ts'
import type { Place } from '../../../store/person.ts'
import { newAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'

const LEMON = '/jar start lemon of:10 lemons spirit:1 l 95%'

/** Somebody with a jar, and what left the bot. */
const somebody = async (place: Place = { kind: 'console' }) => {
  const reached: string[] = []
  const asker = {
    ...newAsker(),
    place,
    doubts: newDoubts(),
    replies: newLastReplies(),
    talk: newTalkMemory(),
    forgetFiles: async () => {
      reached.push('files')
      return 1
    },
    provePlace: async () => {
      reached.push('proof')
      return 'sent' as const
    },
  }
  const desk = testDesk({ asker })
  await desk.textOf(LEMON)
  return { asker, desk, reached, jars: async () => (await asker.store.read(asker.userId)).jars.length }
}

/** One letter less, so that the line is not what it was and can be guessed. */
const slips = (name: string): readonly string[] =>
  Array.from({ length: name.length }, (_, at) => name.slice(0, at) + name.slice(at + 1)).filter(
    (text) => text.length > 1,
  )

describe('a line that is only tried', () => {
  it.each([
    '/forget confrim:yes',
    '/forgte confirm:yes',
    '/forget confirm:yess',
    '/forget "confirm:yes',
    'forget confrim:yes',
  ])('erases nothing: %s', async (line) => {
    const { desk, jars, reached } = await somebody()
    await desk.textOf(line)
    expect(await jars()).toBe(1)
    expect(reached).toEqual([])
  })

  it('sends no message to a place that was named with a slip', async () => {
    const { desk, reached } = await somebody({ kind: 'channel', channelId: '123456789012345678' })
    for (const slip of slips('place')) await desk.textOf(`/reminders ${slip}:private`)
    expect(reached).toEqual([])
  })

  it('changes nothing of anybody, whichever command is meant', async () => {
    const lines: Readonly<Record<string, string>> = {
      forget: 'confirm:yes',
      settings: 'zone:Rome',
      reminders: 'time:8',
      'jar shake': 'jar:lemon',
      'jar discard': 'jar:lemon',
      'jar rename': 'jar:lemon to:lime',
      'jar strain': 'jar:lemon measured:900 ml',
    }
    const known = new Set<string>(commands.map(({ path }) => path))
    for (const [path, options] of Object.entries(lines)) {
      const { asker, desk } = await somebody()
      const before = JSON.stringify(await asker.store.read(asker.userId))
      const [first, ...others] = options.split(' ')
      const slipped = slips(path.split(' ').at(-1)!).map((slip) => path.replace(/\S+$/, slip))
      for (const wrong of slipped) if (!known.has(wrong)) await desk.run(`/${wrong} ${options}`)
      for (const slip of slips(first!.split(':')[0]!)) {
        await desk.run(`/${path} ${slip}:${first!.split(':')[1]} ${others.join(' ')}`)
      }
      expect(JSON.stringify(await asker.store.read(asker.userId)), path).toBe(before)
    }
  })
})
