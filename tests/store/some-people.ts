import type { JarEntry } from '../../core/jar/entry/entry.ts'
import { type Jar, NOBODY, type Nudge, type Person } from '../../store/person.ts'
import { NOTHING_NAMED, plant } from '../core/jar/jars.ts'

/** Ids as Discord makes them. */
export const userId = (index: number): string => String(100_000_000_000_000_000n + BigInt(index))

const AT_MS = Date.UTC(2026, 9, 31, 17, 20)

export const startedEntry = (name: string, atMs = AT_MS): JarEntry => ({
  seq: 1,
  enteredMs: atMs,
  typed: [
    ['name', name],
    ['of', '10 lemons'],
    ['spirit', '1 l'],
    ['strength', '95%'],
  ],
  atMs,
  day: new Date(atMs).toISOString().slice(0, 10),
  zone: 'UTC',
  kind: 'started',
  name,
  plants: [plant('lemon_peel', { value: 80, plusMinus: 32 }, { name: 'lemons', count: 10 })],
  spirits: [
    {
      amount: { value: 1000, plusMinus: 20 },
      by: 'volume',
      atC: 20,
      abvPercent: { value: 95, plusMinus: 0.3 },
      abvAtC: null,
      sugarGPerL: { value: 0, plusMinus: 0 },
    },
  ],
  waterG: { value: 0, plusMinus: 0 },
  sweetenings: [],
  targets: { abvPercent: 30, sugarGPerL: 250 },
  days: {
    tasteFrom: null,
    strainFrom: '2026-11-14',
    strainBy: '2026-11-28',
    restDays: 30,
    isHours: false,
    steepHours: null,
  },
  bottles: [{ count: null, volumeMl: 500 }],
  named: NOTHING_NAMED,
  origin: null,
})

export const shakenEntry = (seq: number, atMs = AT_MS): JarEntry => ({
  seq,
  enteredMs: atMs,
  typed: [],
  atMs,
  day: new Date(atMs).toISOString().slice(0, 10),
  zone: 'UTC',
  kind: 'shaken',
})

/** A jar that was started and then shaken every day. */
export const jarOf = (id: string, entries: number, atMs = AT_MS): Jar => ({
  id,
  entries: [
    startedEntry(`Lemon ${id}`, atMs),
    ...Array.from({ length: entries - 1 }, (_, index) => shakenEntry(index + 2, atMs + (index + 1) * 86_400_000)),
  ],
  told: [],
  cautioned: [],
})

export const personWith = (parts: Partial<Person>): Person => ({ ...NOBODY, ...parts })

/** Something to be tried at an instant, whatever the jars want. */
export const nudgeAt = (nextMs: number, id = 'n1'): Nudge => ({
  id,
  place: { kind: 'private' },
  duties: [],
  state: 'waiting',
  madeMs: nextMs,
  attempts: 1,
  nextMs,
})
