import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const sweetened = () => talkerFor({ after: null, shelf: 'lemon_sweetened' })

describe('what went into bottles of which nobody said the size', () => {
  it.each([
    ['poured it all back in the gin bottle', '1 x 700 ml'],
    ['bottled it in whatever bottle I had', '1 x 500 ml'],
    ['poured it into a small bottle', '1 x 250 ml'],
    ['decanted everything into three little bottles', '3 x 250 ml'],
    ['tipped the lemon into two old wine bottles', '2 x 750 ml'],
    ['l’ho versato in due bottiglie piccole', '2 x 250 ml'],
  ])('is asked for, with an example of as many: %s', async (text, sample) => {
    const one = await sweetened()
    const said = await one.say(text)
    expect(said).toMatchObject({ code: 'question', command: 'jar bottle', recorded: 0 })
    expect(await one.say(sample)).toMatchObject({ read: `/jar bottle lemon bottles:${sample}`, recorded: 1 })
  })

  it('is asked for again where only their number is said', async () => {
    const one = await sweetened()
    await one.say('poured it into a bottle')
    expect(await one.say('it was two bottles')).toMatchObject({ code: 'question', recorded: 0 })
    expect((await one.say('2 x 330 ml')).read).toBe('/jar bottle lemon bottles:2 x 330 ml')
  })

  it.each([
    ['two small ones', '2 x 250 ml', { name: 'small bottle', ml: 250 }],
    ['it filled three old wine bottles', '3 x 750 ml', { name: 'wine bottle', ml: 750 }],
    ['just one big bottle', '1 x 1000 ml', { name: 'large bottle', ml: 1000 }],
    ['2 little ones', '2 x 250 ml', { name: 'small bottle', ml: 250 }],
    ['una bottiglia da vino', '1 x 750 ml', { name: 'wine bottle', ml: 750 }],
  ])('is as large as such bottles are, which is said: %s', async (text, bottles, vessel) => {
    const one = await sweetened()
    await one.say('poured it into a bottle')
    const { outcome, read } = await one.hear(text)
    expect(read).toBe(`/jar bottle lemon bottles:${bottles}`)
    const notes = 'reply' in outcome ? outcome.reply.notes : []
    expect(notes).toContainEqual({ group: 'notes', key: 'vessels_taken', values: { vessels: [vessel] } })
  })

  it.each(['all bottled', 'done'])('is guessed as offered, and said to be a guess: %s', async (text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_strained' })
    await one.say('/jar sweeten lemon sugar:500 g water:1.5 l')
    const { outcome } = await one.hear(text)
    expect('reply' in outcome && outcome.reply.notes.map(({ key }) => key)).toContain('bottles_taken')
  })

  it.each([
    ['actually only two bottles', '2 x 500 ml'],
    ['no it was 4 bottles', '4 x 500 ml'],
    ['erano tre bottiglie', '3 x 500 ml'],
  ])('is put right by their number alone, as large as they were: %s', async (text, bottles) => {
    const one = await sweetened()
    await one.say('/jar bottle lemon bottles:5 x 500 ml')
    expect(await one.say(text)).toMatchObject({ read: `/jar correct lemon bottles:${bottles}`, recorded: 1 })
  })

  it('asks how large where more of that size would not go into it', async () => {
    const one = await sweetened()
    await one.say('/jar bottle lemon bottles:3 x 500 ml')
    expect(await one.say('it was six bottles')).toMatchObject({ code: 'question', command: 'jar correct', recorded: 0 })
  })

  it('is no second bottling where it filled an old bottle', async () => {
    const one = await sweetened()
    expect(await one.say('bottled it, it filled two empty rum bottles')).toMatchObject({
      code: 'question',
      command: 'jar bottle',
    })
  })

  it('is one of so many ml, not so many bottles', async () => {
    const one = await sweetened()
    await one.say('bottled it in whatever bottle I had')
    expect((await one.say('a 700 one')).read).toBe('/jar bottle lemon bottles:1 x 700 ml')
  })

  it('is put right behind bottles that were written down as planned', async () => {
    const one = await sweetened()
    await one.say('/jar bottle lemon bottles:5 x 500 ml')
    expect((await one.say('three small ones')).read).toBe('/jar correct lemon bottles:3 x 250 ml')
  })

  it.each([
    'should I pour it into a small bottle?',
    'poured half of it into a small bottle',
    'didn’t pour it in a bottle',
  ])('is not all of it, or not done: %s', async (text) => {
    expect(await (await sweetened()).say(text)).toMatchObject({ recorded: 0 })
  })
})

it('a sweetening that is written down is not done a second time, half as large', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_strained' })
  await one.say('/jar sweeten lemon sugar:500 g water:1.5 l')
  expect((await one.say('poured half of it into a small flask')).recorded).toBe(0)
})
