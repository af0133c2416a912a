import { describe, expect, it, test } from 'vitest'
import { type Needs, plantNeed } from '../../../core/shopping/needs.ts'
import { parseHave } from '../../../core/shopping/parse-have.ts'
import { shoppingList } from '../../../core/shopping/shopping-list.ts'
import { soldIn } from '../../../core/shopping/sold.ts'

const EU = soldIn('IT')

const LEMON_BATCH: Needs = {
  plants: [
    plantNeed({ id: 'lemon_peel', name: 'lemon', isDried: false, massG: 105, count: 10 }),
    plantNeed({ id: 'ginger', name: 'ginger', isDried: false, massG: 80, count: null }),
  ],
  spirits: [{ volumeMl: 1400, abvPercent: 95, sugarGPerL: 0, drink: null }],
  sweeteners: [{ material: 'white_sugar', massG: 1190 }],
  bottles: [
    { count: 6, volumeMl: 500 },
    { count: 2, volumeMl: 200 },
  ],
  jars: [{ count: 1, volumeMl: 1500 }],
  isToStrain: true,
  isToFilter: true,
}

describe('what is at hand', () => {
  const listed = (have: string) => shoppingList([LEMON_BATCH], parseHave(have), EU)
  it('is taken off', () => {
    const list = listed('3 lemons + 500 g sugar + 700 ml 96% + 4 bottles of 500 ml + 30 g ginger')
    expect(list.plants.map(({ buyCount, buyG }) => buyCount ?? buyG)).toEqual([7, 50])
    expect(list.sweeteners[0]).toMatchObject({ bags: 1 })
    expect(list.spirits[0]).toMatchObject({ toBuyMl: expect.closeTo(700, 6), count: 1, sizeMl: 700 })
    expect(list.bottles.map(({ buyCount }) => buyCount)).toEqual([2, 2])
    expect(list.notNeeded).toEqual([])
  })

  it('is enough of all where all of it is there, and without an amount as much as it takes', () => {
    const list = listed('lemons + ginger + sugar + 2 l 95% + bottles + a 2 l jar + muslin + coffee filters')
    expect(list.plants.map(({ buyG }) => buyG)).toEqual([0, 0])
    expect(list.spirits.map(({ count }) => count)).toEqual([0])
    expect(list.sweeteners.map(({ buyG }) => buyG)).toEqual([0])
    expect(list.bottles.map(({ buyCount }) => buyCount)).toEqual([0, 0])
    expect(list.jars.map(({ buyCount }) => buyCount)).toEqual([0])
    expect([list.isClothWanted, list.isPaperWanted]).toEqual([false, false])
  })

  it('is said to be of no use where nothing takes it, a jar that is too small among it', () => {
    expect(listed('a 3 l jar').notNeeded).toEqual([])
    expect(listed('a 4 l jar').notNeeded).toEqual(['a 4 l jar'])
    expect(listed('basil + 1 l 40% + honey + 1 l jar + 3 bottles of 750 ml').notNeeded).toEqual([
      'basil',
      '1 l 40%',
      'honey',
      '3 bottles of 750 ml',
      '1 l jar',
    ])
  })

  it('is never used twice', () => {
    const both = shoppingList([LEMON_BATCH, LEMON_BATCH], parseHave('1 l 95% + 1 kg sugar + 10 lemons + 1.5 l jar'), EU)
    expect(both.spirits[0]!.toBuyMl).toBeCloseTo(1800, 6)
    expect(both.plants[0]!.buyCount).toBe(10)
    expect(both.jars[0]!.buyCount).toBe(1)
  })
})

test.each([
  ['500 g', 'plant_not_named'],
  ['1 l vodka', 'no_number'],
  ['sugar + + lemons', 'dangling_plus'],
  ['500 ml rubbing alcohol', 'refused_botanical'],
  ['500 ml dried alcohol 95%', 'refused_spirit'],
  ['oleander', 'refused_botanical'],
  ['zorble', 'unknown_botanical'],
])('at hand: “%s” is refused with %s', (have, problem) => {
  expect(() => parseHave(have)).toThrow(problem)
})

it('is every plant of a list, whatever joins them, each in its own words', () => {
  const typed = parseHave('3 lemons and 2 oranges + 80 g ginger, 2 limes').map((have) => have.typed)
  expect(typed).toEqual(['3 lemons', '2 oranges', '80 g ginger', '2 limes'])
})

it.each(['1 l whiskey 40%', '1 l alcool 95%'])('takes %s for a spirit', (text) => {
  expect(parseHave(text)).toMatchObject([{ kind: 'spirit' }])
})

test.each(['whiskey', 'alcool', 'vodka'])('asks how much %s there is', (text) => {
  expect(() => parseHave(text)).toThrow('no_number')
})

it('takes dried plants for plants', () => {
  expect(parseHave('2 dried chillies + 30 g dried apricots').map(({ kind }) => kind)).toEqual(['plant', 'plant'])
})
