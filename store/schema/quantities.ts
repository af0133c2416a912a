import { z } from 'zod'
import { dayFromIso, isDay } from '../../core/quantity/time/calendar-day.ts'

/** Far beyond anything a kitchen holds: larger numbers were not written by us. */
const MOST = 1e9

const MOST_REMEMBERED = 20_000

const LONGEST_TEXT = 100_000

const number = z.number().min(-MOST).max(MOST)

/** Zero or more, in the unit its holder's name ends in. */
export const amount = number.min(0)

export const count = z.int().min(0).max(MOST)

export const temperature = number.min(-273).max(1000)

export const measured = z.strictObject({ value: number, plusMinus: amount })

export const text = z.string().max(LONGEST_TEXT)

/** Milliseconds since 1970, within what a date can hold. */
export const instantMs = z.number().min(-8.64e15).max(8.64e15)

/** Remembers which texts were good: a person's file names few days and zones, many times. */
const remembered = (isGood: (text: string) => boolean): ((text: string) => boolean) => {
  const good = new Set<string>()
  return (text) => {
    if (good.has(text)) return true
    if (!isGood(text)) return false
    if (good.size < MOST_REMEMBERED) good.add(text)
    return true
  }
}

export const day = z.string().refine(remembered((iso) => /^\d{4}-\d{2}-\d{2}$/.test(iso) && isDay(dayFromIso(iso))))

const isZone = (zone: string): boolean => {
  // Node 24 takes `+02:00` as a zone, Node 20 does not.
  if (/^[+-]/.test(zone)) return false
  try {
    new Intl.DateTimeFormat('en', { timeZone: zone })
    return true
  } catch {
    return false
  }
}

/** IANA name. */
export const zone = z.string().min(1).max(64).refine(remembered(isZone))
