import { describe, expect, it } from 'vitest'
import { type Hunch, hunch, hunchBy, type Leaning } from '../../../bot/talk/hunch/hunch.ts'
import { HELD, SENTENCE_FILES, sentencesOf } from '../corpus.ts'
import { talker, talkerFor } from '../reader/told.ts'
import { aimOf, examplesOf, examplesOffTopic } from './examples.ts'
import { learn } from './learn.ts'

/** What a sentence looks like where it is said. */
async function leaningsOf(text: string, of: Parameters<typeof talkerFor>[0], by: Hunch = hunch) {
  let leanings: readonly Leaning[] | null = null
  await (await talkerFor(of)).say(text, (...heard) => {
    leanings ??= by(...heard)
    return []
  })
  return leanings as readonly Leaning[] | null
}

describe('what a sentence looks like', () => {
  it.each([
    ['does the jar have to be kept in the dark or may it stand on a sunny sill', 'handbook'],
    ['would honey do in place of the white sugar', 'handbook'],
    ['there is a brown crust round the neck and it pongs', 'trouble'],
    ['three quinces, one and a half litres of white rum and a cinnamon stick', 'plan'],
    ['un litro e due di grappa con mezzo chilo di visciole', 'plan'],
    ['take 1.2 litres from 88 down to 45', 'dilute'],
  ] as const)('%s: %s', async (text, aim) => {
    expect((await leaningsOf(text, { after: null }))?.[0]).toMatchObject({ aim })
  })

  it.each([
    ['gave the lemon one its shake before the shop', 'jar shake'],
    ['lemon drained into the big bowl, 900 ml', 'jar strain'],
    ['il limone filtrato stamattina, novecento ml', 'jar strain'],
  ] as const)('%s, with a jar of lemon: %s', async (text, aim) => {
    expect((await leaningsOf(text, { after: null, shelf: 'lemon' }))?.[0]).toMatchObject({ aim })
  })

  it('is told by what was said before it too', async () => {
    const after = '/plan of:10 lemons spirit:1 l 95%'
    expect((await leaningsOf('less sweet than that', { after }))?.[0]).toMatchObject({ aim: 'follow' })
  })

  it('has shares that add up to 1, the likeliest first', async () => {
    const leanings = (await leaningsOf('ten lemons', { after: null }))!
    expect(leanings.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9)
    expect(leanings).toEqual(leanings.toSorted((one, other) => other.share - one.share))
  })
})

describe('learning', () => {
  const of = (text: string, aim: 'plan' | 'dilute') => ({ features: ['any', ...text.split(' ')], aim })
  const examples = [1, 2, 3].flatMap(() => [
    of('lemons vodka', 'plan'),
    of('down to', 'dilute'),
    of('lemons to', 'plan'),
  ])

  it('gives each feature its weight, the same every time', () => {
    const learnt = learn(examples)
    expect(learnt.aims).toEqual(['dilute', 'plan'])
    const [at, weight] = learnt.weights.lemons!
    expect({ at, isAgainst: weight! < 0 }).toEqual({ at: 0, isAgainst: true })
    expect(learn(examples)).toEqual(learnt)
  })

  it('keeps nothing of a feature that is rare', () => {
    expect(learn([...examples, of('quinces', 'plan')]).weights).not.toHaveProperty('quinces')
  })
})

/** Of every sentence of the other sets, read with a hunch that has not seen this one: 0.92 was measured. */
const LEAST = 0.88

it.runIf(process.env.LARDERBELL_LONG)('is right of the sentences of a stranger', { timeout: 600_000 }, async () => {
  const names = SENTENCE_FILES.filter((name) => !HELD.has(name) && name !== 'own-6')
  const learnt = learn([...(await examplesOf(names.flatMap(sentencesOf))), ...(await examplesOffTopic())])
  const unseen = hunchBy(() => learnt)
  let [right, all] = [0, 0]
  for (const sentence of sentencesOf('own-6')) {
    const [likeliest] = (await leaningsOf(sentence.text, sentence, unseen)) ?? []
    if (likeliest === undefined) continue
    all++
    if (likeliest.aim === aimOf(sentence)) right++
  }
  expect(right / all).toBeGreaterThanOrEqual(LEAST)
})

/** What nobody of the writers typed, and no rule reads as it is meant. */
describe('a sentence that is read otherwise by a hunch', () => {
  it.each([['i have a litre n half of 38% vodka only. oranges how many??', /^\/botanical of:oranges/]])(
    '%s',
    async (text, read) => {
      const one = talker()
      expect((await one.say(text, () => [])).read ?? '').not.toMatch(read)
      expect((await one.say(text)).read).toMatch(read)
    },
  )
})
