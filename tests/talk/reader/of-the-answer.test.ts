import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const SYRUP = '/syrup infusion:920 ml strength:82% to-strength:30% to-sweetness:190 g/L'

// The sentences are ours; no source.
describe('what is asked of the answer that stands', () => {
  it.each([
    'are you quite certain?',
    'you positive about that',
    'is that right?',
    'could you be wrong?',
    'can I bank on it',
    'you’re not just guessing?',
    'how good are these numbers',
    'ma sei sicuro?',
    'quanto ci posso contare?',
    'you can keep going',
    'lets have the lot',
    'the whole story please',
    'don’t hold back, tell me everything',
    'can you expand on that',
    'is there more?',
    'go into detail',
    'let’s see the small print',
    'vai avanti',
    'dammi il resto',
    'voglio i dettagli',
  ])('%s', async (text) => {
    const one = await talkerFor({ after: SYRUP })
    expect(await one.say(text)).toMatchObject({ read: SYRUP, command: 'syrup', code: null })
  })

  it.each(['is it right to use honey', 'continue with the plums', 'sure, stronger please', 'more sugar'])(
    'is of something else: %s',
    async (text) => {
      const one = await talkerFor({ after: SYRUP })
      const { read, command } = await one.say(text)
      expect([read, command]).not.toEqual([SYRUP, 'syrup'])
    },
  )
})

describe('what is said of a plan at length', () => {
  const PLAN = '/plan of:10 lemons spirit:1 l 95%'

  it.each([
    ['better make that the twelve bottles, the whole street’s coming', '/plan of:lemons strength:95% bottles:12'],
    ['let’s have the 8 bottles then', '/plan of:lemons strength:95% bottles:8'],
  ])('takes no number of bottles for a day: %s', async (text, read) => {
    expect((await (await talkerFor({ after: PLAN })).say(text)).read).toBe(read)
  })

  it.each([
    'and the price of all that?',
    'how deep do I dig in my pocket for this',
    'what’s it all come to in money',
    'what would that lot run us',
    'what’s the bill',
    'quanti soldi ci vogliono',
  ])('says what it costs: %s', async (text) => {
    expect(await (await talkerFor({ after: PLAN })).say(text)).toMatchObject({ command: 'cost', code: null })
  })

  it.each([
    'I only have measuring cups, redo it for those please',
    'our scales are in ounces, put it like that for me please',
  ])('is said anew in other measures, and nothing is set: %s', async (text) => {
    const one = await talkerFor({ after: PLAN })
    expect(await one.say(text)).toMatchObject({ command: 'plan', code: null })
    expect((await one.store.read('local')).settings.units ?? 'metric').toBe('metric')
  })
})
