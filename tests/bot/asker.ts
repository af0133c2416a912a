import type { Asker } from '../../bot/chat/command.ts'
import { memoryStore } from '../../store/memory/memory-store.ts'

/** Somebody at the terminal of whom nothing is stored yet. */
export const newAsker = (): Asker => ({
  userId: 'local',
  place: { kind: 'console' },
  assumedZone: 'UTC',
  store: memoryStore('UTC'),
})
