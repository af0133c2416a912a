import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { NOBODY, type Person } from '../../../store/person.ts'
import { runs, SEED } from '../../runs.ts'
import { newAsker } from '../asker.ts'
import { fittingLine, stepLine } from '../commands-jar/random-jar-lines.ts'
import { testDesk } from '../test-desk.ts'
import { deskOf, NOW_MS } from './desk.ts'

const DAY_MS = 86_400_000
const START = '/jar start lemon of:8 lemons + 20 g ginger spirit:1 l 95% to-strength:30% to-sweetness:250 g/L'

/** What somebody has after these lines, each said when the clock showed what it did. */
const personAfter = async (lines: readonly (readonly [line: string, nowMs: number])[]): Promise<Person> => {
  const asker = newAsker()
  for (const [line, nowMs] of lines) {
    const desk = testDesk({ asker, nowMs })
    await desk.run(line)
    expect(desk.faults(), line).toEqual([])
  }
  return asker.store.read('local')
}

const entries = ({ jars }: Person) => jars.map((jar) => jar.entries)

/** Takes every file of a person's in elsewhere, and fails where anything is left out. */
const carriedOver = async (person: Person): Promise<Person> => {
  const files = await (await deskOf(person)).filesOf('/notebook export:json')
  const other = await deskOf({})
  for (const file of files) {
    const { error, data } = await other.takeIn(file)
    expect(error).toBeUndefined()
    expect(data.left).toEqual([])
  }
  return other.person()
}

const at = (text: string): number => Date.parse(`${text}T12:00:00Z`)

describe('what was exported can be taken in', () => {
  it.each([
    ['a dead battery', '1970-01-01'],
    ['years ahead', '2031-05-01'],
    ['a century ahead', '2126-05-01'],
    ['the end of the calendar', '9990-05-01'],
  ])('whatever the clock was at the start: %s', async (_, day) => {
    const lines = [
      [START, at(day)],
      ['/jar shake lemon', at(day) + DAY_MS],
      ['/jar taste lemon rating:4', at('2026-11-10')],
      ['/jar later lemon until:in 2 weeks', at('2026-11-10')],
      ['/jar undo lemon', at('2026-11-11')],
      ['/jar correct lemon rating:3', at('2026-11-12')],
    ] as const
    const person = await personAfter(lines)
    expect(person.jars[0]!.entries.length).toBeGreaterThan(2)
    expect(entries(await carriedOver(person))).toEqual(entries(person))
  })

  it('a single entry under a wrong clock', async () => {
    const person = await personAfter([
      [START, at('2026-11-01')],
      ['/jar taste lemon rating:4', at('2039-11-02')],
      ['/jar taste lemon rating:2', at('2026-11-03')],
    ])
    expect(person.jars[0]!.entries).toHaveLength(3)
    expect(entries(await carriedOver(person))).toEqual(entries(person))
  })

  it('beside a jar of the same name, which is given another, whatever the clock was', async () => {
    const [theirs, mine] = [
      await personAfter([[START, at('2039-11-01')]]),
      await personAfter([[START, at('2026-11-01')]]),
    ]
    const [file] = await (await deskOf(theirs)).filesOf('/notebook export:json')
    const desk = await deskOf(mine)
    const { data } = await desk.takeIn(file!)
    expect(data).toMatchObject({ renamed: [{ from: 'lemon', to: 'lemon 2' }], left: [] })
    expect((await desk.jsonOf('/jar show lemon 2')).data.name).toBe('lemon 2')
  })

  it('after any steps under any clocks', { timeout: 600_000 }, async () => {
    const clock = fc.oneof(
      { arbitrary: fc.integer({ min: 0, max: 60 }).map((days) => NOW_MS + days * DAY_MS), weight: 8 },
      { arbitrary: fc.integer({ min: 0, max: 8000 }).map((years) => years * 365 * DAY_MS), weight: 1 },
    )
    const story = fc.array(
      fc.tuple(fc.oneof({ arbitrary: stepLine, weight: 2 }, { arbitrary: fittingLine, weight: 3 }), clock),
      { minLength: 12, maxLength: 12 },
    )
    let late = 0
    await fc.assert(
      fc.asyncProperty(story, clock, async (lines, startMs) => {
        const person = await personAfter([[START, startMs], ...lines])
        late += person.jars
          .flatMap((jar) => jar.entries)
          .filter(({ enteredMs }) => enteredMs > NOW_MS + 90 * DAY_MS).length
        const carried = await carriedOver(person)
        expect(entries(carried)).toEqual(entries(person))
        // Whatever is asked of it then is answered or refused in a sentence.
        const desk = await deskOf(carried)
        for (const line of ['/jar list', '/jar show lemon', '/calendar', '/notebook export:csv', '/jar undo lemon']) {
          expect((await desk.jsonOf(line)).error?.code).not.toBe('internal')
          expect(desk.faults(), line).toEqual([])
        }
      }),
      { seed: SEED, numRuns: runs(6, 600) },
    )
    expect(late).toBeGreaterThan(1)
  })
})

it('carries no trace of which attempt made an entry, and knows the same jar with and without', async () => {
  const asker = { ...newAsker(), newAttempt: () => '1234567890123456789' }
  await testDesk({ asker, nowMs: NOW_MS }).run(START)
  const person = await asker.store.read('local')
  expect(person.jars[0]!.entries[0]!.attempt).toBe('1234567890123456789')
  const desk = await deskOf({ ...NOBODY, jars: person.jars })
  const [json] = await desk.filesOf('/notebook export:json')
  const csv = await desk.filesOf('/notebook export:csv')
  for (const file of [json, ...csv]) expect(file).not.toContain('1234567890123456789')
  expect((await desk.takeIn(json!)).data).toMatchObject({ added: [], longer: [], same: 1 })
})
