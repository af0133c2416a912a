import type { IngredientsTold } from '../../../core/jar/state/batch-facts.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import { dayFromIso, type IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { Format } from '../format.ts'
import type { BottleLabelData, JarTagData } from '../messages/pictures.ts'
import type { PictureText } from '../picture-text.ts'
import { plantName } from './cook-names.ts'
import { printedDangers } from './jar-danger.ts'
import { adviceWords, allAllergenWords, allergenWords, keepAwayWords, strangerWords } from './label.ts'
import { dayText, MONTHS, monthText, shortDayText } from './phrases.ts'
import { sweetenerName } from './sweeteners.ts'
import { altText, daysText, inJarText, unknownName, vesselText } from './words.ts'

/** Paper outlives the year. */
const printedDay = (iso: IsoDay): string => {
  const { year, month, day } = dayFromIso(iso)
  return `${day} ${(MONTHS[month - 1] ?? '').slice(0, 3)} ${year}`
}

const started = ({ started }: Pick<JarTagData, 'started'>): string => `Started ${printedDay(started)}`

const isSameYear = (one: IsoDay, other: IsoDay): boolean => one.slice(0, 4) === other.slice(0, 4)

/** `Strain 9 to 25 Dec 2026`; empty where no day is planned. */
function strain({ strainFrom, strainBy }: Pick<JarTagData, 'strainFrom' | 'strainBy'>): string {
  const [from, by] = [strainFrom ?? strainBy, strainBy ?? strainFrom]
  if (from === null || by === null) return ''
  if (from === by) return `Strain ${strainFrom === null ? 'by ' : ''}${printedDay(by)}`
  const [first, last] = [printedDay(from), printedDay(by)]
  return `Strain ${isSameYear(from, by) ? first.replace(/ \d+$/, '') : first} – ${last}`
}

/** A tenth of a per cent is more than a label on a jar carries, a half is not where it is known: 29.49 is 29.5, not 29. */
function rough({ value, plusMinus }: Measured): Measured {
  if (plusMinus >= 1) return { value: Math.round(value), plusMinus }
  return { value: Math.round(2 * value) / 2, plusMinus: Math.max(0.5, plusMinus) }
}

/** On a jar that is strained, in the place of its straining. */
const best = ({ bestUntil }: Pick<JarTagData, 'bestUntil'>): string =>
  bestUntil === null ? '' : `Best before about ${monthText(dayFromIso(bestUntil))}`

const honey = ({ hasHoney }: Pick<JarTagData, 'hasHoney'>): string =>
  hasHoney ? 'Not for children, honey never for a baby' : ''

const tagStrength = ({ abvPercent }: Pick<JarTagData, 'abvPercent'>, format: Format): string =>
  abvPercent === null ? 'no alcohol' : `about ${format.strength(rough(abvPercent))}`

const longDay = (iso: IsoDay): string => dayText(dayFromIso(iso))

const strainSaid = ({ strainFrom, strainBy }: JarTagData, format: Format): string => {
  const [from, by] = [strainFrom ?? strainBy, strainBy ?? strainFrom]
  return from === null || by === null ? '' : `Strain ${daysText(dayFromIso(from), dayFromIso(by), format)}.`
}

/** Of what is counted the count will do where there is little room. */
const withoutAbout = (text: string): string => text.replace(/ \(about [^)]*\)/g, '')

/** `17 Sep`: the year stands above. */
const shortPrintedDay = (iso: IsoDay): string => shortDayText(dayFromIso(iso))

