import type {
  Added,
  Filtered,
  Happening,
  HappeningEntry,
  HappeningKind,
  Ingredients,
  OfFruit,
  ReadAmount,
  ReadStrength,
  Started,
  Strained,
  Sweetened,
} from '../../../core/jar/entry/entry.ts'
import { spiritsNamed } from '../../../core/jar/entry/spirits-named.ts'
import type { FruitSugared, Noted, Parted, Tasted } from '../../../core/jar/entry/told.ts'
import { isFreezer } from '../../../core/jar/state/where-it-stands.ts'
import { dayFromIso, type IsoDay, isoTime } from '../../../core/quantity/time/calendar-day.ts'
import { minutesAt } from '../../../core/quantity/time/zone.ts'
import type { Format } from '../format.ts'
import type { EntryNumbers, EntrySaid, PutOffUntil } from '../messages/jar-entries.ts'
import { finingNames } from './label.ts'
import { dayText, listed, shortDayWords } from './phrases.ts'
import { bottlesText, nameText, plantInText, spiritText, sweeteningTexts, waterText } from './words.ts'

/** What was done to a jar. */
export const didWords: Readonly<Record<HappeningKind, string>> = {
  started: 'started',
  shaken: 'shaken',
  tasted: 'tasted',
  added: 'added to',
  strained: 'strained',
  filtered: 'filtered',
  measured: 'measured',
  sweetened: 'sweetened',
  fruit_sugared: 'sugared',
  taken_out: 'lifted out of',
  parted: 'parted',
  poured_in: 'poured into',
  noted: 'noted',
  bottled: 'bottled',
  bottles_out: 'updated',
  opened: 'opened',
  emptied: 'emptied',
  discarded: 'thrown away',
  renamed: 'renamed',
  put_off: 'put off',
}

type Typed = HappeningEntry['typed']

/** What happened, with what was typed of it where that is known. */
export type ToldHappening = Happening & { readonly typed?: Typed }

/** An amount in plain metric: it is said as it was typed, in other words by what it was read as. */
const METRIC = /^(\d+(?:[.,]\d+)?) ?(ml|cl|dl|l|g|kg)$/i

const asTyped = (typed: Typed, option: string): string | null => {
  const [, number, unit] = METRIC.exec(typed.find(([name]) => name === option)?.[1] ?? '') ?? []
  return number === undefined ? null : `${number}\u00a0${unit}`
}

/** `700 ml of 95 % vol spirit, 84 g ginger root and 300 g sugar`. */
function ingredientsText(
  { plants, spirits, waterG, sweetenings }: Ingredients,
  format: Format,
  typed: Typed = [],
): string {
  const [water, sugar] = [asTyped(typed, 'water'), asTyped(typed, 'sugar')]
  return listed([
    ...spiritsNamed({ typed, spirits }).map((spirit) => spiritText(spirit, format)),
    ...(waterG.value > 0 ? [water === null ? waterText(waterG, format) : `${water} water`] : []),
    ...plants.map((plant) => plantInText(plant, format)),
    ...sweeteningTexts(sweetenings, format, sugar),
  ])
}

/** How what went in went in. */
const ADDED_AS = { added: 'added', layer: 'layered in', top_up: 'topped up with' } as const

/** With plants that had steeped before. */
const startText = (started: Started, format: Format): string =>
  started.secondOf === undefined
    ? ingredientsText(started, format)
    : `the plants of ${started.secondOf.other} and ${ingredientsText(started, format)}`

const enzymeText = ({ enzyme }: Pick<Added, 'enzyme'>): string =>
  enzyme === undefined ? '' : `, with pectic enzyme (${enzyme})`

/** What went in, an enzyme with it: `500 g plums, with pectic enzyme (1 tsp)`. */
export function addedText(added: Ingredients & Pick<Added, 'enzyme'>, format: Format, typed: Typed = []): string {
  const text = ingredientsText(added, format, typed)
  return text === '' && added.enzyme !== undefined ? `pectic enzyme (${added.enzyme})` : `${text}${enzymeText(added)}`
}

/** Where a thing was not read at 20 °C, at what it was. */
const readAt = (atC: number | null, format: Format): string =>
  atC === null || atC === 20 ? '' : ` (${format.round.temperature(atC)})`

