import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { expectSaidForm, findBotanical } from '../../../core/botanical/find/find.ts'
import { askBacks } from '../../../core/botanical/names/ambiguous-names.ts'
import { allRefusedNames } from '../../../core/botanical/refuse/all-refused.ts'
import { DomainError } from '../../../core/domain-error.ts'
import { eachHolds } from '../../each-holds.ts'
import { runs, SEED } from '../../runs.ts'
import { refusal, refusedValues } from '../quantity/refusal.ts'

const idOf = (noun: string): string => findBotanical(noun).botanical.id
const askWords = new Set(askBacks.flatMap(({ words }) => words.split(', ').map((word) => word.toLowerCase())))
const withoutAccents = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '')
const typed = catalogue.flatMap(({ id, names }) =>
  [...names.en, ...names.it, names.title].map((name) => [name, id] as const),
)

test('a plant is found by every name, in any case, without accents', () =>
  eachHolds(
    typed,
    ([name, id]) => `${name} (${id})`,
    ([name, id]) => {
      for (const text of new Set([name, name.toUpperCase(), withoutAccents(name), `  ${name} `])) {
        const found = askWords.has(name.toLowerCase()) ? refusal(() => findBotanical(text)) : idOf(text)
        if (found !== id && found !== 'ambiguous unclear_botanical') throw new Error(`${text} is ${found}`)
        if ((found === id) === askWords.has(name.toLowerCase())) throw new Error(`${text} is ${found}`)
      }
    },
  ))

test.each(catalogue)('the Latin names of $id find it, or ask which form or part', ({ id, names }) => {
  for (const name of names.latin) {
    try {
      expect(idOf(name)).toBe(id)
    } catch (error) {
      if (!(error instanceof DomainError)) throw error
      expect(error.problem).toBe('unclear_botanical')
      expect(error.values).toMatchObject({ choices: expect.arrayContaining([id]) })
    }
  }
})

test.each(askBacks)('$id is asked about', ({ id, words, choices }) => {
  for (const word of words.split(', ')) {
    expect(refusal(() => findBotanical(word))).toBe('ambiguous unclear_botanical')
    expect(refusedValues(() => findBotanical(word))).toMatchObject({ ask: id, choices })
  }
})

test.each([
  ['lemmon', 'lemon_peel'],
  ['lemno', 'lemon_peel'],
  ['basilco', 'basil'],
  ['cardamon', 'cardamom'],
  ['raspberies', 'raspberry'],
  ['emons', 'lemon_peel'],
  ['blueberris', 'blueberry'],
  ['dry bay eaves', 'bay_leaf'],
])('%s is one typo from %s', (noun, id) => {
  expect(findBotanical(noun)).toMatchObject({ botanical: { id }, corrected: true })
})

test.each(['limw', 'fgi', 'sga', 'lmmno', 'gloves', 'pesce'])(
  '%s is too short or too far for a typo, or another thing',
  (noun) => {
    expect(refusal(() => findBotanical(noun))).toBe('not_found unknown_botanical')
  },
)

test.each([
  ['organic lemons from the garden', 'lemon_peel', null],
  ['zest of lemons', 'lemon_peel', null],
  ['ginger, sliced', 'ginger', null],
  ['zenzero fresco', 'ginger', 'fresh'],
  ['coffee, cracked', 'coffee_cracked', null],
  ['whole coffee', 'coffee_whole', null],
  ['caffè macinato', 'coffee_ground', null],
  ['dried bay leaves', 'bay_leaf', null],
  ['alloro fresco', 'bay_leaf_fresh', null],
  ['sour cherries with stones', 'sour_cherry', null],
  ['cherries, stoned', 'sweet_cherry', null],
  ['frozen raspberries', 'raspberry', 'fresh'],
  ['roasted hazelnuts', 'hazelnut', null],
  ['star anise', 'star_anise', null],
  ['rhubarb', 'rhubarb_stalk', null],
])('%s is %s', (noun, id, saidState) => {
  const found = findBotanical(noun)
  expect(found.botanical.id).toBe(id)
  if (saidState !== null) expect(found.saidState).toBe(saidState)
})

