import { expect, it } from 'vitest'
import type { Shelf } from '../shelves.ts'
import { talkerFor } from './told.ts'

/** Two clauses of one sentence, and the lines that they come to. */
const BOTH: readonly (readonly [shelf: Shelf, text: string, reads: readonly string[]])[] = [
  ['lemon', 'tasted it, 3 stars, and print the tag', ['/jar taste lemon rating:3', '/jar tag lemon']],
  ['lemon', 'shook it and print a tag', ['/jar shake lemon', '/jar tag lemon']],
  ['lemon', 'rename it winter sun and show it', ['/jar rename lemon to:winter sun', '/jar show winter sun']],
  ['lemon', 'rename it blood orange and show it', ['/jar rename lemon to:blood orange', '/jar show blood orange']],
  ['lemon', 'rinominalo tramonto e mostralo', ['/jar rename lemon to:tramonto', '/jar show tramonto']],
  ['lemon', 'what’s due and how strong is it', ['/jar list', '/jar show lemon']],
  ['lemon', 'shook it, and it’s cloudy', ['/trouble cloudy jar:lemon', '/jar shake lemon']],
  ['lemon', 'show the lemon and remind me on sunday', ['/jar show lemon', '/jar later lemon until:sunday']],
  ['lemon_ginger', 'shook the ginger and how strong is it', ['/jar shake ginger', '/jar show ginger']],
  [
    'lemon_bottled',
    'opened a bottle and it’s far too sweet',
    ['/bottles lemon opened:1', '/trouble too sweet jar:lemon'],
  ],
  ['lemon_bottled', 'gave away one bottle and print the label', ['/bottles lemon given:1', '/jar label lemon']],
  [
    'lemon_sweetened',
    'filtered it, 2.4 l, and print the labels',
    ['/jar filter lemon measured:2.4 l', '/jar label lemon'],
  ],
  // A question of the jar as it stands then, behind a comma, a dash, a stop.
  ['lemon', 'gave it a shake, when’s it ready', ['/jar shake lemon', '/jar show lemon']],
  ['lemon_ginger', 'shook the ginger - how many days left', ['/jar shake ginger', '/jar show ginger']],
  ['lemon_ginger', 'shook the lemon, is the ginger ready', ['/jar shake lemon', '/jar show ginger']],
  ['lemon_sweetened', 'bottled 6 x 375 ml. how long now?', ['/jar bottle lemon bottles:6 x 375 ml', '/jar show lemon']],
  ['lemon', 'l’ho scosso, quanto manca?', ['/jar shake lemon', '/jar show lemon']],
  [
    'lemon_sweetened',
    'imbottigliato, 6 da mezzo litro, quando si può bere',
    ['/jar bottle lemon bottles:6 x 0.5 litro', '/jar show lemon'],
  ],
  ['lemon', 'assaggiato, 4 stelle, e stampa l’etichetta', ['/jar taste lemon rating:4', '/jar label lemon']],
]

it.each(BOTH)('%s: %s', async (shelf, text, reads) => {
  const one = await talkerFor({ after: null, shelf })
  const told = await one.say(text)
  expect([told, ...told.also].map(({ read }) => read)).toEqual(reads)
})

it.each([
  ['lemon', 'strained it, 3 1/2 cups, how much sugar', '/jar strain lemon measured:3 1/2 cups'],
  ['lemon', 'strained it, 900 ml at 84, what next?', '/jar strain lemon measured:900 ml strength:84%'],
  ['lemon', 'strained the lemon - 900 ml - how much sugar', '/jar strain lemon measured:900 ml'],
  ['lemon', 'filtrato, 920 ml, quanto zucchero?', '/jar strain lemon measured:920 ml'],
  ['lemon_ginger', 'strained the ginger, 620 ml, how much sugar do I need', '/jar strain ginger measured:620 ml'],
] as const)('writes down what was strained, whose answer says how much sugar: %s: %s', async (shelf, text, read) => {
  const one = await talkerFor({ after: null, shelf })
  expect(await one.say(text)).toMatchObject({ read, code: null, recorded: 1, also: [] })
})

it.each([
  ['lemon', 'should I strain it, 900 ml, how much sugar'],
  ['lemon', 'strained it, 930 ml at 85, how do I get to 30?'],
  ['lemon_ginger', 'strained it, 3 cups, how much sugar'],
  ['lemon_ginger', 'shook it, when is it ready'],
  ['lemon', 'should I shake it, when is it ready'],
  ['lemon', 'l’ho scosso?'],
] as const)('writes nothing down that is only asked, or of which jar is not told: %s: %s', async (shelf, text) => {
  const one = await talkerFor({ after: null, shelf })
  expect((await one.say(text)).recorded).toBe(0)
})

it.each([
  ['make it again, double', '/again lemon spirit:2 l 95%'],
  ['make it again but twice as much and less sweet', '/again lemon spirit:2 l 95% to-sweetness:dry'],
  ['make the lemon again, half a batch', '/again lemon spirit:0.5 l 95%'],
  ['make the lemon again, three times as much', '/again lemon spirit:3 l 95%'],
  ['rifallo, il triplo', '/again lemon spirit:3 l 95%'],
])('makes a batch again so many times as large: %s', async (text, read) => {
  const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
  expect(await one.say(text)).toMatchObject({ read, code: null })
})

it('names how many times where it is of one thing in it', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
  const { outcome } = await one.hear('make it again with half the sugar')
  expect(JSON.stringify(outcome)).toContain('"half')
})

it('answers what is asked, and asks last how much was bottled', async () => {
  const one = await talkerFor({ after: null, shelf: 'fair' })
  const told = await one.say('bottled the orange. how long now?')
  expect([told, ...told.also].map(({ command }) => command)).toEqual(['jar show', 'jar bottle'])
  expect(told.recorded).toBe(0)
})
