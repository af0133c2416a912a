import { describe, expect, it } from 'vitest'
import { talker } from '../../talk/reader/told.ts'

async function planOf(text: string) {
  const { outcome } = await talker().hear(text)
  if (!outcome.ok || !('reply' in outcome)) throw new Error(text)
  const { notes, actions } = outcome.reply
  return {
    first: notes.filter(({ depth }) => depth !== 'more').map(({ key }) => key),
    labels: actions.map(({ label }) => label.key),
  }
}

// Common practice, no source: cloves take days and a gram or two a litre, a rich liqueur has 270 g of sugar in a litre.
describe('a recipe that somebody brings', () => {
  it('is told that it lies too long and has too much of a spice, with the line that plans the usual', async () => {
    const { first, labels } = await planOf('30 cloves, 200 g sugar and a litre of vodka, 4 months')
    expect(first).toEqual(expect.arrayContaining(['plan_days_said', 'plan_more_than_usual']))
    expect(first).not.toContain('plan_sweeter_than_usual')
    expect(labels).toContain('plan_as_usual')
  })

  it('is told that it comes out very sweet', async () => {
    expect((await planOf('1 lb sloes, 12 oz sugar, 1 bottle gin, three months')).first).toContain(
      'plan_sweeter_than_usual',
    )
  })

  it('is told nothing where all is usual', async () => {
    const { first, labels } = await planOf('10 lemons, 1 l of 95%, 300 g sugar, 20 days')
    for (const key of ['plan_days_said', 'plan_more_than_usual', 'plan_sweeter_than_usual'])
      expect(first).not.toContain(key)
    expect(labels).not.toContain('plan_as_usual')
  })

  it('that is only planned has such remarks deeper', async () => {
    const { first, labels } = await planOf('/plan of:30 cloves spirit:1 l 40%')
    expect(first).not.toContain('plan_more_than_usual')
    expect(labels).not.toContain('plan_as_usual')
  })
})
