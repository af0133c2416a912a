import fc from 'fast-check'
import { expect, it } from 'vitest'
import { parseLine } from '../../../bot/chat/grammar/grammar.ts'
import { execute } from '../../../bot/chat/run/execute.ts'
import { runs, SEED } from '../../runs.ts'
import { newAsker } from '../asker.ts'
import { soundCommands } from './fakes.ts'

const pieces = [
  '/',
  'mix',
  'syrup',
  'jar',
  'start',
  'list',
  'spirit:',
  'note:',
  'strength:',
  'to-',
  ':',
  '"',
  '\\',
  ' ',
  '\t',
]
const odd = [
  '1 l',
  '95%',
  'NaN',
  '-1',
  'Infinity',
  '__proto__:',
  'constructor',
  '\u0000',
  '\ud800',
  '\u202e',
  'é',
  '🍋',
]
const line = fc.oneof(
  fc
    .array(fc.oneof(fc.constantFrom(...pieces, ...odd), fc.string({ unit: 'grapheme' })), { maxLength: 30 })
    .map((all) => all.join('')),
  fc.string({ unit: 'binary', maxLength: 300 }),
)
const parameters = { seed: SEED, numRuns: runs(400, 10000) }

it('answers any line at all, and never with a fault of ours', async () => {
  const logged: string[] = []
  await fc.assert(
    fc.asyncProperty(line, async (text) => {
      const outcome = await execute(text, {
        ...newAsker(),
        commands: soundCommands,
        nowMs: 0,
        log: (fault) => logged.push(fault),
      })
      if (outcome.ok) expect(JSON.stringify(outcome.reply.data)).not.toMatch(/null|undefined/)
      else expect(outcome.error.code).not.toBe('internal')
    }),
    parameters,
  )
  expect(logged).toEqual([])
})

it('reads back any values that are quoted', () => {
  const value = fc
    .string({ unit: 'grapheme', minLength: 1 })
    .filter((text) => text.trim() === text && !/\p{Cc}/u.test(text))
  const quoted = (text: string) => `"${text.replace(/["\\]/g, '\\$&')}"`
  fc.assert(
    fc.property(value, value, (infusion, strength) => {
      const { options } = parseLine(`/syrup strength:${quoted(strength)} infusion: ${quoted(infusion)}`, soundCommands)
      expect({ ...options }).toEqual({ infusion, strength })
    }),
    parameters,
  )
})

it('takes the longest lines in a blink', async () => {
  const worst = ['spirit ', '"\\', 'a', ' ', 'note', ': ', 'spirit:" ', 'strength :x ']
  const startMs = performance.now()
  for (const piece of worst) {
    const text = `/mix ${piece.repeat(4000)}`.slice(0, 4000)
    expect((await execute(text, { ...newAsker(), commands: soundCommands, nowMs: 0, log: () => {} })).ok).toBe(false)
  }
  expect(performance.now() - startMs).toBeLessThan(500)
})
