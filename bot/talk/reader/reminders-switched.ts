import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { jarsMeant } from '../frames/jars-meant.ts'
import { leftOutOf } from '../frames/left-out.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { reminderFills } from '../frames/reminder-slots.ts'
import { withoutMarks } from '../lexicon/plain-text.ts'

const WHAT = '(?:reminders?|nudges?|notifications?|alerts?|pings?|promemoria|avvisi|notifiche)'
const SMALL = '(?:(?:the|my|your|all|all of the|any|more|those|i|gli|le|tutti|tutti i|miei) )*'
const ME = '(?:reminding|messaging|texting|pinging|nudging|nagging|notifying|alerting|writing to|writing) (?:me|us)'
const ON_VERB =
  '(?:enable|re-?enable|resume|restart|reactivate|unpause|unmute|start|riattiva|attiva|accendi|riaccendi|ripristina|riprendi)'
const OFF_VERB =
  '(?:disable|stop|cancel|kill|end|suspend|mute|silence|pause|halt|drop|lose|disattiva|spegni|sospendi|ferma|togli|blocca|silenzia)'
const TURN = '(?:turn|switch|put|shut|get|have)'

const ON: readonly RegExp[] = [
  new RegExp(`\\b(?:${ON_VERB}|begin|go back to)(?: again)? ${ME}\\b`),
  new RegExp(`\\b${ON_VERB} (?:up )?${SMALL}${WHAT}\\b`),
  new RegExp(`\\b${TURN} (?:back )?on ${SMALL}${WHAT}\\b`),
  new RegExp(`\\b(?:${TURN} )?${SMALL}${WHAT} (?:back )?on(?: again)?\\b`),
]

const OFF: readonly RegExp[] = [
  new RegExp(`\\b${OFF_VERB} (?:all )?${SMALL}${WHAT}\\b`),
  new RegExp(`\\b${TURN} off ${SMALL}${WHAT}\\b`),
  new RegExp(`\\b${SMALL}${WHAT} off\\b`),
  new RegExp(`\\b(?:stop|quit|no more) ${ME}\\b`),
  /\bleave (?:me|us) (?:alone|be|in peace)\b|\blasci\p{L}*mi (?:in pace|stare)\b/u,
  new RegExp(
    `\\b(?:no more|no|without|enough|enough of|enough with|fed up with|sick of|tired of|niente|nessun|basta|basta con|dont want|do not want|dont need|non voglio) ${SMALL}${WHAT}\\b`,
  ),
]

/** Asked of what is set, or of what reminders are. */
export const ASKED = /^(?:are|is|what|when|which|why|how|did|do|does|have|who|sono|quando|quali|perche|come|che|cosa)$/

/** Over days that are named without their end. */
const OVER = /^(?:over|during|through|throughout|for|across|durante|per|nelle|sotto)$/

const FEAST = /^(?:holidays?|festive|feste|vacation|christmas|xmas|natale|easter|pasqua|thanksgiving|weekend)$/

const WINTER_FEAST = /^(?:holidays|festive|feste|christmas|xmas|natale)$/

/** A feast that the silence is to last over: where it ends is not said. */
function feastOver({ typed: { tokens } }: Sentence): string | null {
  const at = tokens.findIndex(({ text }) => FEAST.test(text))
  const isOver = tokens.slice(Math.max(0, at - 3), at).some(({ text }) => OVER.test(text) || text === 'after')
  return at !== -1 && isOver ? tokens[at]!.text : null
}

/** Said with it, and of no weight. */
const AROUND = ['back', 'again', 'altogether', 'completely', 'entirely', 'di', 'nuovo']

export const set = (options: CallRead['options'], leftOut: readonly string[]): TalkReading => ({
  kind: 'call',
  call: { command: 'reminders', options },
  leftOut,
  does: 'set',
})

const untilWhen = (leftOut: readonly string[], sample: string): TalkReading => ({
  kind: 'question',
  call: { command: 'reminders', options: {} },
  about: { kind: 'lacks', option: 'pause-until', sample, ...(sample === 'in 2 weeks' && { otherwise: 'for good' }) },
  choices: [],
  leftOut,
})

/** `No reminders for the sloe until friday`: the others are not held back over it. */
export function ofJar(sentence: Sentence, leftOut: readonly string[]): TalkReading | null {
  const { text: jar } = jarsMeant(sentence, 'jar later')
  if (jar === null) return null
  const until = reminderFills.until(sentence, 'jar later')
  const call: CallRead = { command: 'jar later', options: { jar, ...(until !== null && { until: until.text }) } }
  if (until !== null) return { kind: 'call', call, leftOut, does: 'record' }
  return { kind: 'question', call, about: { kind: 'lacks', option: 'until' }, choices: [], leftOut }
}

/**
 * All reminders turned off or on: a pause has an end, which is asked for where none is said. Null where they are neither, and for what
 * is said of one jar, of shaking, of the hour or of the place.
 */
export function remindersSwitched(sentence: Sentence): TalkReading | null {
  const { typed, has, bits } = sentence
  const { tokens } = typed
  if (ASKED.test(tokens[0]?.text ?? '') || has('shaking_reminders', 'in_here', 'privately')) return null
  const isOfJar = bits.some(({ kind }) => kind === 'plant' || kind === 'jar')
  if (bits.some(({ kind }) => !/^(?:date|span|plant|jar)$/.test(kind))) return null
  const words = wordsFrom(typed)
  // `Don’t bother me about the lemon till friday`: the others are not held back over it.
  if (
    isOfJar &&
    has('be_quiet') &&
    !has('away_now', 'reminders_on') &&
    bits.some(({ kind }) => kind === 'date' || kind === 'span')
  )
    return ofJar(sentence, leftOutOf(sentence, bits))
  const off = OFF.map((pattern) => pattern.exec(words)?.[0]).find((said) => said !== undefined)
  const on = off ?? ON.map((pattern) => pattern.exec(words)?.[0]).find((said) => said !== undefined)
  if (on === undefined || (off === undefined && has('denial'))) return null
  const said = new Set([...on.split(' '), ...AROUND])
  const leftOut = leftOutOf(sentence, bits).filter(
    (word) => !said.has(withoutMarks(word)) && !FEAST.test(withoutMarks(word)),
  )
  if (isOfJar) return off === undefined ? null : ofJar(sentence, leftOut)
  const feast = feastOver(sentence)
  if (feast !== null) return untilWhen(leftOut, WINTER_FEAST.test(feast) ? '2 January' : 'in 2 weeks')
  const until = reminderFills.until(sentence, 'reminders')
  if (until !== null) return set({ 'pause-until': until.text }, leftOut)
  if (off === undefined) return set({ 'pause-until': 'none' }, leftOut)
  return bits.length > 0 ? null : untilWhen(leftOut, 'in 2 weeks')
}
