import { describe, expect, it } from 'vitest'
import type { Shelf } from '../shelves.ts'
import { talkerFor } from './told.ts'

/** Shelf, what was said before, what is said then, the answer’s code and the line that was read; none stands in the corpus. */
describe.each<readonly [shelf: Shelf, before: string | null, text: string, code: string | null, read: string | null]>([
  // A jar is asked for by what has become of it.
  ['fair', null, 'how many weeks has the sloe done', null, '/jar show sloe'],
  ['fair', null, 'has the sloe had long enough', null, '/jar show sloe'],
  ['fair', null, 'do you happen to know how long the sloe’s got', null, '/jar show sloe'],
  // Bottles that there are.
  ['fair', null, 'the raspberry is down to two bottles', 'question', '/bottles raspberry given:2'],
  // An amount is told.
  ['lemon', null, 'topped it with a splash of vodka, 50 ml', null, '/jar add lemon spirit:50 ml vodka 40% as:top-up'],
  // By what kind of plant is in it, and by when it was begun.
  ['lemon_ginger', null, 'the citrus one gets 4 stars', null, '/jar taste lemon rating:4'],
  ['lemon_ginger', null, 'shook the root jar', null, '/jar shake ginger'],
  ['lemon_ginger', null, 'quello agli agrumi l’ho agitato', null, '/jar shake lemon'],
  ['lemon_ginger', null, 'the gingery one is a 3 out of 5', null, '/jar taste ginger rating:3'],
  ['lemon_ginger', 'strained it, 640 ml', 'the older of the two', null, '/jar strain lemon measured:640 ml'],
  ['lemon_ginger', 'strained it, 640 ml', 'the newer one', null, '/jar strain ginger measured:640 ml'],
  ['lemon_ginger', 'strained it, 640 ml', 'the second one', null, '/jar strain ginger measured:640 ml'],
  // What was written down of the other jar.
  ['lemon_ginger', '/jar shake lemon', 'sorry i shook the ginger, not the lemon', 'question', '/jar undo lemon'],
  ['lemon_ginger', '/jar shake lemon', 'silly me, it’s the ginger that got shaken', 'question', '/jar undo lemon'],
  // Looked at once more.
  ['lemon', '/jar strain lemon measured:930 ml', 'ho rimisurato: 905 ml', null, '/jar correct lemon measured:905 ml'],
  ['lemon', '/jar strain lemon measured:930 ml', 'second look says 912 ml', null, '/jar correct lemon measured:912 ml'],
  [
    'lemon_strained',
    '/jar sweeten lemon water:1.5 l sugar:500 g',
    'i miscounted, only 1.4 l of water went in',
    null,
    '/jar correct lemon water:1.4 l',
  ],
])('on the shelf %s, after %s: %s', (shelf, before, text, code, read) => {
  it(`is ${code ?? 'answered'}: ${read}`, async () => {
    expect(await (await talkerFor({ after: before, shelf })).say(text)).toMatchObject({ code, read })
  })
})

describe.each<readonly [before: string, text: string, read: string]>([
  [
    '/dilute spirit:1 l strength:95% to-strength:50%',
    'and if i had three and a half litres?',
    '/dilute spirit:3.5 litres strength:95% to-strength:50%',
  ],
  ['/serving pour:40 ml strength:28%', 'what about a 30 ml one at 32', '/serving pour:30 ml strength:32%'],
  ['/plan of:10 lemons spirit:1 l 95%', 'off we go, and name it bella', '/jar start bella of:10 lemons spirit:1 l 95%'],
])('after %s: %s', (before, text, read) => {
  it(`is ${read}`, async () => {
    expect(await (await talkerFor({ after: before })).say(text)).toMatchObject({ read, code: null })
  })
})

it.each(['how much money is that', 'ballpark cost for the lot?', 'is it dear to make'])(
  '%s: what a plan costs',
  async (text) => {
    const one = await talkerFor({ after: '/plan of:10 lemons spirit:1 l 95%' })
    expect(await one.say(text)).toMatchObject({ command: 'cost' })
  },
)
