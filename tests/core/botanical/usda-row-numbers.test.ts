import { expect, test } from 'vitest'
import { botanicalById, catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import listed from '../../published/usda-row-numbers.json' with { type: 'json' }

/** Numbers that stand in no list that was read: they are from memory, as the figures are. */
const UNCONFIRMED = [
  'redcurrant',
  'grape',
  'pineapple',
  'prune',
  'coconut_dried',
  'tomato',
  'sweet_pepper',
  'parsley',
  'coriander_leaf',
  'mace',
  'jalapeno',
  'cayenne',
  'walnut',
  'cashew',
  'brazil_nut',
  'dark_chocolate',
]

const rows = listed.rows as unknown as readonly (readonly [string, string, string, string])[]
const species = (latin: string): string => latin.split(' ').slice(0, 2).join(' ')

test('every row was copied', () => {
  expect(rows).toHaveLength(listed.count)
})

test.each(rows)(`%s is to be read in row %s, which is of %s (${listed.source})`, (id, ndb, _name, latin) => {
  const { names, waterFraction, sugarsFraction } = botanicalById(id)
  expect(waterFraction).toMatchObject({ ndb, trust: 'memory' })
  if (sugarsFraction !== null) expect(sugarsFraction).toMatchObject({ ndb, trust: 'memory' })
  expect(names.latin.map(species)).toContain(species(latin))
})

test('no other row is named for a figure that is from memory', () => {
  const noted = catalogue.filter(({ waterFraction }) => waterFraction.ndb !== null && waterFraction.trust === 'memory')
  expect(noted.map(({ id }) => id).sort()).toEqual([...rows.map(([id]) => id), ...UNCONFIRMED].sort())
})
