import type { Open, RolesAround } from './attach.ts'
import { isWished } from './wished.ts'

/** `2.1 l at 27 and about 300`: of a liqueur whose strength is said, a number of that size is its sugar. */
export function sweetnesses(around: RolesAround, bits: Open[]): void {
  const strength = bits.findIndex(({ kind }) => kind === 'strength')
  if (strength === -1) return
  const isPlanned = bits.some(({ kind }) => kind === 'plant')
  bits.forEach((bit, at) => {
    const next = around.typed.tokens[bit.to]?.text ?? ''
    if (
      bit.kind === 'mass' &&
      bit.with === undefined &&
      !isPlanned &&
      bit.value >= 20 &&
      bit.value <= 600 &&
      (/^(?:sugar|zucchero)$/.test(next) || at > strength) &&
      !hasLiquid(bits)
    ) {
      bit.kind = 'sweetness'
      bit.text = `${bit.value} g/L`
      bit.role = 'have'
      return
    }
    if (
      bit.kind !== 'bare' ||
      bit.with !== undefined ||
      at < strength ||
      bit.value < 30 ||
      bit.value > 600 ||
      !hasLiquid(bits)
    )
      return
    const wished = isWished(around, bits, at)
    bit.kind = 'sweetness'
    bit.text = `${bit.text} g/L`
    bit.role = wished ? 'want' : 'have'
  })
}

const hasLiquid = (bits: readonly Open[]): boolean => bits.some(({ kind }) => kind === 'volume' || kind === 'bottles')
