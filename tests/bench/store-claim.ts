import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { untold } from '../../store/due.ts'
import { openStore } from '../../store/open/open-store.ts'
import type { Person } from '../../store/person.ts'
import type { Store } from '../../store/store.ts'
import { jarOf, nudgeAt, personWith, userId } from '../store/some-people.ts'
import { DAY_MS, ENTRIES, JARS, NOW_MS, RULES, ZONE } from './store-people.ts'
import { bareWrite } from './store-update.ts'

type Row = [label: string, value: string, goal?: string]

const PEOPLE = 1000
const AT_ONCE = 16

/** All jars were last shaken yesterday, and each has one thing to be told today. */
const person = (): Person => {
  const jars = Array.from({ length: JARS }, (_, jar) =>
    jarOf(`j${String(jar).padStart(4, '0')}`, ENTRIES, NOW_MS - ENTRIES * DAY_MS),
  )
  const due = untold(personWith({ jars }), ZONE)
  const toldOf = (id: string) => due.filter(({ jarId }) => jarId === id).slice(1)
  return personWith({ jars: jars.map((jar) => ({ ...jar, told: toldOf(jar.id).map(({ duty }) => duty.key) })) })
}

/** One message for everything that is due, as it stands before it is sent. */
const intent = (untilMs: number) => (known: Person) => {
  const due = untold(known, ZONE).filter(({ duty }) => duty.dueMs <= untilMs)
  const duties = due.map(({ jarId, duty: { kind, key } }) => ({ jarId, kind, key }))
  return { ...known, nudges: [...known.nudges, { ...nudgeAt(untilMs, 'n2'), duties, state: 'sending' as const }] }
}

async function inTurns(people: readonly string[], work: (userId: string) => Promise<unknown>): Promise<void> {
  for (let first = 0; first < people.length; first += AT_ONCE) {
    await Promise.all(people.slice(first, first + AT_ONCE).map(work))
  }
}

async function filled(folder: string): Promise<Store> {
  const options = { folder, assumedZone: ZONE, rules: RULES, nowMs: () => NOW_MS, log: console.error }
  const before = openStore(options)
  await inTurns(
    Array.from({ length: PEOPLE }, (_, index) => userId(index)),
    (id) => before.update(id, person),
  )
  await before.close()
  const store = openStore(options)
  await store.claimDue(0, 1, 1)
  return store
}

/** Everything of a tick but the sending: name who is due, and write down what each will be told. */
export async function claimRows(folder: string): Promise<Row[]> {
  const rows: Row[] = []
  for (const [label, together] of [
    ['one after the other', false],
    [`${AT_ONCE} at a time`, true],
  ] as const) {
    const within = join(folder, together ? 'together' : 'single')
    const store = await filled(within)
    const startMs = performance.now()
    const named = await store.claimDue(NOW_MS, PEOPLE, 60_000)
    const record = (id: string) => store.update(id, intent(NOW_MS))
    if (together) await inTurns(named, record)
    else for (const id of named) await record(id)
    const tookS = (performance.now() - startMs) / 1000
    const intents = (await store.read(userId(0))).nudges[0]?.duties.length ?? 0
    await store.close()
    if (named.length !== PEOPLE || intents !== JARS) throw new Error(`${named.length} people, ${intents} duties each`)
    rows.push([
      `claim and record ${PEOPLE * intents} duties of ${PEOPLE} people, ${label}`,
      `${tookS.toFixed(2)} s`,
      'below 2 s',
    ])
  }
  const bare = join(folder, 'bare-claim')
  mkdirSync(bare)
  const text = JSON.stringify(person())
  const startMs = performance.now()
  for (let index = 0; index < PEOPLE; index++) await bareWrite(bare, `${index}.json`, text)
  rows.push([`${PEOPLE} bare writes of such files`, `${((performance.now() - startMs) / 1000).toFixed(2)} s`])
  return rows
}
