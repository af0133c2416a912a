import { expect, it } from 'vitest'
import { call } from '../../../bot/calls/call.ts'
import { buttonIds } from '../../../bot/discord/buttons/button-ids.ts'
import { decodeCustomId } from '../../../bot/discord/buttons/custom-id.ts'
import { keepLine, keptReference, lineKept, readReference } from '../../../bot/discord/buttons/long-button-lines.ts'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import { NOBODY, type Person } from '../../../store/person.ts'
import { personSchema } from '../../../store/schema/person-schema.ts'
import { callTyped } from '../call-typed.ts'

const OWNER = '123456789012345678'

const keepAll = (lines: readonly string[]): Person =>
  lines.reduce((person, line) => keepLine(person, line).person, NOBODY)

const linesTo = (count: number): readonly string[] =>
  Array.from({ length: count }, (_, index) => `/plan of:${index} lemons`)

it('keeps a line under an id and finds it again', () => {
  const { person, id } = keepLine(NOBODY, '/plan of:10 lemons')
  expect(lineKept(person, id)).toBe('/plan of:10 lemons')
  expect(keepLine(person, '/plan of:10 lemons')).toEqual({ person, id })
  expect(personSchema.safeParse(person).success).toBe(true)
})

it('keeps the last hundred, by their last use', () => {
  const [first = '', second = ''] = linesTo(2)
  const used = keepLine(keepAll(linesTo(100)), first)
  expect(used.person.lines).toHaveLength(100)
  const { person } = keepLine(used.person, '/plan of:1000 lemons')
  expect(person.lines).toHaveLength(100)
  expect(lineKept(person, used.id)).toBe(first)
  expect(person.lines.map(({ line }) => line)).not.toContain(second)
  expect(lineKept(person, 'constructor')).toBeNull()
})

it('names a kept line with the command that it runs', () => {
  expect(readReference(keptReference('0123456789ab', 'jar start'))).toEqual({ id: '0123456789ab', path: 'jar start' })
  for (const other of ['/jar list', '!show', '@', '@k3f9', '@0123456789ab', '@0123456789ab /', '@0123456789AB /plan']) {
    expect(readReference(other)).toBeNull()
  }
})

it('puts short lines on buttons, keeps long ones, and writes only for those', async () => {
  const store = memoryStore('UTC')
  let calls = 0
  let changes = 0
  const counted = {
    update: (userId: string, change: (person: Person) => Person | null) => {
      calls += 1
      return store.update(userId, (person) => {
        const changed = change(person)
        if (changed !== null) changes += 1
        return changed
      })
    },
  }
  const about = { owner: OWNER, nudgeId: null }
  const short = await buttonIds([call('jar list'), call('jar list')], about, counted)
  expect([short.size, calls]).toEqual([1, 0])

  const long = `/jar start ${'x'.repeat(40)} of:10 lemons + 30 g ginger + 5 cloves spirit:1 l 95% to-strength:30%`
  const huge = { path: 'plan', options: { of: '10 lemons + '.repeat(1000) } }
  const ids = await buttonIds([callTyped(long), huge], about, counted)
  expect([...ids.keys()]).toEqual([long])
  const read = decodeCustomId(ids.get(long)!)
  expect(read?.owner).toBe(OWNER)
  const kept = readReference(read!.line)
  expect(kept?.path).toBe('jar start')
  expect(lineKept(await store.read(OWNER), kept!.id)).toBe(long)
  expect(await buttonIds([callTyped(long)], about, counted)).toEqual(ids)
  expect([calls, changes]).toEqual([2, 1])
})
