import { unlessRefused } from '../../../core/domain-error.ts'
import { type Path, signatures } from '../../calls/signatures.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import { frames } from '../frames/frames.ts'
import type { CallRead } from '../frames/reading.ts'
import { reminderFills } from '../frames/reminder-slots.ts'
import { tryFrame } from '../frames/score.ts'
import { plantAnswered } from './plant-answered.ts'

/** `To the cellar`: which it is. */
const TO = /^(?:it['’]?s )?(?:now )?(?:to|into|in|at|al|alla|nel|nella|in) (?:the |my |our )?|^(?:the|la|il) /i

/** From here on a number of bottles is how large they are, ml. */
const LEAST_ML = 100

const MOST_ALONE = 8
/** A plant is described as well as named. */
const MOST_OF_PLANT = 12

/** The text for what was lacking, as its option takes it. */
export function lackedText(sentence: Sentence, option: string, { command, options: { of } }: CallRead): string | null {
  const { bits, typed } = sentence
  const [bit, another, ...others] = bits.filter(({ kind }) => kind !== 'date')
  // `Until 6 January`, `for three weeks`.
  if (/until$/.test(option)) {
    const until = reminderFills.until(sentence, command)?.text
    return until !== undefined && isRead(command, option, until) ? until : null
  }
  if (option === 'sugar' && isRead(command, option, typed.text.trim())) return typed.text.trim()
  // `The 20th`, of this month or the next.
  const [day, later] = bits
  const isDay = /^(?:ready-by|start)$/.test(option) && day?.kind === 'date' && later === undefined
  if (isDay && isRead(command, option, day.text)) return day.text
  const isAlone = bits.length <= 2 && typed.tokens.length <= (option === 'of' ? MOST_OF_PLANT : MOST_ALONE)
  if (!isAlone) return null
  // `five half litres`: how many, and how large.
  const isSized = bit?.kind === 'bare' && another?.kind === 'volume' && /^(?:bottles|given|opened)$/.test(option)
  if (isSized && others.length === 0) return `${bit.text} x ${another.text}`
  // `2 g cassia`: how much of it, too.
  const isAmount = option === 'of' && another?.kind === 'plant' && another.with === 0 && others.length === 0
  if (isAmount && of !== undefined)
    return plantAnswered(of, [`${bit!.text} ${another.text}`], (text) => isRead(command, option, text))
  if (another !== undefined) return null
  // `A 700 one`: nobody fills so many.
  if (bit?.kind === 'bare' && option === 'bottles' && bit.value >= LEAST_ML)
    return /^(?:an?|one|un[ao]?)$/.test(typed.tokens[bit.from - 1]?.text ?? '')
      ? `1 x ${bit.text} ml`
      : `${bit.text} ml`
  const said =
    bit === undefined
      ? [option === 'where' ? typed.text.trim().replace(TO, '') : typed.text.trim()]
      : textsFor(bit, option)
  const isPlant = (text: string): boolean => isRead(command, option, text)
  if (option === 'of' && of !== undefined) return plantAnswered(of, [...said, typed.text.trim()], isPlant)
  return said.find((text) => isRead(command, option, text)) ?? null
}

/** What the words of an answer fill of what the call did not have: `a litre of 95`, `vodka`; null where it is no such answer. */
export function lackedByFrame(
  sentence: Sentence,
  { command, options }: CallRead,
): Readonly<Record<string, string>> | null {
  const words = sentence.typed.tokens.filter(({ kind }) => kind === 'word')
  if (
    words.length > 8 ||
    sentence.bits.length === 0 ||
    !sentence.bits.some(({ kind }) => kind === 'spirit' || kind === 'strength')
  )
    return null
  for (const frame of frames.filter((each) => each.command === command)) {
    const open = {
      command,
      does: frame.does,
      cues: {},
      slots: frame.slots.filter(({ option }) => !(option in options)),
    }
    const tried = tryFrame(open, sentence)
    const isWhole =
      tried !== null && tried.unused.length === 0 && sentence.bits.every((bit) => tried.used.includes(bit))
    if (isWhole && Object.keys(tried.options).length > 0) return tried.options
  }
  return null
}

const textsFor = ({ kind, text, value }: Bit, option: string): readonly string[] => {
  if (/strength/.test(option) && kind === 'spirit' && value > 0) return [`${value}%`]
  if (/strength/.test(option))
    return kind === 'bare' || kind === 'strength' ? [text.includes('%') ? text : `${text}%`] : [text]
  if (kind === 'bare' && /infusion|spirit|liqueur|pour|measured|water/.test(option)) return [`${text} ml`]
  return [text]
}

export function isRead(command: Path, option: string, text: string): boolean {
  const schema = (
    signatures[command].shape as Readonly<Record<string, { safeParse(text: string): { success: boolean } }>>
  )[option]
  return unlessRefused(() => schema?.safeParse(text).success === true) ?? false
}
