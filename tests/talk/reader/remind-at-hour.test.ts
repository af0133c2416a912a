import { expect, it } from 'vitest'
import { hear } from '../../../bot/chat/hear/hear.ts'
import { newTalkMemory } from '../../../bot/talk/memory/remembered.ts'
import { newAsker } from '../../bot/asker.ts'
import { commands } from '../../bot/test-desk.ts'

it.each([
  ['remind me at half past seven in the evening', '19:30'],
  ['remind me every evening at half seven', '19:30'],
  ['can you remind me at a quarter to eight in the morning', '07:45'],
])('sets the hour that is said in words, and changes no recipe: %s', async (text, time) => {
  for (const before of ['10 oranges and a litre of 60%', '/jar start name:orange of:10 oranges spirit:1 l 60%']) {
    const dispatch = { ...newAsker(), talk: newTalkMemory(), commands, log: () => {}, nowMs: Date.UTC(2026, 10, 30) }
    await hear(before, dispatch)
    expect((await hear(text, dispatch)).read, before).toBe(`/reminders time:${time}`)
  }
})
