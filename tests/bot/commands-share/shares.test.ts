import { describe, expect, it } from 'vitest'
import type { Share } from '../../../store/person.ts'
import { newAsker } from '../asker.ts'
import { flat } from '../flat.ts'
import { testDesk } from '../test-desk.ts'

const LEMON = '/jar start lemon of:10 lemons spirit:1 l 95% to-strength:30% to-sweetness:250 g/L'
const WALNUT = '/jar start nut of:300 g green walnuts spirit:1 l 60%'
const CHANNEL = '123456789012345678'

/** As Discord numbers a message of that moment: milliseconds since 2015 before 22 bits. */
const messageAt = (iso: string): string => String((BigInt(Date.parse(iso)) - 1_420_070_400_000n) << 22n)

const deskWith = async (...lines: readonly string[]) => {
  const desk = testDesk({
    asker: { ...newAsker(), assumedZone: 'Europe/Rome' },
    nowMs: Date.UTC(2026, 10, 25),
    width: 90,
  })
  for (const line of lines) expect((await desk.jsonOf(line)).error, line).toBeUndefined()
  const { store, userId } = desk.asker
  return {
    ...desk,
    /** What is shared, changed one by one. */
    reshare: (change: (share: Share) => readonly Share[]) =>
      store.update(userId, (person) => ({ ...person, shares: person.shares.flatMap(change) })),
    shares: async () => (await store.read(userId)).shares,
  }
}

describe('the list of shares', () => {
  it('tells each apart by its batch and day, counts by batch, and withdraws at a press', async () => {
    const desk = await deskWith(LEMON, WALNUT, '/share lemon', '/share nut')
    const [lemon] = await desk.shares()
    await desk.reshare((share) => {
      const posted = { ...share, postedIn: { channelId: CHANNEL, messageId: messageAt('2026-11-19T23:30:00Z') } }
      if (share.jarId !== lemon!.jarId) return [share]
      return [
        { ...posted, id: 'aaaaaaaa', made: 2, withdrawn: true },
        { ...posted, id: 'bbbbbbbb', made: 1 },
        { ...posted, id: 'cccccccc', postedIn: { channelId: CHANNEL, messageId: messageAt('2026-11-21T08:00:00Z') } },
      ]
    })
    const text = await desk.textOf('/share')
    const nut = (await desk.shares()).at(-1)!.id
    expect(text).toContain('You’re sharing 2 batches, 3 times in all.')
    // Half past midnight in Rome.
    expect(text).toMatch(/bbbbbbbb +lemon, shared 20 Nov, 00:30 in a channel/)
    expect(text).toMatch(/cccccccc +lemon, shared 21 Nov, 09:00 in a channel/)
    expect(text).not.toContain('aaaaaaaa')
    expect(text).toContain('Others have started 3 jars of lemon.')
    expect(text).toContain('One more was withdrawn.')
    // A name that no other share has is enough.
    expect(text).toContain('Withdraw nut: /share withdraw:nut')
    expect(text).toMatch(/^ +nut +shared$/m)
    expect(text).not.toContain(nut)
    const { shares } = (await desk.jsonOf('/share')).data
    expect(shares.map(({ share, made, sharedOn }: Record<string, unknown>) => [share, made, sharedOn])).toEqual([
      [nut, 0, null],
      ['cccccccc', 3, '2026-11-21'],
      ['bbbbbbbb', 3, '2026-11-20'],
      ['aaaaaaaa', 3, '2026-11-20'],
    ])
    expect((await desk.jsonOf('/share lemon')).data.made).toBe(3)
    expect(await desk.textOf('/share lemon')).toContain('others have started 3 jars of this batch so far')
  })

  it('has a button for five at most', async () => {
    const desk = await deskWith(LEMON, '/share lemon')
    await desk.reshare((share) => [1, 2, 3, 4, 5, 6].map((digit) => ({ ...share, id: `aaaaaaa${digit}` })))
    const text = await desk.textOf('/share')
    expect(text.match(/Withdraw lemon/g)).toHaveLength(5)
    expect(text).toContain('To take down another')
    expect(text).toContain('You’re sharing one batch, 6 times.')
  })
})

describe('/share withdraw:', () => {
  it('takes the name of a batch that is shared once', async () => {
    const desk = await deskWith(LEMON, WALNUT, '/share lemon', '/share nut')
    expect(await desk.textOf('/share withdraw:LEMON')).toContain('Lemon is no longer shared.')
    expect((await desk.shares()).map(({ withdrawn }) => withdrawn)).toEqual([true, false])
    expect(await desk.textOf('/share withdraw:lemon')).toContain('Lemon was withdrawn before.')
    expect((await desk.jsonOf('/share withdraw:lem')).error).toMatchObject({ code: 'not_found' })
  })

  it('asks which where it is shared more than once', async () => {
    const desk = await deskWith(LEMON, '/share lemon')
    const postedIn = { channelId: CHANNEL, messageId: messageAt('2026-11-21T08:00:00Z') }
    await desk.reshare((share) => [
      { ...share, id: 'aaaaaaaa' },
      { ...share, id: 'bbbbbbbb', postedIn },
      { ...share, id: 'cccccccc', withdrawn: true },
    ])
    expect((await desk.jsonOf('/share withdraw:lemon')).error).toMatchObject({
      code: 'ambiguous',
      message:
        'You’re sharing lemon twice: bbbbbbbb of 21 November 2026 and aaaaaaaa. Which one? For example: /share withdraw:bbbbbbbb',
    })
    expect((await desk.shares()).filter(({ withdrawn }) => withdrawn)).toHaveLength(1)
    await desk.jsonOf('/share withdraw:aaaaaaaa')
    expect((await desk.jsonOf('/share withdraw:lemon')).data).toMatchObject({ share: 'bbbbbbbb', withdrawn: true })
  })
})

describe('what is shared', () => {
  it('is nothing that was thrown away', async () => {
    const desk = await deskWith(LEMON, '/jar discard lemon')
    const { error } = await desk.jsonOf('/share lemon')
    expect(error).toMatchObject({ code: 'wrong_stage', message: expect.stringContaining('You threw lemon away') })
    expect(await desk.shares()).toEqual([])
    await desk.jsonOf('/jar undo lemon')
    expect((await desk.jsonOf('/share lemon')).error).toBeUndefined()
  })

  it('names its allergens in the text and in the words for who cannot see the picture', async () => {
    const desk = await deskWith(LEMON, WALNUT)
    expect(await desk.textOf('/share nut')).toMatch(/For guests +Contains walnut \(a nut\)/)
    expect(await desk.textOf('/share lemon')).not.toMatch(/for guests|allergens|contains/i)
  })
})

describe('a name that cannot be printed', () => {
  it.each(['/jar tag 梅酒', '/jar label 梅酒'])('is warned of by %s', async (line) => {
    const desk = await deskWith(
      '/jar start 梅酒 of:10 lemons spirit:1 l 95% to-strength:30% to-sweetness:250 g/L',
      LEMON,
    )
    const note = /The font can’t print this name, so I’ve put #[0-9a-z]{5}\./
    expect(flat(await desk.textOf(line))).toMatch(note)
    expect(flat(await desk.textOf(line.replace('梅酒', 'lemon')))).not.toMatch(note)
  })
})
