import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

// A verdict stands with its jar until its maker says in words what it was: core/trouble, with its sources.

const messageOf = async (lines: readonly string[]): Promise<string> => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  for (const line of lines.slice(0, -1)) await one.say(line)
  const { outcome } = await one.hear(lines.at(-1)!)
  return outcome.ok ? 'done' : outcome.error.problem
}

describe('what a jar was told of last is not forgotten by a bare undo', () => {
  it.each([
    ['shook the lemon', 'there is green mould in the lemon', 'undo that'],
    ['shook the lemon', 'the lemon smells of nail varnish', 'undo'],
  ])('%s, %s, %s', async (...lines) => {
    expect(await messageOf(lines)).toBe('talk_undo_told')
  })

  it('is undone at once where it is a step', async () => {
    expect(await messageOf(['shook the lemon', 'undo'])).toBe('done')
  })
})

describe('what is taken off the top behind another danger than mould', () => {
  it.each([
    'I’ll scrape the top off',
    'just gonna skim the froth',
    'what if I tip the top bit away',
    'lo schiumo e via',
    'I wiped it off',
    'we took the foam off',
    'la tolgo e basta',
    'I’ll let it breathe',
  ])('%s: the danger is said once more', async (text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    await one.say('the lid of the lemon is bulging')
    expect((await one.say(text)).call).toMatchObject({ path: 'trouble', options: { about: 'skimming' } })
  })

  it.each([
    ['the lid of the lemon is bulging', 'I’ll just scrape the top off'],
    ['the lid of the lemon is bulging', 'it’ll be fine'],
    ['the lemon smells of solvent', 'I’ll skim it'],
    ['the lid of the lemon is bulging', 'I’ll pasteurise it'],
    ['the lemon smells of solvent', 'could I cook with it?'],
    ['the lemon smells of solvent', 'andrà bene lo stesso'],
  ])('is told no in one line, and no more on the first screen: %s, %s', async (first, then) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    await one.say(first)
    const { outcome } = await one.hear(then)
    const reply = 'reply' in outcome ? outcome.reply : null
    expect(reply?.headline.key).toBe('trouble_no_yet')
    expect(reply?.notes.filter(({ depth }) => depth === undefined)).toEqual([])
  })

  it('keeps how full bottles are handled on the first screen', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    await one.say('the lid of the lemon is bulging')
    const { outcome } = await one.hear('the bottles are full of it, what do I do with them?')
    expect('reply' in outcome && outcome.reply.headline.key).not.toBe('trouble_no_yet')
  })

  it('no plant that is taken out', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    await one.say('the lid of the lemon is bulging')
    expect((await one.say('I took the peel out of the lemon')).call?.options.about).not.toBe('use')
  })
})