/** Without the metric beside it. */
const own = (said: string): string => said.replace(/ \([^)]*\)$/, '')

const amountText = ({ amount, by, atC }: ReadAmount, typed: Typed, format: Format): string =>
  asTyped(typed, 'measured') ??
  (by === 'mass' ? own(format.mass(amount)) : `${own(format.volume(amount))}${readAt(atC, format)}`)

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

const TOLD = { throw_away: 'to be thrown away', hold: 'not to be drunk yet', ask: 'a question is open' } as const

const notedText = ({ note, where, vessel, trouble, settled }: Noted): string =>
  [
    note === null ? '' : `“${note.replace(/[“”]/g, '"')}”`,
    where === null ? '' : isFreezer(where) ? 'in the freezer' : `place: ${where}`,
    vessel === null ? '' : `vessel: ${vessel}`,
    trouble === undefined ? '' : TOLD[trouble.verdict],
    settled === undefined ? '' : 'cleared up',
  ]
    .filter((part) => part !== '')
    .join(', ')

/** `fined with bentonite and racked off its lees`. */
export const filteredWords = ({ isRacked, fining }: Filtered): string =>
  `${fining === undefined ? '' : `fined with ${finingNames[fining]} and `}${isRacked === true ? 'racked off its lees' : 'filtered'}`

export const sweetsText = (sweetenings: FruitSugared['sweetenings'], format: Format, typed: Typed): string =>
  listed(sweeteningTexts(sweetenings, format, asTyped(typed, 'sugar')))

/** `poured back 230 ml that the sugared fruit gave`, with what else went in. */
function ofFruitText(
  { waterG, sweetenings }: Sweetened,
  { measured }: OfFruit,
  when: string,
  typed: Typed,
  format: Format,
): string {
  const more = ingredientsText({ plants: [], spirits: [], waterG, sweetenings }, format, typed)
  const much = measured === null ? 'what' : `${amountText(measured, [], format)} that`
  return `poured back ${much} the sugared fruit gave${more === '' ? '' : `, with ${more}`}${when}`
}

/** `230 ml from the sugared fruit`. */
export function fruitGaveText({ waterG, sweetenings }: Sweetened, { measured }: OfFruit, format: Format): string {
  const more = ingredientsText({ plants: [], spirits: [], waterG, sweetenings }, format)
  const much =
    measured === null ? 'what the sugared fruit gave' : `${amountText(measured, [], format)} from the sugared fruit`
  return `${much}${more === '' ? '' : `, with ${more},`}`
}

/** What stayed of a jar, or what a new one began with. */
function partedText({ kept, other, isNew }: Parted, when: string, format: Format): string {
  if (kept.value === 0) return `all poured into ${other}${when}`
  const share = `${format.plain(100 * kept.value, 0)} %`
  return isNew ? `poured out of ${other}${when}, ${share} of it` : `partly poured into ${other}${when}, ${share} stayed`
}

/** `9 December 2026`, or `18:00 on 9 December 2026`. */
export function untilText({ untilDay, untilMs, zone }: PutOffUntil, format: Format): string {
  const day = dayFromIso(untilDay)
  if (untilMs === null || zone === null) return format.day(day)
  const minutes = minutesAt(zone, untilMs)
  return format.moment(day, minutes, `${isoTime(minutes)} on ${dayText(day)}`)
}

