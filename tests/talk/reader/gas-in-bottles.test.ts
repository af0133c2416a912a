import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const PLUM = '/jar start plum of:500 g plums spirit:1 l vodka 40%'

const told = async (...lines: readonly string[]) => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  for (const line of lines) await one.say(line)
  return one
}

const replyTo = async (one: Awaited<ReturnType<typeof told>>, line: string) => {
  const { outcome } = await one.hear(line)
  if (!outcome.ok || !('reply' in outcome)) throw new Error(`no reply to ${line}`)
  return outcome.reply
}

const keysOf = async (one: Awaited<ReturnType<typeof told>>, line: string) =>
  (await replyTo(one, line)).notes.map(({ key }) => key)

// How what pushes its lid is handled: core/trouble/rows-of-growth.ts, `pressure`, with its source. Sentences: common sense, no source.
describe('gas in bottles that are full', () => {
  it.each([
    'it’s bottled already, in flip-top bottles',
    'it is all in bottles already',
    'I’ve corked the bottles',
    'will the bottles go off like bombs?',
    'how do I open the bottles?',
    'what about the bottles in the cellar?',
    'and the other bottles, are they ok?',
    'è già imbottigliato',
    'I bottled half of it on Sunday',
    'bottled the lot last week',
    'cosa faccio con le bottiglie?',
  ])('says how they are handled, and forgets no yes: %s', async (line) => {
    const one = await told(PLUM, 'the lid of the plum is bulging', 'yes it hisses again')
    const reply = await replyTo(one, line)
    expect(reply.notes.map(({ key }) => key)).toContain('trouble_full_bottles')
    // What is done with a jar is not said beside it.
    expect(reply.notes.map(({ key }) => key)).not.toContain('trouble_todo')
    expect(reply.headline).toMatchObject({ key: 'trouble_hold', values: { because: 'fizz' } })
    expect(reply.notes.map(({ key }) => key)).not.toContain('trouble_question')
  })

  it.each(['how many bottles will it fill?', 'how do I clean the bottles?', 'bottled it'])(
    'is nothing of bottles to be filled, or of a bare step: %s',
    async (line) => {
      const one = await told(PLUM, 'the lid of the plum is bulging', 'yes')
      const { outcome } = await one.hear(line)
      expect(JSON.stringify(outcome)).not.toContain('trouble_full_bottles')
    },
  )

  it('is said of no jar too, and of mould in a jar it is not', async () => {
    expect(await keysOf(await told('my lid is bulging'), 'I’ve bottled it already')).toContain('trouble_full_bottles')
    expect(await keysOf(await told('my lid is bulging'), 'are the bottles dangerous?')).toContain(
      'trouble_full_bottles',
    )
    const fur = await told('there is fur on top of the lemon')
    expect(await keysOf(fur, 'what about the other bottles?')).not.toContain('trouble_full_bottles')
  })

  it('asked again, the answer that held it back is known', async () => {
    const one = await told(PLUM, 'the lid of the plum is bulging', 'yes')
    const { headline, notes } = await replyTo(one, '/trouble lid bulging jar:plum')
    expect(headline).toMatchObject({ values: { because: 'fizz' } })
    expect(notes.map(({ key }) => key)).not.toContain('trouble_question')
    expect((await replyTo(one, '/trouble lid bulging jar:plum no:hisses again')).notes).toContainEqual(
      expect.objectContaining({ key: 'trouble_settled' }),
    )
  })

  it('can be thrown away, and that stands before it was nothing', async () => {
    const one = await told(PLUM, 'the lid of the plum is bulging')
    const { actions } = await replyTo(one, 'yes')
    const keys = actions.map(({ label: { key } }) => key)
    expect(keys.indexOf('jar_throw_away')).toBeGreaterThanOrEqual(0)
    expect(keys.indexOf('jar_throw_away')).toBeLessThan(keys.indexOf('jar_was_nothing'))
  })
})

describe('a yes or no with a sign that was not asked about', () => {
  const VARNISH = 'the lemon smells of nail varnish'

  it.each(['no, it does not fizz', 'no bubbles', 'no, nothing grows on it', 'no, non frizza', 'no, there’s no fur'])(
    'is no answer to whether the spirit was bought: %s',
    async (line) => {
      const one = await told(VARNISH)
      expect(await one.say(line)).toMatchObject({
        command: 'trouble',
        data: { discard: { verdict: 'ask', question: 'bought' } },
      })
      expect((await one.say('no')).data.discard).toMatchObject({ verdict: 'throw_away' })
    },
  )

  it('has no bottle burst that only hisses', async () => {
    const one = await told('my lid is bulging')
    const said = await one.say('yes, it hisses each time')
    expect(said.call?.options.yes).toBe('hisses again')
    expect(said.data.discard).toMatchObject({ verdict: 'hold', question: 'burst' })
    expect((await one.say('no')).data.discard).toMatchObject({ verdict: 'hold' })
  })

  it('answers what was asked where its words are of it', async () => {
    const one = await told(PLUM, 'the lid of the plum is bulging')
    expect((await one.say('no, it doesn’t hiss any more')).data.discard).not.toMatchObject({ verdict: 'hold' })
  })

  it('of no jar, what was thrown away stays so', async () => {
    const one = await told('my liqueur smells like nail varnish remover')
    expect((await one.say('no, it does not fizz')).data.discard).toMatchObject({ verdict: 'throw_away' })
  })
})

describe('a jar that is to go, and has gone', () => {
  it.each([
    'ok I threw it all out',
    'ok, throw it away',
    'binned the lot',
    'I’ve poured it all down the sink',
    'lo butto',
    'l’ho buttata via',
  ])('is offered the line that says so, and nothing is done: %s', async (line) => {
    const one = await told('there is fur on top of the lemon')
    const { outcome, read } = await one.hear(line)
    expect(outcome).toMatchObject({ ok: false, error: { problem: 'talk_only_typed' } })
    expect(read).toBe('/jar discard lemon')
    expect((await one.say('/jar show lemon')).data.dangers).toEqual(['to_throw_away'])
  })

  it.each([
    'should I bin it?',
    'I haven’t thrown it out',
    'lo butto?',
    'do I have to throw it away',
    'I won’t throw it away',
  ])('is told once more where it is asked or denied: %s', async (line) => {
    const one = await told('there is fur on top of the lemon')
    expect(await one.say(line)).toMatchObject({ command: 'trouble', data: { discard: { verdict: 'throw_away' } } })
  })
})
