import { expect, it } from 'vitest'
import { newAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'
import { nudgedReply } from './nudged.ts'

const DAY_MS = 24 * 3_600_000
const STARTED_MS = Date.UTC(2026, 10, 20, 12)

it.each([
  ['us', 'us'],
  ['metric', 'metric'],
  [null, 'metric'],
])('a reminder speaks in the units that were chosen: %s', async (units, kitchen) => {
  const asker = newAsker()
  const begun = testDesk({ asker, nowMs: STARTED_MS })
  if (units !== null) await begun.jsonOf(`/settings units:${units}`)
  await begun.jsonOf('/jar start lemon of:10 lemons spirit:1 l 95%')
  const now = { nowMs: STARTED_MS + DAY_MS, assumedZone: 'UTC' }
  const person = await asker.store.read(asker.userId)
  expect(nudgedReply(person, now).kitchen).toBe(kitchen)
})
