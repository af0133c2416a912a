import { callReading, type Rule } from './rule.ts'

/** A glass where nothing is said of its size, ml. Common practice, no source. */
const GLASS_ML = 40

const MOST_GLASSES = 20

/** `two glasses of that: how much alcohol`: of what was worked out last, where it is known how strong it comes out. */
export const glassesOf: Rule = ({ bits, has }, last) => {
  if (!has('units_of_alcohol') || bits.some(({ kind }) => kind === 'plant' || kind === 'jar' || kind === 'strength'))
    return null
  const strength = last.options['to-strength'] ?? (last.command === 'serving' ? last.options.strength : undefined)
  if (strength === undefined) return null
  const each = bits.find(({ kind, value }) => kind === 'volume' && value <= 400)?.value ?? GLASS_ML
  const count = bits.find(({ kind, value }) => kind === 'bare' && value >= 1 && value <= MOST_GLASSES)?.value ?? 1
  return callReading({ command: 'serving', options: { pour: `${Math.round(count * each)} ml`, strength } })
}
