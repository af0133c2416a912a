import { describe, expect, it, test } from 'vitest'
import { allergens } from '../../../core/label/allergens.ts'
import { finingIds, finingOf, parseFining } from '../../../core/label/fining.ts'
import { forGuests } from '../../../core/label/for-guests.ts'
import { refusal } from '../quantity/refusal.ts'

/** Regulation (EU) 1169/2011, Annex II, points 2, 3, 4 and 7 (from memory); what is made of animals (common knowledge). */
const BY_LAW: Readonly<Record<string, readonly [group: string | null, isAnimal: boolean]>> = {
  egg_white: ['eggs', true],
  isinglass: ['fish', true],
  milk: ['milk', true],
  gelatine: [null, true],
  chitosan: ['crustaceans', true],
  bentonite: [null, false],
  kieselsol: [null, false],
  agar: [null, false],
}

test.each(finingIds)('%s', (id) => {
  const { allergen, isAnimal } = finingOf(id)
  expect([allergen === null ? null : allergens[allergen].group, isAnimal]).toEqual(BY_LAW[id])
})

describe('a fining', () => {
  it.each([
    ['Egg white', 'egg_white'],
    ['casein', 'milk'],
    ['fish gelatine', 'isinglass'],
    ['gelatin', 'gelatine'],
    ['agar-agar', 'agar'],
  ])('%s is %s', (typed, id) => expect(parseFining(typed)).toBe(id))

  it('is read by each of its names, and only by those', () => {
    for (const id of finingIds) for (const name of finingOf(id).names) expect(parseFining(name)).toBe(id)
    const names = finingIds.flatMap((id) => finingOf(id).names)
    expect(new Set(names).size).toBe(names.length)
    expect(refusal(() => parseFining('glue'))).toBe('bad_value no_fining')
  })

  it('is named to guests after what the plants bring', () => {
    expect(forGuests([{ id: 'plum', name: 'plums' }], [], ['milk', 'bentonite']).allergens).toEqual(['milk_fined'])
    expect(forGuests([{ id: null, name: 'walnuts' }], [], ['egg_white']).allergens).toEqual(['walnut', 'egg_fined'])
    expect(forGuests([{ id: 'plum', name: 'plums' }]).allergens).toEqual([])
  })
})
