import { describe, expect, it } from 'vitest'
import { wrapSentence } from '../../../bot/terminal/show/wrap.ts'

describe('a sentence in lines', () => {
  it('is broken at spaces', () => {
    expect(wrapSentence('one two three four', 9)).toEqual(['one two', 'three', 'four'])
  })

  it('keeps a line to type at its end whole', () => {
    expect(wrapSentence('It also needs this, for example /mix spirit:1 l 95%', 24)).toEqual([
      'It also needs this, for',
      'example',
      '/mix spirit:1 l 95%',
    ])
    expect(wrapSentence('Type /mix spirit:1 l 95% water:1 l', 12)).toEqual(['Type', '/mix spirit:1 l 95% water:1 l'])
  })

  it('keeps one that ends a sentence within it whole, too', () => {
    expect(wrapSentence('Add spirit first: /jar add lemon spirit:1 l. In already? Type: /jar undo lemon', 20)).toEqual([
      'Add spirit first:',
      '/jar add lemon spirit:1 l.',
      'In already? Type:',
      '/jar undo lemon',
    ])
  })

  it('takes a command within it for words', () => {
    expect(wrapSentence('/jar undo lemon takes it back; /help lists them.', 16)).toEqual([
      '/jar undo lemon',
      'takes it back;',
      '/help lists',
      'them.',
    ])
  })

  it('keeps a path whole, and breaks any other word that is too long', () => {
    expect(wrapSentence('No file /a/very/long/path here.', 10)).toEqual(['No file', '/a/very/long/path', 'here.'])
    expect(wrapSentence('abcdefghij', 4)).toEqual(['abcd', 'efgh', 'ij'])
    expect(wrapSentence('', 4)).toEqual([''])
  })

  it('breaks no sign of several characters', () => {
    expect(wrapSentence('👩🏽‍🌾👩🏽‍🌾👩🏽‍🌾', 4)).toEqual(['👩🏽‍🌾👩🏽‍🌾', '👩🏽‍🌾'])
    expect(wrapSentence('❤️⚗️☕', 3)).toEqual(['❤️', '⚗️', '☕'])
    expect(wrapSentence('🇮🇹🇮🇹', 3)).toEqual(['🇮🇹', '🇮🇹'])
    expect(wrapSentence('👩🏽‍🌾👩🏽‍🌾', 3)).toEqual(['👩🏽‍🌾', '👩🏽‍🌾'])
    expect(wrapSentence('1️⃣2️⃣', 3)).toEqual(['1️⃣', '2️⃣'])
    expect(wrapSentence('e\u0301e\u0301', 1)).toEqual(['e\u0301', 'e\u0301'])
  })

  it('unbinds a number and its unit', () => {
    expect(wrapSentence('with 500\u00a0ml of it', 11)).toEqual(['with 500 ml', 'of it'])
  })
})
