import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { DomainError } from '../../../core/domain-error.ts'
import { decodeBatch, encodeBatch } from '../../../core/recipe/code/batch-code.ts'
import { fromCrockford } from '../../../core/recipe/code/crockford.ts'
import { runs, SEED } from '../../runs.ts'
import { anyRecipe, LEMON } from './recipes.ts'

const options = { seed: SEED, numRuns: runs(800, 20_000) }

const LETTERS = [...'0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz- +é🍋']
const letter = fc.constantFrom(...LETTERS)

/** One thing that goes wrong with a line on its way; places are taken round its length. */
const damage: fc.Arbitrary<(code: string) => string> = fc.oneof(
  fc.tuple(fc.nat(), letter).map(([at, put]) => (code: string) => {
    const place = at % code.length
    return code.slice(0, place) + put + code.slice(place + 1)
  }),
  fc.tuple(fc.nat(), letter).map(([at, put]) => (code: string) => {
    const place = at % (code.length + 1)
    return code.slice(0, place) + put + code.slice(place)
  }),
  fc.nat().map((at) => (code: string) => code.slice(0, at % code.length) + code.slice((at % code.length) + 1)),
  fc.tuple(fc.nat(), fc.nat()).map(
    ([one, other]) =>
      (code: string) =>
        swapped(code, one, other),
  ),
  fc.nat().map((at) => (code: string) => swapped(code, at, at + 1)),
  fc.nat().map((at) => (code: string) => code.slice(0, at % code.length)),
  fc.nat().map((at) => (code: string) => code.slice(at % code.length)),
  fc.constant((code: string) => code.toLowerCase()),
  fc.constant((code: string) => code.replace(/.{4}/g, '$&-')),
  fc.constant((code: string) => code + code),
)

function swapped(code: string, one: number, other: number): string {
  const letters = code.split('')
  const [i, j] = [one % code.length, other % code.length]
  ;[letters[i], letters[j]] = [letters[j]!, letters[i]!]
  return letters.join('')
}

/** What a text is read as: its recipe or its problem; anything else that is thrown is a fault of ours. */
const reading = (text: string) => {
  try {
    return { recipe: decodeBatch(text) }
  } catch (error) {
    if (!(error instanceof DomainError)) throw error
    return { problem: error.problem }
  }
}

const symbolsIn = (text: string): string => JSON.stringify(fromCrockford(text))

describe('a damaged code', () => {
  it('is never read as another batch', () => {
    let held = 0
    const changed = fc.tuple(anyRecipe, fc.array(damage, { minLength: 1, maxLength: 3 }))
    fc.assert(
      fc.property(changed, ([recipe, damages]) => {
        const code = encodeBatch(recipe)
        const text = damages.reduce((line, spoil) => (line === '' ? line : spoil(line)), code)
        const isSame = symbolsIn(text) === symbolsIn(code)
        const read = reading(text)
        if (isSame) {
          held++
          expect(read.recipe).toEqual(recipe)
        } else {
          expect(['code_damaged', 'not_a_code']).toContain(read.problem)
        }
      }),
      options,
    )
    expect(held).toBeGreaterThan(options.numRuns / 50)
    expect(held).toBeLessThan(options.numRuns / 2)
  })

  it('is found out for every letter that is wrong, and every two that changed places', () => {
    const code = encodeBatch(LEMON)
    const letters = '0123456789ABCDEFGHJKMNPQRSTVWXYZ'
    for (let at = 0; at < code.length; at++) {
      for (const put of letters) {
        if (code[at] === put) continue
        expect(reading(code.slice(0, at) + put + code.slice(at + 1)).problem).toBe('code_damaged')
      }
      for (let other = at + 1; other < code.length; other++) {
        const text = swapped(code, at, other)
        expect(reading(text).problem).toBe(text === code ? undefined : 'code_damaged')
      }
    }
  })

  it('is found out for every letter that is missing and every one too many', () => {
    const code = encodeBatch(LEMON)
    for (let at = 0; at <= code.length; at++) {
      if (at < code.length) expect(reading(code.slice(0, at) + code.slice(at + 1)).problem).toBe('code_damaged')
      for (const put of '0123456789ABCDEFGHJKMNPQRSTVWXYZ') {
        expect(reading(code.slice(0, at) + put + code.slice(at)).problem).toBe('code_damaged')
      }
    }
  })

  it('of any characters at all crashes nothing', () => {
    const text = fc.string({ unit: 'grapheme', maxLength: 400 })
    fc.assert(
      fc.property(text, (line) => {
        expect(['code_damaged', 'not_a_code']).toContain(reading(line).problem)
      }),
      options,
    )
  })
})
