import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { decodeCustomId, encodeCustomId } from '../../../bot/discord/buttons/custom-id.ts'
import { runs, SEED } from '../../runs.ts'

const OWNER = '123456789012345678'

const owner = fc.bigInt({ min: 10n ** 16n, max: 10n ** 20n - 1n }).map(String)
const line = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 120 }).map((text) => `/${text}`)
const nudgeId = fc.option(fc.stringMatching(/^[0-9a-f]{24}$/))

it('carries owner, line and nudge', () => {
  const id = encodeCustomId({ owner: OWNER, line: '/jar shake #k7f2a', nudgeId: null })
  expect(id).toBe(`1|${BigInt(OWNER).toString(36)}|/jar shake #k7f2a`)
  const onNudge = { owner: OWNER, line: '/jar later all until:tomorrow', nudgeId: 'a'.repeat(24) }
  expect(decodeCustomId(encodeCustomId(onNudge)!)).toEqual(onNudge)
})

it('reads back whatever it wrote, and nothing longer than Discord takes', () => {
  let written = 0
  fc.assert(
    fc.property(fc.record({ owner, line, nudgeId }), (whole) => {
      const text = encodeCustomId(whole)
      if (text === null) return
      written += 1
      expect(text.length).toBeLessThanOrEqual(100)
      expect(decodeCustomId(text)).toEqual(whole)
    }),
    { seed: SEED, numRuns: runs(1000, 100_000) },
  )
  expect(written).toBeGreaterThan(100)
})

it.each([
  ['a line that is too long', { line: `/jar start ${'x'.repeat(90)}` }],
  ['astral characters, counted as two', { line: `/jar start ${'🍋'.repeat(40)}` }],
  ['a line with a separator', { line: '/jar start a|b' }],
  ['half a character', { line: '/jar start \ud83c' }],
  ['a line end', { line: '/jar start\nlemon' }],
  ['a line that is none', { line: 'jar list' }],
  ['nothing', { line: '' }],
  ['somebody at the terminal', { owner: 'local' }],
  ['a number that is too short', { owner: '1234567890123456' }],
  ['a nudge with a separator', { nudgeId: 'a|b' }],
])('does not write %s', (_what, part) => {
  const usual = { owner: OWNER, line: '/jar list', nudgeId: null }
  expect(encodeCustomId(usual)).not.toBeNull()
  expect(encodeCustomId({ ...usual, ...part })).toBeNull()
})

const coded = BigInt(OWNER).toString(36)

it.each([
  '',
  '1',
  '1||',
  `1|${coded}|`,
  `2|${coded}|/jar list`,
  `01|${coded}|/jar list`,
  `1|0${coded}|/jar list`,
  `1|${coded.toUpperCase()}|/jar list`,
  `1|${coded}|jar list`,
  `1|${coded}|/jar list|`,
  `1|${coded}|/jar list|${'a'.repeat(24)}|x`,
  `1|${coded}|/jar list|../../x`,
  `1|-5|/jar list`,
  `1|zzzzzzzzzzzzzz|/jar list`,
  `1|${coded}|/jar start ${'x'.repeat(100)}`,
  `${' '.repeat(4)}1|${coded}|/jar list`,
])('does not read %j', (text) => expect(decodeCustomId(text)).toBeNull())

it('does not read garbage', () => {
  expect(decodeCustomId(`1|${coded}|/jar list`)).not.toBeNull()
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
      expect(decodeCustomId(text)).toBeNull()
    }),
    { seed: SEED, numRuns: runs(1000, 100_000) },
  )
})

describe('what anybody may press', () => {
  const line = `/share make:${coded}.3m8qv0zt`

  it('is a share to make, and names nobody as its owner', () => {
    const id = encodeCustomId({ owner: null, line, nudgeId: null })
    expect(id).toBe(`1|0|${line}`)
    expect(decodeCustomId(id!)).toEqual({ owner: null, line, nudgeId: null })
  })

  it.each([
    '/jar discard #k7f2a',
    '/forget confirm:yes',
    '!show',
    '@0123456789ab /plan',
    '/share',
    '/share make:',
    `${line} spirit:1 l`,
    `/share withdraw:3m8qv0zt make:${coded}.3m8qv0zt`,
    `/share make:${coded}.3M8QV0ZT`,
  ])('is not %s', (other) => {
    expect(encodeCustomId({ owner: null, line: other, nudgeId: null })).toBeNull()
    expect(decodeCustomId(`1|0|${other}`)).toBeNull()
  })

  it('is on no nudge', () => {
    expect(encodeCustomId({ owner: null, line, nudgeId: 'a' })).toBeNull()
    expect(decodeCustomId(`1|0|${line}|a`)).toBeNull()
    expect(decodeCustomId(`1|00|${line}`)).toBeNull()
  })
})
