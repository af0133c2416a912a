import { expect, it } from 'vitest'
import { parseLine } from '../../../bot/chat/grammar/grammar.ts'
import { emergencyIn } from '../../../bot/chat/run/emergency.ts'
import { commands } from '../../../bot/commands/index.ts'
import { signs } from '../../../core/trouble/signs.ts'
import { type SymptomId, symptomIds, symptoms } from '../../../core/trouble/symptoms.ts'
import { newAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'

/** Somebody harmed is answered before any symptom is looked at, so that nothing is asked of them. */
const HARMED: readonly SymptomId[] = ['someone_ill', 'spilled_or_burnt']

const asked = symptomIds.filter((id) => !HARMED.includes(id))

it('reads no harm in an answer that it offers, of any symptom and any question', async () => {
  const asker = newAsker()
  for (const id of asked) {
    for (const sign of signs) {
      for (const answer of ['yes', 'no']) {
        const line = `/trouble ${symptoms[id].en[0]} ${answer}:${sign} no:fizz + foam`
        expect(await emergencyIn(line, asker), line).toBeNull()
        expect(await emergencyIn(parseLine(line.replace(' no:fizz + foam', ''), commands), asker), line).toBeNull()
      }
    }
  }
})

it('goes on to the next question or to a verdict with each answer that it offers', async () => {
  const desk = testDesk({ width: 80 })
  let offered = 0
  for (const id of asked) {
    const first = await desk.textOf(`/trouble ${symptoms[id].en[0]}`)
    const lines = first.replaceAll(/\n +/g, '  ').matchAll(/(?:Yes|No): (\/trouble .+?)(?= {2,}|\n|$)/g)
    for (const [, line] of lines) {
      offered++
      const text = await desk.textOf(line!)
      expect(text, line).not.toMatch(/^Call /)
      expect(text, line).not.toBe(first)
    }
  }
  expect(offered).toBeGreaterThan(asked.length)
}, 60_000)

it('still reads harm in whatever stands beside an answer', async () => {
  const asker = newAsker()
  for (const line of [
    '/trouble lid bulging no:burst my hand is bleeding badly',
    '/trouble lid bulging yes:the bottle burst',
    '/trouble lid bulging no:burst note:the jar exploded',
  ]) {
    expect(await emergencyIn(line, asker), line).not.toBeNull()
  }
})
