import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const PLAN = '/plan of:10 lemons spirit:1 l 95%'

// The sentences are ours; no source.
describe('thanks and greetings however they are put', () => {
  it.each([
    'ta love, you’ve been a great help',
    'thanks, my wife will be pleased',
    'much obliged, I couldn’t have worked that out myself',
    'thank you kindly, that clears it up',
    'wonderful, thanks for taking the time',
    'what a star you are',
    'brilliant, just what I needed',
    'cheers, that’s me sorted for the weekend',
    'tysm!!',
    'grazie davvero, mi hai salvato',
    'ti ringrazio tanto, sei stato chiarissimo',
  ])('takes it for thanks: %s', async (text) => {
    const told = await (await talkerFor({ after: PLAN })).say(text)
    expect(told).toMatchObject({ command: 'talk', code: null, recorded: 0, data: { said: 'talk_thanks' } })
  })

  it.each([
    'it’s me again, hi',
    'helloooo',
    'hello my friend, hope you are well',
    'hey, anyone there?',
    'evening! how’s tricks',
    'ciao, sono ancora io',
    'ehi, ci sei?',
    'rieccomi',
  ])('takes it for a greeting: %s', async (text) => {
    const told = await (await talkerFor({ after: null, shelf: 'lemon' })).say(text)
    expect(told).toMatchObject({ command: 'talk', code: null, recorded: 0, data: { said: 'talk_greeting' } })
  })

  it.each([
    ['thanks, and can it go in the freezer?', /freezes|freezer/],
    ['thanks but make it 6 bottles', /bottles:6/],
    ['no thanks, that’s too sweet', /to-sweetness/],
    ['thanks, start it', /jar start/],
  ])('goes on with what is said beside thanks: %s', async (text, read) => {
    const { read: line, data } = await (await talkerFor({ after: PLAN })).say(text)
    expect(`${line} ${String(data.entry)}`).toMatch(read)
  })

  it('takes thanks beside a deed for the deed', async () => {
    const one = await talkerFor({ after: '/jar strain lemon measured:930 ml strength:87%', shelf: 'lemon' })
    expect(await one.say('thanks, that’s all done')).toMatchObject({ command: 'jar sweeten', recorded: 1 })
  })

  it.each([
    ['hi, how is the lemon doing?', /^\/jar (?:show|list)/],
    ['back again, shook the lemon', /^\/jar shake lemon$/],
    ['morning, anything to do?', /^\/jar list$/],
  ])('answers what a greeting stands before: %s', async (text, read) => {
    expect((await (await talkerFor({ after: null, shelf: 'lemon' })).say(text)).read).toMatch(read)
  })
})
