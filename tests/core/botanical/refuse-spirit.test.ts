import { describe, expect, test } from 'vitest'
import { readDrink } from '../../../core/botanical/drink/read-drink.ts'
import { allRefusedNames } from '../../../core/botanical/refuse/all-refused.ts'
import { expectDrinkable, undrinkableIn } from '../../../core/botanical/refuse/refuse-spirit.ts'
import * as drinkLists from '../../../core/botanical/spirit/drink-words.ts'
import { DomainError } from '../../../core/domain-error.ts'
import { refusal } from '../quantity/refusal.ts'

const drink = (words: string) => readDrink(words, { water: false })

describe('what must not be drunk', () => {
  // Trade and household names, from memory.
  test.each([
    ['denatured alcohol', 'denatured'],
    ['industrial alcohol', 'laboratory'],
    ['rubbing alcohol', 'disinfectant'],
    ['isopropyl', 'other_alcohol'],
    ['methylated spirit', 'denatured'],
    ['surgical spirit', 'disinfectant'],
    ['fuel ethanol', 'fuel'],
    ['bio-ethanol', 'fuel'],
    ['bioetanolo', 'fuel'],
    ['hand sanitiser', 'disinfectant'],
    ['hand sanitizer gel', 'disinfectant'],
    ['alcool denaturato', 'denatured'],
    ['alcol etilico denaturato rosa', 'denatured'],
    ['alcool rosa', 'denatured'],
    ['ALCOOL ROSA', 'denatured'],
    ['spirito denaturato', 'denatured'],
    ['moonshine', 'untaxed'],
    ['home-distilled spirit', 'untaxed'],
    ['homemade gin', 'untaxed'],
    ['grappa fatta in casa', 'untaxed'],
    ['lab ethanol', 'laboratory'],
    ["perfumer's alcohol", 'cosmetic'],
    ['bay rum', 'cosmetic'],
    ['fireplace alcohol', 'fuel'],
    ['white spirit', 'solvent'],
    ['alcool per pulizie', 'solvent'],
    ['metanolo', 'denatured'],
    ['gel igienizzante', 'disinfectant'],
    ['Brennspiritus', 'denatured'],
    ['vergällter Alkohol', 'denatured'],
    ['vergaellter Alkohol', 'denatured'],
    ['Isopropylalkohol', 'other_alcohol'],
    ['alcool à brûler', 'denatured'],
    ['alcool ménager', 'solvent'],
    ['alcool dénaturé', 'denatured'],
    ['alcohol de quemar', 'denatured'],
    ['alcohol desnaturalizado', 'denatured'],
    ['alcohol sanitario', 'disinfectant'],
    ['rødsprit', 'denatured'],
    ['płyn do spryskiwaczy', 'solvent'],
    ['денатурат', 'denatured'],
    ['самогон', 'untaxed'],
    ['μπλε οινόπνευμα', 'denatured'],
    ['ev yapımı rakı', 'untaxed'],
    ['EV YAPIMI RAKI', 'untaxed'],
    ['wood alcool', 'denatured'],
    ['alcool di legno', 'denatured'],
    ['boiling vodka', 'heated'],
  ])('%s: %s', (words, id) => {
    expect(() => expectDrinkable(words)).toThrow(DomainError)
    const thrown = (() => {
      try {
        drink(words)
      } catch (error) {
        return error
      }
    })() as DomainError<'refused_spirit'>
    expect([thrown.code, thrown.problem, thrown.values.id]).toEqual(['refused', 'refused_spirit', id])
  })

  test.each(['mehtylated', 'isoporpyl', 'turpintine', 'surgicall vodka', 'antifreze vodka'])(
    '%s is asked back',
    (words) => {
      expect(refusal(() => drink(words))).toBe('ambiguous near_refused_spirit')
    },
  )

  test.each(['lemon peel', 'homemade orange peel', 'castor sugar', '500 ml cold water', 'wild camp fennel'])(
    'nothing of the kind stands in %s',
    (text) => {
      expect(undrinkableIn(text)).toBeNull()
    },
  )
})

describe('the name on a bottle', () => {
  test.each([
    ['gin Allotment Pride', 'ambiguous unknown_drink'],
    ['vodka zorble gin', 'ambiguous unknown_drink'],
    ['zorble', 'ambiguous unknown_drink'],
    ['zorble alcohol', 'ambiguous unknown_drink'],
    ['zorble spirit', 'ambiguous unknown_drink'],
    ['zorble Sprit', 'ambiguous ethanol_asked'],
    ['one two three four five six vodka', 'ambiguous unknown_drink'],
    ['Pride vodka with zorble', 'ambiguous unknown_drink'],
    ['zorble and vodka', 'ambiguous unknown_drink'],
    ['zorblethyl vodka', 'ambiguous unknown_drink'],
    ['zorblicide gin', 'ambiguous unknown_drink'],
    ['antyfreze gin', 'ambiguous unknown_drink'],
    ['QRS gin', 'ambiguous unknown_drink'],
    ['oleander gin', 'refused refused_botanical'],
    ['oleandor gin', 'ambiguous near_refused'],
    ['my uncle’s gin', 'refused refused_spirit'],
    ['water', 'ambiguous unknown_drink'],
    ['gin, oranges', 'ambiguous unknown_drink'],
    ['lemon peel', 'ambiguous unknown_drink'],
  ])('is not read in “%s”: %s', (words, refused) => {
    expect(refusal(() => drink(words))).toBe(refused)
  })
})

test.each([
  ['orange liqueur', true],
  ['sloe gin', true],
  ['lemon vodka', true],
  ['liquore alle arance', true],
  ['vodka al limone', true],
  ['vino bianco', true],
  ['homemade liqueur', true],
  ['my own limoncello', true],
  ['unsweetened lemon vodka', false],
  ['kirsch', false],
])('%s has sugar in it: %s', (words, isSweet) => {
  expect(drink(words).isSweet).toBe(isSweet)
})

test.each(['ethanol', 'pure ethanol', 'ethyl alcohol', 'alcohol etílico'])('%s: is it sold for drinking?', (words) => {
  expect(refusal(() => drink(words))).toBe('ambiguous ethanol_asked')
})

/** Every word of the tables of drinks that stands by itself. */
const wordsOf = (list: string): readonly string[] =>
  list
    .split(',')
    .map((each) => each.trim())
    .filter((each) => each !== '' && !each.includes('*'))

test('no word of a good drink is refused, nor near anything that is', () => {
  const { asked: _, ...lists } = drinkLists
  const failed = Object.values(lists)
    .flatMap(wordsOf)
    .filter((words) => {
      try {
        readDrink(words, { water: true })
        return false
      } catch {
        return true
      }
    })
  expect(failed).toEqual([])
})

test('no refused name is made of words of good drinks alone', () => {
  const hidden = allRefusedNames.filter(({ name }) => {
    try {
      readDrink(name, { water: true })
      return true
    } catch (error) {
      if (error instanceof DomainError) return false
      throw error
    }
  })
  expect(hidden.map(({ name }) => name)).toEqual([])
})
