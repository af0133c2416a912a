import type { BotanicalKind, PieceKind, PlantCut, PlantState, Share } from '../../../../core/botanical/botanical.ts'
import { botanicalById } from '../../../../core/botanical/catalogue/catalogue.ts'
import type { SourceKey } from '../../../../core/botanical/evidence/sources.ts'
import type { Trust } from '../../../../core/botanical/evidence/trust.ts'
import type { Format } from '../../format.ts'
import { MONTHS } from '../day-text.ts'
import { listed } from '../phrases.ts'

const HOURS_PER_DAY = 24

export const kindNames: { readonly [Kind in BotanicalKind]: string } = {
  citrus: 'Citrus',
  berry: 'Berries',
  fruit: 'Fruit',
  vegetable: 'Vegetables',
  herb: 'Herbs',
  spice: 'Spices',
  root: 'Roots',
  bitter: 'Bitters',
  flower: 'Flowers',
  nut: 'Nuts',
  coffee_tea_cocoa: 'Coffee, tea',
  wood: 'Trees',
}

export const stateWords: { readonly [State in PlantState]: string } = {
  fresh: 'fresh',
  dried: 'dried',
  roasted: 'roasted',
  cured: 'cured',
}

export const cutWords: { readonly [Cut in PlantCut]: string } = {
  whole: 'whole',
  cracked: 'cracked',
  ground: 'ground',
}

/** One of what is counted. */
export const pieceWords: { readonly [Piece in PieceKind]: string } = {
  each: 'one',
  small: 'a small one',
  medium: 'a medium one',
  bean: 'a bean',
  berry: 'a berry',
  bunch: 'a bunch',
  clove: 'a clove',
  cone: 'a cone',
  finger: 'a finger',
  head: 'a head',
  leaf: 'a leaf',
  nut: 'a nut',
  pinch: 'a pinch',
  pod: 'a pod',
  sprig: 'a sprig',
  stalk: 'a stalk',
  star: 'a star',
  stick: 'a stick',
  teaspoon: 'a teaspoon',
  thumb: 'a thumb',
}

const trustWords: { readonly [Key in Trust]: string } = {
  published: '',
  derived: 'derived',
  common_practice: 'common practice',
  estimated: 'estimated',
  memory: 'from memory, please check',
  not_found: 'no source found',
}

/** ` (common practice)`; nothing where it is published. */
export const trusted = (trust: Trust): string => (trustWords[trust] === '' ? '' : ` (${trustWords[trust]})`)

const sourceNames: { readonly [Key in SourceKey]?: string } = {
  usda_sr: 'USDA',
  haciseferogullari_2012: 'J. Food Sci. Technol. 2012',
  myrtle_lipids: 'a study of the fruit’s fats',
  marakoglu_2005: 'J. Food Eng. 2005',
  ertugrul_2019: 'J. New Results Eng. Nat. Sci. 2019',
  turmeric_2021: 'J. Food Process Eng. 2021',
  ozcan_2017: 'J. Food Safety Food Qual. 2017',
}

/** `79 % (USDA, row 11216)`, `74 % (estimated after a like plant; USDA)`. */
export const shareText = ({ value, trust, sources, ndb, proxyOf }: Share, format: Format): string => {
  const names = sources.flatMap((key) => sourceNames[key] ?? [])
  const source = [listed(names), ndb === null ? '' : `row ${ndb}`].filter((part) => part !== '').join(', ')
  const how = proxyOf === null ? trustWords[trust] : `${trustWords[trust]} after a like plant`
  const said = [how, source].filter((part) => part !== '').join('; ')
  return `${format.plain(value * 100, value < 0.1 ? 1 : 0)} %${said === '' ? '' : ` (${said})`}`
}

/** `50 to 400`, or one number where both are the same. */
export const rangeText = (min: number, max: number, format: Format): string =>
  min === max ? format.plain(min) : `${format.plain(min)} to ${format.plain(max)}`

const isHours = (days: number): boolean => days > 0 && days < 1

const spanOf = (days: number, format: Format): string =>
  isHours(days)
    ? `${format.plain(days * HOURS_PER_DAY, 0)} hours`
    : `${format.plain(days, 1)} ${days === 1 ? 'day' : 'days'}`

/** `14 to 21 days`, `5 to 12 hours`, `12 hours to 2 days`. */
export const spanText = (min: number, max: number, format: Format): string => {
  if (min === max) return spanOf(max, format)
  if (isHours(min) !== isHours(max)) return `${spanOf(min, format)} to ${spanOf(max, format)}`
  const [low, high] = isHours(max) ? [min * HOURS_PER_DAY, max * HOURS_PER_DAY] : [min, max]
  const decimals = isHours(max) ? 0 : 1
  return `${format.plain(low, decimals)} to ${format.plain(high, decimals)} ${isHours(max) ? 'hours' : 'days'}`
}

/** The plant as a title; a form that is not its usual one is said. */
export const titleText = ({ id, state }: { readonly id: string; readonly state: PlantState }): string => {
  const { names, form } = botanicalById(id)
  return state === form.state ? names.title : `${names.title}, ${stateWords[state]}`
}

/** The first of its English names, by which it can be asked for: `lemon`, `green walnut`. */
export const shortName = (id: string): string => {
  const { names } = botanicalById(id)
  return names.en[0] ?? names.title
}

const after = (month: number): number => (month % 12) + 1
const before = (month: number): number => ((month + 10) % 12) + 1

/** `October to March`, `May`, `April and September to October`: runs of months, over the new year too. */
export const monthsText = (months: readonly number[]): string => {
  const starts = months.filter((month) => !months.includes(before(month)))
  const runs = starts.map((start) => {
    let end = start
    while (months.includes(after(end)) && after(end) !== start) end = after(end)
    return end === start ? `${MONTHS[start - 1]}` : `${MONTHS[start - 1]} to ${MONTHS[end - 1]}`
  })
  return runs.length === 0 ? 'all year' : listed(runs)
}

const HALF_YEAR = 6

/** The same season south of the equator. */
export const southern = (months: readonly number[]): readonly number[] =>
  months.map((month) => ((month - 1 + HALF_YEAR) % 12) + 1)
