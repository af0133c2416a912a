import type { Invocation } from '../../calls/invocation.ts'
import type { Command } from '../command.ts'

/** Options that take an amount, beside which its strength may stand. */
const AMOUNTS = ['infusion', 'liqueur', 'measured'] as const

const BESIDE = /^(.*?\p{L})[\s,]+(?:(?:at|of|a|al|@)\s*)?(\d[\d.,]*\s*%(?:\s*(?:abv|vol))?)$/iu

const STRENGTH_ALONE = /^\d[\d.,]*\s*%(?:\s*(?:abv|vol))?$/i

/** `920 ml 82%` where only an amount is taken, as an amount and its strength; `spirit:95%` with bottles, which say how much of it. */
export function withStrengthApart(call: Invocation, { input }: Command): Invocation {
  if (!('strength' in input.shape) || call.options.strength !== undefined) return call
  const { spirit, ...others } = call.options
  if (spirit !== undefined && call.options.bottles !== undefined && STRENGTH_ALONE.test(spirit.trim())) {
    return { ...call, options: { ...others, strength: spirit } }
  }
  for (const option of AMOUNTS) {
    const [, amount, strength] = BESIDE.exec(call.options[option] ?? '') ?? []
    if (amount !== undefined && strength !== undefined) {
      return { ...call, options: { ...call.options, [option]: amount, strength } }
    }
  }
  return call
}
