import type { Bit, Sentence } from '../bits/bit.ts'
import { mayBeOver } from '../bits/past-day.ts'
import { leftOutOf } from '../frames/left-out.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import type { FrameTried } from '../frames/score.ts'
import { callOf } from './frame-reading.ts'
import { isAsked } from './is-told.ts'

const PUT =
  /^(?:got|put|popped|bunged|chucked|threw|tipped|stuck|shoved|stuffed|dropped|poured|squeezed|crammed|tossed|slung|lobbed|flung|plopped|plonked|dunked|bundled|tucked|wedged|loaded|dumped|slid|mess[oaie]|buttat[oaie]|infilat[oaie]|versat[oaie]|ficcat[oaie]|gettat[oaie]|cacciat[oaie])$/
const INTO = /^(?:in|into|to|nel|nella|nello|dentro)$/
const LIQUID: ReadonlySet<Bit['kind']> = new Set(['volume', 'spirit', 'bottles', 'strength'])
const OF_TODAY = /^(?:today|oggi)$/

/** `Got 12 limes into 75 cl`: plants beside a word of putting, and `into` before the liquid. */
function isPutIntoSpirit({ typed: { tokens }, bits }: Sentence): boolean {
  const put = tokens.findIndex(({ text }) => PUT.test(text))
  // `I have 12 limes in 1 litre of 95 % put`: got is a word of having as well.
  const isGot = tokens[put]?.text === 'got'
  const plant = bits.find(({ kind, from }) => kind === 'plant' && (!isGot || from > put))
  const liquid = bits.find(({ kind, from, role }) => LIQUID.has(kind) && role !== 'gone' && from > (plant?.to ?? 0))
  if (put === -1 || plant === undefined || liquid === undefined) return false
  return tokens.slice(plant.to, liquid.from).some(({ text }) => INTO.test(text))
}

/**
 * `Last night I got 12 limes into 75 cl of vodka`: a batch that is told as over, by a word that no start is told by alone. It is asked
 * whether to write it down, with the line that does, and nothing is begun by itself. Null where it is a plan.
 */
export function startTold(best: FrameTried, sentence: Sentence): TalkReading | null {
  const { bits, typed, has } = sentence
  if (best.frame.command !== 'plan' || best.lacks.length > 0 || isAsked(sentence)) return null
  const day = bits.find((bit) => mayBeOver(bit, typed.tokens))
  const isUnsure = has('wish', 'hypothesis', 'denial', 'what_can_i_make', 'by_day')
  if (day === undefined || isUnsure || !isPutIntoSpirit(sentence)) return null
  const { options } = callOf(best)
  const { of, spirit, sugar } = options
  // How strong it is has to be known before it can be begun.
  if (of === undefined || spirit === undefined || !/%|proof|gradi/.test(spirit)) return null
  const when = OF_TODAY.test(day.text) ? {} : { when: day.text }
  const call: CallRead = {
    command: 'jar start',
    options: { of, spirit, ...(sugar !== undefined && { sugar }), ...when },
  }
  const used = [...best.used, day, ...bits.filter(({ from }) => PUT.test(typed.tokens[from]?.text ?? ''))]
  return {
    kind: 'question',
    call,
    about: { kind: 'told_or_asked' },
    choices: [call],
    leftOut: leftOutOf(sentence, used),
  }
}
