import { expect, expectTypeOf, it, test } from 'vitest'
import { type CallValues, call, callOfTexts, invocationOf } from '../../../bot/calls/call.ts'
import { lineOf } from '../../../bot/calls/write-line.ts'
import { parseLine } from '../../../bot/chat/grammar/grammar.ts'
import { execute } from '../../../bot/chat/run/execute.ts'
import { commands } from '../../../bot/commands/index.ts'
import { millilitres, percentVol, waterMillilitres } from '../../../core/quantity/write/made-amounts.ts'
import { newAsker } from '../asker.ts'

const sweeten = call('jar sweeten', { jar: 'of: "all"', water: waterMillilitres(511.5), after: 3 })

it('is written as a line that the grammar reads as the same', () => {
  expect(lineOf(sweeten)).toBe('/jar sweeten "of: \\"all\\"" water:511.5 ml after:3')
  expect(lineOf(sweeten, true)).toBe('/jar sweeten jar:"of: \\"all\\"" water:511.5 ml after:3')
  for (const line of [lineOf(sweeten), lineOf(sweeten, true)]) {
    expect({ ...parseLine(line, commands).options }).toEqual(invocationOf(sweeten).options)
  }
})

it('puts a jar first and a note last, and leaves out what has no value', () => {
  const taste = call('jar taste', { note: 'grassy', rating: undefined, jar: 'basil' })
  expect(lineOf(taste)).toBe('/jar taste basil note:grassy')
  expect(lineOf(call('jar list'))).toBe('/jar list')
})

it('is made of texts that were typed once, as long as they can be read', () => {
  expect(callOfTexts('jar taste', [['rating', '4/5']])?.values.rating).toEqual({ typed: '4/5', is: 4 })
  expect(callOfTexts('jar taste', [['rating', '9']])).toBeNull()
  expect(callOfTexts('jar taste', [['stars', '4']])).toBeNull()
})

it('runs as its line does', async () => {
  const dispatch = { ...newAsker(), commands, nowMs: Date.UTC(2026, 10, 29), log: () => {} }
  const mix = call('adjust', {
    liqueur: millilitres(500),
    strength: percentVol(40),
    'to-strength': percentVol(30),
  })
  const asked = await execute(mix, dispatch)
  expect(asked.ok).toBe(true)
  const typed = await execute(lineOf(mix), dispatch)
  expect(JSON.stringify(asked)).toBe(JSON.stringify(typed))
})

test('compiles no option that its command does not have, and no value of another kind', () => {
  expectTypeOf<CallValues<'jar sweeten'>>().not.toHaveProperty('measured')
  // @ts-expect-error a text is no amount
  const wrong: CallValues<'jar sweeten'> = { water: '500 ml' }
  expect(wrong).toBeDefined()
})
