import type { Happening, JarEntry, Started } from '../../../core/jar/entry/entry.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { isoDay } from '../../../core/quantity/time/calendar-day.ts'
import { dayAt } from '../../../core/quantity/time/zone.ts'
import { type Jar, NOBODY, type Person, type Settings } from '../../../store/person.ts'
import { asPlanned, type Planned, plant } from '../../core/jar/jars.ts'

export const ZONE = 'Europe/Rome'
export const DAY_MS = 86_400_000
export const MINUTE_MS = 60_000

/** An instant in the winter of the fair, in Rome (UTC+1). */
export const at = (day: string, time = '09:00'): number => Date.parse(`${day}T${time}:00+01:00`)

const PLAN: Planned = {
  targets: null,
  tasteFrom: null,
  strainFrom: null,
  strainBy: null,
  restDays: 30,
  isHours: false,
  steepHours: null,
  bottles: [],
}

const start = (name: string, plan: Partial<Planned>, more: Partial<Started>): Started => ({
  kind: 'started',
  name,
  ...asPlanned({ ...PLAN, ...plan }),
  plants: [plant('clove', 2, { name: 'cloves' })],
  spirits: [
    {
      amount: exactly(1000),
      by: 'volume',
      atC: 20,
      abvPercent: { value: 95, plusMinus: 0.3 },
      abvAtC: null,
      sugarGPerL: exactly(0),
    },
  ],
  waterG: exactly(0),
  sweetenings: [],
  ...more,
})

const entry = (seq: number, atMs: number, happening: Happening): JarEntry => ({
  seq,
  enteredMs: atMs,
  atMs,
  typed: [],
  day: isoDay(dayAt(ZONE, atMs)),
  zone: ZONE,
  ...happening,
})

interface JarSketch {
  readonly name: string
  readonly startedMs: number
  readonly plan?: Partial<Planned>
  readonly more?: Partial<Started>
}

/** A jar just started; its id is its name's first five letters. */
export const jarOf = ({ name, startedMs, plan = {}, more = {} }: JarSketch): Jar => ({
  id: name.padEnd(5, 'x').slice(0, 5),
  entries: [entry(1, startedMs, start(name, plan, more))],
  told: [],
  cautioned: [],
})

export const personWith = (jars: readonly Jar[], settings: Partial<Settings> = {}): Person => ({
  ...NOBODY,
  settings: { ...NOBODY.settings, ...settings },
  jars,
})

/** The person after something happened to a jar. */
export const happened = (person: Person, jarId: string, atMs: number, happening: Happening): Person => ({
  ...person,
  jars: person.jars.map((jar) =>
    jar.id === jarId ? { ...jar, entries: [...jar.entries, entry(jar.entries.length + 1, atMs, happening)] } : jar,
  ),
})

export const undo = (person: Person, jarId: string, atMs: number, of: number): Person => ({
  ...person,
  jars: person.jars.map((jar) => {
    if (jar.id !== jarId) return jar
    const { seq, ...rest } = entry(jar.entries.length + 1, atMs, { kind: 'shaken' })
    return { ...jar, entries: [...jar.entries, { ...rest, seq, kind: 'undone', of }] }
  }),
})
