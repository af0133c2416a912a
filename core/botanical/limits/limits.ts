import type { Botanical, Limit, PlantState } from '../botanical.ts'
import { FINISHED_PER_SPIRIT } from './per-finished.ts'
import { type Content, contents } from './substance-contents.ts'
import { substances } from './substances.ts'
import { toldLimits } from './told-limits.ts'

/** An amount that can be weighed out: two digits, rounded down. */
const weighable = (gPerL: number): number => {
  const step = 10 ** (Math.floor(Math.log10(gPerL)) - 1)
  return Number((Math.floor(gPerL / step + 1e-9) * step).toPrecision(2))
}

/** Grams in a litre of steeping spirit, of which a litre of finished drink may hold half. */
export const gPerLSpiritOf = ({ key, mgPerG }: Pick<Content, 'key' | 'mgPerG'>): number =>
  weighable(substances[key].mgPerLFinished / mgPerG / FINISHED_PER_SPIRIT)

const isOf = ({ names, form }: Botanical, row: { readonly latin: string; readonly state: PlantState }): boolean =>
  names.latin.includes(row.latin) && form.state === row.state

/** What the two tables say of a plant; null where they say nothing. */
function limitsOf(botanical: Botanical): { readonly ceiling: Limit | null; readonly warnAbove: Limit | null } {
  const row = toldLimits.find((each) => {
    return isOf(botanical, each) && (each.hazard === undefined || botanical.hazards.includes(each.hazard))
  })
  if (row !== undefined) {
    const { key, trust, ceilingGPerLSpirit, warnAboveGPerLSpirit } = row
    const limit = (gPerLSpirit: number | null) => (gPerLSpirit === null ? null : { key, gPerLSpirit, trust })
    return { ceiling: limit(ceilingGPerLSpirit), warnAbove: limit(warnAboveGPerLSpirit) }
  }
  const content = contents.find((each) => isOf(botanical, each))
  if (content === undefined) return { ceiling: null, warnAbove: null }
  return { ceiling: { key: content.key, gPerLSpirit: gPerLSpiritOf(content), trust: 'memory' }, warnAbove: null }
}

/**
 * The plant with its limits: those of its own row count before those of the tables.
 * Some that are suspected have none, since no figure supports one at any dose that is drunk: cocoa (2 mg/g of caffeine), mint
 * (0.1 mg/g of pulegone, and 100 mg/L are allowed), basil, tarragon and bay (estragole and methyleugenol: Regulation (EC)
 * 1334/2008 has no figure for alcoholic drinks). Contents from memory.
 */
export function withLimits(botanical: Botanical): Botanical {
  const { ceiling, warnAbove } = limitsOf(botanical)
  return { ...botanical, ceiling: botanical.ceiling ?? ceiling, warnAbove: botanical.warnAbove ?? warnAbove }
}
