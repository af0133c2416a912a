import { describe, expect, it } from 'vitest'
import { talker } from './told.ts'

async function notesOf(text: string) {
  const { outcome } = await talker().hear(text)
  if (!outcome.ok || !('reply' in outcome)) throw new Error(text)
  return outcome.reply.notes
}

const keysOf = async (text: string) => (await notesOf(text)).map(({ key }) => key)

// Common practice, no source: what is stirred in is tasted as it goes.
describe('sugar of which a recipe says no amount', () => {
  it.each([
    '9 lemons, 1 l of 95%, sugar to taste',
    '2 lb damsons, a fifth of gin and sugar to taste',
    '9 limoni, un litro di 95%, zucchero q.b.',
  ])('%s: it is said what that means', async (text) => {
    const keys = await keysOf(text)
    expect(keys).toContain('sugar_to_taste')
    expect(keys).not.toContain('left_out')
  })

  it('leaves other words to be named', async () => {
    const left = (await notesOf('9 organic lemons, 1 l of 95%, sugar to taste')).find(({ key }) => key === 'left_out')
    expect(left?.values).toEqual({ words: ['organic'] })
  })

  it.each(['9 lemons, 1 l of 95%, 300 g sugar', '9 lemons, 1 l of 95%', '9 lemons, 1 l of 95%, honey'])(
    'is nothing where there is none: %s',
    async (text) => {
      expect(await keysOf(text)).not.toContain('sugar_to_taste')
    },
  )
})
