import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const FUR = 'there is fur on top of the lemon'
const FILM = 'there’s a funny film on top of the lemon'

const told = async (before: string, ...between: readonly string[]) => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  for (const line of [before, ...between]) await one.say(line)
  return one
}

/** What it was told stands, and is what is answered. */
const AWAY = { command: 'trouble', code: null, recorded: 0, data: { discard: { verdict: 'throw_away' } } }

// Sentences as makers type them; common sense, no source.
describe('behind “throw it away”', () => {
  it.each([
    ...['yes', 'Yes!', 'sì', 'ok', 'right', 'done', 'no', 'ok will do', 'oh no', 'va bene'],
    ...['is it safe?', 'so is it ok?', 'is it safe to drink?', 'what do I do with it now?', 'what now?'],
    ...['can I still save it?', 'can I keep the lemon one?', 'can I strain it and drink the rest?', 'is the lemon ok?'],
    ...['should I chuck it?', 'will it make me ill?', 'posso berlo?', 'si può salvare?', 'e adesso?'],
  ])('it is said once more, and stays: %s', async (text) => {
    const one = await told(FUR)
    expect(await one.say(text)).toMatchObject({ ...AWAY, data: { ...AWAY.data, jar: { name: 'lemon' } } })
    expect((await one.say('/jar show lemon')).data.dangers).toEqual(['to_throw_away'])
  })

  // Whoever has done as told needs the line that closes the jar, not the verdict once more.
  it.each(['ok I’ll throw it away', 'binned it', 'threw it away', 'poured it down the drain', 'l’ho buttato'])(
    'that it goes is written down by its line only, and it stays: %s',
    async (text) => {
      const one = await told(FUR)
      expect(await one.say(text)).toMatchObject({ command: 'jar discard', code: 'question', recorded: 0 })
      expect((await one.say('/jar show lemon')).data.dangers).toEqual(['to_throw_away'])
    },
  )

  it('says that it stays, and offers the line that throws it away', async () => {
    const one = await told(FUR)
    const { outcome } = await one.hear('ok')
    if (!outcome.ok || !('reply' in outcome)) throw new Error('no reply')
    expect(outcome.reply.notes).toContainEqual(expect.objectContaining({ key: 'trouble_stays' }))
    expect(outcome.reply.actions[0]?.label.key).toBe('jar_throw_away')
  })

  it.each(['thanks', 'ok thanks', 'how do I clean a jar?', 'can I use vodka instead?', 'is the ginger ok?'])(
    'is not the answer to what is of something else: %s',
    async (text) => {
      const one = await told(FUR)
      expect((await one.say(text)).data.discard).toBeUndefined()
    },
  )

  it('is answered of the jar that is named, and by a question behind another answer', async () => {
    const one = await told(FUR, '/jar show ginger')
    expect(await one.say('can I keep the lemon one?')).toMatchObject(AWAY)
    await one.say('what is proof?')
    expect(await one.say('is it safe?')).toMatchObject(AWAY)
  })

  it('goes by its own words', async () => {
    const one = await told(FUR)
    expect(await one.say('yes, it was only pith')).toMatchObject({ command: 'jar note', code: null, recorded: 1 })
    expect((await one.say('/jar show lemon')).data.dangers).toEqual([])
  })

  it('stays where it was asked by a line that tells less', async () => {
    const one = await told(FUR)
    expect(await one.say('/trouble mould jar:lemon')).toMatchObject(AWAY)
  })
})

it.each(['is it safe?', 'is it safe to drink?', 'so is it ok?', 'can I still drink it?', 'what do I do now?'])(
  'asks the open question again: %s',
  async (text) => {
    const one = await told(FILM)
    expect(await one.say(text)).toMatchObject({
      command: 'trouble',
      recorded: 0,
      data: { discard: { verdict: 'ask' } },
    })
    expect((await one.say('yes')).data.discard).toMatchObject({ verdict: 'throw_away' })
  },
)
