import { describe, expect, it } from 'vitest'
import { jarDesk } from '../../bot/commands-jar/desk.ts'
import { testDesk } from '../../bot/test-desk.ts'
import { talker } from './told.ts'

const leftOutOf = async (text: string, one = talker()): Promise<readonly string[]> => {
  const { outcome } = await one.hear(text)
  const notes = outcome.ok && 'reply' in outcome ? outcome.reply.notes : []
  return notes.flatMap((note) => (note.key === 'left_out' ? (note.values as { words: readonly string[] }).words : []))
}

describe('words that only tell how things came to be as they are', () => {
  it.each([
    '10 lemons, once washed, in a litre of 95%',
    '2 lbs of cherries once pitted in a fifth of vodka',
    'I have an open bottle of gin and 300 g sloes',
    'mi hanno regalato 2 kg di amarene, ho anche 2 litri di alcol a 95',
  ])('are not named as left out: %s', async (text) => {
    expect(await leftOutOf(text)).toEqual([])
  })

  it('are named where they belong to nothing that was used', async () => {
    expect((await leftOutOf('10 organic lemons in a litre of 95%')).join()).toBe('organic')
  })
})

it('names no word of the deed that is done', async () => {
  const one = talker()
  await one.say('/jar start sloes of:500 g sloes spirit:70 cl gin 40%')
  expect(await leftOutOf('put in a vanilla pod', one)).toEqual([])
})

describe('a line that mends a plan says how much in the words it was told in', () => {
  it.each([
    ['/plan of:2 kg plums spirit:1 l 40%', 'spirit:1 l '],
    ['/plan of:2 kg plums spirit:100 cl 40%', 'spirit:100 cl '],
    ['/plan of:3 lb plums spirit:1 fifth 40%', 'spirit:1 fifth '],
    ['/plan of:3 lb plums spirit:3 cups 40%', 'spirit:3 cups '],
    ['/plan of:9 kg plums spirit:1 l 40%', 'spirit:6 l '],
  ])('%s', async (line, said) => {
    const { error } = await testDesk({ nowMs: 0 }).jsonOf(line)
    expect(error.message).toContain(said)
    expect(error.message).not.toMatch(/\d000 ml/)
  })
})

describe('a bottle with a name', () => {
  it.each([
    ['1 handle 40%', 1750],
    ['2 handles vodka 40%', 3500],
    ['1 fifth 80 proof', 750],
    ['3 fifths 80 proof', 2250],
  ])('%s', async (spirit, volumeMl) => {
    const { data } = await jarDesk().ask(`/plan of:lemon spirit:${spirit}`)
    expect(Math.abs(Number(data.spiritMl) / volumeMl - 1)).toBeLessThan(1e-3)
  })

  it('is said as it was typed, in a kitchen of its country', async () => {
    const text = await testDesk({ nowMs: 0 }).firstOf('/plan of:2 lb cherries spirit:1 handle vodka 40%')
    expect(text).toContain('1 handle of 40% vodka')
    expect(text).not.toMatch(/\d ?ml\b/)
  })

  it('is no measure of anything else', async () => {
    const { call } = await (await talker()).say('10 lemons and a litre of 95%, with a fifth less sugar')
    expect(call?.options.sugar).toBeUndefined()
  })
})
