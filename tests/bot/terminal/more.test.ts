import { describe, expect, it } from 'vitest'
import { newLastReplies } from '../../../bot/chat/last-replies.ts'
import { newTalkMemory } from '../../../bot/talk/memory/remembered.ts'
import { en } from '../../../bot/text/en/index.ts'
import { newAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'

const PLAN = '/plan of:10 lemons spirit:1 l 95%'
const HALF_AN_HOUR_MS = 30 * 60_000

const asking = () => ({ ...newAsker(), replies: newLastReplies() })

const paragraphs = (text: string): readonly string[] => text.split('\n\n')

describe('more, typed', () => {
  it('says what the first screen left out, and nothing of it twice', async () => {
    const desk = testDesk({ asker: asking() })
    const [first, more] = [await desk.firstOf(PLAN), await desk.firstOf('more')]
    expect(more).not.toBe('')
    const deeper = paragraphs(more)
    expect(deeper.length).toBeGreaterThan(3)
    for (const part of deeper) expect(first).not.toContain(part)
  })

  it.each(['more', 'More.', '/more', 'MORE?'])('is heard as %s', async (line) => {
    const desk = testDesk({ asker: asking() })
    await desk.firstOf(PLAN)
    expect(await desk.firstOf(line)).not.toBe(en.problems.nothing_said())
  })

  it('has nothing to say before anything was asked, after half an hour, or once the bot was started again', async () => {
    const asker = asking()
    expect(await testDesk({ asker }).firstOf('more')).toBe(en.problems.nothing_said())
    await testDesk({ asker }).firstOf(PLAN)
    expect(await testDesk({ asker, nowMs: HALF_AN_HOUR_MS + 1 }).firstOf('more')).toBe(en.problems.nothing_said())
    expect(await testDesk({ asker: { ...asker, replies: newLastReplies() } }).firstOf('more')).toBe(
      en.problems.nothing_said(),
    )
  })

  it('is never stale: once the jar has moved on it says so, and how the jar stands now', async () => {
    const desk = testDesk({ asker: asking() })
    await desk.firstOf('/jar start lemon of:10 lemons spirit:1 l 95%')
    await desk.firstOf('/jar strain lemon measured:930 ml')
    // Somewhere else, as with a button.
    await desk.run('/jar sweeten lemon water:1.5 l sugar:500 g')
    const more = await desk.firstOf('more')
    expect(more.split('\n')[0]).toBe(en.more.moved_on())
    expect(more).toContain('sweetened')
  })

  it.each(['why?', 'how sure?'])(
    'is as old as it says where it is asked for as %s, and draws no picture twice',
    async (line) => {
      const desk = testDesk({ asker: { ...asking(), talk: newTalkMemory() } })
      await desk.firstOf('/jar start lemon of:10 lemons spirit:1 l 95%')
      await desk.firstOf('/jar strain lemon measured:930 ml')
      await desk.run('/jar sweeten lemon water:1.5 l sugar:500 g')
      expect(await desk.firstOf(line)).toContain(en.more.moved_on())
      await desk.firstOf('/jar list picture:yes')
      expect(desk.files()).not.toHaveLength(0)
      await desk.firstOf(line)
      expect(desk.files()).toHaveLength(0)
    },
  )
})
