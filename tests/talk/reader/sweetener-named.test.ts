import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const hear = async (text: string) => (await talkerFor({ after: null, shelf: undefined })).hear(text)

it.each([
  ['10 lemons and 1 l 95% with honey instead of sugar', 'honey'],
  ['10 lemons and 1 l 95%, honey not sugar', 'honey'],
  ['10 lemons and 1 l 95% with brown sugar', 'brown sugar'],
  ['50 g dried chilli in 1 l vodka with honey', 'honey'],
  ['10 limoni e 1 l 95% con miele al posto dello zucchero', 'miele'],
  ['10 limoni e 1 l 95% con zucchero di canna', 'zucchero di canna'],
])('plans with the sweetener that is named: %s', async (text, sugar) => {
  const { outcome, read } = await hear(text)
  expect(read).toMatch(new RegExp(`^/plan of:.* sugar:${sugar}$`))
  expect(outcome.ok && 'reply' in outcome && outcome.reply.notes.map(({ key }) => key)).not.toContain('left_out')
})

it('names what nothing can be worked out for as left out', async () => {
  const { outcome, read } = await hear('10 lemons and 1 l 95% with stevia')
  expect(read).toBe('/plan of:10 lemons spirit:1 l 95%')
  expect(outcome.ok && 'reply' in outcome && outcome.reply.notes.map(({ key }) => key)).toContain('left_out')
})

it.each(['10 lemons and 1 l 95% without honey', '10 limoni e 1 l 95% senza miele', '10 lemons and 1 l 95% with sugar'])(
  'takes nothing that is said to stay out, and sugar as ever: %s',
  async (text) => {
    expect((await hear(text)).read).not.toContain('sugar:')
  },
)
