import { afterEach, describe, expect, it, vi } from 'vitest'
import { type Reminding, startReminders } from '../../../bot/reminders/start-reminders.ts'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import { StorageError } from '../../../store/storage-error.ts'
import { inbox } from './inbox.ts'
import { at, DAY_MS, jarOf, MINUTE_MS, personWith, ZONE } from './people.ts'

const lemon = jarOf({ name: 'lemon', startedMs: at('2026-12-01', '18:00') })

const setUp = async (more: Partial<Reminding> = {}) => {
  const { box, surface } = inbox()
  const kept = memoryStore(ZONE)
  await kept.update('local', () => personWith([lemon]))
  let copies = 0
  const store = {
    ...kept,
    isThere: async () => true,
    nightly: async () => {
      copies++
      return 0
    },
    heartbeat: async () => {},
  }
  const complaints: string[] = []
  const logged: string[] = []
  const reminding: Reminding = {
    store,
    surface,
    now: Date.now,
    assumedZone: ZONE,
    log: (text) => {
      logged.push(text)
    },
    complain: ({ problem }) => {
      complaints.push(problem)
    },
    ...more,
  }
  return { box, store, complaints, logged, reminding, copies: () => copies }
}

/** From this instant on the clock is moved by hand. */
const clockAt = (nowMs: number): void => {
  vi.useFakeTimers({ now: nowMs })
}

afterEach(() => {
  vi.useRealTimers()
})

describe('reminders that run', () => {
  it('look at once and every minute, copy at once and every night, and stop', async () => {
    clockAt(at('2026-12-02', '08:58'))
    const { box, reminding, copies, logged } = await setUp()
    const stop = await startReminders(reminding)
    expect([box.received.length, copies()]).toEqual([0, 1])
    await vi.advanceTimersByTimeAsync(3 * MINUTE_MS)
    expect(box.received).toHaveLength(1)
    await vi.advanceTimersByTimeAsync(DAY_MS)
    expect([box.received.length, copies()]).toEqual([2, 2])
    await stop()
    await vi.advanceTimersByTimeAsync(DAY_MS)
    expect([box.received.length, copies(), logged]).toEqual([2, 2, []])
    expect(vi.getTimerCount()).toBe(0)
  })

  it.each([
    ['three days', 3 * DAY_MS],
    ['three hours', 3 * 60 * MINUTE_MS],
    ['a year', 365 * DAY_MS],
  ])('go on when the clock is set back by %s, and copy by night', async (_, backMs) => {
    const trueMs = at('2026-12-01', '21:00')
    clockAt(trueMs + backMs)
    const { box, reminding, copies } = await setUp()
    const stop = await startReminders(reminding)
    await vi.advanceTimersByTimeAsync(10 * MINUTE_MS)
    const [before, copied] = [box.received.length, copies()]
    vi.setSystemTime(trueMs + 10 * MINUTE_MS)
    await vi.advanceTimersByTimeAsync(12 * 60 * MINUTE_MS)
    expect(Date.now()).toBe(at('2026-12-02', '09:10'))
    expect(copies()).toBe(copied + 1)
    // Three hours back, nothing was said ahead of its time.
    if (backMs < DAY_MS) expect(box.received.length).toBe(before + 1)
    await stop()
    expect(vi.getTimerCount()).toBe(0)
  })

  it('go on when the clock leaps ahead', async () => {
    clockAt(at('2026-12-01', '21:00'))
    const { box, reminding } = await setUp()
    const stop = await startReminders(reminding)
    vi.setSystemTime(at('2026-12-02', '09:30'))
    await vi.advanceTimersByTimeAsync(2 * MINUTE_MS)
    expect(box.received).toHaveLength(1)
    await stop()
  })

  /** How often a pass looked so far. */
  const countLooks = (store: Awaited<ReturnType<typeof setUp>>['store']): (() => number) => {
    const { claimDue } = store
    let looks = 0
    store.claimDue = (...claim) => {
      looks++
      return claimDue(...claim)
    }
    return () => looks
  }

  it('look again by themselves at the third half minute that the tasks of the clock are silent', async () => {
    clockAt(at('2026-12-01', '20:59') + 50_000)
    const { store, reminding } = await setUp()
    const looks = countLooks(store)
    const stop = await startReminders(reminding)
    await vi.advanceTimersByTimeAsync(11_000)
    expect(looks()).toBe(2)
    // Beats come 19, 49 and 79 seconds after this.
    vi.setSystemTime(at('2026-11-28', '21:00') + 1000)
    await vi.advanceTimersByTimeAsync(78_000)
    expect(looks()).toBe(2)
    await vi.advanceTimersByTimeAsync(2000)
    expect(looks()).toBe(3)
    await stop()
  })

  it.each([
    ['54 seconds late is run', 54_000, 1],
    ['56 seconds late is left to the next', 56_000, 0],
  ])('a pass that comes %s', async (_, lateMs, runs) => {
    clockAt(at('2026-12-01', '21:00') + 40_000)
    const { store, reminding } = await setUp()
    const looks = countLooks(store)
    const stop = await startReminders(reminding)
    // The clock leaps while the pass of 21:01 is waited for.
    await vi.advanceTimersByTimeAsync(10_000)
    vi.setSystemTime(Date.now() + lateMs)
    await vi.advanceTimersByTimeAsync(11_000)
    expect(looks()).toBe(1 + runs)
    await stop()
  })

  it('run one pass at a time', async () => {
    clockAt(at('2026-12-02'))
    const { store, reminding } = await setUp()
    const { claimDue } = store
    let [running, most, passes] = [0, 0, 0]
    store.claimDue = async (...claim) => {
      passes++
      running++
      most = Math.max(most, running)
      await new Promise((resolve) => setTimeout(resolve, 2.5 * MINUTE_MS))
      running--
      return claimDue(...claim)
    }
    const starting = startReminders(reminding)
    await vi.advanceTimersByTimeAsync(10 * MINUTE_MS)
    const stop = await starting
    await vi.advanceTimersByTimeAsync(20 * MINUTE_MS)
    const stopping = stop()
    await vi.advanceTimersByTimeAsync(10 * MINUTE_MS)
    await stopping
    expect(most).toBe(1)
    expect(passes).toBeGreaterThan(3)
  })

  it('touch nothing as long as there is no store', async () => {
    const { store, reminding, copies } = await setUp()
    store.isThere = async () => false
    store.claimDue = () => Promise.reject(new Error('touched'))
    await (await startReminders(reminding))()
    expect(copies()).toBe(0)
  })

  it('say once why they cannot, and go on when they can', async () => {
    clockAt(at('2026-12-02'))
    const { box, store, reminding, complaints, logged } = await setUp()
    const { claimDue } = store
    const locked = { folder: 'data', host: 'shed', pid: 7, isHere: true }
    store.claimDue = () => Promise.reject(new StorageError('locked', locked))
    store.nightly = () => Promise.reject(new StorageError('locked', locked))
    const stop = await startReminders(reminding)
    await vi.advanceTimersByTimeAsync(3 * MINUTE_MS)
    expect(complaints).toEqual(['locked'])
    store.claimDue = claimDue
    await vi.advanceTimersByTimeAsync(MINUTE_MS)
    expect(box.received).toHaveLength(1)
    store.claimDue = () => Promise.reject(new TypeError('a fault'))
    await vi.advanceTimersByTimeAsync(MINUTE_MS)
    expect(logged).toHaveLength(1)
    await stop()
  })
})
