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

/** What was converted, as from °F, may miss the end of its range by its last digits. */
const LAST_DIGITS = 1e-3

/** A range as typing takes it, in the unit its holder's name ends in: anything beyond was not written by us. */
const typedWithin = (least: number, most: number) =>
  z
    .number()
    .min(least - LAST_DIGITS)
    .max(most + LAST_DIGITS)

/** °C. */
export const temperature = typedWithin(-30, 100)

/** % vol. */
export const strength = typedWithin(0, 100)

/** g/L; more than 1,300 g of sugar is no liquid at all. */
export const sweetness = typedWithin(0, 1300)

export const measured = z.strictObject({ value: number, plusMinus: amount })

export const measuredStrength = z.strictObject({ value: strength, plusMinus: amount })

export const measuredSweetness = z.strictObject({ value: sweetness, plusMinus: amount })

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
