import type { Measured } from '../../../../core/quantity/measured/measured.ts'
import type { CalendarDay } from '../../../../core/quantity/quantities.ts'
import type { Format } from '../../format.ts'
import { listed } from '../phrases.ts'
import {
  type BottlesSaid,
  bottlesText,
  daysText,
  type LaterSaid,
  laterListed,
  type PlantSaid,
  plantText,
  type SpiritSaid,
  spiritText,
  type UnknownSaid,
} from './plan-words.ts'

/** What to get and what it makes. */
export interface BatchSaid {
  readonly spirits: readonly SpiritSaid[]
  readonly plants: readonly (PlantSaid | UnknownSaid)[]
  /** All of it, with the plants and in the syrup. */
  readonly allSugarG: Measured
  readonly volumeMl: Measured
  readonly bottles: readonly BottlesSaid[]
}

interface PlanSaid extends BatchSaid {
  /** Plants that go in after the first day. */
  readonly later: readonly LaterSaid[]
  readonly strainFrom: CalendarDay
  readonly strainBy: CalendarDay
  readonly isHours: boolean
  readonly ready: CalendarDay
}

/** `700 ml of 95 % vol spirit, 84 g ginger root and 300 g sugar`. */
export const buyText = ({ spirits, plants, allSugarG }: BatchSaid, format: Format): string =>
  listed([
    ...spirits.map((spirit) => spiritText(spirit, format)),
    ...plants.map((plant) => plantText(plant, format)),
    ...(allSugarG.value > 0 ? [`${format.mass(allSugarG)} sugar`] : []),
  ])

/** `fills 4 bottles of 500 ml`. */
export const fillsText = ({ bottles, volumeMl }: BatchSaid, format: Format): string => {
  const filled = bottlesText(bottles, format)
  return filled === '' ? `makes about ${format.volume(volumeMl)}, less than a bottle` : `fills ${filled}`
}

const laterText = (later: readonly LaterSaid[], format: Format): string =>
  later.length === 0 ? '' : `; later add ${laterListed(later, format)}`

/** First line of a plan: what to buy, when to strain, when it is ready, what it fills. */
export const planHeadlines = {
  plan: (values: PlanSaid, format: Format) => {
    const { strainFrom, strainBy, ready } = values
    const strain = values.isHours
      ? `within hours ${daysText(strainBy, strainBy, format)}`
      : daysText(strainFrom, strainBy, format)
    return `Buy ${buyText(values, format)}${laterText(values.later, format)}; strain ${strain}, ready by ${format.day(ready)}; ${fillsText(values, format)}.`
  },
}
