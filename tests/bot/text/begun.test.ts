import { describe, expect, it } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import { wordsOf } from '../../../bot/text/words-of.ts'

const words = wordsOf(en)
const gone = (name: string) => words.say({ group: 'headlines', key: 'jar_gone', values: { name } }, 'metric')

describe('a sentence that a jar’s name begins', () => {
  it.each([
    ['lemon', 'Lemon is deleted.'],
    ['sloes', 'Sloes are deleted.'],
    ['élixir', 'Élixir is deleted.'],
    ['3 of mint', '3 of mint is deleted.'],
  ])('of %s: %s', (name, said) => {
    expect(gone(name)).toBe(said)
  })

  it('begins with a capital where it refuses, too', () => {
    expect(words.problem('pour_same_jar', { jar: 'lemon' }, 'metric')).toMatch(/^Lemon is already in lemon\./)
  })

  it('leaves it on a button as it is', () => {
    const shaken = { group: 'actions', key: 'nudge_done', values: { duty: 'shake', name: 'lemon' } } as const
    expect(words.say(shaken, 'metric')).toBe('lemon shaken')
  })
})
