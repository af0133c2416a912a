import { expect, test } from 'vitest'
import { findBotanical } from '../../../core/botanical/find/find.ts'
import { DomainError } from '../../../core/domain-error.ts'
import { findPlants } from '../../../core/recipe/plan/find-plants.ts'
import { refusal } from '../quantity/refusal.ts'

const idOf = (noun: string): string => findBotanical(noun).botanical.id

// Varieties and trade names stand for the plant, and what differs in dose or hazard is a plant of its own.
test.each([
  ['blood oranges', 'orange_peel'],
  ['satsumas', 'mandarin_peel'],
  ['tangelos', 'tangelo_peel'],
  ['Meyer lemon', 'lemon_peel'],
  ["Buddha's hand", 'citron_peel'],
  ['bullaces', 'cherry_plum'],
  ['cherry plums', 'cherry_plum'],
  ['Victoria plums', 'plum'],
  ['Moroccan mint', 'spearmint'],
  ['apple mint', 'spearmint'],
  ['Thai basil', 'basil'],
  ['lemon thyme', 'thyme'],
  ['Earl Grey', 'earl_grey'],
  ['lapsang', 'tea_black'],
  ['jasmine tea', 'tea_green'],
  ['espresso beans', 'coffee_whole'],
  ['jalapenos', 'jalapeno'],
  ['Scotch bonnets', 'habanero'],
  ["bird's eye chillies", 'birds_eye_chilli'],
  ['cherries', 'sweet_cherry'],
  ['ciliegie', 'sweet_cherry'],
  ['chokeberries', 'aronia'],
  ['hop flowers', 'hops'],
  ['lime leaves', 'citrus_leaf'],
  ['lime blossom', 'linden'],
  ['prugne secche', 'prune'],
  ['dried plums', 'prune'],
  ['fichi secchi', 'fig_dried'],
  ['apricots, dried', 'apricot_dried'],
  ['noci secche', 'walnut'],
  ['cilantro', 'coriander_leaf'],
  ['macis', 'mace'],
])('%s is %s', (noun, id) => {
  expect(idOf(noun)).toBe(id)
})

test.each([
  ['dried orange peel', 'orange_peel', 120 / 3],
  ['dried limes', 'lime_peel', 120 / 3],
  ['thyme, dried', 'thyme', 20 / 4],
  ['dried basil', 'basil', 120 / 5],
  ['rose petals, dried', 'rose_petals', 80 / 5],
  ['dried elderflowers', 'elderflower', 100 / 5],
])('%s is %s in another dose, from memory', (noun, id, typicalGPerL) => {
  const { botanical } = findBotanical(noun)
  expect(botanical).toMatchObject({ id, form: { state: 'dried' }, dose: { trust: 'memory' } })
  expect(botanical.dose.typicalGPerL).toBeCloseTo(typicalGPerL, 9)
})

test.each(['citrus', 'clover', 'toffee', 'poppers', 'dandelion leaves', 'lychee leaves'])(
  '%s is no plant of the catalogue',
  (noun) => {
    expect(() => findBotanical(noun)).toThrow(DomainError)
  },
)

test('a quill of cinnamon is a stick of it, and no squill', () => {
  const [plant] = findPlants('2 quills of Ceylon cinnamon')
  expect(plant).toMatchObject({ botanical: { id: 'cinnamon_ceylon' }, count: 2, massG: { value: 8 } })
  expect(refusal(() => findPlants('2 cinnamon quills'))).toBe('ambiguous unclear_botanical')
})
