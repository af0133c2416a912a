import { describe, expect, it } from 'vitest'
import { findEntry, judged } from '../../bot/talk/handbook/find-entry.ts'
import { indexOf } from '../../bot/talk/handbook/handbook-index.ts'
import { findEntryRespelt } from '../../bot/talk/handbook/respell.ts'
import { termsOf } from '../../bot/talk/handbook/terms.ts'
import { handbook } from '../../bot/text/en/handbook/index.ts'
import { SEED } from '../runs.ts'
import { readOffTopic, sentencesOf } from './corpus.ts'

const questionsOf = (name: 'own-1' | 'held') => sentencesOf(name).filter(({ meaning }) => meaning.entry !== undefined)
const own = questionsOf('own-1')
const held = questionsOf('held')
const offTopic = readOffTopic()

const share = (part: number, whole: number): string => `${part} of ${whole} (${Math.round((100 * part) / whole)} %)`

/** What is found of some questions, by whether it is the entry that is meant. */
const foundOf = (questions: typeof held, find = findEntry) => {
  const found = questions.map(({ text, meaning }) => ({ meant: meaning.entry, id: find(text, handbook)?.id }))
  return {
    right: found.filter(({ meant, id }) => id === meant).length,
    wrong: found.filter(({ meant, id }) => id !== undefined && id !== meant).length,
  }
}

/** Spelt or, where that finds nothing, mended. */
const findMended: typeof findEntry = (text, of) => findEntry(text, of) ?? findEntryRespelt(text, of)

/** One letter of the longest word left out, another for each sentence. */
const withSlip = (text: string, at: number): string => {
  const longest = [...text.matchAll(/\p{L}+/gu)].sort(([one], [other]) => other.length - one.length)[0]!
  const cut = longest.index + 1 + ((SEED + at) % (longest[0].length - 1))
  return text.slice(0, cut) + text.slice(cut + 1)
}

describe('the handbook is found', () => {
  it('for at least 95 % of the questions that were held back', () => {
    const { right, wrong } = foundOf(held)
    console.log(`held questions: right ${share(right, held.length)}, wrong ${share(wrong, held.length)}`)
    expect(right / held.length).toBeGreaterThanOrEqual(0.95)
    expect(wrong / held.length).toBeLessThanOrEqual(0.05)
  })

  it('for at least 90 % of those that it was measured on', () => {
    const { right, wrong } = foundOf(own)
    console.log(`own questions: right ${share(right, own.length)}, wrong ${share(wrong, own.length)}`)
    expect(right / own.length).toBeGreaterThanOrEqual(0.9)
  })

  it('for at most 5 % of what is off topic, slips mended or not', () => {
    const answered = offTopic.filter(({ text }) => findMended(text, handbook) !== null)
    console.log(`off topic: answered ${share(answered.length, offTopic.length)}`)
    expect(answered.length / offTopic.length).toBeLessThanOrEqual(0.05)
  })

  it('for nearly as many with a slip in the longest word', () => {
    const questions = [...own, ...held]
    const slips = questions.map((question, at) => ({ ...question, text: withSlip(question.text, at) }))
    const right = foundOf(questions).right / questions.length
    const mended = foundOf(slips, findMended).right / questions.length
    const asTyped = foundOf(slips).right / questions.length
    console.log(
      `a slip costs ${Math.round(100 * (right - asTyped))} points, mended ${Math.round(100 * (right - mended))}`,
    )
    expect(Math.round(1000 * (right - mended))).toBeLessThanOrEqual(150)
    expect(mended).toBeGreaterThan(asTyped)
  })
})

describe('entries that explain as much', () => {
  const index = indexOf(handbook)

  it('are told apart by how often their ways have all of the words', () => {
    for (const [text, id, other] of [
      ['what happens to the plums after', 'spent_fruit', 'peeled_fruit'],
      ['does a cream one go bad', 'keep_cream', 'plant_milk'],
    ] as const) {
      const likelihoods = index.likelihoods(termsOf(text))
      expect(likelihoods.get(id)!, text).toBeGreaterThan(likelihoods.get(other)!)
    }
  })

  it('share one likelihood, and words that no way has change none', () => {
    const sum = (of: ReadonlyMap<string, number>) => [...of.values()].reduce((all, each) => all + each, 0)
    const asked = index.likelihoods(termsOf('how long does it keep'))
    expect(sum(asked)).toBeCloseTo(1, 9)
    expect(index.likelihoods([...termsOf('how long does it keep'), 'zzzz'])).toEqual(asked)
  })
})

it('an entry that has its words from ways of nothing to do with each other is no answer', () => {
  for (const text of [
    'how come mine throws a haze when i chill it',
    'is this one any good? 3 cups cherries, 1 cup sugar, a bottle of rum, 8 weeks',
  ]) {
    const [first] = judged(indexOf(handbook), text, true)
    expect(first, text).toMatchObject({ isOverBar: true })
    expect(findEntry(text, handbook), text).toBeNull()
  }
})

describe('a sentence', () => {
  it('is explained by its telling words, the small ones hardly count', () => {
    const found = findEntry('would it really be alright for us to use honey instead of sugar', handbook)
    expect(found).toMatchObject({ id: 'honey' })
    expect(found!.share).toBeGreaterThan(0.9)
  })

  it('with one telling word is answered only where it is a way of asking', () => {
    expect(findEntry('how long does it keep', handbook)?.id).toBe('keep_time')
    for (const text of ['drier', 'double it', 'what if I only have vodka?', 'cups']) {
      expect(findEntry(text, handbook), text).toBeNull()
    }
  })
})

describe('a slip is mended', () => {
  it('and said', () => {
    expect(findEntry('do i squeze it', handbook)).toBeNull()
    expect(findEntryRespelt('should i squeze the fruit', handbook)?.respelt).toEqual([
      { from: 'squeze', to: 'squeeze' },
    ])
  })

  it('not in a short word', () => {
    expect(findEntryRespelt('metaal lids', handbook)).not.toBeNull()
    expect(findEntryRespelt('mtal lids', handbook)).toBeNull()
  })

  it.each(['blight', 'there is blight on my tomatoes', 'slight', 'frost tonight', 'the best mulch'])(
    'never into another word: %s',
    (text) => {
      expect(findMended(text, handbook)).toBeNull()
    },
  )
})

describe('whatever is typed', () => {
  it.each(['', ' ', '?', '🙂', 'zzzz', '17', 'the', 'a'.repeat(5000), 'jar '.repeat(2000)])(
    'is looked up: %s',
    (text) => {
      expect(() => findMended(text, handbook)).not.toThrow()
    },
  )

  it('is looked up within 5 ms', () => {
    findEntry('how long does it keep', handbook)
    const start = performance.now()
    for (const { text } of [...own, ...held, ...offTopic]) findEntry(text, handbook)
    const eachMs = (performance.now() - start) / (own.length + held.length + offTopic.length)
    console.log(`${eachMs.toFixed(2)} ms a sentence`)
    expect(eachMs).toBeLessThan(5)
  })

  it('tells the others that would do too', () => {
    const found = findEntry('can i use honey or brown sugar instead of sugar', handbook)
    expect(found).not.toBeNull()
    expect([found?.id, ...(found?.others ?? [])]).toEqual(expect.arrayContaining(['honey', 'brown_sugar']))
  })
})
