import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

/** A batch in bottles of two sizes. */
async function filled(bottles: string) {
  const one = await talkerFor({ after: null })
  await one.say('/jar start cherry of:500 g cherries spirit:1 l 40% when:70 days ago')
  await one.say('/jar strain cherry measured:1.1 l when:40 days ago')
  await one.say('/jar sweeten cherry sugar:200 g when:40 days ago')
  await one.say(`/jar bottle cherry bottles:${bottles} when:39 days ago`)
  return one
}

describe('bottles that are only counted, of two sizes', () => {
  it.each([
    ['1 x 50 cl + 1 x 35 cl', 'gave away two bottles of cherry'],
    ['1 x 50 cl + 1 x 35 cl', 'gave one cherry to my aunt and one to my neighbour Pat'],
    ['1 x 50 cl + 2 x 20 cl', 'ho regalato tre bottiglie di cherry'],
  ])('are all there were, where they are as many: %s, %s', async (bottles, text) => {
    const one = await filled(bottles)
    expect(await one.say(text)).toMatchObject({ command: 'bottles', code: null, recorded: 1 })
    const { data } = await one.say('/bottles cherry')
    expect(JSON.stringify(data).match(/"left":\d/g)).toEqual(['"left":0', '"left":0'])
  })

  it('are asked for by size, where they may be of either, with a line that runs', async () => {
    const one = await filled('2 x 35 cl + 2 x 20 cl')
    const asked = await one.say('gave away three bottles of cherry')
    expect(asked).toMatchObject({ code: 'bad_value', recorded: 0 })
    expect(await one.say('/bottles cherry given:2 x 350 ml + 1 x 200 ml')).toMatchObject({ code: null, recorded: 1 })
  })
})

describe('a bottle that is told by its size alone', () => {
  it.each([
    ['opened the 20cl', { opened: '1 x 20 cl' }],
    ['gave the 50 cl cherry to my sister', { given: '1 x 50 cl' }],
    ['ho aperto quella da 20 cl', { opened: '1 x 20 cl' }],
  ])('is no day of the month: %s', async (text, options) => {
    const told = await (await filled('2 x 50 cl + 1 x 20 cl')).say(text)
    expect(told).toMatchObject({ command: 'bottles', code: null, recorded: 1 })
    expect(told.call!.options).toMatchObject(options)
  })

  it('is still a day where no measure follows', async () => {
    const told = await (await filled('2 x 50 cl')).say('opened the cherry on the 20th')
    expect(told.call!.options.when).toBeDefined()
  })
})

describe('a bottling that is put right', () => {
  it('asks whether all were of that size', async () => {
    const one = await filled('2 x 50 cl + 1 x 20 cl')
    const asked = await one.say('made a mistake, it was two 20cl')
    expect(asked).toMatchObject({ code: 'question', recorded: 0 })
    expect(asked.choices.map((line) => line.split('bottles:')[1])).toEqual(['2 x 20 cl', '2 x 50 cl + 2 x 20 cl'])
  })

  it('keeps the size that is told', async () => {
    const told = await (await filled('2 x 50 cl')).say('sorry, it was three 35cl')
    expect(told).toMatchObject({ command: 'jar correct', code: null })
    expect(told.call!.options.bottles).toBe('3 x 35 cl')
  })
})

describe('what is left, and what is drunk', () => {
  it.each(['how much cherry have I got left?', 'how much cherry do we have left', 'how much have we got left?'])(
    'is counted in bottles: %s',
    async (text) => {
      expect(await (await filled('2 x 50 cl')).say(text)).toMatchObject({ command: 'bottles', code: null })
    },
  )

  it.each(['drank one', 'we finished off a bottle', 'ne ho bevuta una'])('takes a bottle away: %s', async (text) => {
    const told = await (await filled('2 x 50 cl')).say(text)
    expect(told).toMatchObject({ command: 'bottles', code: null, recorded: 1 })
    expect(told.call!.options.opened).toBe('1')
  })

  it.each(['drank the rest', 'we finished the lot'])('ends nothing by a sentence: %s', async (text) => {
    expect(await (await filled('2 x 50 cl')).say(text)).toMatchObject({ recorded: 0, command: 'jar empty' })
  })
})
