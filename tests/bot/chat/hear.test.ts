import { expect, it } from 'vitest'
import { hear } from '../../../bot/chat/hear/hear.ts'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import { newAsker } from '../asker.ts'
import { commands } from '../test-desk.ts'

it.each(['shook the lemon', '/jar list', 'shook the lemon and tasted it, 4 stars'])(
  'excuses a fault of ours in whatever it hears: %s',
  async (line) => {
    const logged: string[] = []
    const read = () => Promise.reject(new TypeError(`secret ${line}`))
    const store = { ...memoryStore('UTC'), read }
    const log = (text: string): void => void logged.push(text)
    const { outcome } = await hear(line, { ...newAsker(), store, commands, nowMs: 0, log })
    expect(outcome).toMatchObject({ ok: false, error: { code: 'internal', problem: 'internal', values: {} } })
    expect(logged).toEqual([expect.stringMatching(/TypeError\n\s+at /)])
    expect(logged.join()).not.toMatch(/secret|lemon/)
  },
)
