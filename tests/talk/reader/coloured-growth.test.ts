import { describe, expect, it } from 'vitest'
import { talker } from './told.ts'

describe('what grows in a jar and is coloured', () => {
  it.each([
    ['pink slimy stuff all round the rim', 'pink slime'],
    ['there’s blue fuzzy stuff on the plums', 'mould'],
    ['some pink gooey stuff under the cork', 'pink slime'],
  ])('is no spirit that was dyed: %s', async (text, symptom) => {
    const { command, read } = await talker().say(text)
    expect(command).toBe('trouble')
    expect(read).toContain(symptom)
  })

  // Denatured alcohol is dyed: common practice, no source.
  it.each([
    'is the pink stuff from the hardware shop ok for lemons',
    'can I use the purple alcohol for plums',
    'un litro di alcool de posto e 10 limoni',
  ])('a dyed one is refused all the same: %s', async (text) => {
    expect((await talker().say(text)).code).toBe('refused')
  })

  it('is no fuel where one thing is taken for another in Italian', async () => {
    const one = talker()
    await one.say('/plan of:10 lemons spirit:1 l 95%')
    expect((await one.say('ci metto la grappa al posto di quello')).code).not.toBe('refused')
  })
})

it.each([
  ['cork shot out of the plum and over the fence', 'lid bulging'],
  ['the stopper flew across the pantry last night', 'lid bulging'],
  ['a layer of gritty stuff at the bottom', 'sediment'],
  ['rubbery lumps in the quince one', 'set like jelly'],
])('is heard as it went wrong: %s', async (text, symptom) => {
  expect((await talker().say(text)).read).toContain(symptom)
})
