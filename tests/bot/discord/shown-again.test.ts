import { expect, it } from 'vitest'
import { resendable } from '../../../bot/discord/answer/show-to-all.ts'
import { checkPayload } from './fake/check-payload.ts'
import { shownComponents } from './fake/shown-components.ts'

const sent = [
  {
    type: 17,
    components: [
      { type: 10, content: 'Lemon, 30 % vol' },
      { type: 14 },
      { type: 12, items: [{ media: { url: 'https://example.org/card.png' } }] },
    ],
  },
]

const problemsOf = (components: unknown) =>
  checkPayload('POST', '/interactions/123456789012345678/token/callback', {
    type: 4,
    data: { flags: 1 << 15, components, allowed_mentions: { parse: [] } },
  })

it('can be sent again after Discord has filled in its own', () => {
  const back = shownComponents(sent, [])
  expect(problemsOf(back).length).toBeGreaterThan(0)
  expect(problemsOf(resendable(back))).toEqual([])
  expect(resendable(back)).toMatchObject(sent)
})

it('keeps a text that is called like what Discord adds', () => {
  expect(resendable({ type: 10, id: 4, content: 'id' })).toEqual({ type: 10, content: 'id' })
})