/** What happened to a jar, after its name: `strained, 920 ml at 71 % vol`; `when`: ` on 9 December 2026`, or nothing. */
export function happeningText(happening: ToldHappening | HappeningEntry, format: Format, when = ''): string {
  const { typed = [] } = happening
  switch (happening.kind) {
    case 'started':
      return `started${when} with ${startText(happening, format)}${enzymeText(happening)}`
    case 'tasted':
      return tastedText(happening, when)
    case 'added':
      return `${ADDED_AS[happening.as ?? 'added']} ${addedText(happening, format, typed)}${when}`
    case 'strained':
      return strainedText(happening, when, typed, format)
    case 'filtered':
      return `${filteredWords(happening)}${when}${happening.measured === null ? '' : `, ${amountText(happening.measured, typed, format)} left`}`
    case 'measured':
      return `measured${when}, ${format.strength(happening.abvPercent)} and ${format.sweetness(happening.sugarGPerL)} of sugar`
    case 'fruit_sugared':
      return `put ${sweetsText(happening.sweetenings, format, typed)} on the strained fruit${when}`
    case 'sweetened':
      if (happening.ofFruit !== undefined) return ofFruitText(happening, happening.ofFruit, when, typed, format)
      return `sweetened with ${ingredientsText({ ...happening, plants: [], spirits: [] }, format, typed)}${when}`
    case 'taken_out':
      return `lifted out the ${listed(happening.plants.map(nameText))}${when}`
    case 'parted':
      return partedText(happening, when, format)
    case 'poured_in':
      return `poured in ${format.round[happening.liquid.by](happening.liquid.amount.value)} of ${happening.other}${when}`
    case 'noted':
      return `noted${when}, ${notedText(happening)}`
    case 'bottles_out':
      return `${bottlesText(happening.bottles, format)} ${happening.use === 'given' ? 'given away' : 'opened'}${when}`
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

/** Said by the line's beginning already. */
const SAID = new Set(['name', 'jar', 'when', 'entry'])

/** `spirit 1 l 95%`; of plants themselves alone. */
const optionText = (option: string, text: string): string =>
  option === 'of' ? text : `${option.replaceAll('-', ' ')} ${text}`

/** `10 lemons, spirit 1 l 95%`; a code's plants, and not the code. */
const typedText = (typed: HappeningEntry['typed']): string => {
  const plants = typed.filter(([option]) => option === 'of')
  const others = typed.filter(([option]) => option !== 'of' && (option !== 'from' || plants.length === 0))
  return [...plants, ...others]
    .filter(([option]) => !SAID.has(option))
    .map(([option, text]) => optionText(option, text))
    .join(', ')
}

function whatText(happening: HappeningEntry, format: Format): string {
  const { kind, typed } = happening
  if (kind !== 'started') return happeningText(happening, format)
  return typed.some(([option]) => !SAID.has(option)) ? `started: ${typedText(typed)}` : 'started'
}

/** From so many on they are counted. */
const MOST_DAYS = 5

/** `on 1, 2 and 4 Dec`, `13 times from 2 to 28 Dec`. */
function daysText(days: readonly IsoDay[], today: IsoDay, format: Format): string {
  const [first, last] = [days[0]!, days.at(-1)!]
  const short = (day: IsoDay) => shortDayWords(day, today, format)
  if (days.length > MOST_DAYS) return `${days.length} times from ${short(first)} to ${short(last)}`
  const words = days.map(short)
  const [month = null] = / \p{L}.*$/u.exec(words[0]!) ?? []
  return month !== null && words.every((word) => word.endsWith(month))
    ? `on ${listed(words.map((word) => word.slice(0, -month.length)))}${month}`
    : `on ${listed(words)}`
}

/** `spirit 800 ml 60% (was 700 ml 60%)`, `day 14 Jan (was 10 Jan)`. */
function changeText({ option, was, now }: EntrySaid['changes'][number], today: IsoDay, format: Format): string {
  const isDay = option === 'when'
  const said = (text: string): string => (isDay ? shortDayWords(text, today, format) : text)
  return `${isDay ? `day ${said(now)}` : optionText(option, now)}${was === null ? '' : ` (was ${said(was)})`}`
}

/** `strained, 930 ml at 78 % vol. Corrected: measured 930 ml (was 390 ml)`, `shaken on 1, 2 and 4 Dec`. */
export function entryText(
  { happening, days, changes, today }: EntrySaid & { readonly today: IsoDay },
  format: Format,
): string {
  const what = whatText(happening, format)
  const text = days.length > 1 ? `${what} ${daysText(days, today, format)}` : what
  if (changes.length === 0) return text
  return `${text}. Corrected: ${changes.map((change) => changeText(change, today, format)).join(', ')}`
}

/** `3 · 9 Dec`, `4–16`. */
export const entryNumber = ({ from, to, day, today }: EntryNumbers, format: Format): string =>
  `${from}${to === from ? '' : `–${to}`}${day === null ? '' : ` · ${shortDayWords(day, today, format)}`}`
