import { expect, it } from 'vitest'
import { hear } from '../../bot/chat/hear/hear.ts'
import { AIDS } from '../../bot/talk/emergency/aid-words.ts'
import { firstAidSteps, stepsForAid } from '../../bot/talk/emergency/first-aid.ts'
import { newTalkMemory } from '../../bot/talk/memory/remembered.ts'
import { newAsker } from '../bot/asker.ts'
import { commands, testDesk } from '../bot/test-desk.ts'

/** What is answered to each of lines said one after the other. */
async function answersTo(lines: readonly string[]) {
  const asker = { ...newAsker(), talk: newTalkMemory(), commands, log: () => {} }
  const all: unknown[] = []
  for (const line of lines) {
    const { outcome } = await hear(line, { ...asker, nowMs: Date.UTC(2026, 10, 30) })
    all.push('reply' in outcome ? outcome.reply.data : null)
  }
  return all
}

it('is answered in a talk, again and again, and forgotten after a while', async () => {
  const card = 'my neighbour drank a whole bottle and is slurring'
  const questions = [
    'is coffee any good?',
    'and a shower?',
    'may I leave her alone?',
    'she’s better now',
    'can she sleep',
  ]
  const answers = await answersTo([card, ...questions])
  expect(answers.map((data) => (data as { asked: unknown }).asked)).toEqual([
    [],
    ['coffee'],
    ['shower'],
    ['alone'],
    ['fine_now'],
    ['sleep'],
  ])
  const between = Array.from({ length: 7 }, () => '/jar list')
  expect((await answersTo([card, ...between, 'is coffee any good?'])).at(-1)).not.toMatchObject({ asked: ['coffee'] })
})

it.each([
  ['my friend drank methylated spirit', 'I’m not sure, he’s asleep', 'unconscious_after_drinking'],
  ['my friend drank methylated spirit', 'don’t know, I think she is sleeping', 'unconscious_after_drinking'],
  ['mio zio ha bevuto alcol denaturato', 'non so, dorme', 'unconscious_after_drinking'],
])('stays an emergency: %s, %s', async (first, then, id) => {
  expect((await answersTo([first, then])).at(-1)).toMatchObject({ id })
})

it('says the answer first, then when to call, and at most four steps with sources', async () => {
  const desk = testDesk({ width: 80 })
  await desk.run('/settings country:IE')
  const text = await desk.textOf('my cousin is drunk, would a cold shower help?')
  expect(text).toMatch(/^No shower or bath\..* Call\s112 if they won’t wake up/s)
  expect(text).toMatch(/01 809 2166/)
  expect(text.split('\n').filter((line) => /^ +\d /.test(line))).toHaveLength(3)
  for (const aid of AIDS) {
    expect(stepsForAid[aid].length).toBeLessThanOrEqual(4)
    for (const step of stepsForAid[aid]) expect(firstAidSteps[step].source).not.toBe('')
  }
})

it.each([
  ['my son drank limoncello and passed out', 'he woke up', 'swallowed_spirit_child'],
  ['my aunt ate yew berries and is unconscious', 'she can talk again, she is awake', 'swallowed_plant'],
  ['my aunt passed out after the sloe gin', 'she’s awake now', 'swallowed_spirit_adult'],
])('speaks of no compressions once they are awake, and forgets no poison: %s', async (first, then, id) => {
  const [, last] = await answersTo([first, then])
  expect(last).toMatchObject({ id })
  expect((last as { steps: readonly string[] }).steps).not.toContain('check_breathing')
})

it('has no compressions for whoever breathes, and still calls for who can’t be woken', async () => {
  const [, last] = await answersTo(['my aunt passed out after the sloe gin', 'she is breathing normally'])
  expect(last).toMatchObject({ id: 'unconscious_after_drinking', asked: ['breathes'] })
  expect((last as { steps: readonly string[] }).steps).not.toContain('check_breathing')
})

it('finds no relief in feeling well after what poisons', async () => {
  expect((await answersTo(['my friend drank methylated spirit', 'he’s fine now'])).at(-1)).toMatchObject({
    id: 'methanol',
    asked: ['fine_now'],
  })
})
