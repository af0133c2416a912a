import type { Botanical, BotanicalKind, Limit } from '../../../../core/botanical/botanical.ts'
import type { Format } from '../../format.ts'
import {
  cutWords,
  kindNames,
  monthsText,
  pieceWords,
  rangeText,
  shareText,
  shortName,
  southern,
  spanText,
  stateWords,
  trusted,
} from './botanical-words.ts'

type KindRows = { readonly [Kind in BotanicalKind as `botanical_kind_${Kind}`]: () => string }

const kindRows: KindRows = {
  botanical_kind_citrus: () => kindNames.citrus,
  botanical_kind_berry: () => kindNames.berry,
  botanical_kind_fruit: () => kindNames.fruit,
  botanical_kind_vegetable: () => kindNames.vegetable,
  botanical_kind_herb: () => kindNames.herb,
  botanical_kind_spice: () => kindNames.spice,
  botanical_kind_root: () => kindNames.root,
  botanical_kind_bitter: () => kindNames.bitter,
  botanical_kind_flower: () => kindNames.flower,
  botanical_kind_nut: () => kindNames.nut,
  botanical_kind_coffee_tea_cocoa: () => kindNames.coffee_tea_cocoa,
  botanical_kind_wood: () => kindNames.wood,
}

/** Labels of the rows of `/botanical`. */
export const botanicalRows = {
  ...kindRows,
  botanical_latin: () => 'Latin name',
  botanical_form: () => 'Form',
  botanical_spirit: () => 'Spirit',
  botanical_taste: () => 'Taste from',
  botanical_usual: () => 'Usual steep',
  botanical_latest: () => 'Strain by',
  botanical_rest: () => 'Rest after',
  botanical_water: () => 'Water in it',
  botanical_sugars: () => 'Sugars in it',
  botanical_zest: () => 'Zest of one fruit',
  botanical_pieces: () => 'One weighs',
  botanical_kept: () => 'Keeps back',
  botanical_season: () => 'Season',
  botanical_limit: () => 'Limit',
  botanical_wise: () => 'Wise limit',
}

const perLitre = (limit: Limit, format: Format): string =>
  `${format.plain(limit.gPerLSpirit, 2)} g in a litre of spirit`

/** Cells of the rows of `/botanical`. */
export const botanicalCells = {
  botanical_names: ({ ids }: { readonly ids: readonly string[] }) =>
    ids
      .map(shortName)
      .toSorted((one, other) => one.localeCompare(other, 'en'))
      .join(', '),
  botanical_latin: ({ latin }: { readonly latin: readonly string[] }) => latin.join(', '),
  botanical_form: (
    { form, bulky, driedPerFresh }: Pick<Botanical, 'form' | 'bulky' | 'driedPerFresh'>,
    format: Format,
  ) => {
    const cut = form.cut === null ? '' : `, ${cutWords[form.cut]}`
    const wide = bulky ? '; bulky: a wide jar, and press it under' : ''
    const dried =
      driedPerFresh === null
        ? ''
        : `; 1 g dried stands for ${format.plain(1 / driedPerFresh.factor, 1)} g${trusted(driedPerFresh.trust)}`
    return `${stateWords[form.state]}${cut}${wide}${dried}`
  },
  botanical_spirit: ({ min, max, trust }: Botanical['spiritPercent'], format: Format) =>
    `${rangeText(min, max, format)} % vol${trusted(trust)}`,
  botanical_taste: ({ fromDays }: { readonly fromDays: number }, format: Format) =>
    spanText(fromDays, fromDays, format),
  botanical_span: (
    { minDays, maxDays, trust }: { readonly minDays: number; readonly maxDays: number; readonly trust: Limit['trust'] },
    format: Format,
  ) => `${spanText(minDays, maxDays, format)}${trusted(trust)}`,
  botanical_latest: ({ latestDays }: { readonly latestDays: number | null }, format: Format) =>
    latestDays === null ? 'no harm known from leaving it longer' : spanText(latestDays, latestDays, format),
  botanical_share: ({ share }: { readonly share: Botanical['waterFraction'] }, format: Format) =>
    shareText(share, format),
  botanical_zest: ({ zest }: { readonly zest: NonNullable<Botanical['zestGPerFruit']> }, format: Format) => {
    const [strips, grated] = [rangeText(...zest.strips, format), rangeText(...zest.grated, format)]
    const spread = `±${format.plain(zest.plusMinusShare * 100, 0)} % from fruit to fruit`
    return `${strips} g in strips, ${grated} g grated, ${spread}${trusted(zest.trust)}`
  },
  botanical_pieces: ({ pieces }: Pick<Botanical, 'pieces'>, format: Format) =>
    pieces
      .map(({ piece, minG, maxG, trust }) => `${pieceWords[piece]} ${rangeText(minG, maxG, format)} g${trusted(trust)}`)
      .join(', '),
  botanical_kept: ({ min, max, trust }: Botanical['retainedMlPerG'], format: Format) =>
    `${rangeText(min, max, format)} ml of liquid for each gram${trusted(trust)}`,
  botanical_season: ({ months }: { readonly months: readonly number[] | null }) =>
    months === null
      ? 'all year'
      : `${monthsText(months)} in the north (common practice); ${monthsText(southern(months))} in the south (shifted six months, derived)`,
  botanical_limit: ({ limit, dried }: { readonly limit: Limit; readonly dried: Limit | null }, format: Format) => {
    const other = dried === null ? '' : ` (${format.plain(dried.gPerLSpirit, 2)} g if dried)`
    return `at most ${perLitre(limit, format)}${other}, and half of that in a litre of finished drink${trusted(limit.trust)}`
  },
  botanical_wise: ({ limit }: { readonly limit: Limit }, format: Format) =>
    `more than ${perLitre(limit, format)} is unwise${trusted(limit.trust)}`,
}
