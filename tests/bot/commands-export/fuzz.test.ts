import fc from 'fast-check'
import { expect, it } from 'vitest'
import { readStored } from '../../../store/schema/read-stored.ts'
import { runs, SEED } from '../../runs.ts'
import { deskOf, lemonJar, walnutJar } from './desk.ts'

type Path = readonly (string | number)[]

const pathsIn = (value: unknown, path: Path = []): readonly Path[] =>
  typeof value !== 'object' || value === null
    ? [path]
    : [
        path,
        ...Object.entries(value).flatMap(([key, inner]) =>
          pathsIn(inner, [...path, Array.isArray(value) ? Number(key) : key]),
        ),
      ]

const soundText = async () =>
  (await (await deskOf({ jars: [lemonJar(), walnutJar()] })).filesOf('/notebook export:json'))[0]!

const at = (value: unknown, path: Path): unknown => path.reduce((inner, key) => (inner as never)[key], value)

const values = fc.oneof(
  fc.constantFrom<unknown>(
    null,
    true,
    -1,
    0,
    1,
    1e9,
    1e300,
    0.1,
    '',
    'x',
    [],
    {},
    '2026-13-40',
    '9999-12-31',
    '0001-01-01',
    'started',
    'undone',
    'discarded',
    'Asia/Kolkata',
    8.64e15,
    2,
    3,
    4,
    5,
    '__proto__',
    'clove',
  ),
  fc.double({ noNaN: true }),
  fc.string({ unit: 'binary', maxLength: 50 }),
  fc.integer({ min: -10, max: 2000 }),
)

const LINES = [
  '/jar list',
  '/jar show lemon',
  '/jar show walnut',
  '/notebook',
  '/calendar',
  '/notebook export:csv',
  '/jar undo lemon',
  '/jar undo lemon',
  '/jar show lemon',
  '/reminders',
]

it('takes in or refuses whatever an export was changed into, and never keeps what it cannot show or read', async () => {
  const text = await soundText()
  const paths = pathsIn(JSON.parse(text)).filter(({ length }) => length > 1)
  let taken = 0
  const change = fc.record({
    path: fc.constantFrom(...paths),
    value: values,
    how: fc.constantFrom('set', 'set', 'delete', 'double', 'swap'),
  })
  await fc.assert(
    fc.asyncProperty(fc.array(change, { minLength: 1, maxLength: 3 }), async (changes) => {
      const notebook = JSON.parse(text)
      for (const { path, value, how } of changes) {
        const [last, outer] = [path.at(-1)!, path.slice(0, -1)]
        let holder: unknown
        try {
          holder = at(notebook, outer)
        } catch {
          continue
        }
        if (typeof holder !== 'object' || holder === null) continue
        const held = holder as Record<string | number, unknown>
        if (how === 'set')
          Object.defineProperty(held, last, { value, enumerable: true, configurable: true, writable: true })
        else if (how === 'delete') delete held[last]
        else if (Array.isArray(holder)) holder.splice(how === 'double' ? Number(last) : 0, 0, held[last])
      }
      const desk = await deskOf({})
      const before = await desk.person()
      const { error } = await desk.takeIn(JSON.stringify(notebook))
      expect(desk.faults()).toEqual([])
      expect(error?.code).not.toBe('internal')
      const person = await desk.person()
      if (error !== undefined) expect(person).toBe(before)
      else {
        taken++
        expect(readStored(JSON.stringify(person)).kind).toBe('person')
        for (const line of LINES) {
          const said = await desk.jsonOf(line)
          expect(desk.faults(), line).toEqual([])
          expect(said.error?.code).not.toBe('internal')
        }
      }
    }),
    { seed: SEED, numRuns: runs(18, 5000) },
  )
  expect(taken).toBeGreaterThan(10)
})

it('takes in or refuses whatever bytes an export became', async () => {
  const bytes = new TextEncoder().encode(await soundText())
  const change = fc.record({ at: fc.nat(bytes.length - 1), byte: fc.nat(255), cut: fc.boolean() })
  await fc.assert(
    fc.asyncProperty(fc.array(change, { minLength: 1, maxLength: 4 }), async (changes) => {
      let changed = bytes.slice()
      for (const { at: place, byte, cut } of changes) {
        if (cut && place > bytes.length / 2) changed = changed.slice(0, place)
        else changed[place] = byte
      }
      const desk = await deskOf({})
      const { error } = await desk.takeIn(changed)
      expect(desk.faults()).toEqual([])
      expect(error?.code).not.toBe('internal')
      expect(readStored(JSON.stringify(await desk.person())).kind).toBe('person')
    }),
    { seed: SEED, numRuns: runs(18, 5000) },
  )
})
