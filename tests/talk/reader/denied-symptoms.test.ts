import { describe, expect, it } from 'vitest'
import { sentenceIn } from '../../../bot/talk/bits/sentence.ts'
import { symptomIn } from '../../../bot/talk/frames/symptoms.ts'
import { english } from '../../../bot/talk/lexicon/english.ts'
import { italian } from '../../../bot/talk/lexicon/italian.ts'
import { talkerFor } from './told.ts'

/** What something has become, and has not. */
const BECOME =
  'cloudy, hazy, milky, murky, bitter, brown, mouldy, fizzy, jelly, musty, soapy, sour, harsh, too sweet, too dry, too weak, curdled, frothy'.split(
    ', ',
  )
const DIVENTATO = 'torbido, opaco, amaro, marrone, frizzante, aspro, troppo dolce'.split(', ')

const DENIED = [
  'it’s not X',
  'it isn’t X',
  'it is not at all X',
  'it’s never X',
  'it has not gone X',
  'the lemon hasn’t gone X',
  'it never went X',
  'it didn’t turn X',
  'it’s no longer X',
  'it isn’t X any more',
  'mine has never been X',
  'it’s not really X',
]
const KEPT_FROM = ['how do I keep it from going X', 'how do I stop it going X', 'how can I avoid it getting X']
const NEGATO = ['non è X', 'non è più X', 'non è diventato X', 'il limone non è mai diventato X', 'non è affatto X']
const EVITATO = ['come evito che diventi X', 'come faccio a non farlo diventare X']

const TOLD = ['it’s gone X', 'it has gone X and it won’t stop', 'it isn’t good: it went X', 'not only is it X']

const knows = { lexicons: [english, italian], jars: [], today: { year: 2026, month: 11, day: 29 } }

const saidOf = (frames: readonly string[], words: readonly string[]): readonly string[] =>
  words.flatMap((word) => frames.map((frame) => frame.replace('X', word)))

describe('what has not gone wrong', () => {
  const all = [...saidOf([...DENIED, ...KEPT_FROM], BECOME), ...saidOf([...NEGATO, ...EVITATO], DIVENTATO)]

  it('is no symptom', () => {
    expect(all.length).toBeGreaterThan(300)
    expect(all.filter((text) => symptomIn(sentenceIn(text, knows)) !== null)).toEqual([])
  })

  it('is never answered as if it had', async () => {
    for (const text of all.filter((_, at) => at % 6 === 1)) {
      const told = await (await talkerFor({ after: null, shelf: 'lemon_bottled' })).say(text)
      expect([text, told.read ?? '']).toEqual([text, expect.not.stringMatching(/^\/trouble ./)])
      expect(told.recorded, text).toBe(0)
    }
  })
})

it('is one where it has, whatever else is denied', () => {
  const silent = saidOf(TOLD, BECOME.slice(0, 8)).filter((text) => symptomIn(sentenceIn(text, knows)) === null)
  expect(silent).toEqual([])
})

it.each([
  ['not cloudy but bitter', 'bitter'],
  ['it won’t stop fizzing', 'fermenting'],
  ['it’s not mould, is it?', 'mould'],
  ['no smell of vinegar, but there’s mould on it', 'mould'],
])('%s', (text, id) => {
  expect(symptomIn(sentenceIn(text, knows))?.id).toBe(id)
})

it.each([
  ['why hasn’t my arancello clouded?', 'stays_clear'],
  ['how do I keep the orange from going bitter', 'pith'],
  ['how do I stop it fermenting', 'weak_keeps'],
  ['come evito che diventi torbido?', 'citrus_cloud'],
])('%s has an answer of its own', async (text, entry) => {
  expect((await (await talkerFor({ after: null, shelf: 'lemon' })).say(text)).data.entry).toBe(entry)
})

it('asks what is wrong then', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon' })
  expect(await one.say('it isn’t bitter')).toMatchObject({ code: 'question', choices: ['/trouble'] })
})
