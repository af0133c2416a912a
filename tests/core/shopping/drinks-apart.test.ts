import { expect, it } from 'vitest'
import { NOTHING_NEEDED } from '../../../core/shopping/needs.ts'
import { parseHave } from '../../../core/shopping/parse-have.ts'
import { shoppingList } from '../../../core/shopping/shopping-list.ts'
import { soldIn } from '../../../core/shopping/sold.ts'

const EU = soldIn('IT')

it('buys gin and rum of one strength apart, and takes no vodka at hand for gin', () => {
  const spirit = (drink: string | null) => ({ volumeMl: 700, abvPercent: 40, sugarGPerL: 0, drink })
  const needs = [
    { ...NOTHING_NEEDED, spirits: [spirit('gin')] },
    { ...NOTHING_NEEDED, spirits: [spirit('white rum'), spirit('gin')] },
  ]
  const bought = (have: string) =>
    shoppingList(needs, have === '' ? [] : parseHave(have), EU).spirits.map(({ drink, toBuyMl }) => [drink, toBuyMl])
  expect(bought('')).toEqual([
    ['gin', 1400],
    ['white rum', 700],
  ])
  expect(bought('700 ml vodka 40%')).toEqual(bought(''))
  expect(bought('700 ml rhum 40%')).toEqual([
    ['gin', 1400],
    ['white rum', 0],
  ])
  // A bottle of which only the strength was told may be any.
  expect(bought('700 ml 40%')).toEqual([
    ['gin', 700],
    ['white rum', 700],
  ])
})
