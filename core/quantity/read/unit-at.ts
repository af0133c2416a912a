import { DomainError } from '../../domain-error.ts'
import type { UnitKind } from '../problems.ts'
import { shown, type TypedText, textFrom } from './tokens.ts'
import { type Unit, unitsByKind } from './units.ts'

export interface UnitFound {
  readonly unit: Unit
  readonly next: number
}

/** `imperial fl oz`, `% alc by volume`: no unit has more pieces. */
const MAX_PIECES = 5

const ALL_KINDS: readonly UnitKind[] = ['volume', 'mass', 'strength', 'sweetness', 'temperature', 'span']

/** The longest unit of these kinds that begins at piece `at`, or null. */
export const unitAt = ({ tokens }: TypedText, at: number, kinds: readonly UnitKind[]): UnitFound | null => {
  let found: UnitFound | null = null
  let phrase = ''
  for (let next = at + 1; next <= Math.min(at + MAX_PIECES, tokens.length); next++) {
    phrase += `${phrase === '' ? '' : ' '}${tokens[next - 1]?.text}`
    const kind = kinds.find((each) => unitsByKind[each].has(phrase))
    const unit = kind && unitsByKind[kind].get(phrase)
    if (unit !== undefined) found = { unit, next }
  }
  return found
}

/** The unit of any kind that begins at piece `at`, or null. */
export const anyUnitAt = (typed: TypedText, at: number): UnitFound | null => unitAt(typed, at, ALL_KINDS)

const refuseOunces = (typed: TypedText, at: number, takesMass: boolean): never => {
  const number = textFrom(typed, 0, at)
  const weight = takesMass ? `${number} oz weight` : null
  throw new DomainError('ambiguous', 'ounces', { typed: shown(typed.text), fluid: `${number} fl oz`, weight })
}

const refuseUnknown = (typed: TypedText, at: number): never => {
  const after = typed.tokens.findIndex(({ kind }, place) => place > at && kind === 'number')
  const unit = shown(textFrom(typed, at, after === -1 ? typed.tokens.length : after))
  const { text, wanted } = typed
  if (typed.tokens[at]?.kind === 'sign') {
    throw new DomainError('bad_value', 'unexpected_text', { typed: shown(text), extra: unit, wanted })
  }
  throw new DomainError('bad_value', 'unknown_unit', { typed: shown(text), unit, wanted })
}

/**
 * The unit of one of these kinds at piece `at`; null where the number stands alone.
 * Throws `wrong_kind`, `unknown_unit`, or `ounces` where fluid ounces fit (`1 lb 4 oz` never comes here);
 * sugar is no liquid: its ounces are a weight.
 */
export const expectUnit = (typed: TypedText, at: number, kinds: readonly UnitKind[]): UnitFound | null => {
  const token = typed.tokens[at]
  const after = typed.tokens[at + 1]
  const isAtTemperature =
    ['at', 'a', '@'].includes(token?.text ?? '') && (after?.kind === 'number' || after?.text === '-')
  if (token === undefined || token.kind === 'number' || token.text === '±' || isAtTemperature) return null
  const found = unitAt(typed, at, kinds)
  const other = anyUnitAt(typed, at)
  if (found === null && other === null) return refuseUnknown(typed, at)
  const mayBeFluid = kinds.includes('volume') && typed.wanted !== 'sugar'
  if (other?.unit.key === 'oz' && mayBeFluid) return refuseOunces(typed, at, kinds.includes('mass'))
  if (other !== null && other.next > (found?.next ?? 0)) {
    const { text, wanted } = typed
    throw new DomainError('bad_value', 'wrong_kind', { typed: shown(text), got: other.unit.kind, wanted })
  }
  return found
}
