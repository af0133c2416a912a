import { describe, expect, it } from 'vitest'
import { en } from '../../bot/text/en/index.ts'
import { talker } from './reader/told.ts'

describe('the title of an entry, typed as it stands', () => {
  // `Anise and fennel` could be planned, `Shaking` be done, `Tasting out of a strong jar` be a trouble.
  it.each(Object.entries(en.handbook).map(([id, { title }]) => [title, id] as const))('%s', async (title, entry) => {
    expect(await talker().say(title)).toMatchObject({ command: 'handbook', data: { entry } })
  })

  it('is read as any sentence with a word more', async () => {
    expect((await talker().say('Anise and fennel, a litre of vodka')).command).toBe('plan')
  })
})
