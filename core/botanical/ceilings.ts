import { DomainError } from '../domain-error.ts'
import type { Botanical, Limit, LimitKey } from './botanical.ts'

export interface Weighed {
  readonly botanical: Botanical
  readonly massG: number
}

export interface HazardShare {
  readonly hazard: LimitKey
  /** Of the limit that is nearer, per litre of steeping spirit or of finished drink: 0 to 1. */
  readonly share: number
  readonly per: 'spirit' | 'finished'
  readonly ids: readonly string[]
}

export interface Warned {
  readonly id: string
  readonly hazard: LimitKey
  readonly gPerLSpirit: number
  readonly limitGPerL: number
}

export interface CeilingCheck {
  readonly shares: readonly HazardShare[]
  /** Above what is usual or wise, though no ceiling. */
  readonly warned: readonly Warned[]
}

/** A litre of the finished drink may hold half of what a litre of the steeping spirit may. */
const FINISHED_PER_SPIRIT = 0.5

/** Room for the last digit of a double. */
const SLACK = 1e-9

/** Grams that a limit allows. */
const mostG = (limit: Limit, spiritMl: number, finishedMl: number | null) => {
  const bySpirit = { per: 'spirit' as const, massG: (limit.gPerLSpirit * spiritMl) / 1000 }
  if (finishedMl === null) return bySpirit
  const byFinished = (limit.gPerLSpirit * FINISHED_PER_SPIRIT * finishedMl) / 1000
  return byFinished < bySpirit.massG ? { per: 'finished' as const, massG: byFinished } : bySpirit
}

/**
 * How much of each limit a jar uses. Ceilings of one hazard add up; a plant with only a limit to warn about counts
 * beside plants with a ceiling of the same hazard, since its share is no smaller for lacking one.
 * Throws `over_ceiling` where the shares of a hazard come to more than 1, the worst first.
 */
export const checkCeilings = (
  weighed: readonly Weighed[],
  spiritMl: number,
  finishedMl: number | null = null,
): CeilingCheck => {
  const limited = weighed.flatMap(({ botanical, massG }) => {
    const limit = botanical.ceiling ?? botanical.warnAbove
    if (limit === null || massG <= 0) return []
    const most = mostG(limit, spiritMl, finishedMl)
    return [{ botanical, massG, limit, most, share: massG / most.massG }]
  })
  const keys = new Set(limited.filter(({ botanical }) => botanical.ceiling !== null).map(({ limit }) => limit.key))
  const groups = [...keys].map((hazard) => {
    const parts = limited.filter(({ limit }) => limit.key === hazard)
    return { hazard, parts, share: parts.reduce((sum, part) => sum + part.share, 0) }
  })
  const [worst] = groups.toSorted((one, other) => other.share - one.share)
  const per = worst?.parts[0]?.most.per ?? 'spirit'
  if (worst !== undefined && worst.share > 1 + SLACK) {
    throw new DomainError('over_ceiling', 'over_ceiling', {
      hazard: worst.hazard,
      share: worst.share,
      of: worst.parts.map(({ botanical, massG }) => ({ id: botanical.id, massG, mostG: massG / worst.share })),
      per,
      volumeMl: per === 'finished' && finishedMl !== null ? finishedMl : spiritMl,
    })
  }
  return {
    shares: groups.map(({ hazard, parts, share }) => ({
      hazard,
      share,
      per: parts[0]?.most.per ?? 'spirit',
      ids: parts.map(({ botanical }) => botanical.id),
    })),
    warned: limited.flatMap(({ botanical, massG }) => {
      const { warnAbove, id } = botanical
      const gPerLSpirit = (massG * 1000) / spiritMl
      if (warnAbove === null || gPerLSpirit <= warnAbove.gPerLSpirit * (1 + SLACK)) return []
      return [{ id, hazard: warnAbove.key, gPerLSpirit, limitGPerL: warnAbove.gPerLSpirit }]
    }),
  }
}
