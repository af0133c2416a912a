import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { JarEntry } from '../../core/jar/entry/entry.ts'
import { whiteSugar } from '../../core/recipe/sweetening.ts'
import { personTexts } from '../../store/disk/person-text.ts'
import { untold } from '../../store/due.ts'
import type { Jar, Person } from '../../store/person.ts'
import { personWith, shakenEntry, startedEntry, userId } from '../store/some-people.ts'

/** Their files are stamped as by a program of these rules. */
export const RULES = 'bench'
export const ZONE = 'Europe/Rome'

export const DAY_MS = 86_400_000
export const NOW_MS = Date.UTC(2026, 10, 25, 12)
export const JARS = 10
export const ENTRIES = 14

const enteredAt = (seq: number, atMs: number) => {
  const { typed, enteredMs, day, zone } = shakenEntry(seq, atMs)
  return { seq, enteredMs, typed, atMs, day, zone }
}

const measured = (value: number) => ({ value, plusMinus: value / 50 })

/** Shaken every day since it was started, up to today. */
const steeping = (name: string): readonly JarEntry[] => {
  const startMs = NOW_MS - (ENTRIES - 1) * DAY_MS
  const shakes = Array.from({ length: ENTRIES - 1 }, (_, index) =>
    shakenEntry(index + 2, startMs + (index + 1) * DAY_MS),
  )
  return [startedEntry(name, startMs), ...shakes]
}

/** Shaken, strained, sweetened, bottled on one of the last days. */
const resting = (name: string, daysAgo: number): readonly JarEntry[] => {
  const startMs = NOW_MS - (ENTRIES + daysAgo) * DAY_MS
  const shakes = Array.from({ length: ENTRIES - 4 }, (_, index) =>
    shakenEntry(index + 2, startMs + (index + 1) * DAY_MS),
  )
  const atMs = NOW_MS - daysAgo * DAY_MS
  return [
    startedEntry(name, startMs),
    ...shakes,
    {
      ...enteredAt(ENTRIES - 2, atMs),
      kind: 'strained',
      measured: { amount: measured(930), by: 'volume', atC: 20 },
      strength: null,
      rinseWaterG: measured(0),
    },
    {
      ...enteredAt(ENTRIES - 1, atMs),
      kind: 'sweetened',
      waterG: measured(750),
      sweetenings: whiteSugar(measured(500)),
    },
    { ...enteredAt(ENTRIES, atMs), kind: 'bottled', bottles: [{ count: 4, volumeMl: 500 }] },
  ]
}

/** Of what was due by now all was said, as by a bot that ran: none of it is sent while something else is measured. */
function upToDate(person: Person): Person {
  const due = untold(person, ZONE).filter(({ duty }) => duty.dueMs <= NOW_MS)
  const toldOf = (id: string) => due.filter(({ jarId }) => jarId === id).map(({ duty }) => duty.key)
  return { ...person, jars: person.jars.map((jar) => ({ ...jar, told: toldOf(jar.id) })) }
}

/** Somebody with ten jars of fourteen entries each, four of them still steeping; nothing is due any more today. */
export const makerOf = (index: number): Person => {
  const jars = Array.from({ length: JARS }, (_, jar): Jar => {
    const name = `Shelf ${index} jar ${jar}`
    const entries = jar < 4 ? steeping(name) : resting(name, (index + jar) % 20)
    return { id: `j${String(jar).padStart(4, '0')}`, entries, told: [], cautioned: ['flammable'] }
  })
  return upToDate(personWith({ jars }))
}

const DIFFERENT = 500

/** A folder of data with so many makers; everyone of `DIFFERENT` in turn. `rules`: those of the program that is to read them. */
export function writeMakers(folder: string, people: number, rules = RULES): void {
  const users = join(folder, 'users')
  mkdirSync(users, { recursive: true })
  const { bytesOf } = personTexts({ rules, assumedZone: ZONE })
  const texts = Array.from({ length: Math.min(people, DIFFERENT) }, (_, index) => bytesOf(makerOf(index)))
  for (let index = 0; index < people; index++) {
    writeFileSync(join(users, `${userId(index)}.json`), texts[index % texts.length]!, { mode: 0o600 })
  }
}
