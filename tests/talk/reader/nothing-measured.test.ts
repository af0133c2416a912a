import { describe, expect, it } from 'vitest'
import { talker } from './told.ts'

const PLUM = '/jar start plum of:400 g plums spirit:0.5 l vodka 40% when:7 weeks ago'

const told = async (...lines: readonly string[]) => {
  const maker = talker()
  for (const line of lines) await maker.say(line)
  return maker
}

const notesOf = async (maker: Awaited<ReturnType<typeof told>>, text: string) => {
  const { outcome, read } = await maker.hear(text)
  return { read, keys: 'reply' in outcome ? outcome.reply.notes.map(({ key }) => key) : [] }
}

describe('how strong it is, which nobody measured', () => {
  it.each([
    'I really don’t know how strong it is',
    'haven’t a clue about the strength',
    'no way of measuring the strength',
    'not sure of the percentage',
    'non so quanti gradi ha',
  ])('is estimated, and said to be: %s', async (text) => {
    const maker = await told(PLUM, '/jar strain plum measured:480 ml')
    expect(await notesOf(maker, text)).toMatchObject({
      read: '/measure plum',
      keys: expect.arrayContaining(['strength_open']),
    })
    expect((await maker.say('done')).read).toContain('/jar sweeten plum')
  })

  it.each([
    ['strained the plum, 460 ml, dunno how strong it is', '/jar strain plum measured:460 ml'],
    ['sieved the plums out and couldn’t tell you the abv', '/jar strain plum'],
    ['ho filtrato le prugne, non so quanto è forte', '/jar strain plum'],
  ])('keeps the straining: %s', async (text, line) => {
    const maker = await told(PLUM)
    const { read, keys } = await notesOf(maker, text)
    expect(read).toBe(line)
    expect(keys).toContain('strength_open')
  })

  it('is a question where it is asked', async () => {
    const maker = await told(PLUM, '/jar strain plum')
    expect((await notesOf(maker, 'don’t you know how strong it is?')).keys).not.toContain('strength_open')
  })
})

describe('a part of the jar that came out', () => {
  it.each([
    ['strained the plum, three quarters of a 1 litre jar came out', '/jar strain plum measured:750 ml'],
    ['strained the plum and filled half the kilner', '/jar strain plum measured:500 ml'],
  ])('is so much by the size of the jar: %s', async (text, line) => {
    expect((await (await told(PLUM)).say(text)).read).toBe(line)
  })

  it.each([
    'strained the plum, about half the jar came out',
    'I’ve strained the plums and it filled three quarters of the jar',
    'ho filtrato le prugne, circa metà del vaso',
  ])('keeps the straining, asks how large the jar is, and takes it: %s', async (text) => {
    const maker = await told(PLUM)
    const { read, keys } = await notesOf(maker, text)
    expect(read).toBe('/jar strain plum')
    expect(keys).toContain('jar_open')
    expect((await maker.say('a litre jar')).read).toMatch(/^\/jar correct plum measured:(?:500|750) ml$/)
  })

  it('asks behind a straining, and plans nothing anew', async () => {
    const maker = await told(PLUM, '/jar strain plum')
    expect(await maker.say('about half of the jar')).toMatchObject({
      code: 'question',
      command: 'jar correct',
      recorded: 0,
    })
    expect((await maker.say('600 ml')).read).toBe('/jar correct plum measured:300 ml')
  })
})

describe('what went in by taste', () => {
  it.each([
    ['tipped a generous splash of syrup into the plum', '/jar sweeten plum sugar:30 g ±20 g water:30 ml'],
    ['added another handful of sugar', '/jar sweeten plum sugar:50 g ±30 g'],
    ['aggiunto un bel pugno di zucchero', '/jar sweeten plum sugar:50 g ±30 g'],
  ])('is about so much, and said to be a guess: %s', async (text, line) => {
    const maker = await told(PLUM, '/jar strain plum measured:480 ml')
    const { read, keys } = await notesOf(maker, text)
    expect(read).toBe(line)
    expect(keys).toContain('sugar_guessed')
  })

  it.each(['stirred sugar in by eye', 'I sweetened it to taste', 'ho zuccherato a occhio'])(
    'is as planned, give or take half of it: %s',
    async (text) => {
      const maker = await told(PLUM, '/jar strain plum measured:480 ml')
      const { read, keys } = await notesOf(maker, text)
      const [, planned, half] = /^\/jar sweeten plum sugar:(\d+) g ±(\d+) g/.exec(read ?? '') ?? []
      expect(Number(half) / Number(planned)).toBeCloseTo(0.5, 1)
      expect(keys).toContain('sugar_guessed')
      expect((await maker.say('/jar show plum')).data).toMatchObject({ stage: 'sweetened' })
    },
  )

  it('answers how much went in', async () => {
    const maker = await told(PLUM, '/jar strain plum measured:480 ml', '/jar list', '/jar sweeten plum')
    expect((await maker.say('I didn’t weigh it')).read).toMatch(/^\/jar sweeten plum sugar:\d+ g ±\d+ g/)
  })

  it.each(['should I add a handful of sugar?', 'I want to sweeten it to taste', 'don’t put a glug of syrup in'])(
    'is not done yet: %s',
    async (text) => {
      expect((await (await told(PLUM, '/jar strain plum')).say(text)).recorded).toBe(0)
    },
  )

  it('stands in the line of a jar that is told by what it fills', async () => {
    const maker = await told()
    await maker.say('I filled a jar half with blackberries and a big handful of sugar, topped it up with gin')
    expect((await maker.say('a jam jar')).read).toContain('sugar:50 g')
  })
})
