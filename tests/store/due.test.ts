import { expect, it } from 'vitest'
import { nextDueMs, untold } from '../../store/due.ts'
import type { Jar } from '../../store/person.ts'
import { BOTTLED, diary, type Line, peel } from '../core/jar/diary.ts'
import { strained, sweetened } from '../core/jar/jars.ts'
import { personWith } from './some-people.ts'

const ZONE = 'Europe/Rome'

/** Bottled on a day, of so much water in it, told of all but that it is soon past its best. */
function bottledOn(day: string, waterG: number): Jar {
  const lines: readonly Line[] = [
    ['2026-11-01 10:00', peel()],
    ['2026-11-25 10:00', strained()],
    ['2026-11-25 18:00', sweetened(waterG, 400)],
    [`${day} 10:00`, BOTTLED],
  ]
  const jar: Jar = { id: 'lemon', entries: diary(lines), told: [], cautioned: [] }
  const told = untold(personWith({ jars: [jar] }), ZONE).map(({ duty }) => duty.key)
  return { ...jar, id: `from ${day}`, told: told.filter((key) => !key.startsWith('drink')) }
}

it('looks at a person again for the first that is owed, past what may not keep', () => {
  const [keeps, sooner] = [bottledOn('2026-12-10', 800), bottledOn('2026-12-01', 5000)]
  const person = personWith({ jars: [sooner, keeps] })
  const due = untold(person, ZONE)
  expect(due.map(({ jarId, duty }) => [jarId, duty.kind])).toEqual([['from 2026-12-10', 'drink']])
  expect(nextDueMs(person, ZONE)).toBe(due[0]!.duty.dueMs)
  expect(nextDueMs(personWith({ jars: [sooner] }), ZONE)).toBeNull()
})
