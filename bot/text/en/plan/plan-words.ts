import { botanicalById } from '../../../../core/botanical/catalogue/catalogue.ts'
import type { Measured } from '../../../../core/quantity/measured/measured.ts'
import type { CalendarDay } from '../../../../core/quantity/quantities.ts'
import type { Format } from '../../format.ts'
import { dayText, MONTHS } from '../day-text.ts'
import { listed } from '../phrases.ts'
import { countedName } from './counted-name.ts'

/** `9 December`, where the year is said beside it. */
const shortDay = ({ month, day }: CalendarDay): string => `${day} ${MONTHS[month - 1]}`

const isSameDay = (one: CalendarDay, other: CalendarDay): boolean => dayText(one) === dayText(other)

/** `from 9 to 25 December 2026`; one day where both are the same. */
export const daysText = (from: CalendarDay, to: CalendarDay, format: Format): string => {
  if (isSameDay(from, to)) return `on ${format.day(to)}`
  const start = from.year !== to.year ? dayText(from) : from.month !== to.month ? shortDay(from) : `${from.day}`
  return `from ${format.day(from, start)} to ${format.day(to)}`
}

/** The plant's name within a sentence. */
export const plantName = (id: string): string => {
  const { title } = botanicalById(id).names
  return `${title.charAt(0).toLowerCase()}${title.slice(1)}`
}

/** A plant that goes in after the first day. */
export interface LaterSaid {
  readonly id: string
  readonly day: CalendarDay
}

/** `coffee beans, whole on 17 September 2026`. */
export const laterListed = (later: readonly LaterSaid[], format: Format): string =>
  listed(later.map(({ id, day }) => `${plantName(id)} on ${format.day(day)}`))

export interface PlantSaid {
  readonly id: string
  readonly massG: Measured
  /** Fruit or pieces: counted, or as many as to buy for the zest; null where it is weighed. */
  readonly count: number | null
  /** True where the zest of whole fruit is meant. */
  readonly ofZest: boolean
}

/** A plant that is not in the catalogue, in the maker's own words. */
export interface UnknownSaid {
  readonly id: null
  readonly name: string
  readonly massG: Measured
}

/** `“meadowsweet”`. */
export const unknownName = (name: string): string => `“${name.replace(/[“”]/g, '"')}”`

/** Of a plant that may not be one of the catalogue's. */
export const nameText = ({ id, name }: { readonly id: string | null; readonly name: string }): string =>
  id === null ? unknownName(name) : plantName(id)

/** `84 g ginger root`, `lemon peel (zest) of 8 fruit = 80 g`, `5 cloves = 0.45 g`, `2 × mint leaves = 4 g`. */
export const plantText = (plant: PlantSaid | UnknownSaid, format: Format): string => {
  if (plant.id === null) return `${format.mass(plant.massG)} ${unknownName(plant.name)}`
  const { id, massG, count, ofZest } = plant
  const [mass, name] = [format.mass(massG), plantName(id)]
  if (count === null) return `${mass} ${name}`
  const times = format.plain(count, 1)
  if (ofZest) return `${name} of ${times} fruit = ${mass}`
  const counted = countedName(id, count)
  return counted === null ? `${times} × ${name} = ${mass}` : `${times} ${counted} = ${mass}`
}

export interface SpiritSaid {
  readonly amount: Measured
  readonly by: 'volume' | 'mass'
  readonly abvPercent: Measured
  readonly sugarGPerL: Measured
}

/** `700 ml of 75.5 % vol spirit`, `500 ml of 28 % vol with 250 g/L of sugar`. */
export const spiritText = ({ amount, by, abvPercent, sugarGPerL }: SpiritSaid, format: Format): string => {
  const poured = `${by === 'mass' ? format.mass(amount) : format.volume(amount)} of ${format.strength(abvPercent)}`
  return sugarGPerL.value === 0 ? `${poured} spirit` : `${poured} with ${format.sweetness(sugarGPerL)} of sugar`
}

/** A bottle or a jar, as it is sold: in ml or litres, in every kitchen. */
export const vesselText = (volumeMl: number, format: Format): string =>
  volumeMl >= 1000 ? `${format.plain(volumeMl / 1000, 2)}\u00a0l` : `${format.plain(volumeMl, 0)}\u00a0ml`

export interface BottlesSaid {
  readonly count: number
  readonly volumeMl: number
}

/** `4 bottles of 500 ml`; empty where none is filled. */
export const bottlesText = (bottles: readonly BottlesSaid[], format: Format): string =>
  bottles
    .filter(({ count }) => count > 0)
    .map(({ count, volumeMl }) => `${count} ${count === 1 ? 'bottle' : 'bottles'} of ${vesselText(volumeMl, format)}`)
    .join(' and ')
