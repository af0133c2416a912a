import type { Asker } from '../../bot/chat/command.ts'
import { en } from '../../bot/text/en/index.ts'
import type { Spoken } from '../../bot/text/language.ts'
import { memoryStore } from '../../store/memory/memory-store.ts'

/** Who asks; in English where nothing else is said. */
export type TestAsker = Omit<Asker, 'language'> & Partial<Spoken>

/** Somebody at the terminal of whom nothing is stored yet. */
export const newAsker = (): Asker => ({
  userId: 'local',
  place: { kind: 'console' },
  assumedZone: 'UTC',
  store: memoryStore('UTC'),
  language: en,
})
