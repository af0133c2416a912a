import type { Bit, Sentence, TalkJar } from '../bits/bit.ts'
import { jarsNamed, jarsOf, runningAmong } from '../bits/jars-of.ts'
import { leftOutOf } from '../frames/left-out.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import type { FrameTried } from '../frames/score.ts'
import { callOf } from './frame-reading.ts'

/** Small words by which a deed is told without its verb: `lemon off`, `two raspberries gone`, `lemon through the paper`. */
const LIKE_DEED =
  /^(?:in|off|gone|went|going|out|away|into|onto|through|over|up|down|left|done|back|came|come|finished|emptied|drained|all|today|yesterday|tonight|dentro|fuori|via|tolt[oaie]|andat[oaie]|passat[oaie]|finit[oaie]|fatt[oaie]|nel|nella|nello|ieri|oggi)$/

const WISHED = [
  'wish',
  'make',
  'have',
  'what_can_i_make',
  'what_is',
  'asking',
  'hypothesis',
  'drink_named',
  'for_bottles',
  'by_day',
  'again',
  'how_much',
] as const

/** What is told of a batch that is planned, never of a jar that stands there. */
const OF_PLAN = new Set<Bit['kind']>(['spirit', 'strength', 'mass', 'sugar', 'water', 'sweetness', 'style', 'bottles'])

/** Whether a plant is called by the name of a jar that runs. */
const isNameOf = (bit: Bit, jars: readonly TalkJar[]): boolean => {
  const text = bit.text.toLowerCase()
  return jarsOf(bit, jars).some(({ name }) => {
    const known = name.toLowerCase()
    return known === text || `${known}s` === text || known.replace(/y$/, 'ies') === text || `${known}es` === text
  })
}

/** What may have happened to a jar that stands where it does, with how much or how many there were. */
function deedsOf({ name: jar, stage }: TalkJar, measured: string | null, count: string | null): readonly CallRead[] {
  const amount = measured === null ? {} : { measured }
  switch (stage) {
    case 'steeping':
      return [
        { command: 'jar strain', options: { jar, ...amount } },
        { command: 'jar shake', options: { jar } },
      ]
    case 'strained':
    case 'sweetened':
      return [
        { command: 'jar filter', options: { jar, ...amount } },
        { command: 'jar show', options: { jar } },
      ]
    default:
      return ['given', 'opened'].map((how) => ({ command: 'bottles', options: { jar, [how]: count ?? '1' } }))
  }
}

/**
 * Where all that a plan would be of is the name of a jar that runs, beside a small word of a deed, or an amount of no spirit: which deed
 * it was is asked, and nothing is planned. Null where it is a plan.
 */
export function deedOrPlan(best: FrameTried, sentence: Sentence): TalkReading | null {
  const { bits, jars, typed, has } = sentence
  if (best.frame.command !== 'plan' || has(...WISHED) || bits.some(({ kind }) => OF_PLAN.has(kind))) return null
  const running = runningAmong(jars)
  const plants = bits.filter(({ kind }) => kind === 'plant')
  if (plants.length === 0 || !plants.every((bit) => isNameOf(bit, running))) return null
  const poured = bits.find(({ kind, role }) => kind === 'volume' && role !== 'gone')
  const isLikeDeed = typed.tokens.some(({ text }) => LIKE_DEED.test(text))
  if (!isLikeDeed && poured === undefined) return null
  const counted = bits.find(({ kind, value }) => kind === 'bare' && Number.isInteger(value) && value > 0)
  const named = [
    ...new Set([
      ...jarsNamed(bits, running).map(({ jar }) => jar),
      ...plants.flatMap((bit) => jarsOf(bit, running).slice(0, 1)),
    ]),
  ]
  const each = named.map((jar) => deedsOf(jar, poured?.text ?? null, counted?.text ?? null))
  const choices = each.length === 1 ? each[0]! : each.map(([first]) => first!)
  return {
    kind: 'question',
    call: choices[0]!,
    about: { kind: 'which_reading' },
    choices: poured === undefined ? choices : [...choices.slice(0, 2), callOf(best)],
    leftOut: leftOutOf(sentence, bits),
  }
}
