import { describe, expect, it } from 'vitest'
import { sampled } from '../../runs.ts'
import { readDangers, readOffTopic, sentencesOf } from '../corpus.ts'
import { talker, talkerFor } from './told.ts'
import { isWronglyRecorded, verdictOn } from './verdict.ts'

/** The least that has to be understood, as a share: what was measured when it was written, less one in fifty. */
const LEAST = {
  open: 0.94,
  'open-2': 0.96,
  'own-1': 0.89,
  'own-2': 0.92,
  'own-3': 0.93,
  'own-4': 0.9,
  'own-5': 0.93,
  'own-6': 0.92,
  'own-7': 0.92,
  'held-2': 0.93,
  held: 0.94,
} as const

/**
 * Of a set of more than so many the short run reads one of ten, and leaves the others to the long one and to `npm run bench -- talk`.
 * So few say little of one set, so that the short run holds such sets to their shares together.
 */
const SMALL = 100

/** What was read of the sets of which only some was. */
const ofSome: { readonly right: number; readonly least: number }[] = []

describe.each(Object.entries(LEAST))('the sentences of %s', (name, least) => {
  it('are understood, and nothing is recorded that nobody told', async () => {
    const all = sentencesOf(name as keyof typeof LEAST)
    const sentences = all.length > SMALL ? sampled(all, 10) : all
    const wronglyRecorded: string[] = []
    let right = 0
    for (const sentence of sentences) {
      const one = await talkerFor(sentence)
      const told = await one.say(sentence.text)
      expect(one.faults).toEqual([])
      if (verdictOn(told, sentence) === 'right') right++
      if (isWronglyRecorded(told, sentence)) wronglyRecorded.push(sentence.text)
    }
    expect(wronglyRecorded).toEqual([])
    if (sentences.length < all.length) ofSome.push({ right, least: least * sentences.length })
    else expect(right / sentences.length).toBeGreaterThanOrEqual(least)
  })
})

it('understands as many of them all as it did', () => {
  const sum = (of: (each: (typeof ofSome)[number]) => number) => ofSome.reduce((total, each) => total + of(each), 0)
  expect(sum(({ right }) => right)).toBeGreaterThanOrEqual(sum(({ least }) => least))
})

it('answers hardly anything that is of something else', async () => {
  const answered: string[] = []
  for (const { text } of readOffTopic()) {
    const { code } = await talker().say(text)
    if (code !== 'not_understood') answered.push(text)
  }
  expect(answered.length).toBeLessThanOrEqual(0.05 * readOffTopic().length)
})

/** What is no ingredient is answered by the handbook. */
const TOPICS = ['flame', 'heat_spirit', 'children', 'pregnancy']

it('plans nothing that is dangerous, wherever it stands in the sentence', async () => {
  for (const { text } of readDangers()) {
    const one = talker()
    const { code, command, data, recorded } = await one.say(text)
    const isSafe =
      code !== null || command === 'emergency' || (command === 'handbook' && TOPICS.includes(String(data.entry)))
    expect({ text, isSafe, recorded }).toEqual({ text, isSafe: true, recorded: 0 })
  }
})

describe('what a sentence never does', () => {
  it.each([
    ['forget everything', '/forget confirm:yes', 'lemon'],
    ['delete my data', '/forget confirm:yes', 'lemon'],
    ['throw the lemon away', '/jar discard lemon', 'lemon'],
    ['share the lemon recipe', '/share lemon', 'lemon'],
    ['the lemon is all gone', '/jar empty lemon', 'lemon_sweetened'],
  ] as const)('%s: it answers with the line to type', async (text, line, shelf) => {
    const one = await talkerFor({ after: null, shelf })
    const told = await one.say(text)
    expect(told).toMatchObject({ code: 'question', choices: [line], recorded: 0, erased: false })
  })

  it.each([
    ['throw the quince away', 'not_found'],
    ['share the walnuts', 'not_found'],
    ['the lemon is all gone', 'wrong_stage'],
  ])('%s: it says why that cannot be, and offers no line that does not run', async (text, code) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    expect(await one.say(text)).toMatchObject({ code, choices: [], recorded: 0, erased: false })
  })

  it.each([
    ['throw it away', 'the ginger', '/jar discard ginger'],
    ['share it', 'ginger', '/share ginger'],
  ])('%s: it asks which of two, and does it by no answer either', async (text, answer, line) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    expect(await one.say(text)).toMatchObject({ code: 'question', recorded: 0 })
    expect(await one.say(answer)).toMatchObject({ code: 'question', choices: [line], recorded: 0 })
  })

  it.each([
    'did i shake the lemon?',
    'should i shake the lemon',
    'shake the lemon',
    'i havent shaken the lemon',
    'when i strain the lemon',
    'ho filtrato, 930 ml a 85, come arrivo a 30?',
  ])('%s: it records nothing', async (text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    expect(await one.say(text)).toMatchObject({ recorded: 0 })
  })
})

it('names a word that it left out', async () => {
  const { outcome } = await talker().hear('10 organic lemons and a litre of 95% for the zeppelin')
  const notes = outcome.ok && 'reply' in outcome ? outcome.reply.notes : []
  expect(notes[0]).toMatchObject({ key: 'left_out', values: { words: ['organic', 'zeppelin'] } })
})

it.each([
  ['15 elderflower heads, a litre of vodka, shook it', 'shook'],
  ['10 lemons and a litre of vodka, bottled it', 'bottled'],
])('names a deed that is done to no batch that is only planned: %s', async (text, word) => {
  const { outcome, also = [] } = await talker().hear(text)
  const notes = outcome.ok && 'reply' in outcome ? outcome.reply.notes : []
  expect(outcome).toMatchObject({ path: 'plan' })
  const named = notes.flatMap((note) => (note.key === 'left_out' ? note.values.words : []))
  const setAside = also.map((each) => JSON.stringify(each.outcome))
  expect([...named, ...setAside].join(' ')).toContain(word)
})

describe('memory', () => {
  it('changes the last call and runs it again', async () => {
    const one = talker()
    await one.say('10 lemons and a litre of 95%')
    expect((await one.say('drier')).read).toBe('/plan of:10 lemons spirit:1 litre 95% to-sweetness:120 g/L')
    expect((await one.say('with gin instead')).read).toBe(
      '/plan of:10 lemons spirit:1 litre gin 40% to-sweetness:120 g/L',
    )
    expect((await one.say('double it')).read).toBe('/plan of:20 lemons spirit:2 litre gin 40% to-sweetness:120 g/L')
  })

  it('asks which jar, and takes the answer', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    expect(await one.say('shook it')).toMatchObject({
      code: 'question',
      choices: ['/jar shake lemon', '/jar shake ginger'],
      recorded: 0,
    })
    expect(await one.say('the ginger')).toMatchObject({ read: '/jar shake ginger', recorded: 1 })
  })

  it('is gone after half an hour', async () => {
    const one = talker()
    await one.say('10 lemons and a litre of 95%')
    one.wait(31)
    expect(await one.say('drier')).toMatchObject({ code: 'question', read: null })
  })
})
