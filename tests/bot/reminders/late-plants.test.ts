import { describe, expect, it } from 'vitest'
import { agenda } from '../../../core/jar/tasks/agenda.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { addDays, dayFromIso, isoDay } from '../../../core/quantity/time/calendar-day.ts'
import { dutySettings } from '../../../store/due.ts'
import { NOBODY } from '../../../store/person.ts'
import { plant } from '../../core/jar/jars.ts'
import { world } from './inbox.ts'
import { at, happened, jarOf, personWith, ZONE } from './people.ts'

const clove = plant('clove', 2, { name: 'cloves' })
const mint = plant('peppermint', 20, { name: 'peppermint leaves', addOn: '2026-12-10' })

/** Cloves from the 1st on, mint from the 10th for five days: tasted from the 12th, strained from the 15th to the 20th. */
const winter = jarOf({
  name: 'winter',
  startedMs: at('2026-12-01', '18:00'),
  plan: { tasteFrom: '2026-12-12', strainFrom: '2026-12-15', strainBy: '2026-12-20' },
  more: { plants: [clove, mint] },
})
const somebody = personWith([winter], { shake: 'off' })

const added = (day: string, enteredMs = at(day, '12:00')) => {
  const person = happened(somebody, 'winte', enteredMs, {
    kind: 'added',
    plants: [{ ...mint, addOn: null }],
    spirits: [],
    waterG: exactly(0),
    sweetenings: [],
  })
  const [jar] = person.jars
  const entries = jar!.entries.map((entry) =>
    entry.kind === 'added' ? { ...entry, day, atMs: at(day, '12:00') } : entry,
  )
  return { ...person, jars: [{ ...jar!, entries }] }
}

const saidFrom = async (person: typeof somebody, first: string, days: number) => {
  const here = await world({ people: { local: person } })
  const said: string[] = []
  for (let day = 0; day < days; day++) {
    const iso = isoDay(addDays(dayFromIso(first), day))
    await here.tick(at(iso, '09:01'))
    said.push(...here.box.texts().map((text) => `${iso} ${text.split('\n')[0]}`))
  }
  return said
}

const todayOf = (person: typeof somebody, day: string) => {
  const { today, next } = agenda(person.jars[0]!.entries, dutySettings(NOBODY.settings, ZONE), at(day, '12:00'))
  return { today: today.map(({ kind }) => kind).filter((kind) => kind !== 'shake'), next }
}

describe('a plant that was to go in while nobody was there', () => {
  it('is the one thing that is asked of its jar after 40 days', async () => {
    expect(await saidFrom(somebody, '2027-01-19', 1)).toEqual([expect.stringMatching(/^2027-01-19 Add peppermint/)])
    const [text] = await saidFrom(somebody, '2027-01-19', 1)
    expect(text).not.toMatch(/strain|taste/i)
    expect(todayOf(somebody, '2027-01-19')).toMatchObject({ today: ['add'] })
  })

  it('moves the days of tasting and straining by as many as it is late', async () => {
    const late = added('2027-01-19')
    // 40 days later than the 10th: from the 24th to the 29th, tasted on the 21st.
    const said = await saidFrom(late, '2027-01-19', 14)
    expect(said).toEqual([
      expect.stringMatching(/^2027-01-21 Taste winter\.$/),
      expect.stringMatching(/^2027-01-24 .*Strain winter/),
      expect.stringMatching(/^2027-01-27 .*Strain winter/),
    ])
    expect(todayOf(late, '2027-01-20')).toMatchObject({ today: [] })
    expect(todayOf(late, '2027-01-24').today).toContain('strain')
  })

  it('moves nothing where it went in on its day, be it entered later', async () => {
    const inTime = added('2026-12-10', at('2026-12-13', '12:00'))
    expect(await saidFrom(inTime, '2026-12-14', 3)).toEqual([
      expect.stringMatching(/^2026-12-14 Taste winter\.$/),
      expect.stringMatching(/^2026-12-15 .*Strain winter/),
    ])
  })

  it('falls due no earlier than it was entered', async () => {
    const told = added('2027-01-15', at('2027-01-26', '12:00'))
    const said = await saidFrom(told, '2027-01-26', 3)
    expect(said.map((text) => text.slice(0, 17))).toEqual(['2027-01-27 Strain'])
  })
})
