import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const said = async (shelf: 'lemon' | 'lemon_ginger' | null, text: string) =>
  (await talkerFor({ after: null, ...(shelf !== null && { shelf }) })).say(text)

describe('what only shows something', () => {
  it.each([
    ['before I forget, ginger is in the wardrobe', '/jar note ginger where:wardrobe'],
    ['fyi the ginger now resides in the pantry', '/jar note ginger where:pantry'],
  ])('is asked about where a deed is far likelier told: %s', async (text, deed) => {
    const { code, choices, recorded } = await said('lemon_ginger', text)
    expect({ code, recorded }).toEqual({ code: 'question', recorded: 0 })
    expect(choices[0]).toBe(deed)
  })

  it.each([
    ['what’s on?', 'jar list'],
    ['how’s the ginger getting on', 'jar show'],
  ])('is shown where it is asked for: %s', async (text, command) => {
    expect(await said('lemon_ginger', text)).toMatchObject({ code: null, command })
  })
})

describe('an entry of the handbook', () => {
  it('gives way to a command that such a sentence nearly always is', async () => {
    expect(await said('lemon_ginger', 'the lemon can wait until Tuesday, no rush')).toMatchObject({
      code: 'question',
      read: expect.stringMatching(/^\/(?:reminders|jar later)/),
    })
  })

  it.each([
    ['what ought I to write on a bottle that I give away', 'gift_label'],
    ['should a proper lemon one be milky or clear?', 'citrus_cloud'],
    ['can I give some away', 'giving_away'],
  ])('is the one that is far likelier by all ways of asking: %s', async (text, entry) => {
    expect((await said(null, text)).data.entry).toBe(entry)
  })
})
