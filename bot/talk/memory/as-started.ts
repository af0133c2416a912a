import type { Sentence } from '../bits/bit.ts'
import { jarCalled } from '../bits/jars-of.ts'
import { frames } from '../frames/frames.ts'
import type { TalkReading } from '../frames/reading.ts'
import { tryFrame } from '../frames/score.ts'
import type { Remembered } from './remembered.ts'
import { eitherOf } from './rule.ts'

/** More of it than was there. */
const MORE =
  /^(?:more|another|again|extra|second|also|too|additional|further|other|same|altr[oaie]|ancora|anche|piu|secondo|seconda)$/

const ADDS = frames.filter(({ command }) => command === 'jar add')

/** An amount as it stands in an option, whatever its spaces. */
const partsOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .split(/\s*\+\s*/)
    .map((part) => part.replace(/\s+/g, ''))

/** Whether all that is told stands in what was typed. */
const isWithin = (told: string, typed: string | undefined): boolean =>
  typed !== undefined && partsOf(told).every((part) => partsOf(typed).includes(part))

/**
 * `I put in 1 lb of sloes and a 700 ml bottle of gin`, right behind the start of a jar of just that: it is what the jar was started with, or
 * as much once more, which is asked. Null where anything else goes in.
 */
export function asStarted(sentence: Sentence, { call, step }: Remembered): TalkReading | null {
  const { has, typed } = sentence
  if (step?.command !== 'jar start' || call?.command !== 'jar start' || !has('added', 'started')) return null
  const jar = jarCalled(call.options.jar ?? step.options.jar, sentence.jars)?.name
  if (jar === undefined || has('asking', 'wish', 'hypothesis') || typed.tokens.some(({ text }) => MORE.test(text)))
    return null
  const [added] = ADDS.flatMap((frame) => tryFrame(frame, sentence) ?? [])
  const { of, spirit, sugar, water } = added?.options ?? {}
  const isSame =
    of !== undefined &&
    /\d/.test(of) &&
    isWithin(of, step.options.of) &&
    (spirit === undefined || isWithin(spirit, step.options.spirit)) &&
    (sugar === undefined || isWithin(sugar, step.options.sugar)) &&
    water === undefined
  if (!isSame) return null
  const { jar: _, ...options } = added!.options
  const show = { command: 'jar show', options: { jar } } as const
  return eitherOf(show, [show, { command: 'jar add', options: { jar, ...options } }])
}