test('dried is another dose where it is known, and not guessed where it is not', () => {
  expect(findBotanical('dried ginger').botanical.dose.typicalGPerL).toBeCloseTo(30, 9)
  expect(refusal(() => findBotanical('dried strawberries'))).toBe('not_found unknown_form')
  expect(refusal(() => findBotanical('fresh wormwood'))).toBe('not_found unknown_form')
})

test('the form is asked only where a ceiling hangs on it', () => {
  expect(refusal(() => expectSaidForm(findBotanical('sage')))).toBe('ambiguous unsaid_form')
  for (const noun of ['fresh sage', 'dried sage', 'ginger', 'wormwood', 'nutmeg']) expectSaidForm(findBotanical(noun))
})

test.each([
  ['coffee', 'bean', 'coffee_whole'],
  ['olivo', 'leaf', 'olive_leaf'],
  ['basil', 'leaf', 'basil'],
  ['elderflower', 'head', 'elderflower'],
  ['saffron', 'pinch', 'saffron'],
  ['vanilla', 'pod', 'vanilla'],
  ['orange', 'leaf', 'citrus_leaf'],
] as const)('%s counted by the %s is %s', (noun, piece, id) => {
  expect(findBotanical(noun, piece).botanical.id).toBe(id)
})

test.each([
  ['rhubarb', 'refused refused_botanical'],
  ['fig', 'refused refused_botanical'],
  ['cherry', 'refused refused_botanical'],
  ['rose', 'not_found unknown_botanical'],
])('leaves of %s are not the fruit: %s', (noun, problem) => {
  expect(refusal(() => findBotanical(noun, 'leaf'))).toBe(problem)
})

test.each([
  'fresh laurel leaves',
  'dried laurel',
  'fresh pepper',
  'fresh fennel',
  'dried mint',
  'dried elder',
  'ground cinnamon',
])('%s is still asked about: the form does not tell', (noun) => {
  expect(refusal(() => findBotanical(noun))).toBe('ambiguous unclear_botanical')
})

test('every word has to be explained, and the nearest are named', () => {
  expect(refusedValues(() => findBotanical('lemon juice'))).toEqual({
    typed: 'lemon juice',
    nearest: ['lemon_peel', 'citrus_leaf'],
    food: null,
    liqueur: null,
  })
  expect(refusal(() => findBotanical('granite'))).toBe('not_found unknown_botanical')
  expect(refusal(() => findBotanical(''))).toBe('not_found unknown_botanical')
})

describe('anything may be typed', () => {
  const harmful = allRefusedNames.map(({ name }) => name)
  const text = fc.oneof(fc.string({ unit: 'grapheme', maxLength: 80 }), fc.string({ unit: 'binary', maxLength: 80 }))
  const nameless = fc.constantFrom(...typed.map(([name]) => name), 'raw', 'dried', 'fresh', '+', ',', 'of', 'leaves')

  test('only a problem of ours is thrown', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          text,
          fc.array(nameless, { maxLength: 6 }).map((each) => each.join(' ')),
        ),
        (noun) => {
          try {
            expect(catalogue.map(({ id }) => id)).toContain(idOf(noun))
          } catch (error) {
            expect(error).toBeInstanceOf(DomainError)
          }
        },
      ),
      { seed: SEED, numRuns: runs(300, 20_000) },
    )
  })

  test('a refused name is never found, whatever stands around it', () => {
    fc.assert(
      fc.property(fc.constantFrom(...harmful), nameless, nameless, (name, before, after) => {
        for (const noun of [`${name} ${after}`, `${before}, ${name}`, `${before} + ${name} + ${after}`]) {
          expect(() => findBotanical(noun)).toThrow(DomainError)
        }
      }),
      { seed: SEED, numRuns: runs(300, 20_000) },
    )
  })
})
