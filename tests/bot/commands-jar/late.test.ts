import { describe, expect, it } from 'vitest'
import { eventsIn, jarDesk, LEMON } from './desk.ts'

describe('when:', () => {
  it('takes the last such day where no year was typed, and says the year', async () => {
    const desk = jarDesk('2026-11-20')
    await desk.ask(LEMON)
    desk.at('2027-01-05')
    const text = await desk.textOf('/jar shake lemon when:24 December')
    expect(text).toMatch(/^Lemon was shaken on 24 December 2026\./)
    expect(eventsIn(await desk.ask('/jar shake lemon when:5 January'))).toContain('2027-01-05 shaken')
    expect(await desk.textOf('/jar shake lemon when:yesterday')).toContain('on 4 January 2027')
  })

  it('takes 29 February as the last there was', async () => {
    const desk = jarDesk('2024-02-01')
    await desk.ask(LEMON)
    desk.at('2027-01-05')
    expect(eventsIn(await desk.ask('/jar taste lemon rating:3 when:29 February'))).toContain('2024-02-29 tasted')
  })

  it.each([
    ['/jar shake lemon when:tomorrow', 'bad_value'],
    ['/jar shake lemon when:2027-12-24', 'bad_value'],
    ['/jar shake lemon when:24 October', 'wrong_stage'],
    ['/jar shake lemon when:30 years ago', 'bad_value'],
    ['/jar shake lemon when:soon', 'bad_value'],
    ['/jar later lemon until:yesterday', 'bad_value'],
    ['/jar later lemon until:today', 'bad_value'],
  ])('%s → %s', async (line, code) => {
    const desk = jarDesk('2026-11-01')
    await desk.ask(LEMON)
    desk.at('2026-11-10')
    const error = await desk.refused(line)
    expect(error.code).toBe(code)
    expect(error.message).not.toMatch(/NaN|undefined|null/)
    expect((await desk.person()).jars[0]!.entries).toHaveLength(1)
  })

  it('goes by the day where the person lives', async () => {
    const desk = jarDesk('2026-11-01')
    await desk.ask('/settings zone:Pacific/Auckland')
    await desk.ask(LEMON)
    // 22:00 in London is 11 on the next morning in Auckland.
    desk.at('2026-11-03T22:00:00Z')
    expect(eventsIn(await desk.ask('/jar shake lemon'))).toContain('2026-11-04 shaken')
    expect(eventsIn(await desk.ask('/jar shake lemon when:yesterday'))).toContain('2026-11-03 shaken')
  })

  it('puts a late entry where it belongs, and refuses one that cannot have been there', async () => {
    const desk = jarDesk('2026-11-01')
    await desk.ask(LEMON)
    desk.at('2026-11-20')
    await desk.ask('/jar strain lemon measured:920 ml')
    desk.at('2026-11-25')
    await desk.ask('/jar add lemon of:20 g ginger when:10 November')
    expect((await desk.refused('/jar add lemon of:20 g basil when:22 November')).code).toBe('wrong_stage')
    const { happened } = await desk.storyOf('lemon')
    expect(happened.map(({ kind }) => kind)).toEqual(['started', 'added', 'strained'])
  })
})

describe('all', () => {
  const three = async () => {
    const desk = jarDesk('2026-11-01')
    await desk.ask(LEMON)
    await desk.ask('/jar start ginger of:60 g ginger spirit:1 l 60%')
    desk.at('2026-11-05')
    await desk.ask('/jar start walnut of:300 g green walnut spirit:1 l 60%')
    return desk
  }

  it('shakes every jar that steeps, those it has been said of already left alone', async () => {
    const desk = await three()
    await desk.ask('/jar strain ginger measured:600 ml')
    await desk.ask('/jar shake lemon')
    const json = await desk.ask('/jar shake ALL')
    expect((json.data.jars as readonly unknown[]).length).toBe(2)
    const { jars } = await desk.person()
    const shaken = jars.map(({ entries }) => entries.filter(({ kind }) => kind === 'shaken').length)
    expect(shaken).toEqual([1, 0, 1])
    const before = await desk.person()
    expect(await desk.textOf('/jar shake all')).toContain('Nothing changed')
    expect(await desk.person()).toBe(before)
  })

  it('passes over jars that were not there on that day', async () => {
    const desk = await three()
    expect(await desk.textOf('/jar shake all when:3 days ago')).toMatch(
      /^Shaken on 2 November 2026: lemon and ginger\./,
    )
  })

  it('puts all of them off, and asks for a jar where there is none', async () => {
    const desk = await three()
    expect(await desk.textOf('/jar later all until:in 2 weeks')).toContain('again from 19 November 2026')
    expect((await jarDesk().refused('/jar later all until:tomorrow')).code).toBe('not_found')
  })

  it('puts them off to an hour of today, or of tomorrow where that is past', async () => {
    const desk = await three()
    expect(await desk.textOf('/jar later all until:18:00')).toContain('again from 18:00 on 5 November 2026')
    expect(await desk.textOf('/jar later lemon until:3 hours')).toMatch(/lemon again from 15:00 on 5 November 2026\./)
    expect(await desk.textOf('/jar later lemon until:11:00')).toMatch(/lemon again from 11:00 on 6 November 2026\./)
    expect(await desk.textOf('/jar later lemon until:later today')).toContain('18:00 on 5 November 2026')
    expect((await desk.refused('/jar later lemon until:25:00')).message).toContain('25:00')
    expect((await desk.refused('/jar later lemon until:0 hours')).code).toBe('bad_value')
    expect((await desk.person()).jars[0]?.entries.at(-1)).toMatchObject({
      kind: 'put_off',
      untilDay: '2026-11-05',
      untilMs: Date.parse('2026-11-05T18:00:00Z'),
    })
  })

  it('is for shake and later alone', async () => {
    const desk = await three()
    expect((await desk.refused('/jar discard all')).code).toBe('not_found')
    expect((await desk.refused('/jar undo all')).code).toBe('not_found')
  })
})

