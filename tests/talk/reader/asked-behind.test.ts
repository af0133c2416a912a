import { describe, expect, it } from 'vitest'
import { talker, talkerFor } from './told.ts'

const LEMON = '/plan of:10 lemons spirit:1 l 95%'
const WALNUT = '/plan of:24 green walnuts spirit:1 l 95%'

const behind = async (after: string, text: string) => {
  const one = talker()
  await one.say(after)
  return one.say(text)
}

describe('what is asked behind a plan and is not of it', () => {
  it.each([
    ['why should it stand in the dark', 'steep_light'],
    ['why do we keep the jar in the dark?', 'steep_light'],
    ['how long should it age?', 'rest'],
    ['bottled lemon juice instead of peel?', 'juice_or_zest'],
    ['are wrinkled lemons any good?', 'ripe_fruit'],
    ['why do they need shaking so much', 'steep_shaking'],
    ['posso usare limoni raggrinziti?', 'ripe_fruit'],
    ['could I leave out the sugar?', 'sweeteners'],
  ])('is answered by its entry: %s', async (text, entry) => {
    expect((await behind(LEMON, text)).data.entry).toBe(entry)
  })

  it.each(['why so much water?', 'why?', 'why 10 lemons', 'why that many days'])(
    'of its amounts stays: %s',
    async (text) => {
      expect((await behind(LEMON, text)).command).toBe('plan')
    },
  )
})

describe('a plant that may be two behind a plan of one', () => {
  it.each([
    ['30 walnuts', '30 green walnuts'],
    ['18 noci', '18 green walnuts'],
  ])('is the one of the plan: %s', async (text, of) => {
    expect((await behind(WALNUT, text)).read).toContain(of)
  })

  it('is asked for where the plan has none of them', async () => {
    expect((await behind(LEMON, 'what about 30 walnuts instead')).read ?? '').not.toContain('green')
  })
})

describe('what strangers ask in nearly all of the words of an entry', () => {
  it.each([
    ['does brandy work with plums', 'brown_spirit'],
    ['would some citric acid help?', 'acid'],
    ['what makes orange peel bitter', 'pith'],
    ['how long does a home-made liqueur keep?', 'keep_time'],
    ['what alcohol do I need for quinces?', 'which_spirit'],
    ['can I make it without sugar?', 'sweeteners'],
    ['does it work with no added sugar', 'sweeteners'],
    ['can I use wrinkly lemons', 'ripe_fruit'],
    ['are old oranges any good for this', 'ripe_fruit'],
  ])('goes before a plant or a fault: %s', async (text, entry) => {
    expect((await talker().say(text)).data.entry).toBe(entry)
  })
})

describe('when a jar of one’s own is strained', () => {
  it.each([
    'tra quanto filtro il limone?',
    'quando lo devo colare?',
    'when can I strain it?',
    'quando tolgo le bucce?',
  ])('the jar tells: %s', async (text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' } as never)
    expect((await one.say(text)).read).toBe('/jar show lemon')
  })

  it('is how many are left where there are bottles', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_bottled' } as never)
    expect((await one.say('e quante ne restano?')).read).toBe('/bottles lemon')
  })
})
