import { expect, it } from 'vitest'
import { NOTHING_SAID, newTalkMemory, whoAt } from '../../bot/talk/memory/remembered.ts'

const MINUTE_MS = 60_000
const SAID = { ...NOTHING_SAID, answersSince: 1 }

// Common practice, no source: half an hour.
it('remembers what was said for half an hour and no longer', () => {
  const memory = newTalkMemory()
  const who = whoAt('local', 'terminal')
  memory.keep(who, SAID, 0)
  expect(memory.of(who, 30 * MINUTE_MS)).toEqual(SAID)
  expect(memory.of(who, 30 * MINUTE_MS + 1)).toEqual(NOTHING_SAID)
  // What was let go does not come back with a clock that is set back.
  expect(memory.of(who, 0)).toEqual(NOTHING_SAID)
})
