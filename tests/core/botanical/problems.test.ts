import { expect, test } from 'vitest'
import { wrapSentence } from '../../../bot/terminal/show/wrap.ts'
import { englishFormat } from '../../../bot/text/en/format.ts'
import { botanicalProblems } from '../../../bot/text/en/plant-refusals.ts'
import type { Format } from '../../../bot/text/format.ts'
import { askBacks } from '../../../core/botanical/names/ambiguous-names.ts'
import type { BotanicalProblems } from '../../../core/botanical/problems.ts'
import { allRefused } from '../../../core/botanical/refuse/all-refused.ts'

const format = englishFormat('metric')
const sentences: {
  readonly [Key in keyof BotanicalProblems]: (values: BotanicalProblems[Key], format: Format) => string
} = botanicalProblems

test.each(allRefused)('$id has a sentence of its own', ({ id, names, instead }) => {
  const [name = ''] = names.split(', ')
  const sentence = sentences.refused_botanical({ typed: name, id, name, instead }, format)
  expect(sentence).toMatch(/^I don’t plan .+\. [A-Z].+[.?]$/)
  expect(wrapSentence(sentence, 80).length).toBeLessThanOrEqual(3)
})

test.each(askBacks)('$id has a question', ({ id, choices, refused }) => {
  const sentence = sentences.unclear_botanical({ typed: 'it', ask: id, choices, refused }, format)
  expect(sentence).toMatch(/^.{8,}\?|that’s a sweetener/)
  expect(wrapSentence(sentence, 80).length).toBeLessThanOrEqual(3)
})

test('too much of something says how much is not', () => {
  const of = [{ id: 'wormwood', state: 'dried' as const, massG: 4, mostG: 1.99 }]
  const sentence = sentences.over_ceiling(
    { hazard: 'thujone', share: 2, of, per: 'spirit', volumeMl: 1000, spiritMl: 1000 },
    format,
  )
  expect(sentence.replaceAll('\u00a0', ' ')).toBe(
    'That’s too much thujone. For 1 l of spirit use at most 1.9 g wormwood.',
  )
})
