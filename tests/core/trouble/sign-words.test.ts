import { describe, expect, it } from 'vitest'
import { call } from '../../../bot/calls/call.ts'
import { lineOf } from '../../../bot/calls/write-line.ts'
import { parseSigns } from '../../../core/trouble/parse-signs.ts'
import { signs, signText } from '../../../core/trouble/signs.ts'

describe('a sign', () => {
  it.each(signs)('%s is read by its name and in the words that a line says it by', (sign) => {
    expect(parseSigns(sign)).toEqual([sign])
    expect(parseSigns(signText(sign))).toEqual([sign])
    expect(parseSigns(`${signText(sign)} + vinegar`)).toEqual([...new Set([sign, 'vinegar'])])
  })

  it('has words of its own, each read as no other', () => {
    expect(new Set(signs.map(signText)).size).toBe(signs.length)
    // Each is a word that says what was seen, and no key of a table.
    for (const key of ['varnish', 'growth', 'sure', 'known', 'rotten', 'foam'] as const)
      expect(signText(key)).not.toBe(key)
  })

  it.each([
    ['growth fizz', ['growth', 'fizz']],
    ['growth + fizz', ['growth', 'fizz']],
    ['smells of vinegar and fizzes', ['vinegar', 'fizz']],
    ['Something grows, Slimy', ['growth', 'slime']],
  ] as const)('%s is a list', (text, list) => {
    expect(parseSigns(text)).toEqual(list)
  })

  it.each(['zorble', 'smells of zorble', '', 'growth + zorble'])('%j is none', (text) => {
    expect(() => parseSigns(text)).toThrow()
  })

  it('stands in a line in words', () => {
    const line = lineOf(call('trouble', { symptom: ['solvent'], yes: ['varnish'] }))
    expect(line).toBe('/trouble smells of solvent yes:smells of nail varnish')
  })
})
