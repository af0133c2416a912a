import { expect, it } from 'vitest'
import { talker } from './told.ts'

const leftOut = async (text: string) => {
  const { outcome } = await talker().hear(text)
  const notes = outcome.ok && 'reply' in outcome ? outcome.reply.notes : []
  return notes.flatMap((note) => (note.key === 'left_out' ? note.values.words : []))
}

it.each([
  'picked 1 kg plums off the tree next door, got 1 l vodka',
  '1 kg plums from the garden, 1 l vodka',
  '1 kg plums from my tree and 1 l vodka',
  '1 kg damsons off our neighbour’s hedge, 1 l gin 40%',
  '1 kg of plums from the farmers market with 1 l vodka',
  'susine dell’albero del vicino, 1 kg, e 1 l di vodka',
])('names no word of where the fruit comes from: %s', async (text) => {
  expect(await leftOut(text)).toEqual([])
})

it.each([
  ['1 kg plums, bark of the tree and 1 l vodka', 'tree'],
  ['1 kg plums, tree moss and 1 l vodka', 'tree'],
  ['1 kg plums from the garden, sprayed, 1 l vodka', 'sprayed'],
])('names what is more than a place: %s', async (text, word) => {
  expect(await leftOut(text)).toContain(word)
})
