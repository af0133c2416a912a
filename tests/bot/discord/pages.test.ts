import fc from 'fast-check'
import { expect, it } from 'vitest'
import { cutText, shortened } from '../../../bot/discord/show/cut-text.ts'
import { type Block, type PageLine, pagesOf } from '../../../bot/discord/show/pages.ts'
import { plainText } from '../../../bot/discord/show/plain-text.ts'
import { runs, SEED } from '../../runs.ts'
import { meanings, shownOf } from './markdown.ts'

const lineOf = (text: string, more: Partial<PageLine> = {}): PageLine => ({
  lead: '',
  open: '',
  close: '',
  text,
  ...more,
})
const length = (text: string): number => text.length

it('keeps together what fits, and parts blocks before lines', () => {
  const table = ['one', 'two', 'three'].map((text) => lineOf(text))
  expect(pagesOf([[lineOf('head')], table], 100, 5).pages).toEqual([['head', 'one\ntwo\nthree']])
  expect(pagesOf([[lineOf('a'.repeat(30))], table], 40, 5).pages).toEqual([['a'.repeat(30)], ['one\ntwo\nthree']])
  expect(pagesOf([[lineOf('head'), lineOf('b'.repeat(12))], table], 20, 5).pages).toEqual([
    [`head\n${'b'.repeat(12)}`],
    ['one\ntwo\nthree'],
  ])
})

it('counts the lines that are left out', () => {
  const block = Array.from({ length: 10 }, (_, index) => lineOf(`${index}`.repeat(9)))
  expect(pagesOf([block], 21, 2)).toEqual({
    pages: [['000000000\n111111111'], ['222222222\n333333333']],
    leftOut: 6,
  })
  expect(pagesOf([[lineOf('word '.repeat(100).trim())]], 250, 1)).toMatchObject({ leftOut: 1 })
})

it('says the lead of a line once, and emphasises each of its pieces', () => {
  const row = lineOf('word '.repeat(200).trim(), { lead: '**Note:** ', open: '__', close: '__' })
  const { pages } = pagesOf([[row]], 400, 5)
  expect(pages.length).toBeGreaterThan(2)
  expect(pages[0]?.[0]).toMatch(/^\*\*Note:\*\* __word .* word__$/)
  for (const [text] of pages.slice(1)) expect(text).toMatch(/^__word .*word__$/)
})

it('cuts at a space, and a word only where it does not fit alone', () => {
  expect(cutText('steep for 25 days', 14, length)).toEqual({ head: 'steep for 25', rest: 'days' })
  expect(cutText('🍋🍋🍋🍋', 5, length)).toEqual({ head: '🍋🍋', rest: '🍋🍋' })
  expect(cutText('👩🏽‍🌾👩🏽‍🌾', 10, length)).toEqual({ head: '👩🏽‍🌾', rest: '👩🏽‍🌾' })
  expect(cutText('aaaa1\u00a0234.5', 8, length)).toEqual({ head: 'aaaa', rest: '1\u00a0234.5' })
  expect(cutText('1'.repeat(30), 8, length).head).toBe('1'.repeat(8))
  expect(shortened('Shaken, all of them', 12)).toBe('Shaken, all…')
  expect(shortened('Shaken', 6)).toBe('Shaken')
  expect(shortened('🍋'.repeat(50), 80).length).toBeLessThanOrEqual(80)
})

const STAMP = '\ufdd01796817600:D\ufdd1'
const word = fc.oneof(
  { weight: 5, arbitrary: fc.stringMatching(/^[a-z*_`#<@:-]{1,12}$/) },
  { weight: 3, arbitrary: fc.integer({ min: 1_000_000, max: 9_999_999 }).map((n) => `7${n}8\u00a0ml`) },
  { weight: 1, arbitrary: fc.constant(STAMP) },
  { weight: 1, arbitrary: fc.constantFrom('👩🏽‍🌾', '❤️', '柠檬', '\\', '1.', '-') },
  { weight: 1, arbitrary: fc.integer({ min: 1, max: 3000 }).map((count) => '*a7123456789'.repeat(count / 10 + 1)) },
)
const text = fc.array(word, { minLength: 1, maxLength: 25 }).map((words) => plainText(words.join(' ')))
const line: fc.Arbitrary<PageLine> = fc.record({
  lead: fc.constantFrom('', '**Label:** ', '-# '),
  open: fc.constant(''),
  close: fc.constant(''),
  text,
})
const blocks: fc.Arbitrary<readonly Block[]> = fc.array(fc.array(line, { minLength: 1, maxLength: 8 }), {
  minLength: 1,
  maxLength: 5,
})

it('never goes over the limit, loses nothing, and cuts no number, stamp or escape', () => {
  fc.assert(
    fc.property(blocks, fc.integer({ min: 300, max: 4000 }), (all, room) => {
      const { pages, leftOut } = pagesOf(all, room, Number.POSITIVE_INFINITY)
      expect(leftOut).toBe(0)
      for (const page of pages) {
        expect(page.join('').length).toBeLessThanOrEqual(room)
        expect(page.length).toBeGreaterThan(0)
      }
      const shown = pages.flat().flatMap((each) => each.split('\n'))
      for (const each of shown) {
        const bare = each.replace(/^(?:\*\*Label:\*\* |-# )/, '')
        expect(meanings(bare)).toEqual([])
        expect(bare).not.toMatch(/\ufdd0|\ufdd1|^\d*:D>|(?<!\\)<t:\d*$/)
        for (const [number] of shownOf(bare)
          .replace(/<t:[^>]*>/g, '')
          .matchAll(/\d{2,}/g)) {
          expect(number).toMatch(/^(?:7\d{7}8|7123456789)$/)
        }
      }
      const letters = (whole: string): string => whole.replace(/\s/g, '')
      const stamped = all.flat().map((each) => each.lead + each.text.replace(/\ufdd0([^\ufdd1]*)\ufdd1/g, '<t:$1>'))
      expect(letters(shownOf(shown.join('')))).toBe(letters(stamped.join('')))
      const few = pagesOf(all, room, 2)
      expect(few.pages).toEqual(pages.slice(0, 2))
      expect(few.leftOut > 0).toBe(pages.length > 2)
    }),
    { seed: SEED, numRuns: runs(20, 1000) },
  )
})
