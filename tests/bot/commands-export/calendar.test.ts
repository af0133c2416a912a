import ICAL from 'ical.js'
import { describe, expect, it } from 'vitest'
import { allDuties } from '../../../core/jar/tasks/duties.ts'
import { dutySettings } from '../../../store/due.ts'
import { type Jar, NOBODY } from '../../../store/person.ts'
import { entriesOf, startedAs } from '../commands-jar-views/jars.ts'
import { deskOf, lemonJar, NOW_MS, walnutJar } from './desk.ts'

const eventsOf = (text: string) =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((component) => {
    const event = new ICAL.Event(component)
    return {
      uid: event.uid,
      startMs: event.startDate.toJSDate().getTime(),
      summary: event.summary,
      sequence: event.sequence,
      stamp: String(component.getFirstPropertyValue('dtstamp')),
      alarms: component.getAllSubcomponents('valarm').map((alarm) => String(alarm.getFirstPropertyValue('trigger'))),
    }
  })

const calendarOf = async (desk: Awaited<ReturnType<typeof deskOf>>, line = '/calendar') => {
  const [text] = await desk.filesOf(line)
  return { text: text!, events: eventsOf(text!) }
}

/** Weeks long, so that the reminders of one jar lie on both sides of the change of the clocks. */
const jarAround = (day: string, strainFrom: string, strainBy: string): Jar => ({
  id: 'ccccc',
  entries: entriesOf([{ ...startedAs('lemon', {}, { tasteFrom: strainFrom, strainFrom, strainBy }), on: day }]),
  told: [],
  cautioned: [],
})

describe('/calendar', () => {
  // Clocks in Rome go forward on 28 March 2027 and back on 31 October 2027.
  it.each([
    ['spring', '2027-03-24', '2027-03-30', '2027-04-10'],
    ['autumn', '2027-10-27', '2027-11-02', '2027-11-12'],
  ])('is equal to the duties where the clocks change in %s', async (_, day, from, by) => {
    const jar = jarAround(day, from, by)
    const settings = { ...NOBODY.settings, zone: 'Europe/Rome' }
    const nowMs = Date.parse(`${day}T13:00:00Z`)
    const desk = await deskOf({ jars: [jar], settings }, { nowMs })
    const { text, events } = await calendarOf(desk)
    // RFC 5545, 3.1: a line ends with CRLF, the last one too.
    expect(text.replaceAll('\r\n', '').match(/[\r\n]/)).toBeNull()
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true)
    const duties = allDuties(jar.entries, dutySettings(settings, 'UTC')).filter(({ dueMs }) => dueMs > nowMs)
    expect(events.map(({ startMs }) => startMs)).toEqual(duties.map(({ dueMs }) => dueMs))
    expect(events.length).toBeGreaterThan(8)
    // Nine in the morning by the clocks of Rome, before and after.
    expect([...new Set(events.map(({ startMs }) => new Date(startMs).getUTCHours()))].sort()).toEqual([7, 8])
  })

  it('gives each reminder the same name when made again, and a higher sequence, with an alarm at its time', async () => {
    const first = await calendarOf(await deskOf({ jars: [walnutJar(), lemonJar()] }))
    const later = await calendarOf(await deskOf({ jars: [walnutJar(), lemonJar()] }, { nowMs: NOW_MS + 3_600_000 }))
    expect(later.events.map(({ uid }) => uid)).toEqual(first.events.map(({ uid }) => uid))
    expect(new Set(first.events.map(({ uid }) => uid)).size).toBe(first.events.length)
    for (const [index, { sequence, stamp, alarms }] of later.events.entries()) {
      expect(sequence).toBeGreaterThan(first.events[index]!.sequence)
      expect(stamp).toBe('2026-11-20T13:00:00Z')
      expect(alarms).toEqual(['PT0S'])
    }
    expect(first.events.map(({ summary }) => summary)).toContain(
      'Strain walnut: it’s ready, any day until 5 January 2027',
    )
  })

  it('keeps a reminder its name when the hour is changed, so that it moves', async () => {
    const early = await calendarOf(await deskOf({ jars: [walnutJar()] }))
    const settings = { ...NOBODY.settings, atMinutes: 1200 }
    const late = await calendarOf(await deskOf({ jars: [walnutJar()], settings }))
    const at = (events: typeof late.events, key: string) => events.find(({ uid }) => uid.includes(key))!
    const [one, other] = [at(early.events, 'strain.2026-12-20'), at(late.events, 'strain.2026-12-20')]
    expect(other.uid).toBe(one.uid)
    expect(other.startMs - one.startMs).toBe((1200 - 540) * 60_000)
  })

  it.each([
    ['signs', 'a;b,c\\d"e'],
    ['a property of its own', 'x END:VEVENT SUMMARY:y'],
    ['wide letters', '柠檬'.repeat(20)],
    ['many bytes a letter', '🍋'.repeat(40)],
  ])('folds and escapes a name with %s', async (_, name) => {
    const { text, events } = await calendarOf(await deskOf({ jars: [walnutJar(name)] }))
    expect(events.every(({ summary }) => summary.includes(name))).toBe(true)
    // RFC 5545, 3.1: lines end in CRLF and have at most 75 octets.
    const lines = text.split('\r\n')
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/)
    for (const line of lines) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75)
  })

  it('takes one jar, by its name or all of them, and leaves out what was told', async () => {
    const walnut = { ...walnutJar(), told: ['strain.2026-12-20'] }
    const desk = await deskOf({ jars: [walnut, lemonJar()] })
    const { events } = await calendarOf(desk, '/calendar walnut')
    expect(events.every(({ summary }) => summary.includes('walnut'))).toBe(true)
    expect(events.some(({ uid }) => uid.includes('strain.2026-12-20'))).toBe(false)
    const all = await calendarOf(desk, '/calendar all')
    expect(all.events.length).toBeGreaterThan(events.length)
  })

  it('is a sentence where nothing comes, and for a jar that is none', async () => {
    const desk = await deskOf({})
    expect(await desk.textOf('/calendar')).toBe('Nothing is coming up, so there’s no calendar to make.')
    expect(desk.files()).toEqual([])
    const some = await deskOf({ jars: [walnutJar()] })
    expect((await some.jsonOf('/calendar nut')).error.code).toBe('not_found')
  })

  it('leaves out what is put off for good', async () => {
    const desk = await deskOf({ jars: [walnutJar()] })
    expect((await calendarOf(desk)).events.length).toBeGreaterThan(0)
    await desk.textOf('/reminders pause-until:further notice')
    expect(await desk.textOf('/calendar')).toBe('Nothing is coming up, so there’s no calendar to make.')
  })
})
