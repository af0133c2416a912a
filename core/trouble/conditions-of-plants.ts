import type { PlantThere, TroubleFacts } from './facts.ts'
import { type FactCondition, NO, open, type Why, yes } from './finding.ts'
import { isInGroup, type PlantGroup } from './plant-groups.ts'

/** A plant of a group is in it, or one that is not in the catalogue may be. */
export const plants =
  (...groups: readonly PlantGroup[]): FactCondition =>
  ({ plants: there }) => {
    if (there === null) return open('plants')
    const found = there.filter(
      ({ botanical }) => botanical !== null && groups.some((group) => isInGroup(botanical, group)),
    )
    if (found.length > 0) return yes({ key: 'plants', ids: [...new Set(found.map(({ botanical }) => botanical!.id))] })
    return there.some(({ botanical }) => botanical === null) ? open() : NO
  }

const eachOf =
  (groups: readonly PlantGroup[], why: (plant: PlantThere, facts: TroubleFacts) => Why | null): FactCondition =>
  (facts) => {
    const { plants: there } = facts
    if (there === null) return open()
    const found = there.filter(
      ({ botanical }) =>
        botanical !== null && (groups.length === 0 || groups.some((group) => isInGroup(botanical, group))),
    )
    const whys = found.flatMap((plant) => why(plant, facts) ?? [])
    return whys.length === 0 ? NO : yes(whys[0]!)
  }

/** Steeped longer than is usual for one of these plants. */
export const tooLong = (...groups: readonly PlantGroup[]): FactCondition =>
  eachOf(groups, ({ botanical, days }) => {
    const { usualMax, latest } = botanical!.timesDays
    const usualDays = latest ?? usualMax
    return days === null || days <= usualDays ? null : { key: 'too_long', id: botanical!.id, days, usualDays }
  })

/** Not yet as long as is usual. */
export const tooShort: FactCondition = eachOf([], ({ botanical, days }) => {
  const { usualMin } = botanical!.timesDays
  return days === null || days >= usualMin ? null : { key: 'too_short', id: botanical!.id, days, usualDays: usualMin }
})

/** More in a litre of spirit than so many times the usual amount. */
export const dosedOver = (times: number, ...groups: readonly PlantGroup[]): FactCondition =>
  eachOf(groups, ({ botanical, gPerL }) => {
    const usualGPerL = botanical!.dose.typicalGPerL
    return gPerL === null || gPerL <= times * usualGPerL ? null : { key: 'dose', id: botanical!.id, gPerL, usualGPerL }
  })

/** Less in a litre of spirit than the least that is usual. */
export const dosedUnder: FactCondition = eachOf([], ({ botanical, gPerL }) => {
  const usualGPerL = botanical!.dose.minGPerL
  return gPerL === null || gPerL >= usualGPerL ? null : { key: 'dose', id: botanical!.id, gPerL, usualGPerL }
})

/** Each piece weighs clearly more than its peel alone. */
export const heavyPieces: FactCondition = eachOf(['citrus'], ({ botanical, pieceShare }) =>
  pieceShare === null || pieceShare <= 1.2 ? null : { key: 'piece', id: botanical!.id, share: pieceShare },
)

/** Steeped far from the strengths that are used with a plant, % vol. */
export const offRange = (byPercent: number): FactCondition =>
  eachOf([], ({ botanical }, { steepPercent }) => {
    const { min, max } = botanical!.spiritPercent
    const isOff = steepPercent !== null && (steepPercent < min - byPercent || steepPercent > max + byPercent)
    return isOff ? { key: 'off_range', abvPercent: steepPercent, id: botanical!.id, range: [min, max] } : null
  })
