import { describe, expect, it } from 'vitest'
import { untold } from '../../../store/due.ts'
import { NOBODY, type Person } from '../../../store/person.ts'
import { entriesOf, startedAs } from '../commands-jar-views/jars.ts'
import { deskOf, lemonJar, NOW_MS, walnutJar } from './desk.ts'

const settings: Person['settings'] = {
  ...NOBODY.settings,
  units: 'us',
  country: 'IT',
  zone: 'Europe/Rome',
  atMinutes: 1110,
  shake: 'every_other_day',
}

const told = (person: Person) => ({ ...person, jars: person.jars.map(({ told: _, ...jar }) => jar) })

const exported = async (person: Partial<Person>) => (await (await deskOf(person)).filesOf('/notebook export:json'))[0]!

describe('/notebook export:json and import:', () => {
  it('gives an empty notebook what the first one had', async () => {
    const person = { ...NOBODY, settings, jars: [lemonJar(), walnutJar()] }
    const other = await deskOf({})
    const reply = await other.takeIn(await exported(person))
    expect(reply.data).toMatchObject({ added: ['aaaa1', 'bbbb2'], longer: [], same: 0, renamed: [] })
    expect(told(await other.person())).toEqual(told(person))
    for (const [index, jar] of (await other.person()).jars.entries()) {
      expect(jar.told).toEqual(expect.arrayContaining([...person.jars[index]!.told]))
    }
    // And once more from there.
    expect(
      JSON.parse((await other.filesOf('/notebook export:json'))[0]!).jars.map((jar: object) => ({ ...jar, told: [] })),
    ).toEqual(person.jars.map((jar) => ({ ...jar, told: [] })))
  })

  it('doubles nothing when taken in again, and changes nothing then', async () => {
    const file = await exported({ settings, jars: [lemonJar(), walnutJar()] })
    const desk = await deskOf({})
    await desk.takeIn(file)
    const before = await desk.person()
    expect((await desk.takeIn(file)).data).toMatchObject({ added: [], longer: [], same: 2, entries: 0 })
    expect(await desk.person()).toBe(before)
  })

  it('carries what is shared of its jars, but not where it was posted', async () => {
    const postedIn = { channelId: '12345678901234567', messageId: '12345678901234568' }
    const share = { id: '3ng3pnaa', jarId: 'aaaa1', code: '11NC', postedIn, withdrawn: false, made: 2 }
    const ofNone = { ...share, id: '4ng3pnaa', jarId: 'zzzz9' }
    const file = await exported({ jars: [lemonJar(), walnutJar()], shares: [share, ofNone] })
    expect(JSON.parse(file).shares).toEqual([ofNone, share])
    const desk = await deskOf({})
    await desk.takeIn(file)
    expect((await desk.person()).shares).toEqual([{ ...share, postedIn: null }])
    await desk.takeIn(file)
    expect((await desk.person()).shares.length).toBe(1)
    const withJars = await deskOf({ jars: [lemonJar(), walnutJar()] })
    await withJars.takeIn(file)
    expect((await withJars.person()).shares.length).toBe(1)
  })

  it('takes the longer of two forms of a jar, whichever side has it', async () => {
    const whole = lemonJar()
    const half = { ...whole, entries: whole.entries.slice(0, 3) }
    const behind = await deskOf({ jars: [half] })
    expect((await behind.takeIn(await exported({ jars: [whole] }))).data).toMatchObject({
      longer: ['aaaa1'],
      entries: 5,
    })
    expect((await behind.person()).jars[0]!.entries).toEqual(whole.entries)
    const ahead = await deskOf({ jars: [whole] })
    expect((await ahead.takeIn(await exported({ jars: [half] }))).data).toMatchObject({ same: 1, entries: 0 })
    expect((await ahead.person()).jars).toEqual([whole])
  })

  it('gives another jar of the same id a new one, and of the same name a free one, also the second time', async () => {
    const mine = walnutJar('walnut', 'aaaa1')
    const theirs = {
      ...walnutJar('walnut', 'aaaa1'),
      entries: entriesOf([{ ...startedAs('walnut'), on: '2026-11-18' }]),
    }
    const file = await exported({ jars: [theirs] })
    const desk = await deskOf({ jars: [mine] })
    const reply = await desk.takeIn(file)
    expect(reply.data.renamed).toEqual([{ from: 'walnut', to: 'walnut 2' }])
    const { jars } = await desk.person()
    expect(jars[0]).toEqual(mine)
    expect(jars[1]!.id).not.toBe('aaaa1')
    expect(jars[1]!.entries.slice(0, 1)).toEqual(theirs.entries)
    expect((await desk.takeIn(file)).data).toMatchObject({ added: [], same: 1 })
    expect(await desk.textOf('/jar list')).toContain('walnut 2')
  })

  it('says nothing again that fell due before', async () => {
    const overdue = { ...lemonJar(), entries: lemonJar().entries.slice(0, 1), told: [] }
    const desk = await deskOf({})
    await desk.takeIn(await exported({ jars: [overdue, walnutJar()] }))
    const coming = untold(await desk.person(), 'UTC')
    expect(coming.length).toBeGreaterThan(0)
    expect(coming.every(({ duty }) => duty.dueMs > NOW_MS)).toBe(true)
  })

  it('keeps what was chosen here, and no place of a file but this surface’s', async () => {
    const place = { kind: 'channel', channelId: '123456789012345678' } as const
    const file = await exported({ settings: { ...settings, place }, jars: [walnutJar()] })
    const mine = { ...NOBODY.settings, units: 'metric' } as const
    const desk = await deskOf({ settings: mine }, { userId: '111111111111111111' })
    await desk.takeIn(file)
    expect((await desk.person()).settings).toEqual({ ...settings, units: 'metric', place: null })
  })

  it('deals out what is more than one file can hold', async () => {
    const jars = Array.from({ length: 30 }, (_, index) => {
      const jar = walnutJar(`walnut ${index}`, `a${String(index).padStart(4, '0')}`)
      const notes = Array.from({ length: 60 }, (_, each) => ({
        kind: 'tasted' as const,
        rating: null,
        note: `${each} ${'柠'.repeat(900)}`,
        on: '2026-11-19',
      }))
      return { ...jar, entries: entriesOf([{ ...startedAs(`walnut ${index}`), on: '2026-11-19' }, ...notes]) }
    })
    const files = await (await deskOf({ jars })).filesOf('/notebook export:json')
    expect(files.length).toBeGreaterThan(4)
    const desk = await deskOf({})
    for (const file of files) {
      expect(Buffer.byteLength(file)).toBeLessThanOrEqual(1_000_000)
      expect((await desk.takeIn(file)).error).toBeUndefined()
    }
    expect((await desk.person()).jars.map(({ entries }) => entries)).toEqual(jars.map(({ entries }) => entries))
  })

  it('makes no file of nothing', async () => {
    const desk = await deskOf({})
    expect(await desk.filesOf('/notebook export:json')).toEqual([])
    expect(await desk.filesOf('/notebook export:csv')).toEqual([])
  })
})
