import { describe, expect, it } from 'vitest'
import { deskWith, jarOf, startedAs } from './jars.ts'

/** Steeping since 8 November, to be tasted from the 15th and strained from 1 to 10 December. */
const WINDOW = { tasteFrom: '2026-11-15', strainFrom: '2026-12-01', strainBy: '2026-12-10', restDays: 30 }
const lemon = jarOf('aaaa1', [{ ...startedAs('lemon', {}, WINDOW), on: '2026-11-08' }])

describe('a row of /jar list', () => {
  const rowOn = async (isoDay: string) => {
    const nowMs = Date.parse(`${isoDay}T12:00:00Z`)
    const desk = await deskWith({ jars: [lemon] }, { nowMs })
    return (await desk.textOf('/jar list')).split('\n').find((line) => /^ {2}lemon +steeping/.test(line))
  }

  it.each([
    ['2026-11-08', 'day 1 of 33   shake tomorrow'],
    ['2026-11-09', 'day 2 of 33   shake today'],
    ['2026-11-16', 'day 9 of 33   taste and shake today'],
    ['2026-12-03', 'day 26 of 33  strain by 10 Dec, taste, shake'],
    ['2026-12-11', 'day 34 of 33  strain, 1 day late, shake'],
    ['2026-12-24', 'day 47 of 33  strain, 14 days late, shake'],
    ['2027-01-02', 'day 56 of 33  strain, 23 days late, shake'],
  ])('says on %s: %s', async (isoDay, says) => {
    expect(await rowOn(isoDay)).toContain(says)
  })
})
