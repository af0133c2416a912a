import { expect, it } from 'vitest'
import type { Delivery, Sent, Surface } from '../../../bot/reminders/delivery.ts'
import { withPulse } from '../../../bot/reminders/heartbeat.ts'
import type { Status } from '../../../store/maintenance.ts'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import { MINUTE_MS, ZONE } from './people.ts'

const delivery = {} as Delivery

const setUp = () => {
  const here = { nowMs: 1_000_000, heardMs: null as number | null, sent: 'sent' as Sent, fault: null as Error | null }
  const recorded: Status[] = []
  const logged: string[] = []
  const surface: Surface = { placeOf: () => null, after: () => null, send: async () => here.sent }
  const store = {
    ...memoryStore(ZONE),
    heartbeat: async (status: Status) => {
      if (here.fault !== null) throw here.fault
      recorded.push(status)
    },
  }
  const pulse = withPulse({
    store,
    surface,
    heardMs: () => here.heardMs,
    now: () => here.nowMs,
    log: (text) => logged.push(text),
  })
  return { here, recorded, logged, pulse }
}

it('is recorded at the end of a pass, and what was sent and heard with it', async () => {
  const { here, recorded, pulse } = setUp()
  await pulse.beat()
  here.nowMs += MINUTE_MS
  here.heardMs = 1_059_000
  await pulse.store.claimDue(0, 1, 1)
  await pulse.surface.send(delivery)
  here.nowMs += 1
  here.sent = 'failed'
  await pulse.surface.send(delivery)
  await pulse.beat()
  expect(recorded).toEqual([
    { tickMs: 1_000_000, sentMs: null, heardMs: null },
    { tickMs: 1_060_001, sentMs: 1_060_000, heardMs: 1_059_000 },
  ])
})

it('is recorded every minute or so within a pass that takes long', async () => {
  const { here, recorded, pulse } = setUp()
  await pulse.beat()
  for (let count = 0; count < 60; count++) {
    here.nowMs += 10_000
    await pulse.surface.send(delivery)
  }
  const gaps = recorded.slice(1).map(({ tickMs }, index) => tickMs - recorded[index]!.tickMs)
  expect(recorded.length).toBeGreaterThan(5)
  expect(new Set(gaps)).toEqual(new Set([70_000]))
})

it('logs once that it cannot be recorded, and disturbs nothing', async () => {
  const { here, recorded, logged, pulse } = setUp()
  here.fault = new Error('what was typed')
  await pulse.beat()
  await pulse.beat()
  expect(await pulse.surface.send(delivery)).toBe('sent')
  expect(logged).toHaveLength(1)
  expect(logged[0]).not.toContain('typed')
  here.fault = null
  await pulse.beat()
  expect(recorded).toHaveLength(1)
})

it.each([
  [64_999, 1],
  [65_000, 2],
])('within a pass, after %i ms, so that one of a minute is recorded once', async (ms, times) => {
  const { here, recorded, pulse } = setUp()
  await pulse.beat()
  here.nowMs += ms
  await pulse.surface.send(delivery)
  expect(recorded).toHaveLength(times)
})
