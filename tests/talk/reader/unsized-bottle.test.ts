import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

async function leftOutOf(text: string, shelf: 'lemon_sweetened' | 'lemon_bottled' = 'lemon_sweetened') {
  const one = await talkerFor({ after: null, shelf })
  const { outcome } = await one.hear(text)
  const notes = outcome.ok && 'reply' in outcome ? outcome.reply.notes : []
  return notes.flatMap((note) => (note.key === 'left_out' ? note.values.words : []))
}

it.each([
  ['bottled the lemon: 2 bottles of 50cl and a small one', ['a small one']],
  ['bottled the lemon, 2 x 500 ml plus one miniature', ['one miniature']],
  ['ho imbottigliato il lemon, 2 bottiglie da 50cl e una piccola', ['una piccola']],
  ['bottled the lemon: 2 bottles of 50cl and a small 20cl one', []],
  ['bottled the lemon: 2 bottles of 50cl and one of 20cl', []],
  ['bottled the lemon, 5 x 500 ml', []],
])('of “%s” it leaves out %j', async (text, words) => {
  expect(await leftOutOf(text)).toEqual(words)
})

it.each(['bottled in one wine bottle and two little ones', 'bottled it: a wine bottle and three little ones'])(
  'asks of little ones that are bottles, and speaks of no children: %s',
  async (text) => {
    const told = await (await talkerFor({ after: null, shelf: 'lemon_sweetened' })).say(text)
    expect(told).toMatchObject({ command: 'jar bottle', code: 'question', recorded: 0, also: [] })
  },
)

it('still fears for children who had some', async () => {
  const told = await (await talkerFor({ after: null, shelf: 'lemon_sweetened' })).say(
    'bottled it, the little ones had a taste',
  )
  expect(told.command).toBe('emergency')
})
