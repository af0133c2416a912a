import type { Sentence } from '../bits/bit.ts'

/** Said of which half of the day an hour is. */
const SAID =
  /\b(?:a\.?m|p\.?m|mornings?|afternoons?|evenings?|nights?|tonight|noon|midday|midnight|breakfast|lunch|tea ?time|dinner|supper|bed ?time|mattin[oa]|pomeriggio|sera|notte|stasera|mezzogiorno|mezzanotte)\b/i

/** As a clock shows it: `at 7:30`, `at 07`; an hour that is written so is meant so. */
const AS_SHOWN = /\b\d{1,2}[:.]\d{2}\b|\b0\d\b|\bh ?\d/

/** The same hour twelve hours later, where nothing tells which is meant: `at half past six`; null where it is told. */
export function otherHalf(time: string, { typed, lexicon }: Sentence): string | null {
  const [, hours = '', minutes = '00'] = /^(\d{1,2})(?::(\d{2}))?$/.exec(time) ?? []
  const hour = Number(hours)
  if (hours === '' || hour < 1 || hour > 11 || SAID.test(typed.text) || AS_SHOWN.test(typed.text)) return null
  // `Alle 7` is written as a clock of 24 hours shows it.
  if (lexicon.id === 'it' && new RegExp(`\\b${hour}\\b`).test(typed.text)) return null
  return `${hour + 12}:${minutes}`
}

/** Which half an answer names. */
export const halfNamed = (words: readonly string[]): 'am' | 'pm' | null => {
  if (words.some((word) => /^(?:pm|evenings?|afternoon|night|sera|pomeriggio|later)$/.test(word))) return 'pm'
  return words.some((word) => /^(?:am|mornings?|mattin[oa]|earlier)$/.test(word)) ? 'am' : null
}

const PART = '\\b(?:morning|afternoon|evening|night|oclock|sera|mattin[ao]|pomeriggio|notte)\\b'
const NEARLY = `(?:(?=.*${PART})|(?<=${PART}.*))(?:around|about|towards|verso le|verso|intorno alle|sulle)`
/** What stands before an hour; `around eight` where the part of the day is said too, as `about one jar` is no hour. */
export const AT_HOUR = `(?:at|alle|ore|${NEARLY})`
