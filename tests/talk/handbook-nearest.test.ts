import { describe, expect, it } from 'vitest'
import { findEntry, rankEntries } from '../../bot/talk/handbook/find-entry.ts'
import { entryOfClause } from '../../bot/talk/reader/entry-of-clause.ts'
import { likelyEntry } from '../../bot/talk/reader/likely-entry.ts'
import { handbook } from '../../bot/text/en/handbook/index.ts'

describe('the nearest entry', () => {
  const near = (text: string, sure: number) => likelyEntry(rankEntries(text, handbook), sure)?.id ?? null
  const ranked = (share: number, likelihood: number, rank: number, ahead: number) => [
    { id: 'honey', share, likelihood, rank },
    { id: 'acid', share: 0, likelihood: 0, rank: rank - ahead },
  ]

  it('is an answer below the bar, where the handbook is surely asked', () => {
    const text = 'is a colander enough or a hair sieve'
    expect(findEntry(text, handbook)).toBeNull()
    expect(near(text, 0.7)).toBe('strain_cloth')
    expect(near('zeppelins overhead', 0.7)).toBeNull()
  })

  it.each([
    ['likely', ranked(0.31, 0.51, 0.1, 0), 0.66, true],
    ['explains too little', ranked(0.29, 0.51, 0.1, 0), 0.66, false],
    ['not likely', ranked(0.31, 0.49, 0.1, 0), 0.66, false],
    ['near, and before the next', ranked(0, 0.31, 0.61, 0.11), 0.66, true],
    ['near, and beside the next', ranked(0, 0.31, 0.61, 0.09), 0.66, false],
    ['near, and unlikely', ranked(0, 0.29, 0.61, 0.11), 0.66, false],
    ['not near', ranked(0, 0.31, 0.59, 0.3), 0.66, false],
    ['likely, where it is not sure', ranked(0.31, 0.51, 0.1, 0), 0.64, false],
    ['likely with what is asked', ranked(0, 0.9, 0.1, 0.16), 0.29, true],
    ['likely with what is asked, beside the next', ranked(0, 0.9, 0.1, 0.14), 0.29, false],
    ['less likely with what is asked', ranked(0, 0.9, 0.1, 0.16), 0.27, false],
  ] as const)('%s', (_, of, sure, isAnswer) => {
    expect(likelyEntry(of, sure)?.id ?? null).toBe(isAnswer ? 'honey' : null)
  })

  it('is none where nothing comes near', () => expect(likelyEntry([], 0.9)).toBeNull())

  it('of the whole sentence stands before one that only a clause asks for', () => {
    const finds = {
      findEntry: (text: string) => findEntry(text, handbook),
      rankEntries: (text: string) => rankEntries(text, handbook),
    }
    const text = 'I have blood pressure pills at breakfast, may I still take a small glass of it at night?'
    const clause = 'may I still take a small glass of it at night'
    const [first] = rankEntries(text, handbook)
    expect(findEntry(clause, handbook)?.id).not.toBe(first!.id)
    expect(entryOfClause(text, finds)?.id).toBe(first!.id)
  })
})
