import type {
  Botanical,
  BotanicalKind,
  LimitKey,
  NoSugars,
  PieceKind,
  PlantCut,
  PlantState,
  SourcedShare,
} from '../botanical.ts'
import type { HazardKey } from '../evidence/hazards.ts'
import type { Preparation } from '../evidence/preparation.ts'
import type { SourceKey } from '../evidence/sources.ts'
import type { Trust } from '../evidence/trust.ts'
import { type ExtractRange, extractOf, usualExtract } from './extract.ts'

type Pair = readonly [number, number]

export interface ShareEntry {
  readonly value: number
  readonly trust: Trust
  readonly sources: readonly SourceKey[]
  readonly ndb?: string
  readonly range?: Pair
  readonly proxyOf?: string
}

/**
 * A plant as its row and its group say it. Doses (min, typical, max in g per litre of steeping spirit), days (taste
 * from, usual from, usual to, latest, rest from, rest to) and strengths (% vol) are common practice unless they say
 * otherwise; the exchange of water and the liquid kept back (mL per g) are estimates. In `en` a `+` adds the plural.
 */
export interface CatalogueEntry {
  readonly id: string
  readonly kind: BotanicalKind
  readonly title: string
  readonly en: string
  readonly it: string
  readonly latin: string
  readonly state: PlantState
  readonly cut?: PlantCut
  readonly driedPerFresh?: readonly [number, Trust]
  readonly bulky?: boolean
  readonly monthsNorth?: readonly number[]
  readonly water: ShareEntry
  readonly sugars?: ShareEntry | NoSugars
  /** What of it dissolves beside those sugars; left out: as is usual of its kind. */
  readonly extract?: ExtractRange
  readonly exchange: Pair
  /** How doses, days and strengths are known, where they are no common practice. */
  readonly practice?: Trust
  readonly dose: readonly [number, number, number]
  readonly warnAbove?: readonly [number, Trust, LimitKey]
  readonly ceiling?: readonly [number, Trust, LimitKey]
  readonly days: readonly [number, number, number, number | null, number, number]
  readonly daysByAnalogy?: boolean
  readonly spirit: Pair
  readonly spiritTrust?: Trust
  readonly zest?: { readonly stripsG: Pair; readonly gratedG: Pair; readonly trust: Trust }
  readonly fruitG?: Pair
  readonly pieces?: { readonly [Key in PieceKind]?: readonly [number, number, Trust] }
  readonly kept: Pair
  readonly hazards?: readonly HazardKey[]
  readonly preparation: readonly Preparation[]
}

/** Zest per fruit is known to 40 %: zest-and-retention of the reference data, from USDA's weights and a cut of 1 mm. */
const ZEST_PLUS_MINUS_SHARE = 0.4

/** The English plural of the last word, where it is a regular one. */
const plural = (name: string): string => {
  if (name.endsWith('leaf')) return `${name.slice(0, -1)}ves`
  if (/[^aeiou]y$/.test(name)) return `${name.slice(0, -1)}ies`
  return /(?:s|x|z|ch|sh)$/.test(name) ? `${name}es` : `${name}s`
}

/** `lemon+, lime` is lemon, lemons, lime. */
const names = (text: string): readonly string[] =>
  text.split(', ').flatMap((name) => (name.endsWith('+') ? [name.slice(0, -1), plural(name.slice(0, -1))] : [name]))

const share = (entry: ShareEntry): SourcedShare => ({
  value: entry.value,
  trust: entry.trust,
  sources: entry.sources,
  ndb: entry.ndb ?? null,
  range: entry.range ?? null,
  proxyOf: entry.proxyOf ?? null,
})

const limit = (entry: readonly [number, Trust, LimitKey] | undefined) =>
  entry === undefined ? null : { gPerLSpirit: entry[0], trust: entry[1], key: entry[2] }

const piecesOf = ({ pieces = {} }: CatalogueEntry): Botanical['pieces'] =>
  (Object.keys(pieces) as PieceKind[]).flatMap((piece) => {
    const found = pieces[piece]
    return found === undefined ? [] : [{ piece, minG: found[0], maxG: found[1], trust: found[2] }]
  })

const timesOf = ({ days, daysByAnalogy, practice = 'common_practice' }: CatalogueEntry): Botanical['timesDays'] => {
  const [tasteFrom, usualMin, usualMax, latest, restMin, restMax] = days
  const byAnalogy = daysByAnalogy ?? false
  return { tasteFrom, usualMin, usualMax, latest, restMin, restMax, trust: practice, byAnalogy }
}

export const botanicalFrom = (entry: CatalogueEntry): Botanical => {
  const { id, kind, title, state, cut, driedPerFresh, dose, sugars = 'below_3_percent', zest } = entry
  const practice = entry.practice ?? 'common_practice'
  const counted = typeof sugars === 'string' ? 0 : sugars.value
  const [least, most] = extractOf(entry.extract ?? usualExtract(kind, state), entry.water.value, counted)
  return {
    id,
    kind,
    names: { title, en: names(entry.en), it: names(entry.it), latin: names(entry.latin) },
    form: { state, cut: cut ?? null },
    driedPerFresh: driedPerFresh === undefined ? null : { factor: driedPerFresh[0], trust: driedPerFresh[1] },
    bulky: entry.bulky ?? false,
    monthsNorth: entry.monthsNorth ?? null,
    waterFraction: share(entry.water),
    sugarsFraction: typeof sugars === 'string' ? null : share(sugars),
    noSugars: typeof sugars === 'string' ? sugars : null,
    extractFraction: { min: least, max: most, trust: 'estimated' },
    waterExchange: { min: entry.exchange[0], max: entry.exchange[1], trust: 'estimated' },
    dose: { minGPerL: dose[0], typicalGPerL: dose[1], maxGPerL: dose[2], trust: practice },
    warnAbove: limit(entry.warnAbove),
    ceiling: limit(entry.ceiling),
    timesDays: timesOf(entry),
    spiritPercent: { min: entry.spirit[0], max: entry.spirit[1], trust: entry.spiritTrust ?? practice },
    zestGPerFruit:
      zest === undefined
        ? null
        : { strips: zest.stripsG, grated: zest.gratedG, plusMinusShare: ZEST_PLUS_MINUS_SHARE, trust: zest.trust },
    fruitG: entry.fruitG ?? null,
    pieces: piecesOf(entry),
    retainedMlPerG: { min: entry.kept[0], max: entry.kept[1], trust: 'estimated' },
    hazards: entry.hazards ?? [],
    preparation: entry.preparation,
  }
}
