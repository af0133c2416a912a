import { describe, expect, it } from 'vitest'
import { talker } from './told.ts'

const THYME = '/jar start thyme of:10 g thyme spirit:0.5 l vodka 40% when:4 days ago'

const told = async (...lines: readonly string[]) => {
  const maker = talker()
  for (const line of lines) await maker.say(line)
  return maker
}

describe('no sugar, wished beside a deed', () => {
  it.each([
    ['took the thyme out, no sugar', 'no sugar'],
    ['strained the thyme, 480 ml, and no sugar at all please', 'no sugar'],
    ['left it without any sugar, strained this morning', 'no sugar'],
    ['ho filtrato il timo, senza zucchero', 'senza zucchero'],
  ])('is noted before it, and no syrup is asked for: %s', async (text, note) => {
    const maker = await told(THYME)
    const { read, also } = await maker.say(text)
    const lines = [read, ...also.map((each) => each.read)]
    expect(lines[0]).toBe(`/jar note thyme note:${note}`)
    expect(lines.some((line) => line?.startsWith('/jar strain thyme'))).toBe(true)
    expect((await maker.say('/jar list')).data).toMatchObject({
      jars: [{ stage: 'strained', next: { duty: 'bottle' } }],
    })
  })

  it('keeps what else is said: where it goes', async () => {
    const maker = await told(THYME, '/jar strain thyme')
    const { read } = await maker.say('no sugar, straight into the fridge with it')
    expect(read).toBe('/jar note thyme where:fridge note:no sugar')
  })

  it.each(['stirred in 120 g of sugar, no syrup', 'strained it, is it with no sugar?'])(
    'is none where sugar went in or it is asked: %s',
    async (text) => {
      const maker = await told(THYME, '/jar strain thyme')
      const { read, also } = await maker.say(text)
      expect([read, ...also.map((each) => each.read)].join()).not.toContain('note:')
    },
  )

  it.each([
    'if I strained the thyme, no sugar',
    'what if I strain the thyme, no sugar',
    'should I have strained the thyme, no sugar',
  ])('is noted of nothing that is only thought of or asked: %s', async (text) => {
    expect(await (await told(THYME)).say(text)).toMatchObject({ recorded: 0 })
  })

  it('still brings strong spirit down with water', async () => {
    const maker = await told('/jar start zest of:8 lemons spirit:1 l 95% when:20 days ago')
    await maker.say('no sugar in the zest')
    const { data } = await maker.say('/jar strain zest measured:900 ml')
    expect(data.syrup).toMatchObject({ sugarG: 0 })
    expect((data.syrup as { waterMl: number }).waterMl).toBeGreaterThan(1000)
  })

  it('asks in no bottle why there is none, and is forgotten with the note', async () => {
    const maker = await told(THYME, '/jar strain thyme', '/jar note thyme note:no sugar')
    expect((await maker.say('/jar undo thyme')).recorded).toBe(1)
    expect((await maker.say('/jar list')).data).toMatchObject({ jars: [{ next: { duty: 'sweeten' } }] })
  })
})
