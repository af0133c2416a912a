import { expect, it } from 'vitest'
import type { Shelf } from '../shelves.ts'
import { talkerFor } from './told.ts'

const SAID: readonly (readonly [shelf: Shelf, first: string, then: string, choices: readonly string[]])[] = [
  ['lemon_ginger', 'shook the lemon', 'no, the ginger one', ['/jar undo lemon', '/jar shake ginger']],
  ['lemon_ginger', 'shook the lemon', 'scrap that, it was the other jar', ['/jar undo lemon', '/jar shake ginger']],
  ['lemon_ginger', 'shook the lemon', 'the other one I mean', ['/jar undo lemon', '/jar shake ginger']],
  [
    'lemon_ginger',
    'strained the ginger, 610 ml',
    'wrong one',
    ['/jar undo ginger', '/jar strain lemon measured:610 ml'],
  ],
  ['lemon_ginger', 'ho scosso lo zenzero', 'no, il limone', ['/jar undo ginger', '/jar shake lemon']],
  ['lemon_ginger', 'ho scosso lo zenzero', 'era l’altro vaso', ['/jar undo ginger', '/jar shake lemon']],
  ['lemon_ginger', 'shook the lemon', 'macché limone, ho scosso lo zenzero', ['/jar undo lemon', '/jar shake ginger']],
  ['lemon_ginger', 'shook the lemon', 'ma che limone, era lo zenzero', ['/jar undo lemon', '/jar shake ginger']],
  [
    'lemon_ginger',
    'ho agitato lo zenzero',
    'ma quale zenzero, ho agitato il limone',
    ['/jar undo ginger', '/jar shake lemon'],
  ],
  ['lemon_ginger', 'shook the lemon', 'the lemon? nope, I shook the ginger', ['/jar undo lemon', '/jar shake ginger']],
  [
    'lemon_ginger',
    'shook the ginger',
    'it wasn’t the ginger, I shook the lemon',
    ['/jar undo ginger', '/jar shake lemon'],
  ],
  ['lemon_ginger', 'shook the ginger', 'what ginger? I shook the lemon', ['/jar undo ginger', '/jar shake lemon']],
  [
    'lemon_ginger',
    'strained the ginger, 610 ml',
    'ma che zenzero, ho filtrato il limone',
    ['/jar undo ginger', '/jar strain lemon measured:610 ml'],
  ],
  ['lemon_ginger', 'shook the lemon', 'nae the lemon, the ginger', ['/jar undo lemon', '/jar shake ginger']],
  ['lemon_ginger', 'shook the lemon', 'och it wis the ginger', ['/jar undo lemon', '/jar shake ginger']],
  ['lemon_ginger', 'shook the lemon', 'naw, the ginger ah meant', ['/jar undo lemon', '/jar shake ginger']],
  ['lemon_ginger', 'shook the lemon', 'not that one, the ginger', ['/jar undo lemon', '/jar shake ginger']],
  ['lemon_ginger', 'shook the lemon', 'I said ginger', ['/jar undo lemon', '/jar shake ginger']],
  ['lemon_ginger', 'ho scosso il limone', 'ho sbagliato, era lo zenzero', ['/jar undo lemon', '/jar shake ginger']],
  ['fair', 'shook the sloe', 'it was the other jar', ['/jar undo sloe', '/jar shake lemon', '/jar shake orange']],
]

it.each(SAID)('%s: %s, then %s: one question', async (shelf, first, then, choices) => {
  const one = await talkerFor({ after: null, shelf })
  expect((await one.say(first)).recorded).toBe(1)
  expect(await one.say(then)).toMatchObject({ code: 'question', recorded: 0, choices })
})

it('shows the other jar where one was only shown', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  await one.say('/jar show ginger')
  expect(await one.say('no, the lemon')).toMatchObject({ read: '/jar show lemon', code: null, recorded: 0 })
})

it.each(['no', 'scrap that', 'and the lemon'])('is of no other jar: %s', async (then) => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  await one.say('shook the ginger')
  expect((await one.say(then)).choices).not.toContain('/jar undo ginger')
})

it.each([
  ['macché limone, ho agitato lo zenzero', '/jar shake ginger'],
  ['not the ginger, I shook the lemon', '/jar shake lemon'],
])('shakes the one that was meant, where neither was told before: %s', async (text, read) => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  expect(await one.say(text)).toMatchObject({ read, recorded: 1 })
})

it.each([
  ['macché limone, ho filtrato lo zenzero, 600 ml', '/jar strain ginger measured:600 ml'],
  ['not the lemon, I strained the ginger, 590 ml', '/jar strain ginger measured:590 ml'],
])('records another deed of the jar that was meant: %s', async (text, read) => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  await one.say('shook the lemon')
  expect(await one.say(text)).toMatchObject({ read, recorded: 1 })
})

it('corrects nothing where another deed is told', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  await one.say('shook the lemon')
  expect((await one.say('lemon? no change. I shook the ginger')).choices).not.toContain('/jar undo lemon')
})
