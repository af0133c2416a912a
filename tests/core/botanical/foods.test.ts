import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it, test } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { sources } from '../../../core/botanical/evidence/sources.ts'
import { answered } from '../../../core/botanical/foods/answers.ts'
import { exampleG, mostGPerL } from '../../../core/botanical/foods/bounds.ts'
import { findFood, foodsOfLatin } from '../../../core/botanical/foods/find-food.ts'
import { foods } from '../../../core/botanical/foods/foods.ts'
import { byAskWord, byName, keyOf } from '../../../core/botanical/names/name-index.ts'
import { expectNotRefused } from '../../../core/botanical/refuse/refusal.ts'
import { nameWords } from '../../../core/spelling/normalise-name.ts'
import { outcomeOf } from './outcome-of.ts'

const PARTS = 'fruit berry dried nut seed grain leaf flower root stem bulb sap alga fungus'.split(' ')
const ANSWERS = 'flesh stoned whole ripe husked peeled mild bought cooked roasted pod'.split(' ')
const NOTES =
  'a_little allergen aspirin caffeine cashew_kin daisy drowsy epilepsy estragole gluten grapefruit hairs iodine kidney latex legume medicines oil oxalate pregnancy spoils sulphites sunburn waxed'.split(
    ' ',
  )

/** What the catalogue has under that name goes before the list of foods. */
const isCatalogues = (name: string): boolean => {
  const key = keyOf(nameWords(name))
  return byName.has(key) || byAskWord.has(key)
}

const named = foods.flatMap((food) => food.names.map(({ name }) => ({ food, name })))

describe('the list of foods', () => {
  it('has every row whole', () => {
    expect(foods.length).toBe(589)
    for (const { names, latin, part, question, notes, sources: from } of foods) {
      const row = names[0].name
      expect([row, PARTS.includes(part)]).toEqual([row, true])
      expect([row, question === null || ANSWERS.includes(question.answer)]).toEqual([row, true])
      expect([row, notes.filter((note) => !NOTES.includes(note))]).toEqual([row, []])
      expect([row, from.length > 0 && from.every((key) => Object.hasOwn(sources, key))]).toEqual([row, true])
      expect(latin[0]).toMatch(/^(?:x )?[A-Z][a-z]+/)
      for (const { name } of names) expect(name).toMatch(/^[a-zA-Zñü' -]+$/)
    }
  })

  it('quotes no code of the catalogue that some rows stand on', () => {
    const files = ['fruit', 'berries', 'herbs', 'flowers', 'roots', 'vegetables', 'others']
    const text = files
      .map((file) => readFileSync(join(import.meta.dirname, `../../../core/botanical/foods/${file}.ts`), 'utf8'))
      .join('\n')
    expect(text).toContain('pineapple')
    expect(text).not.toMatch(/\bA[0-9][0-9A-Z]{3}\b|\bP\d{7}|FOODON:/)
  })

  it('is refused and mistaken for nothing that is refused, by any name', () => {
    for (const { name } of named) {
      if (isCatalogues(name)) continue
      expectNotRefused(name)
      expectNotRefused(`8 lemons + 30 g ${name} + ginger`)
    }
    for (const latin of foods.flatMap((food) => food.latin)) expectNotRefused(latin)
  })

  it('names each food before any typo is forgiven, alone, loud and in the plural', () => {
    for (const [at, { name, food }] of named.entries()) {
      if (isCatalogues(name)) continue
      const wanted = food.question === null ? 'planned' : /planned|ambiguous /
      const others = at % 8 === 0 ? [name.toUpperCase(), `large ${name}`] : []
      for (const text of [name, ...others]) {
        const outcome = outcomeOf(`20 g ${text}`)
        if (typeof wanted === 'string' && text === name) expect([text, outcome]).toEqual([text, wanted])
        else expect(`${text}: ${outcome}`).toMatch(/: (?:planned$|ambiguous )/)
      }
    }
  })

  it('is planned with its question answered as the reply says', () => {
    const asked = foods.filter(({ question }) => question !== null)
    expect(asked.length).toBeGreaterThan(150)
    for (const food of asked) {
      const { name } = food.names[0]
      const as = answered(name, food)
      expect([as, findFood(as)]).toEqual([as, { food, isAnswered: true }])
    }
  })

  it('asks for the part of a species named in Latin', () => {
    expect(foodsOfLatin('Ananas comosus').map(({ names }) => names[0].name)).toEqual(['pineapple'])
    expect(outcomeOf('20 g Crataegus azarolus')).toBe('ambiguous unknown_botanical')
  })
})

test.each([
  ['bramley apple', 'apple', false],
  ['apple flesh', 'apple', true],
  ['cored apples', 'apple', true],
  ['apples without core and pips', 'apple', true],
  ['apples, pips out', 'apple', true],
  ['crushed apples', 'apple', false],
  ['apple fruit', 'apple', false],
  ['fresh ripe organic pineapple', 'pineapple', true],
  ['pineapple fruit', 'pineapple', true],
  ['gooseberries from our plot', 'gooseberry', true],
  ['whole bullaces', 'bullace', true],
  ['bullaces with the stones in', 'bullace', true],
  ['crushed whole bullaces', 'bullace', false],
  ['bullaces', 'bullace', false],
  ['ripe tomatoes', 'tomato', true],
  ['bought carrots', 'carrot', true],
  ['carrots I planted', 'carrot', true],
  ['carrots from my garden', 'carrot', false],
  ['chives', 'chive', false],
  ['lichi', 'lychee', false],
  ['litchi pulp', 'lychee', true],
  ['green pea', 'garden pea', false],
])('%s is %s, answered: %s', (noun, name, isAnswered) => {
  const found = findFood(noun)
  expect([found?.food.names[0].name, found?.isAnswered]).toEqual([name, isAnswered])
})

test.each([
  'pineaple',
  'pineapple skin',
  'apple seed',
  'apple leaf',
  'avocado bark',
  'very nice pineapple from a friend',
  'pineapple and holly',
])('%s is no name of a food', (noun) => {
  expect(findFood(noun)).toBeNull()
})

test('bounds are doses of the catalogue, by kind', () => {
  const KINDS = {
    fruit: ['fruit'],
    berry: ['berry'],
    vegetable: ['fruit'],
    root: ['root'],
    herb: ['herb'],
    leaf: ['herb'],
    flower: ['flower'],
    nut: ['nut'],
    spice: ['spice'],
    tea: ['coffee_tea_cocoa'],
  } as const
  for (const food of foods) {
    const kinds: readonly string[] | undefined = Object.entries(KINDS).find(([kind]) => kind === food.kind)?.[1]
    if (kinds === undefined) continue
    const doses = catalogue.filter(({ kind }) => kinds.includes(kind)).map(({ dose }) => dose.maxGPerL)
    expect(doses.some((dose) => dose >= mostGPerL(food, false))).toBe(true)
    expect(mostGPerL(food, true)).toBeLessThanOrEqual(mostGPerL(food, false))
    expect(exampleG(food)).toBeGreaterThan(0)
    expect(exampleG(food)).toBeLessThanOrEqual(mostGPerL(food, false))
  }
  const most = (name: string, isDried = false) => mostGPerL(findFood(name)!.food, isDried)
  // A litre of raspberries, basil, dried chamomile, fennel seed as the catalogue has them: common practice.
  expect([most('pineapple'), most('shiso'), most('shiso', true), most('nigella'), most('honeybush')]).toEqual([
    1200, 200, 50, 80, 30,
  ])
})