describe('/jar later all', () => {
  it('puts off only what asks for something before then', async () => {
    const desk = jarDesk('2026-11-02')
    for (const name of ['shaken', 'waiting', 'strained', 'quiet'])
      await desk.ask(`${LEMON.replace('lemon', name)} when:1 November`)
    await desk.ask('/jar shake shaken')
    await desk.ask('/jar strain strained measured:900 ml')
    await desk.ask('/jar later quiet until:in 3 days')
    const text = await desk.textOf('/jar later all until:18:00')
    expect(text).toMatch(/about waiting and strained again from 18:00 on 2 November 2026\.$/m)
    expect((await desk.storyOf('quiet')).happened).toHaveLength(2)
    expect((await desk.refused('/jar later all until:18:00')).message).toBe(
      'Nothing is due before 18:00 on 2 November 2026, so there’s nothing to postpone.',
    )
    expect(await desk.textOf('/jar later all until:in 2 days')).toMatch(
      / about shaken, waiting and strained again from /,
    )
  })
})

describe('a day of the week', () => {
  // 4 November 2026 is a Wednesday.
  it('is the last one for what happened, and the coming one for what is put off', async () => {
    const desk = jarDesk('2026-10-20')
    await desk.ask(LEMON)
    desk.at('2026-11-04')
    expect(await desk.textOf('/jar shake lemon when:Saturday')).toContain('shaken on 31 October 2026')
    expect(await desk.textOf('/jar shake lemon when:Wednesday')).toMatch(/^Lemon is shaken\./)
    expect(await desk.textOf('/jar later lemon until:Saturday')).toContain('again from 7 November 2026')
    expect(await desk.textOf('/jar later lemon until:Wednesday')).toContain('again from 11 November 2026')
    expect(await desk.textOf('/jar shake lemon when:two days ago')).toContain('on 2 November 2026')
  })

  it('that comes within a month is not last year’s', async () => {
    const desk = jarDesk('2026-10-20')
    await desk.ask(LEMON)
    desk.at('2026-11-04')
    expect((await desk.refused('/jar shake lemon when:20 November')).message).toContain('hasn’t come yet')
    const { message } = await desk.refused('/jar later lemon until:whenever')
    expect(message).toContain('until:tomorrow')
    expect(message).not.toContain('ago')
    expect((await desk.refused('/jar shake lemon when:whenever')).message).toContain('when:yesterday')
  })

  it('puts off all that ask for something, and says so where none does', async () => {
    const desk = jarDesk('2026-10-20')
    expect((await desk.refused('/jar later all until:tomorrow')).message).toContain('no jars yet')
    await desk.ask(LEMON)
    await desk.ask('/jar strain lemon measured:920 ml')
    await desk.ask('/jar bottle lemon bottles:500 ml')
    await desk.ask('/jar open lemon')
    expect((await desk.refused('/jar later all until:tomorrow')).message).toContain('nothing to postpone')
    await desk.ask(LEMON.replace('lemon', 'ginger'))
    expect((await desk.refused('/jar later all until:tomorrow')).message).toContain('Nothing is due before')
    expect(await desk.textOf('/jar later all until:in 2 days')).toMatch(/ about ginger again from /)
  })
})
