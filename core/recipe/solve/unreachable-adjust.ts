import { DomainError } from '../../domain-error.ts'
import { abvPercent, type Liquid, liquidFrom, sugarGPerL } from '../../liquid/liquid.ts'
import type { Targets } from '../targets.ts'
import { strongestAbvPercent, sweetestGPerL } from './syrup-for.ts'

/** Why a liqueur cannot be brought to its targets, with the nearest that can be had. */
export function noWay(from: Liquid, targets: Targets, spiritAbvPercent: number | null, gram: Liquid): DomainError {
  const own = { abvPercent: abvPercent(from), sugarGPerL: sugarGPerL(from) }
  const wish = { toAbvPercent: targets.abvPercent, toSugarGPerL: targets.sugarGPerL }
  if (targets.sugarGPerL === 0 && own.sugarGPerL > 0) {
    return new DomainError('unreachable', 'adjust_keeps_sugar', own)
  }
  if (spiritAbvPercent === null) {
    return new DomainError('unreachable', 'adjust_needs_spirit', {
      ...own,
      ...wish,
      ...sweetnessRange(from, targets, gram),
    })
  }
  const spirit = liquidFrom({ volumeMl: 1000, abvPercent: spiritAbvPercent, sugarGPerL: 0 })
  const strongest = strongestAbvPercent(spirit, targets.sugarGPerL, gram)
  return new DomainError('unreachable', 'adjust_spirit_too_weak', {
    ...own,
    ...wish,
    spiritAbvPercent,
    strongestAbvPercent: strongest,
  })
}

/** What water alone and sugar alone make at the strength wished for; nulls above the liqueur's own strength. */
function sweetnessRange(from: Liquid, { abvPercent: toAbvPercent }: Targets, gram: Liquid) {
  const mostSugarGPerL = sweetestGPerL(from, toAbvPercent, gram)
  if (mostSugarGPerL === null) return { leastSugarGPerL: null, mostSugarGPerL: null }
  // At one strength the volume is fixed by the ethanol, so water alone leaves the sugar in that volume.
  const volumeShare = toAbvPercent / abvPercent(from)
  return { leastSugarGPerL: sugarGPerL(from) * volumeShare, mostSugarGPerL }
}
