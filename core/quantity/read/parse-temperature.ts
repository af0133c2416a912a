import { DomainError } from '../../domain-error.ts'
import type { Temperature } from '../quantities.ts'
import { measureAt } from './measure-at.ts'
import { readNumber } from './read-number.ts'
import { expectEnd, readText, shown, type TypedText, textFrom } from './tokens.ts'

/** `20`, `20°`, `20 degrees`: of which scale? */
const refuseWithoutScale = (typed: TypedText): void => {
  const { tokens, text } = typed
  const numberEnd = readNumber(typed, tokens[0]?.text === '-' ? 1 : 0)?.next
  if (numberEnd === undefined) return
  const rest = tokens.slice(numberEnd)
  if (rest.length > 1 || !['', '°', 'degrees', 'degree', 'deg'].includes(rest[0]?.text ?? '')) return
  const number = textFrom(typed, 0, numberEnd)
  const choices = [`${number} °C`, `${number} °F`] as const
  throw new DomainError('ambiguous', 'celsius_or_fahrenheit', { typed: shown(text), choices })
}

/** A temperature of −30 to 100 °C: `20 C`, `68°F`, `20 gradi`; without a scale it is asked back. */
export const parseTemperature = (text: string): Temperature => {
  const typed = readText(text, 'temperature')
  refuseWithoutScale(typed)
  const { value, unit, assumed, next } = measureAt(typed, 0, ['temperature'])
  expectEnd(typed, next)
  return { kind: 'temperature', tempC: value, unit: unit.key, assumed }
}
