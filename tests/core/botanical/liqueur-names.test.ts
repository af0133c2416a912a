import { describe, expect, it } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import { botanicalProblems } from '../../../bot/text/en/plant-refusals.ts'
import { findBotanical } from '../../../core/botanical/find/find.ts'
import { DomainError } from '../../../core/domain-error.ts'
import { findPlants } from '../../../core/recipe/plan/find-plants.ts'

const unknownOf = (noun: string) => {
  try {
    findBotanical(noun)
  } catch (error) {
    if (error instanceof DomainError && error.problem === 'unknown_botanical') {
      return (error as DomainError<'unknown_botanical'>).values
    }
    throw error
  }
  throw new Error(`${noun} was found`)
}

describe('a liqueur in place of its plant', () => {
  it.each([
    ['limoncello', 'lemon_peel'],
    ['home-made limoncino', 'lemon_peel'],
    ['Arancello', 'orange_peel'],
    ['mandarinetto', 'mandarin_peel'],
    ['nocino', 'green_walnut'],
  ])('%s is told what it is made of, in an amount that can be typed', (noun, id) => {
    const values = unknownOf(noun)
    expect(values).toMatchObject({ liqueur: id, nearest: [id] })
    const text = botanicalProblems.unknown_botanical(values, en.format('metric'))
    const example = / starts with .+: \/plan (.+) spirit:1 l 95%$/.exec(text)?.[1] ?? ''
    expect(findPlants(example)).toMatchObject([{ botanical: { id }, massG: { value: expect.any(Number) } }])
  })

  it.each([
    ['mirto', 'myrtle_berries'],
    ['genepi', 'genepi'],
    ['mandarino', 'mandarin_peel'],
  ])('that is called as its plant is, %s, is that plant', (noun, id) => {
    expect(findBotanical(noun).botanical.id).toBe(id)
  })

  it('is none where no such word stands', () => {
    expect(unknownOf('ratafia').liqueur).toBeNull()
  })
})
