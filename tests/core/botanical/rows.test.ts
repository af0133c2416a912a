import { isDeepStrictEqual } from 'node:util'
import { expect, test } from 'vitest'
import { groups } from '../../../core/botanical/catalogue/catalogue.ts'
import { botanicalFrom } from '../../../core/botanical/catalogue/entry.ts'
import { entriesOf, group, guess, usda } from '../../../core/botanical/catalogue/rows.ts'

const common = { state: 'fresh', exchange: [0.5, 1], kept: [0.3, 0.7], days: [1, 2, 3, 4, 14, 30] } as const
const row = { title: 'Whitebeam', en: 'whitebeam+, whitebeam leaf+, whitebeam berry+', it: 'sorbo', latin: 'Aria' }
const figures = { holds: guess(0.8), dose: [1, 2, 3], spirit: [40, 60], preparation: ['fully_ripe'] } as const

const made = (more: object) =>
  entriesOf(group('berry', common, { whitebeam: { ...row, ...figures, ...more } })).map(botanicalFrom)[0]!

test('a row has what its group has in common, unless it says otherwise', () => {
  expect(made({})).toMatchObject({ id: 'whitebeam', kind: 'berry', form: { state: 'fresh' } })
  expect(made({ state: 'dried' }).form.state).toBe('dried')
})

test('a plus adds the English plural', () => {
  expect(made({}).names.en.join()).toBe(
    'whitebeam,whitebeams,whitebeam leaf,whitebeam leaves,whitebeam berry,whitebeam berries',
  )
})

test.each([
  [
    [6, 8],
    [6, 7, 8],
  ],
  [[5, 5], [5]],
  [
    [11, 2],
    [11, 12, 1, 2],
  ],
])('a season from and to %j is the months %j', (months, all) => {
  expect(made({ months }).monthsNorth).toEqual(all)
  expect(made({}).monthsNorth).toBeNull()
})

test('what is from memory says so, whoever reads it', () => {
  const [habit, remembered] = [made({}), made({ practice: 'memory' })]
  expect([habit.dose.trust, habit.timesDays.trust, habit.spiritPercent.trust]).toEqual(Array(3).fill('common_practice'))
  expect([remembered.dose.trust, remembered.timesDays.trust, remembered.spiritPercent.trust]).toEqual(
    Array(3).fill('memory'),
  )
  expect(made({ holds: usda('09001', 0.8, 0.1) })).toMatchObject({
    waterFraction: { ndb: '09001', trust: 'published' },
    sugarsFraction: { value: 0.1, ndb: '09001' },
  })
})

test.each(groups.map((each, at) => [at, each.kind, each] as const))(
  'group %i (%s) has nothing in common that no row uses, and no row that says it again',
  (_at, _kind, { common: shared, rows }) => {
    for (const [field, value] of Object.entries(shared)) {
      const said = Object.values(rows).flatMap((each) => (field in each ? [each[field as keyof typeof each]] : []))
      expect(Object.keys(rows).length - said.length, field).toBeGreaterThan(1)
      expect(
        said.filter((other) => isDeepStrictEqual(other, value)),
        field,
      ).toEqual([])
    }
  },
)
