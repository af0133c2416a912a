import fc from 'fast-check'
import { expect, it } from 'vitest'
import { escapeText } from '../../../bot/discord/show/escape-text.ts'
import { plainText } from '../../../bot/discord/show/plain-text.ts'
import { runs, SEED } from '../../runs.ts'
import { HIDING, HOSTILE, WHOLE } from './hostile-texts.ts'
import { meanings, shownOf } from './markdown.ts'

it.each(HOSTILE)('%s', (typed) => {
  expect(meanings(escapeText(typed))).toEqual([])
  expect(shownOf(escapeText(typed))).toBe(typed)
})

it('knows what would mean something', () => {
  expect(HOSTILE.filter((typed) => meanings(typed).length === 0 && shownOf(typed) === typed)).toEqual([])
})

it.each(HIDING)('%j is shown as %j', (typed, shown) => {
  expect(shownOf(escapeText(typed.replace(/[\ufdd0\ufdd1]/g, '')))).toBe(shown)
  expect(plainText(plainText(typed))).toBe(plainText(typed))
})

it.each(WHOLE)('%s stays whole', (typed) => {
  expect(plainText(typed)).toBe(typed)
  expect(shownOf(escapeText(typed))).toBe(typed)
})

it('hides nothing in tags but the flags that are spelt so', () => {
  const letters = [...'ignore all this'].map((letter) => String.fromCodePoint(0xe0000 + letter.charCodeAt(0))).join('')
  expect(plainText(`🏴${letters}\u{e007f}!`)).toBe('🏴!')
})

it('leaves numbers and their signs alone', () => {
  for (const text of [
    '1.56 l ± 0.03 l',
    '−18 °C',
    '#k7f2a',
    '1:1',
    '12:30',
    'strength:90% to-strength:30%',
    '250 g/L',
  ]) {
    expect(escapeText(`take ${text}`)).toBe(`take ${text}`)
  }
})

const sign = fc.constantFrom(
  ...'\\*_~`|<>[]()@:#+-/.!&1 a\u200b\u200d\u202e\ud83c',
  'http://',
  '@everyone',
  '<@1>',
  '-# ',
  '```',
)
const text = fc.oneof(
  fc.array(sign, { maxLength: 30 }).map((signs) => signs.join('')),
  fc.string({ unit: 'binary', maxLength: 60 }).map((any) => any.replace(/[\ufdd0\ufdd1]/g, '')),
)

it('lets nothing mean anything, and shows what was typed', () => {
  fc.assert(
    fc.property(text, (typed) => {
      const escaped = escapeText(typed)
      expect(meanings(escaped)).toEqual([])
      expect(shownOf(escaped)).toBe(plainText(typed))
      expect(escaped).toBe(escapeText(plainText(typed)))
    }),
    { seed: SEED, numRuns: runs(1000, 300_000) },
  )
})
