import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const asked = async (text: string) => (await talkerFor({ after: null })).say(text)

// Prunus laurocerasus gives off cyanide and is taken for Laurus nobilis: the plant's own refusal in the catalogue.
describe('which laurel it is, is asked before anything else is said', () => {
  it.each([
    'laurel leaves, may I use them?',
    'can I use laurel leaves in vodka',
    'is laurel ok in a liqueur?',
    'I have picked some laurel leaves',
    'may I use bay leaves from the garden',
    'foglie di alloro',
    "posso usare l'alloro del giardino?",
    'vanno bene le foglie di lauro?',
    'wild fennel, may I use it?',
  ])('%s', async (text) => {
    expect(await asked(text)).toMatchObject({ code: 'ambiguous' })
  })

  it.each([
    'can I steep dried bay leaves with lemons?',
    'how do I wash the fruit?',
    'the bay leaf liqueur went cloudy',
  ])('is not asked of: %s', async (text) => {
    expect((await asked(text)).code).not.toBe('ambiguous')
  })
})
