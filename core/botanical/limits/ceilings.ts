import { DomainError } from '../../domain-error.ts'
import type { Botanical, Limit, LimitKey } from '../botanical.ts'
import type { BotanicalProblems } from '../problems.ts'
import { FINISHED_PER_SPIRIT } from './per-finished.ts'

export interface Weighed {
  readonly botanical: Botanical
  readonly massG: number
}

export interface HazardShare {
  readonly hazard: LimitKey
  /** Of the limit that is nearer, per litre of steeping spirit or of finished drink: 1 is all of it. */
  readonly share: number
  readonly per: 'spirit' | 'finished'
  /** Of what a litre of the finished drink may hold; left out where that is not known. */
  readonly finishedShare?: number
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

/** One limit that a jar passes, with the most that it allows of each plant. */
export type OverCeiling = BotanicalProblems['over_ceiling']

/** Room for the last digit of a double. */
const SLACK = 1e-9

/** Grams that a limit allows. */
const mostG = (limit: Limit, spiritMl: number, finishedMl: number | null) => {
  const bySpirit = { per: 'spirit' as const, massG: (limit.gPerLSpirit * spiritMl) / 1000 }
  if (finishedMl === null) return bySpirit
  const byFinished = (limit.gPerLSpirit * FINISHED_PER_SPIRIT * finishedMl) / 1000
  return byFinished < bySpirit.massG ? { per: 'finished' as const, massG: byFinished } : bySpirit
}

const limitedIn = (weighed: readonly Weighed[], spiritMl: number, finishedMl: number | null) =>
  weighed.flatMap(({ botanical, massG }) => {
    const limit = botanical.ceiling ?? botanical.warnAbove
    if (limit === null || massG <= 0) return []
    const most = mostG(limit, spiritMl, finishedMl)
    return [{ botanical, massG, limit, most, share: massG / most.massG }]
  })

type Limited = ReturnType<typeof limitedIn>[number]

/** The plants of each hazard that has a ceiling, with how much of its limit they use together, the worst first. */
function groupsIn(weighed: readonly Weighed[], spiritMl: number, finishedMl: number | null) {
  const limited = limitedIn(weighed, spiritMl, finishedMl)
  const keys = new Set(limited.filter(({ botanical }) => botanical.ceiling !== null).map(({ limit }) => limit.key))
  return [...keys]
    .map((hazard) => {
      const parts = limited.filter(({ limit }) => limit.key === hazard)
      const per = parts[0]?.most.per ?? ('spirit' as const)
      return { hazard, parts, per, share: parts.reduce((sum, part) => sum + part.share, 0) }
    })
    .toSorted((one, other) => other.share - one.share)
}

/**
 * The limits that these plants pass, the worst first; empty where none is. Never throws.
 * `spiritMl`: all that they steep in, water that diluted it included; `finishedMl`: the drink it makes, null where that
 * is not known. Limits of one hazard add up; a plant with only a limit to warn about counts beside plants with a ceiling.
 */
export const overCeilings = (
  weighed: readonly Weighed[],
  spiritMl: number,
  finishedMl: number | null = null,
): readonly OverCeiling[] =>
  groupsIn(weighed, spiritMl, finishedMl)
    .filter(({ share }) => share > 1 + SLACK)
    .map(({ hazard, share, parts, per }) => ({
      hazard,
      share,
      of: parts.map(({ botanical: { id, form }, massG }) => ({ id, state: form.state, massG, mostG: massG / share })),
      per,
      volumeMl: per === 'finished' && finishedMl !== null ? finishedMl : spiritMl,
      spiritMl,
    }))

const finishedShareOf = (parts: readonly Limited[], finishedMl: number): number =>
  parts.reduce(
    (sum, { limit, massG }) => sum + (massG * 1000) / (limit.gPerLSpirit * FINISHED_PER_SPIRIT * finishedMl),
    0,
  )

/** How much of each limit a jar uses, be it more than all of it. Never throws. */
export const ceilingsUsed = (
  weighed: readonly Weighed[],
  spiritMl: number,
  finishedMl: number | null = null,
): CeilingCheck => {
  return {
    shares: groupsIn(weighed, spiritMl, finishedMl).map(({ hazard, share, per, parts }) => ({
      hazard,
      share,
      per,
      ...(finishedMl === null ? {} : { finishedShare: finishedShareOf(parts, finishedMl) }),
      ids: parts.map(({ botanical }) => botanical.id),
    })),
    warned: weighed.flatMap(({ botanical, massG }) => {
      const { warnAbove, id } = botanical
      const gPerLSpirit = (massG * 1000) / spiritMl
      if (warnAbove === null || gPerLSpirit <= warnAbove.gPerLSpirit * (1 + SLACK)) return []
      return [{ id, hazard: warnAbove.key, gPerLSpirit, limitGPerL: warnAbove.gPerLSpirit }]
    }),
  }
}

/** The same; throws `over_ceiling` where a limit is passed, of the worst (see `overCeilings`). */
export const checkCeilings = (
  weighed: readonly Weighed[],
  spiritMl: number,
  finishedMl: number | null = null,
): CeilingCheck => {
  const [worst] = overCeilings(weighed, spiritMl, finishedMl)
  if (worst !== undefined) throw new DomainError('over_ceiling', 'over_ceiling', worst)
  return ceilingsUsed(weighed, spiritMl, finishedMl)
}
