import type {
  Happening,
  HappeningEntry,
  Ingredients,
  ReadAmount,
  ReadStrength,
  Strained,
  Tasted,
} from '../../../../core/jar/entry/entry.ts'
import { volumeMl, water } from '../../../../core/liquid/liquid.ts'
import { dayFromIso, type IsoDay, isoTime } from '../../../../core/quantity/time/calendar-day.ts'
import { minutesAt } from '../../../../core/quantity/time/zone.ts'
import type { Format } from '../../format.ts'
import { dayText } from '../day-text.ts'
import { listed } from '../phrases.ts'
import { bottlesText, spiritText } from '../plan/plan-words.ts'
import { plantInText } from './in-jar-words.ts'

const WATER_ML_PER_G = volumeMl(water(1))

type Typed = HappeningEntry['typed']

/** What happened, with what was typed of it where that is known. */
export type Told = Happening & { readonly typed?: Typed }

/** An amount in plain metric: it is said as it was typed, in other words by what it was read as. */
const METRIC = /^(\d+(?:[.,]\d+)?) ?(ml|cl|dl|l|g|kg)$/i

const asTyped = (typed: Typed, option: string): string | null => {
  const [, number, unit] = METRIC.exec(typed.find(([name]) => name === option)?.[1] ?? '') ?? []
  return number === undefined ? null : `${number}\u00a0${unit}`
}

/** Water in a sentence: by volume, as it is poured. */
export const waterText = ({ value, plusMinus }: Ingredients['waterG'], format: Format): string =>
  `${format.volume({ value: value * WATER_ML_PER_G, plusMinus: plusMinus * WATER_ML_PER_G })} water`

/** `700 ml of 95 % vol spirit, 84 g ginger root and 300 g sugar`. */
export function ingredientsText(
  { plants, spirits, waterG, sugarG }: Ingredients,
  format: Format,
  typed: Typed = [],
): string {
  const [water, sugar] = [asTyped(typed, 'water'), asTyped(typed, 'sugar')]
  return listed([
    ...spirits.map((spirit) => spiritText(spirit, format)),
    ...(waterG.value > 0 ? [water === null ? waterText(waterG, format) : `${water} water`] : []),
    ...plants.map((plant) => plantInText(plant, format)),
    ...(sugarG.value > 0 ? [`${sugar ?? format.mass(sugarG)} sugar`] : []),
  ])
}

/** Where a thing was not read at 20 °C, at what it was. */
const readAt = (atC: number | null, format: Format): string =>
  atC === null || atC === 20 ? '' : ` (${format.temperature({ value: atC, plusMinus: 0 })})`

const amountText = ({ amount, by, atC }: ReadAmount, typed: Typed, format: Format): string =>
  asTyped(typed, 'measured') ?? (by === 'mass' ? format.mass(amount) : `${format.volume(amount)}${readAt(atC, format)}`)

const strengthText = ({ abvPercent, abvAtC }: ReadStrength, format: Format): string =>
  `at ${format.strength(abvPercent)}${readAt(abvAtC, format)}`

const strainedText = (
  { measured, strength, rinseWaterG }: Strained,
  when: string,
  typed: Typed,
  format: Format,
): string => {
  const read = [
    ...(measured === null ? [] : [amountText(measured, typed, format)]),
    ...(strength === null ? [] : [strengthText(strength, format)]),
  ].join(' ')
  const rinsed = rinseWaterG.value > 0 ? `, the plants rinsed with ${waterText(rinseWaterG, format)}` : ''
  return `strained${when}${read === '' ? ', not measured' : `, ${read}`}${rinsed}`
}

const tastedText = ({ rating, note }: Tasted, when: string): string =>
  `tasted${when}${rating === null ? '' : `, ${rating} of 5`}${note === null ? '' : `: “${note.replace(/[“”]/g, '"')}”`}`

interface Until {
  readonly untilDay: IsoDay
  readonly untilMs: number | null
  /** IANA name; null where only the day is known. */
  readonly zone: string | null
}

/** `9 December 2026`, or `18:00 on 9 December 2026`. */
export function untilText({ untilDay, untilMs, zone }: Until, format: Format): string {
  const day = dayFromIso(untilDay)
  if (untilMs === null || zone === null) return format.day(day)
  const minutes = minutesAt(zone, untilMs)
  return format.moment(day, minutes, `${isoTime(minutes)} on ${dayText(day)}`)
}

/** What happened to a jar, after its name: `strained, 920 ml at 71 % vol`; `when`: ` on 9 December 2026`, or nothing. */
export function happeningText(happening: Told | HappeningEntry, format: Format, when = ''): string {
  const { typed = [] } = happening
  switch (happening.kind) {
    case 'started':
      return `started${when} with ${ingredientsText(happening, format)}`
    case 'tasted':
      return tastedText(happening, when)
    case 'added':
      return `added ${ingredientsText(happening, format, typed)}${when}`
    case 'strained':
      return strainedText(happening, when, typed, format)
    case 'filtered':
      return `filtered${when}${happening.measured === null ? '' : `, ${amountText(happening.measured, typed, format)} left`}`
    case 'sweetened':
      return `sweetened with ${ingredientsText({ ...happening, plants: [], spirits: [] }, format, typed)}${when}`
    case 'bottled':
      return `${bottlesText(happening.bottles, format)} filled${when}`
    case 'renamed':
      return `called “${happening.name}”${when}`
    case 'put_off':
      return `put off until ${untilText({ ...happening, zone: 'zone' in happening ? happening.zone : null }, format)}${when}`
    case 'emptied':
      return `emptied${when}`
    case 'discarded':
      return `thrown away${when}`
    default:
      return `${happening.kind}${when}`
  }
}
