import { describe, expect, it } from 'vitest'
import { newLastReplies } from '../../../bot/chat/last-replies.ts'
import { en } from '../../../bot/text/en/index.ts'
import { fake, onStage, restart } from './stage.ts'

onStage(() => ({ replies: newLastReplies() }))

const MORE = en.more.button()

const LEMON = { name: 'lemon', of: '10 lemons', spirit: '1 l 95%' } as const

/** Of a note that stands deeper. */
const plan = () => fake.slash('plan', { of: '10 lemons', spirit: '1 l 95%' })

describe('more', () => {
  it('is a button, and answers in private with what the first screen left out', async () => {
    const first = await plan()
    const more = await fake.press(first.message, MORE)
    expect(more.isPrivate).toBe(true)
    expect(more.text).not.toContain(en.more.again())
    const [, ...deeper] = more.text.split('\n').filter((line) => line !== '')
    expect(deeper.length).toBeGreaterThan(0)
    for (const line of deeper) expect(first.text).not.toContain(line)
  })

  it('is worked out again after a restart, and says so', async () => {
    const first = await plan()
    await restart({ replies: newLastReplies() })
    const more = await fake.press(first.message, MORE)
    expect(more.isPrivate).toBe(true)
    expect(more.text).toContain(en.more.again())
  })

  it('says that the jar has moved on, and how it stands now', async () => {
    await fake.slash('jar start', LEMON)
    const strained = await fake.slash('jar strain', { jar: 'lemon', measured: '930 ml' })
    await fake.slash('jar sweeten', { jar: 'lemon', water: '1.5 l', sugar: '500 g' })
    const more = await fake.press(strained.message, MORE)
    expect(more.text).toContain(en.more.moved_on())
    expect(more.text).toContain('sweetened')
  })
})
