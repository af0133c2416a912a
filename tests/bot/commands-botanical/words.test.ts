import { expect, test } from 'vitest'
import { englishFormat } from '../../../bot/text/en/format.ts'
import { hazardSentences } from '../../../bot/text/en/hazards.ts'
import {
  evidenceWords,
  monthsText,
  preparationWords,
  productFileWords,
  shareText,
  southern,
  spanText,
} from '../../../bot/text/en/plant-words.ts'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { type HazardKey, hazards } from '../../../core/botanical/evidence/hazards.ts'
import { productFiles } from '../../../core/botanical/evidence/product-files.ts'
import { steepEvidence } from '../../../core/botanical/evidence/steep-evidence.ts'

const format = englishFormat('metric')
const SENTENCE = /^[“A-Z].*\.$/

test('has a sentence for every step of preparing, and no two alike', () => {
  const used = new Set(catalogue.flatMap(({ preparation }) => preparation))
  for (const step of used) expect(preparationWords[step]).toMatch(SENTENCE)
  expect(Object.keys(preparationWords).sort()).toEqual([...used].sort())
  const said = Object.values(preparationWords)
  expect(new Set(said).size).toBe(said.length)
})

test('has a sentence for every hazard', () => {
  for (const hazard of Object.keys(hazards) as readonly HazardKey[]) {
    const text = hazardSentences.cautions.botanical_hazard({ hazard, ids: ['ginger'] })
    expect(text).toMatch(SENTENCE)
    expect(text).not.toMatch(/_|undefined/)
  }
})

test('has a sentence for every measurement and product file', () => {
  for (const { key } of steepEvidence) expect(evidenceWords[key]).toMatch(SENTENCE)
  for (const file of productFiles) expect(productFileWords(file, format)).toMatch(SENTENCE)
  for (const file of productFiles) expect(productFileWords(file, format)).not.toMatch(/null|undefined|NaN/)
})

test('names a source for every share that is published', () => {
  for (const { waterFraction, sugarsFraction } of catalogue) {
    for (const share of [waterFraction, sugarsFraction]) {
      if (share !== null) expect(shareText(share, format)).toMatch(/ % \(.+\)$/)
    }
  }
})

test.each([
  [[12, 1, 2, 3], 'December to March'],
  [[5], 'May'],
  [[4, 9, 10], 'April and September to October'],
  [[1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12], 'all year'],
])('%j is %s', (months, text) => {
  expect(monthsText(months)).toBe(text)
  expect(southern(southern(months))).toEqual(months)
})

test.each([
  [14, 21, '14 to 21 days'],
  [1, 1, '1 day'],
  [0.2, 0.5, '5 to 12 hours'],
  [0.5, 2, '12 hours to 2 days'],
  [1.5, 1.5, '1.5 days'],
])('%d to %d days is %s', (minDays, maxDays, text) => {
  expect(spanText(minDays, maxDays, format)).toBe(text)
})
