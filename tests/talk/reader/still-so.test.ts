import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const strained = async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon' })
  await one.say('strained the lemon, 930 ml at 57')
  return one
}

it.each(['it still says 57', 'still 57', 'no, it’s still 57%', 'segna ancora 57', 'still 930 ml'])(
  'lets a number stand that was doubted and is measured once more: %s',
  async (text) => {
    expect(await (await strained()).say(text)).toMatchObject({ data: { said: 'talk_let_be' }, code: null, recorded: 0 })
  },
)

it('lets nothing stand by another number, nor by one that is asked about', async () => {
  expect((await (await strained()).say('it still says 60')).data.said).toBeUndefined()
  expect((await (await strained()).say('still 57?')).data.said).toBeUndefined()
})
