import type { DangerKind } from '../../../../core/jar/limits/judge-jar.ts'
import type { Measured } from '../../../../core/quantity/measured/measured.ts'
import { dayFromIso, type IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import type { Format } from '../../format.ts'
import { dayText, MONTHS } from '../day-text.ts'
import { printedDangers } from '../jar/danger-sentences.ts'
import { type InJar, inJarText } from '../jar/in-jar-words.ts'
import { daysText } from '../plan/plan-words.ts'
import { altText } from './alt-text.ts'

interface Tag {
  readonly name: string
  readonly started: IsoDay
  readonly strainFrom: IsoDay | null
  readonly strainBy: IsoDay | null
  readonly inJar: InJar
  readonly abvPercent: Measured | null
  readonly isFlammable: boolean
  readonly danger: DangerKind | null
}

/** Paper outlives the year. */
const printedDay = (iso: IsoDay): string => {
  const { year, month, day } = dayFromIso(iso)
  return `${day} ${(MONTHS[month - 1] ?? '').slice(0, 3)} ${year}`
}

const started = ({ started }: Pick<Tag, 'started'>): string => `Started ${printedDay(started)}`

const isSameYear = (one: IsoDay, other: IsoDay): boolean => one.slice(0, 4) === other.slice(0, 4)

/** `Strain 9 to 25 Dec 2026`; empty where no day is planned. */
function strain({ strainFrom, strainBy }: Pick<Tag, 'strainFrom' | 'strainBy'>): string {
  const [from, by] = [strainFrom ?? strainBy, strainBy ?? strainFrom]
  if (from === null || by === null) return ''
  if (from === by) return `Strain ${strainFrom === null ? 'by ' : ''}${printedDay(by)}`
  const [first, last] = [printedDay(from), printedDay(by)]
  return `Strain ${isSameYear(from, by) ? first.replace(/ \d+$/, '') : first} – ${last}`
}

/** A tenth of a per cent is more than a label on a jar carries. */
const rough = ({ value, plusMinus }: Measured): Measured => ({ value, plusMinus: Math.max(1, plusMinus) })

const strength = ({ abvPercent }: Pick<Tag, 'abvPercent'>, format: Format): string =>
  abvPercent === null ? 'no alcohol' : `about ${format.strength(rough(abvPercent))}`

const longDay = (iso: IsoDay): string => dayText(dayFromIso(iso))

const strainSaid = ({ strainFrom, strainBy }: Tag, format: Format): string => {
  const [from, by] = [strainFrom ?? strainBy, strainBy ?? strainFrom]
  return from === null || by === null ? '' : `Strain ${daysText(dayFromIso(from), dayFromIso(by), format)}.`
}

/** What stands on the tag of a jar. */
export const tagText = {
  started,
  strain,
  strength,
  inIt: (inJar: InJar, format: Format) => inJarText(inJar, format),
  flammable: () => 'FLAMMABLE',
  warning: ({ danger }: Pick<Tag, 'danger'>): string => (danger === null ? '' : printedDangers[danger]),
  alt: (tag: Tag, format: Format) =>
    altText([
      `Jar tag: ${tag.name}.`,
      tag.danger === null ? '' : `${printedDangers[tag.danger]}.`,
      `Started ${longDay(tag.started)}.`,
      tag.danger === null || tag.danger === 'undecided' ? strainSaid(tag, format) : '',
      `In it: ${inJarText(tag.inJar, format)}; ${strength(tag, format)}.`,
      tag.isFlammable ? 'Flammable.' : '',
    ]),
}
