import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

/** Two batches of sloes, begun in June and in August, and a jar of ginger beside them. */
const SHELF = [
  '/jar start winter of:300 g sloes spirit:1 l vodka 40% when:4 August',
  '/jar start winter 2 of:300 g sloes spirit:1 l gin 40% when:3 June',
  '/jar start ginger of:50 g ginger spirit:1 l vodka 40% when:5 October',
]
const BESIDE = '/notebook winter 2 + winter'

async function shelf() {
  const one = await talkerFor({ after: null })
  for (const line of SHELF) expect((await one.say(line)).code).toBeNull()
  return one
}

describe('two batches of one kind', () => {
  it.each([
    'June beside August',
    'how did June’s sloes compare with August’s?',
    'the sloes from June and the ones from August, what was different?',
    'giugno contro agosto',
    'which of the two sloes was better?',
    'compare both sloe batches',
    'of the sloes, the first one or the second, which was better?',
    'gli sloe, quale era meglio, il primo o il secondo?',
  ])('are compared by their month or their order: %s', async (text) => {
    const { read, recorded } = await (await shelf()).say(text)
    expect(recorded).toBe(0)
    expect([BESIDE, '/notebook winter + winter 2']).toContain(read)
  })

  it('are told apart by the day on which they were begun, not by their names', async () => {
    const one = await shelf()
    await one.say('/jar show winter')
    expect((await one.say('what did I say about the first one?')).read).toBe('/jar show winter 2')
    expect((await one.say('what did I note of the second one?')).read).toBe('/jar show winter')
  })

  it('are those like the jar that was spoken of last', async () => {
    const one = await shelf()
    await one.say('/jar show winter')
    expect((await one.say('which of the two was better?')).read).toBe(BESIDE)
  })

  it('are not guessed where three may be meant, or a month has none', async () => {
    const one = await shelf()
    one.wait(40)
    expect((await one.say('which of the two was better?')).command).not.toBe('notebook')
    expect((await one.say('how did July’s compare with August’s?')).read ?? '').not.toMatch(/\+/)
  })
})
