import { expect, it } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import { inOwnKitchen } from '../../../bot/text/own-kitchen.ts'
import { wordsOf } from '../../../bot/text/words-of.ts'

const words = inOwnKitchen(wordsOf(en), en)
const STARTED = { started: '2026-11-09' } as const

it('writes a day on a tag as the kitchen does that pours in cups', () => {
  expect(words.onPictures('us').text.tag.started(STARTED)).toBe('Started Nov 9, 2026')
  expect(words.onPictures('metric').text.tag.started(STARTED)).toBe('Started 9 Nov 2026')
})

it('writes it so on the shelf', () => {
  const { shelf } = words.onPictures('us').text
  expect(shelf.today('2026-11-09', en.format('us'))).toBe('today, Nov 9')
})
