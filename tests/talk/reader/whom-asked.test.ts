import { describe, expect, it } from 'vitest'
import { sentenceIn } from '../../../bot/talk/bits/sentence.ts'
import { findHarm } from '../../../bot/talk/emergency/find-harm.ts'
import { english } from '../../../bot/talk/lexicon/english.ts'
import { italian } from '../../../bot/talk/lexicon/italian.ts'
import { dangerTopic } from '../../../bot/talk/reader/small-talk.ts'
import { sampled } from '../../runs.ts'
import { whoms } from '../whom-asked.ts'
import { talkerFor } from './told.ts'

const knows = { lexicons: [english, italian], jars: [], today: { year: 2026, month: 11, day: 29 } }

const topicOf = (text: string): string | null => findHarm(text) ?? dangerTopic(sentenceIn(text, knows))

/** The short run reads one of twenty-six, and three of each kind where jars stand; the long one reads all. */
describe('whoever is to be kept from it, in whatever words', () => {
  it('are thousands', () => {
    expect(whoms.reduce((sum, { sentences }) => sum + sentences.length, 0)).toBeGreaterThan(12_000)
  })

  it.each(whoms)('is told so: $name', ({ entries, sentences }) => {
    const missed = sampled(sentences, 26, 3).filter((text) => !entries.includes(topicOf(text) ?? ''))
    expect(missed).toEqual([])
  })

  it.each(whoms)('is told so by the bot, where jars stand: $name', async ({ entries, sentences }) => {
    for (const text of sampled(sentences, Math.ceil(sentences.length / 3), 1)) {
      const { data, command } = await (await talkerFor({ after: null, shelf: 'fair' })).say(text)
      expect([command, entries.includes(String(data.entry))], text).toEqual(['handbook', true])
    }
  })
})

it.each([
  ['are the cherries bad for my cat', 'pets'],
  ['posso darne un po’ alle capre?', 'pets'],
  ['my sister is two months pregnant. should she leave it be', 'pregnancy'],
  ['he has been sober for a year, should he leave it alone', 'dry_guests'],
  ['is a drop all right when i need painkillers', 'medicines'],
  ['my nephew comes out in hives from plums, may he have one', 'allergens'],
  ['my aunt comes out in a rash from raspberries, can she have the raspberry', 'allergens'],
])('is told so behind a jar that was bottled, and nothing is put right: %s', async (text, entry) => {
  const told = await (await talkerFor({ after: null, shelf: 'fair' })).say(text)
  expect(told).toMatchObject({ command: 'handbook', data: { entry }, recorded: 0, also: [] })
})

it.each([
  'my 12 year old rum wants using up',
  'can I use a 15-year-old whisky for sloes',
  'is my 3 year old limoncello still ok to drink',
  'my 2 year old sloe gin has gone cloudy, can I drink it',
  'my mate gave me 15 lemons, can I have a litre out of them',
  'my friend of 15 years wants some limoncello',
  'the kids picked 2 kg of sloes, is 500 g per litre ok',
  'my nephew is 15 and helped me pick, how much sugar for a litre',
  'a bottle for my god-daughter’s 18th, is that ok',
  'my brother is 32, can he have some',
  'my mate who is 45 wants a taste',
  'my friend is 10 minutes away, can he have a bottle',
  'can my kids have the lemon juice',
  'a minor problem: the lid leaks, can I taste it',
  'is the sloe due in march',
  'it drives me crazy, can I taste it now',
  'bits swimming in a glass of it',
  'I boiled off the booze',
  'I stopped drinking tea, can I infuse it',
  'the jar has been dry for a week',
  'horse chestnuts in vodka',
  'we’re expecting twenty guests at the fair',
  'is it alcoholic enough after a glass',
  'il nocino di mio nonno ha 8 anni, si può bere?',
  'i bambini hanno raccolto 2 kg di more, un po’ di zucchero va bene?',
  'un minor grado alcolico va bene?',
  'una guida per fare il limoncello',
])('is of nobody: %s', (text) => {
  expect(topicOf(text)).toBeNull()
})
