import { wordAt } from '../../../core/quantity/read/tokens.ts'
import type { Around } from './amount-bits.ts'
import type { Bit } from './bit.ts'
import { usualStrength } from './usual-strength.ts'

/** What is somebody's own is no wish: `my ginger liqueur`. */
const OWN = /^(?:my|the|this|that|our|your|these|il|lo|la|l|mio|mia|nostro|questo|quel|del|nel|dal)$/
const LIQUEUR = /^(?:liqueur|liqueurs|liquer|liquor|liquour)$/
const LIQUORE = /^(?:liquore|liquori|liquorino|rosolio)$/

/** `plum brandy`, `a plum liqueur`, `liquore alle prugne`: a drink by what is in it, with the spirit that is usual. */
export function drinksNamed(around: Around, bits: readonly Bit[]): readonly Bit[] {
  const { typed, spiritBottleMl } = around
  return bits.map((plant, at) => {
    if (plant.kind !== 'plant' || plant.spirit !== undefined || OWN.test(wordAt(typed, plant.from - 1))) return plant
    const before = bits[at - 1]
    const isCounted = before !== undefined && /bare|mass/.test(before.kind) && plant.from - before.to <= 2
    if (isCounted || (plant.ids?.length ?? 0) === 0) return plant
    const next = bits[at + 1]
    if (next?.kind === 'spirit' && next.from === plant.to && next.value > 0)
      return { ...plant, spirit: `${spiritBottleMl} ml ${next.text.toLowerCase()} ${next.value}%` }
    const isBehind = LIQUEUR.test(wordAt(typed, plant.to))
    const isAl = /^(?:al|allo|alla|alle|ai|agli|di|all|d|con)$/.test(wordAt(typed, plant.from - 1))
    const isItalian = isAl && LIQUORE.test(wordAt(typed, plant.from - 2)) && !OWN.test(wordAt(typed, plant.from - 3))
    return isBehind || isItalian ? { ...plant, spirit: `1 l ${usualStrength([plant])}` } : plant
  })
}