/** What stands on the tag of a jar. */
export const tagText: PictureText['tag'] = {
  started,
  strain,
  best,
  honey,
  strength: tagStrength,
  inIt: (inJar: IngredientsTold, format: Format) => withoutAbout(inJarText(inJar, format, shortPrintedDay)),
  allergens: allAllergenWords,
  flammable: () => 'FLAMMABLE',
  warning: ({ danger }: Pick<JarTagData, 'danger'>): string => (danger === null ? '' : printedDangers[danger]),
  alt: (tag: JarTagData, format: Format) =>
    altText([
      `Jar tag: ${tag.name}.`,
      tag.danger === null ? '' : `${printedDangers[tag.danger]}.`,
      `Started ${longDay(tag.started)}.`,
      tag.danger === null || tag.danger === 'undecided' ? strainSaid(tag, format) : '',
      best(tag) === '' ? '' : `${best(tag)}.`,
      honey(tag) === '' ? '' : `${honey(tag)}.`,
      allAllergenWords(tag),
      `In it: ${inJarText(tag.inJar, format)}, ${tagStrength(tag, format)}.`,
      tag.isFlammable ? 'Flammable.' : '',
    ]),
}
const labelStrength = ({ abvPercent, strength }: BottleLabelData, format: Format): string =>
  abvPercent.value === 0 ? 'no alcohol' : `about ${format.strength(rough(abvPercent))} (${strength})`

const volume = ({ volumeMl }: BottleLabelData, format: Format): string =>
  volumeMl === null ? '' : vesselText(volumeMl, format)

const day = (iso: IsoDay): string => dayText(dayFromIso(iso))

const bottled = ({ bottled }: BottleLabelData): string =>
  bottled === null ? 'Bottled: ____________' : `Bottled ${day(bottled)}`

const bestBefore = ({ bestBefore }: BottleLabelData): string =>
  bestBefore === null ? '' : `Best before about ${monthText(dayFromIso(bestBefore))}`

/** `coffee beans (whole)`: a comma would make two of it in a list. */
const itemName = (id: string): string => plantName(id).replace(/, (.+)$/, ' ($1)')

const plants = ({ plants }: BottleLabelData): readonly string[] => [
  ...new Set(plants.map(({ id, name }) => (id === null ? unknownName(name) : itemName(id)))),
]

const inIt = (bottle: BottleLabelData): string =>
  `Spirit${bottle.hasWater ? ', water' : ''}${bottle.sweeteners.map((material) => `, ${sweetenerName(material)}`).join('')}${plants(
    bottle,
  )
    .map((name) => `, ${name}`)
    .join('')}`

const advice = ({ advice }: Pick<BottleLabelData, 'advice'>): string => adviceWords(advice)

const neat = ({ isTooStrong }: BottleLabelData): string => (isTooStrong ? 'Don’t drink neat.' : '')

const warning = ({ danger }: Pick<BottleLabelData, 'danger'>): string => (danger === null ? '' : printedDangers[danger])

const sentence = (text: string): string => (text === '' ? '' : `${text}.`)

const drinkKinds = { liqueur: 'Liqueur', steeped_spirit: 'Steeped spirit' } as const

const kind = ({ kind }: Pick<BottleLabelData, 'kind'>): string => (kind === null ? '' : drinkKinds[kind])

const maker = ({ maker }: Pick<BottleLabelData, 'maker'>): string => (maker === null ? '' : `Made by ${maker}`)

/** What stands on a bottle. */
export const labelText: PictureText['label'] = {
  kind,
  maker,
  strength: labelStrength,
  volume,
  bottled,
  bestBefore,
  inIt,
  /** Empty where nothing is known to be in it. */
  allergens: allAllergenWords,
  advice,
  warning,
  neat,
  keepAway: keepAwayWords,
  alt: (bottle: BottleLabelData, format: Format) =>
    altText([
      `Bottle label: ${bottle.name}.`,
      sentence(kind(bottle)),
      sentence(warning(bottle)),
      sentence(labelStrength(bottle, format).replace(/^./, (letter) => letter.toUpperCase())),
      sentence(volume(bottle, format)),
      bottle.bottled === null ? 'Room to write when it was bottled.' : sentence(bottled(bottle)),
      sentence(bestBefore(bottle)),
      sentence(maker(bottle)),
      // What warns first: where there is too much to say, the end is cut.
      allergenWords(bottle.allergens),
      advice(bottle),
      bottle.isFlammable ? 'Flammable.' : '',
      neat(bottle),
      keepAwayWords(),
      strangerWords(bottle.unknown),
      sentence(inIt(bottle)),
    ]),
}
