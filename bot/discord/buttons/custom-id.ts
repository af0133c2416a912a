import { ownerCode, ownerFrom } from '../../calls/owner-code.ts'

/** What a button carries: whose it is, the line that it runs, and on a nudge which one. */
export interface CustomId {
  /** Discord's number of a person, 17 to 20 digits; null where anybody may press it. */
  readonly owner: string | null
  /** A line to type, `@` and a kept line's name, or `!` and a press of our own. */
  readonly line: string
  readonly nudgeId: string | null
}

const VERSION = '1'
/** Stands for everybody, where an owner would; no person has this number. */
const ANYONE = '0'

/** As Discord counts, or more: an astral character is two here. */
const MOST_CHARACTERS = 100

const LINE = /^[/@!][^|\p{Cc}\p{Cs}]+$/u
/** The only lines that anybody may run by a press: they read what was shared, for whoever presses. */
const FOR_ANYONE = /^\/share make:[0-9a-z]{1,14}\.[0-9a-z]{8}$/
const NUDGE_ID = /^[0-9a-z]{1,25}$/i

/** `1|<owner in base 36>|<line>`, and `|<nudge>` on a nudge; null where that is too long or could not be read back. */
export function encodeCustomId({ owner, line, nudgeId }: CustomId): string | null {
  const coded = owner === null ? ANYONE : ownerCode(owner)
  if (coded === null || !LINE.test(line) || line !== line.trim()) return null
  if (owner === null && (nudgeId !== null || !FOR_ANYONE.test(line))) return null
  if (nudgeId !== null && !NUDGE_ID.test(nudgeId)) return null
  const text = [VERSION, coded, line, ...(nudgeId === null ? [] : [nudgeId])].join('|')
  return text.length <= MOST_CHARACTERS ? text : null
}

/** What `encodeCustomId` wrote; null for anything else. */
export function decodeCustomId(text: string): CustomId | null {
  const [, coded = '', line = '', nudgeId = null, ...more] = text.length > MOST_CHARACTERS ? [] : text.split('|')
  const owner = coded === ANYONE ? null : ownerFrom(coded)
  if ((owner === null && coded !== ANYONE) || more.length > 0) return null
  const read = { owner, line, nudgeId }
  return encodeCustomId(read) === text ? read : null
}
