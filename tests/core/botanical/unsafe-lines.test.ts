import { describe, expect, test } from 'vitest'
import { expectNotRefused } from '../../../core/botanical/refuse/refusal.ts'
import { refusedValues } from '../quantity/refusal.ts'
import { outcomeOf } from './outcome-of.ts'

// Which plants are each other's doubles, and what a cracked stone gives off: EFSA Journal 2016;14(4):4424 for cyanide, the rest from memory.

describe('wild', () => {
  test.each([
    '50 g angelica di bosco',
    '5 g genziana di bosco',
    '100 g finocchietto di bosco',
    '5 g carvi di bosco',
    '5 g alloro secco di bosco',
    '20 g angelica root I picked',
    '20 g hand-picked angelica root',
    '20 g angelica root by the river',
    '50 g fennel fronds from the riverside',
    '50 g garlic leaves I picked',
    '20 g picked angelica root',
    '20 g angelica root along the river',
    '50 g riverside fennel fronds',
  ])('%s is refused', (text) => {
    expect(outcomeOf(text)).toBe('refused refused_botanical')
  })

  test.each(['10 g ginepro di bosco', '100 g pigne di bosco', '500 g blackberries I picked'])(
    '%s is asked about',
    (text) => {
      expect(outcomeOf(text)).toBe('ambiguous foraged_botanical')
    },
  )

  test('pine tips are asked about: yew looks alike', () => {
    expect(outcomeOf('100 g pine tips')).toBe('ambiguous unclear_botanical')
  })

  test.each(['300 g fragoline di bosco', '10 freshly picked lemons', '10 hand-picked oranges'])(
    '%s is planned',
    (text) => {
      expect(outcomeOf(text)).toBe('planned')
    },
  )
})

describe('of a garden', () => {
  test.each(['5 g gentian root from my garden', "5 g genziana dell'orto", '20 g angelica root I planted'])(
    '%s is refused: only bought',
    (text) => {
      expect(outcomeOf(text)).toBe('refused refused_botanical')
    },
  )

  test.each([
    ['5 g homegrown dried bay leaf', '5 g dried bay leaf I planted'],
    ['10 g juniper from my garden', '10 g juniper I planted'],
    ['50 g turmeric dug from my garden', '50 g turmeric I planted'],
    ['50 g ginger from our allotment', '50 g ginger I planted'],
    ['50 g fennel fronds from the plot', '50 g fennel fronds I planted'],
  ])('%s is asked once, and planned as “%s”', (text, as) => {
    expect(refusedValues(() => expectNotRefused(text))).toMatchObject({ retype: { from: text, as } })
    expect(outcomeOf(text)).toBe('ambiguous garden_botanical')
    expect(outcomeOf(as)).toBe('planned')
  })

  test.each([
    '500 g damsons from my garden',
    '500 g damsons picked from my garden',
    '500 g plums from the allotment',
    '10 lemons from my plot',
    '20 g rosemary from the garden',
    '50 g basil dal mio orto',
    '500 g gooseberries from our plot',
    '500 g damsons off our tree',
    '20 g rosemary I cut in the garden',
    '500 g home-grown raspberries',
  ])('%s is planned', (text) => {
    expect(outcomeOf(text)).toBe('planned')
  })
})

describe('stones', () => {
  test.each([
    '500 g cracked sour cherries with stones',
    '500 g sour cherries crushed with stones',
    '500 g ground plums with stones',
    '500 g ground sloes with the stones in',
    '500 g crushed sloes',
    '500 g crushed peaches with pits',
    '500 g apricots, cracked, with stones',
    '500 g milled damsons',
    '500 g apricots with cracked stones',
    '500 g sour cherries, stones crushed',
    '500 g mashed plums',
    '500 g blended cherries with stones',
    '500 g crushed bullaces',
    '500 g crushed whole bullaces with stones',
    '300 g ciliegie schiacciate',
    '300 g smashed peaches',
    '500 g prugne tritate con nocciolo',
  ])('%s is refused', (text) => {
    expect(outcomeOf(text)).toBe('refused refused_botanical')
  })

  test.each([
    '500 g pitted sour cherries, crushed',
    '500 g plums without stones, mashed',
    '500 g apricots, stones removed',
    '500 g mashed stoned apricots',
    '500 g whole sour cherries with stones',
    '500 g sour cherries with stones',
    '500 g sloes',
    '100 g ground almonds',
    '500 g stoned bullaces',
    '500 g whole bullaces',
  ])('%s is planned', (text) => {
    expect(outcomeOf(text)).toBe('planned')
  })

  test('a cherry tomato has none', () => {
    expect(outcomeOf('300 g crushed ripe cherry tomatoes')).toBe('planned')
  })

  test('a ground cherry is a fruit in a husk', () => {
    expect(outcomeOf('500 g ground cherries')).toBe('ambiguous unknown_botanical')
    expect(outcomeOf('500 g husked ground cherries')).toBe('planned')
  })
})

test.each(['cherry stones in', 'cherry stones whole', 'apricot stones intact', 'sloe stones left in'])(
  '%s are stones, however they are said to be',
  (name) => {
    expect(outcomeOf(`100 g ${name}`)).toBe('refused refused_botanical')
  },
)

test.each([
  ['morello cherries, stones left in', 'planned'],
  ['sour cherries (stones in)', 'planned'],
  ['unpitted cherries', 'planned'],
  ['cherries, stones in, crushed', 'refused refused_botanical'],
  ['5 bay leaves from my hedge', 'refused refused_botanical'],
  ['noccioli interi', 'not_found unknown_botanical'],
  ['nocciole', 'planned'],
])('%s: %s', (name, outcome) => {
  expect(outcomeOf(`100 g ${name}`)).toBe(outcome)
})
