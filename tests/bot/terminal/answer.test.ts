import fc from 'fast-check'
import { expect, it } from 'vitest'
import { showJson } from '../../../bot/terminal/ask/show-json.ts'
import { answer, type Show, showText } from '../../../bot/terminal/chat/answer-line.ts'
import { runs, SEED } from '../../runs.ts'
import { newAsker } from '../asker.ts'
import { soundCommands } from '../chat/fakes.ts'
import { noFiles } from '../test-desk.ts'
import { fakeSpeech } from './fakes.ts'

const words = [
  '/',
  '/help ',
  'mix',
  'syrup',
  'jar start',
  'spirit:',
  'strength:',
  'note:',
  'to-',
  ':',
  '"',
  ' ',
  '1 l',
  '95%',
]
const line = fc
  .array(fc.oneof(fc.constantFrom(...words), fc.string({ unit: 'binary', maxLength: 8 })), { maxLength: 20 })
  .map((pieces) => pieces.join(''))
  .filter((text) => !/nan|infinity|undefined/i.test(text))

const print = async (text: string, show: Show) => {
  const logged: string[] = []
  const dispatch = { ...newAsker(), commands: soundCommands, nowMs: 0, log: (fault: string) => logged.push(fault) }
  const printed = (await answer(text, dispatch, fakeSpeech, show, noFiles)).text
  expect(logged).toEqual([])
  return printed
}

it('prints plain words whatever is typed', async () => {
  await fc.assert(
    fc.asyncProperty(line, async (text) => {
      const printed = await print(text, showText({ width: 60, colour: false }))
      expect(printed).not.toBe('')
      expect(printed).not.toMatch(/NaN|Infinity|undefined|\[object|\n\s+at /)
      expect(printed).not.toMatch(/(?!\n)[\p{Cc}\p{Cs}\u202a-\u202e]/u)
    }),
    { seed: SEED, numRuns: runs(50, 10000) },
  )
})

it('prints one JSON object a line whatever is typed', async () => {
  await fc.assert(
    fc.asyncProperty(line, async (text) => {
      const printed = await print(text, showJson)
      expect(printed).not.toContain('\n')
      const { command, data, error } = JSON.parse(printed)
      expect(command === null || typeof command === 'string').toBe(true)
      expect((data === undefined) !== (error === undefined)).toBe(true)
    }),
    { seed: SEED, numRuns: runs(50, 10000) },
  )
})
