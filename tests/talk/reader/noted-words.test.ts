import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

it.each(['tasted the ginger, a 3, rather flat', 'tasted the ginger, a 4, a bit dull and flat but bright at the end'])(
  '%s: what is in the note is not left out',
  async (text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    const { outcome } = await one.hear(text)
    expect(outcome).toMatchObject({ ok: true, path: 'jar taste' })
    const keys = outcome.ok && 'reply' in outcome ? outcome.reply.notes.map(({ key }) => key) : ['none']
    expect(keys).not.toContain('left_out')
  },
)
