import type { CategoryId, Missing } from '../../../../core/label/category.ts'
import type { Region } from '../../../../core/label/parse-region.ts'
import type { Verdict } from '../../../../core/label/verdict.ts'
import type { Format } from '../../format.ts'
import { listed } from '../phrases.ts'

/** As they stand after “in”. */
export const regionNames: Readonly<Record<Region, string>> = {
  eu: 'the EU',
  us: 'the United States',
  uk: 'Great Britain',
}

/** A legal name with its article. */
export const categoryNames: Readonly<Record<CategoryId, string>> = {
  eu_spirit_drink: 'a spirit drink',
  eu_bitter: 'a bitter spirit drink',
  eu_liqueur: 'a liqueur',
  eu_creme_de: 'a crème de …',
  eu_creme_de_cassis: 'a crème de cassis',
  eu_nocino: 'a nocino',
  eu_sloe: 'a sloe spirit drink',
  us_liqueur: 'a liqueur or cordial',
  uk_liqueur: 'a liqueur',
  gi_sorrento: 'a Liquore di limone di Sorrento',
  gi_mirto: 'a Mirto di Sardegna',
  gi_genepi: 'a Genepì del Piemonte',
  gi_pacharan: 'a Pacharán Navarro',
}

/** Sugar as weighed that becomes this much invert sugar. */
const asTableSugar = (invertGPerL: number, format: Format): string => format.plain(invertGPerL * 0.95, 1)

const invert = (gPerL: number, format: Format): string =>
  `${format.plain(gPerL)} g/L as invert sugar (${asTableSugar(gPerL, format)} of table sugar)`

/** What a drink lacks in strength, sugar or spirit, in the order of the rule; empty where none of these. */
const missingWords = ({ category, leastInvertGPerL, missing }: Verdict, format: Format): string => {
  const percent = (value: number | null): string => `${format.plain(value ?? 0)} % vol`
  const words: Readonly<Partial<Record<Missing, string>>> = {
    stronger: `at least ${percent(category.abvPercent.least)}`,
    weaker: `at most ${percent(category.abvPercent.most)}`,
    sweeter:
      category.leastSugarMassPercent === null
        ? `at least ${invert(leastInvertGPerL ?? 0, format)}`
        : `at least ${format.plain(category.leastSugarMassPercent)} % of its weight as sugar`,
    drier: `at most ${invert(category.invertGPerL.most ?? 0, format)}`,
    cherry_spirit_only: 'all its alcohol from cherry spirit',
  }
  return listed(missing.flatMap((what) => words[what] ?? []))
}

/** The limits that a drink meets. */
const limitWords = ({ category, leastInvertGPerL }: Verdict, format: Format): string => {
  const { abvPercent, leastSugarMassPercent, invertGPerL } = category
  const least = [
    ...(abvPercent.least === null ? [] : [`${format.plain(abvPercent.least)} % vol`]),
    ...(leastInvertGPerL === null ? [] : [`${format.plain(leastInvertGPerL)} g/L`]),
    ...(leastSugarMassPercent === null ? [] : [`${format.plain(leastSugarMassPercent)} % of its weight as sugar`]),
  ]
  const most = invertGPerL.most === null ? '' : `, at most ${format.plain(invertGPerL.most)} g/L`
  return `at least ${listed(least)}${most}`
}

const days = ({ least, most }: { readonly least: number | null; readonly most: number | null }): string =>
  `${least ?? 0}${most === null ? ' days or more' : ` to ${most} days`}`

/** `at least 250 g of the fruit or plant a litre, steeped 2 days or more`. */
const jarWords = ({ category: { plantGPerL, steepDays } }: Verdict, format: Format): string => {
  const [least, most] = [format.plain(plantGPerL.least ?? 0), plantGPerL.most]
  const amount = most === null ? `at least ${least} g` : `${least} to ${format.plain(most)} g`
  return `${amount} of the fruit or plant a litre, steeped ${days(steepDays)}`
}

/** Whether a name may be used, and by which figures. */
export const verdictWords = (verdict: Verdict, format: Format): string => {
  const lacking = missingWords(verdict, format)
  const need = lacking === '' ? '' : `it would need ${lacking}`
  if (verdict.meets) return `yes: ${limitWords(verdict, format)}`
  if (!verdict.missing.includes('made_in_area')) return `no: ${need}`
  const fits = need === '' ? 'strength and sugar would fit' : need
  return `no: the name belongs to makers in its own area (${jarWords(verdict, format)}); ${fits}`
}
