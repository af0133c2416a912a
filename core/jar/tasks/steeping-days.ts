import type { IsoDay } from '../../quantity/time/calendar-day.ts'
import { isoOf } from '../../quantity/time/day-number.ts'
import type { JarState } from '../state/jar-state.ts'
import { movedByLatePlants } from '../state/late-plants.ts'
import { strainWindow, tasteWindow } from './windows.ts'

/** When what steeps is tasted and comes out, as planned; a day that nobody knows is null. */
export interface SteepingDays {
  readonly tasteFrom: IsoDay | null
  /** It is tasted every day, and not once in a while. */
  readonly isDaily: boolean
  readonly strainFrom: IsoDay | null
  readonly strainBy: IsoDay | null
}

/** Of a jar that steeps; null of one that is strained. */
export function steepingDays(story: JarState): SteepingDays | null {
  if (story.strained !== null) return null
  const moved = movedByLatePlants(story)
  const [taste, strain] = [tasteWindow(moved), strainWindow(moved.started)]
  const dayOf = (day: number | null | undefined): IsoDay | null =>
    day === null || day === undefined ? null : isoOf(day)
  return {
    tasteFrom: dayOf(taste?.opens),
    isDaily: taste !== null && taste.rhythm.of === 'tasting' && (taste.rhythm.isDaily || taste.hours !== null),
    strainFrom: dayOf(strain?.opens),
    strainBy: dayOf(strain?.closes),
  }
}
