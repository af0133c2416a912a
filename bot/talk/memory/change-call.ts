import { isRefused, unlessRefused } from '../../../core/domain-error.ts'
import { parseAmount } from '../../../core/quantity/read/parse-amount.ts'
import { parseStrength } from '../../../core/quantity/read/parse-strength.ts'
import { parseSweetness } from '../../../core/quantity/read/parse-sweetness.ts'
import { USUAL } from '../../../core/recipe/plan/reach-targets.ts'
import { type Path, signatures } from '../../calls/signatures.ts'
import { nextStrength, nextSweetness } from '../frames/better.ts'
import type { CallRead } from '../frames/reading.ts'
import { nameBehind, scaledText } from '../frames/scaled-text.ts'
import { NUMBER, numberOf, WHOLE_BEFORE, WHOLE_BEHIND } from '../frames/typed-number.ts'

export const takes = (command: Path, option: string): boolean => option in signatures[command].shape

export const withOption = ({ command, options }: CallRead, option: string, text: string): CallRead => ({
  command,
  options: { ...options, [option]: text },
})

/** The options in which two calls of one command differ. */
export const changedBy = (one: CallRead, other: CallRead): readonly string[] =>
  [...new Set([...Object.keys(one.options), ...Object.keys(other.options)])].filter(
    (option) => one.options[option] !== other.options[option],
  )

export const isSameCall = (one: CallRead, other: CallRead): boolean =>
  one.command === other.command && changedBy(one, other).length === 0

const read = (text: string | undefined, value: (text: string) => number): number | null =>
  text === undefined ? null : unlessRefused(() => value(text))

/** How sweet it is, g/L, by what was typed or as it was worked out. */
export const sweetnessNow = ({ options }: CallRead, workedGPerL: number | null = null): number =>
  read(options['to-sweetness'], (text) => parseSweetness(text).sugarGPerL) ??
  read(options.sweetness, (text) => parseSweetness(text).sugarGPerL) ??
  workedGPerL ??
  USUAL.sugarGPerL

/** Less or more sweet than the last time, by what was typed or as it was worked out; `slightly` goes half as far. */
export function sweetened(
  call: CallRead,
  isSweeter: boolean,
  isSlight: boolean,
  workedGPerL: number | null = null,
): CallRead {
  const now = sweetnessNow(call, workedGPerL)
  const next = nextSweetness(now, isSweeter)
  const gPerL = isSlight ? Math.round((now + next) / 20) * 10 : next
  return withOption(call, 'to-sweetness', `${gPerL} g/L`)
}

/** The same of how strong it is, which may be less than was aimed at. */
export function strengthened(
  call: CallRead,
  isStronger: boolean,
  isSlight: boolean,
  workedPercent: number | null = null,
): CallRead {
  const now =
    read(call.options['to-strength'], (text) => parseStrength(text).abvPercent) ??
    (call.command === 'adjust' ? read(call.options.strength, (text) => parseStrength(text).abvPercent) : null) ??
    workedPercent ??
    USUAL.abvPercent
  const step =
    call.options['to-strength'] === undefined && call.command !== 'adjust'
      ? now + (isStronger ? 5 : -5)
      : nextStrength(now, isStronger)
  const next = isSlight ? now + (isStronger ? 2 : -2) : step
  return withOption(call, 'to-strength', `${Math.max(1, Math.round(next))}%`)
}

/** Options that grow with the batch. */
const SCALED = ['of', 'spirit', 'infusion', 'water', 'sugar', 'liqueur', 'bottles', 'parts', 'pour'] as const

/** The same, so many times as large; null where nothing in it can be. */
export function scaled(call: CallRead, factor: number): CallRead | null {
  const changed = SCALED.filter((option) => call.options[option] !== undefined)
  const options = Object.fromEntries(
    changed.map((option) => [option, scaledText(option, call.options[option]!, factor)]),
  )
  if (changed.every((option) => options[option] === call.options[option])) return null
  return { command: call.command, options: { ...call.options, ...options } }
}

/** A number in place of another, wherever it stands; with the unit that was said of it, where that is another. Null where it stands nowhere. */
export function replaced(call: CallRead, from: string, to: string, measure?: string): CallRead | null {
  const escaped = from.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
  const pattern = new RegExp(`${WHOLE_BEFORE}${escaped}${WHOLE_BEHIND}(?<unit>\\s*(?:fl\\.? ?oz|\\p{L}+))?`, 'u')
  const option = Object.keys(call.options).find((name) => pattern.test(call.options[name]!))
  if (option === undefined) return null
  const text = call.options[option]!
  const { 0: found, groups } = pattern.exec(text)!
  const { unit = '' } = groups ?? {}
  const isMeasured = measure !== undefined && !isRefused(() => parseAmount(found))
  return withOption(
    call,
    option,
    text.replace(pattern, () => (isMeasured ? measure : `${to}${unit}`)),
  )
}

const FIRST_NUMBER = new RegExp(NUMBER, 'u')

/** Options by how near a number of theirs is to one that was said alone. */
export function nearestOption(call: CallRead, value: number): string | null {
  const found = Object.entries(call.options).flatMap(([option, text]) => {
    const typed = FIRST_NUMBER.exec(text)?.[0]
    const number = typed === undefined ? null : numberOf(typed)
    return number !== null && number > 0 ? [{ option, apart: Math.abs(Math.log(value / number)) }] : []
  })
  return found.toSorted((one, other) => one.apart - other.apart)[0]?.option ?? null
}

/** The first number of an option's text, replaced. */
export const withNumber = (call: CallRead, option: string, value: string): CallRead =>
  withOption(call, option, call.options[option]!.replace(FIRST_NUMBER, value))

/** Plants by name alone: how much of them follows from the bottles. */
function plantsWithout({ of, ...options }: Readonly<Record<string, string>>): Record<string, string> {
  if (of === undefined) return options
  const named = of.split('+').map((item) => nameBehind(item.trim()))
  return { of: named.join(' + '), ...options }
}

/** For so many bottles: how much of everything comes from them, and how strong the spirit is stays. */
export function forBottles({ command, options: { spirit, ...options } }: CallRead, bottles: string): CallRead {
  const strength = /(\d+(?:[.,]\d+)?)\s*%/.exec(spirit ?? '')?.[0]
  if (command !== 'plan' || spirit === undefined)
    return { command, options: { ...options, ...(spirit !== undefined && { spirit }), bottles } }
  return { command, options: { ...plantsWithout(options), ...(strength !== undefined && { strength }), bottles } }
}
