import fc from 'fast-check'
import { expect, test } from 'vitest'
import { plainWords } from '../../../core/spelling/normalise-name.ts'
import { runs, SEED } from '../../runs.ts'

test.each([
  ["Saint-John's wort", ['saint', 'johns', 'wort']],
  ['Saint-John’s wort', ['saint', 'johns', 'wort']],
  ['Crème brûlée (20 g)', ['creme', 'brulee', '20', 'g']],
  ['', []],
  ['— ·', []],
])('%s', (text, words) => {
  expect(plainWords(text)).toEqual(words)
})

test('plain letters are read as they are beside others', () => {
  const text = fc.oneof(
    fc.string(),
    fc.string({ unit: fc.constantFrom("'", 's', 'S', ' ', '-', '`', 'a', '1', '\t', '.') }),
  )
  fc.assert(
    fc.property(text, (plain) => {
      expect(plainWords(`é ${plain}`)).toEqual(['e', ...plainWords(plain)])
    }),
    { seed: SEED, numRuns: runs(1000, 50_000) },
  )
})
