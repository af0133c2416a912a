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
    await one.say('poured it into a small bottle')
    expect(await one.say('two small ones')).toMatchObject({ code: 'question', recorded: 0 })
    expect((await one.say('2 x 330 ml')).read).toBe('/jar bottle lemon bottles:2 x 330 ml')
  })

  it('is one of so many ml, not so many bottles', async () => {
    const one = await sweetened()
    await one.say('bottled it in whatever bottle I had')
    expect((await one.say('a 700 one')).read).toBe('/jar bottle lemon bottles:1 x 700 ml')
  })

  it('is put right behind bottles that were written down as planned', async () => {
    const one = await sweetened()
    await one.say('/jar bottle lemon bottles:5 x 500 ml')
    expect(await one.say('three small ones')).toMatchObject({ code: 'question', command: 'jar correct', recorded: 0 })
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
