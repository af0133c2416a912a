import { describe, expect, it } from 'vitest'
import { tell } from '../stories/tell.ts'

const LEMON = '> /jar start lemon of:10 lemons spirit:1 l 95%'
const PLUM = '> /jar start plum of:1 kg plums spirit:1 l 60%'
const STARTED = ['@ 2026-03-01 18:00', LEMON]
const BOTH = [...STARTED, PLUM]

/** What the last line of a conversation is answered with. */
const answer = async (...lines: readonly string[]): Promise<string> => {
  const told = await tell(lines.join('\n'))
  return told
    .slice(told.lastIndexOf('\n> '))
    .replace(/\s+/g, ' ')
    .replace(/\u00a0/g, ' ')
    .trim()
}

describe('a reminder of one job', () => {
  it.each([['done'], ['Done!'], ['all done'], ['did it'], ['ok, done that'], ['fatto'], ['done, thanks']])(
    'is answered by %s',
    async (said) => {
      expect(await answer(...STARTED, '@ 2026-03-02 09:05', `> ${said}`)).toContain('Lemon is shaken.')
    },
  )

  it('on its day, hours later', async () => {
    expect(await answer(...STARTED, '@ 2026-03-02 22:00', '> done')).toContain('Lemon is shaken.')
  })

  it('once: what is done is not done again', async () => {
    expect(await answer(...STARTED, '@ 2026-03-02 09:05', '> done', '@ 2026-03-02 12:00', '> done')).not.toContain(
      'shaken',
    )
  })

  it('by a deed with no name, for that jar alone', async () => {
    const lines = [...STARTED, '@ 2026-03-05 18:00', PLUM, '@ 2026-03-05 18:05', '> shook the plum']
    const plums = ['> /jar later lemon until:20 March', '@ 2026-03-06 09:05']
    expect(await answer(...lines, ...plums, '> shaken')).toContain('read as /jar shake plum')
  })

  it('of all jars that are shaken', async () => {
    expect(await answer(...BOTH, '@ 2026-03-02 09:05', '> done')).toContain('Shaken: lemon and plum.')
    expect(await answer(...BOTH, '@ 2026-03-02 09:05', '> shaken')).toContain('Shaken: lemon and plum.')
  })

  it('but not behind a question, a denial, or where none came', async () => {
    for (const said of ['done?', 'not done', 'is it done', 'done with gin'])
      expect(await answer(...STARTED, '@ 2026-03-02 09:05', `> ${said}`), said).not.toContain('is shaken')
    expect(await answer(...STARTED, '@ 2026-03-01 20:00', '> done')).not.toContain('is shaken')
  })
})

describe('a reminder of several jobs', () => {
  const TASTE = [...STARTED, '@ 2026-03-08 09:05']

  it('asks once which is done', async () => {
    expect(await answer(...TASTE, '> done')).toContain('What’s done with lemon: is it shaken or tasted?')
    const ofTwo = [...BOTH, '@ 2026-03-15 09:05', '> /jar shake all', '@ 2026-03-15 18:05', '> done']
    expect(await answer(...ofTwo)).toMatch(/Which is done: lemon strained, lemon tasted or plum tasted\?/)
  })

  it.each([
    ['shaken', 'Lemon is shaken.'],
    ['the first one', 'Lemon is shaken.'],
    ['I shook it', 'Lemon is shaken.'],
    ['number two', 'How does it taste'],
    ['both', 'Lemon is shaken.'],
  ])('which is answered by %s', async (said, answered) => {
    expect(await answer(...TASTE, '> done', `> ${said}`)).toContain(answered)
  })

  it('takes how it tastes in words', async () => {
    expect(await answer(...TASTE, '> done', '> tasted', '> lovely and sharp')).toContain(
      'Noted for lemon: “lovely and sharp”.',
    )
  })
})

it('may be what an answer offered before the reminder came: it is asked which', async () => {
  const lines = [
    ...STARTED,
    PLUM,
    '@ 2026-03-07 08:50',
    '> strained the lemon, 930 ml at 87',
    '@ 2026-03-07 09:05',
    '> done',
  ]
  expect(await answer(...lines)).toMatch(/Which is done: lemon sweetened or plum shaken\?/)
})

it('behind a list of several jobs it is asked which, and none is guessed', async () => {
  const lines = [...STARTED, '@ 2026-03-20 10:00', '> what’s on?']
  expect(await answer(...lines, '> done')).toMatch(/What’s done with lemon: is it strained, tasted or shaken\?/)
})
