import type { ForGuests } from '../../../../core/label/for-guests.ts'
import type { Region } from '../../../../core/label/parse-region.ts'
import type { Tolerance } from '../../../../core/label/strength-tolerance.ts'
import type { Verdict } from '../../../../core/label/verdict.ts'
import type { Measured } from '../../../../core/quantity/measured/measured.ts'
import type { Format } from '../../format.ts'
import { listed } from '../phrases.ts'
import { categoryNames, regionNames, verdictWords } from './category-words.ts'
import { countryInSentence } from './country-by-code.ts'
import { adviceAndKeepAway, allergenWords } from './guest-words.ts'
import { cited } from './source-names.ts'

interface Found {
  readonly region: Region
  readonly best: Verdict | null
}

const foundWords = ({ region, best }: Found): string =>
  best === null
    ? `no ${region === 'eu' ? 'spirit drink' : 'liqueur'} in ${regionNames[region]}`
    : `${categoryNames[best.category.id]} in ${regionNames[region]}`

/** What `/label` says. */
export const labelSentences = {
  headlines: {
    label: (
      values: {
        readonly abvPercent: Measured
        readonly invertGPerL: Measured
        /** To a tenth of a gram, for the limit is near. */
        readonly exact: boolean
        readonly found: readonly Found[]
      },
      format: Format,
    ) => {
      const sweet =
        values.invertGPerL.value === 0
          ? 'without sugar'
          : `with ${values.exact ? `${format.number(values.invertGPerL.value, 1)} g/L` : format.sweetness(values.invertGPerL)} of sugar, counted as invert sugar,`
      return `${format.strength(values.abvPercent)} ${sweet} makes ${listed(values.found.map(foundWords))}.`
    },
  },

  rows: {
    eu_spirit_drink: () => 'EU spirit drink',
    eu_bitter: () => 'EU bitter',
    eu_liqueur: () => 'EU liqueur',
    eu_creme_de: () => 'EU crème de …',
    eu_creme_de_cassis: () => 'EU crème de cassis',
    eu_nocino: () => 'EU nocino',
    eu_sloe: () => 'EU sloe spirit',
    us_liqueur: () => 'US liqueur or cordial',
    uk_liqueur: () => 'GB liqueur',
    gi_sorrento: () => 'Limone di Sorrento',
    gi_mirto: () => 'Mirto di Sardegna',
    gi_genepi: () => 'Genepì del Piemonte',
    gi_pacharan: () => 'Pacharán Navarro',
    label_eu: () => 'EU label',
    label_us: () => 'US label',
  },

  cells: {
    verdict: ({ verdict }: { readonly verdict: Verdict }, format: Format) =>
      `${verdictWords(verdict, format)}${cited(verdict.category)}`,
    /** What to print, and how far the truth may be from it. */
    printed: (
      {
        region,
        labelPercent,
        tolerance,
      }: { readonly region: Region; readonly labelPercent: number; readonly tolerance: Tolerance },
      format: Format,
    ) => {
      const print =
        region === 'us' ? `${format.plain(labelPercent, 1)} % alc./vol.` : `${format.plain(labelPercent, 1)} % vol`
      const [low, high] = [labelPercent - tolerance.percent, labelPercent + tolerance.percent]
      const plants =
        tolerance.withPlantsPercent === null
          ? ''
          : `; ±${format.plain(tolerance.withPlantsPercent)} with macerated fruit or plant parts`
      return `${print}, true from ${format.number(Math.max(0, low), 1)} to ${format.number(high, 1)}${plants}${cited(tolerance)}`
    },
  },

  sure: {
    near_limit: (
      values: {
        readonly near: readonly ('strength' | 'sugar')[]
        readonly abvPercent: Measured
        readonly invertGPerL: Measured
      },
      format: Format,
    ) => {
      const words = values.near.map((what) =>
        what === 'strength'
          ? `strength (±${format.give.strength(values.abvPercent)})`
          : `sugar (±${format.give.sweetness(values.invertGPerL)})`,
      )
      return `Too near a limit to be sure of: ${listed(words)}. Keep away from the edge, or have it measured.`
    },
  },

  notes: {
    both_regions: () => 'You named no region, so I looked at the EU and the United States; region:UK is known too.',
    own_region: ({ region, code }: { readonly region: Region; readonly code: string }) =>
      `You named no region, so I went by your country in /settings, ${countryInSentence(code)}${region === 'eu' ? ': the law of the EU' : ''}.`,
    unknown_plant: ({ typed }: { readonly typed: string }) =>
      `I don’t know “${typed}”, so I went by the general rules. I vouch for nothing it brings, allergens included.`,
    allergen_known: ({ typed }: { readonly typed: string }) =>
      `I don’t know how to steep “${typed}”, but I know what its label has to say. I went by the general rules, and vouch for nothing else it brings.`,
    law_liquorice: (
      { fromMgPerL, rootGPerL }: { readonly fromMgPerL: number; readonly rootGPerL: number },
      format: Format,
    ) =>
      `Liquorice: in a drink with more than 1.2 % vol the words on blood pressure are due from ${format.plain(fromMgPerL)} mg of glycyrrhizinic acid in a litre.` +
      ` Root that is rich in it brings that with ${format.plain(rootGPerL, 1)} g a litre, so write them always (Regulation (EU) 1169/2011, Annex III, from memory, please check).`,
    law_caffeine: ({ fromMgPerL }: { readonly fromMgPerL: number }, format: Format) =>
      `Caffeine: above ${format.plain(fromMgPerL)} mg in a litre a shop’s label says “High caffeine content. Not recommended for children or pregnant or breast-feeding women”.` +
      ' A drink with coffee or tea in its name is let off, but tell your guests all the same (Regulation (EU) 1169/2011, Annex III, from memory, please check).',
    law_sulphites: ({ fromMgPerL }: { readonly fromMgPerL: number }, format: Format) =>
      `Sulphites are named from ${format.plain(fromMgPerL)} mg in a litre, counted as sulphur dioxide (Regulation (EU) 1169/2011, Annex II, from memory, please check). Fruit sold as unsulphured brings none: write “unsulphured” before it.`,
    lemon_name: () =>
      '“Limoncello” is no category of its own in the EU, only a name for a lemon liqueur; the names of Sorrento and the Costa d’Amalfi are protected.',
    natural_only: () =>
      'In the EU a liqueur of this fruit may be flavoured with natural flavouring only; your fruit is that (Regulation (EC) 110/2008).',
    eu_label_says: () =>
      'An EU label says: the legal name, the strength with one decimal at most (needed above 1.2 % vol: Regulation (EU) 1169/2011),' +
      ' the volume, the allergens, and who answers for it (the rest from memory, please check).',
    us_label_says: () =>
      'A US label says: the class of drink, the strength, the volume, who made it, and the government’s health warning' +
      ' (from memory, please check 27 CFR parts 5 and 16).',
    uk_label_says: () =>
      'For Great Britain I have the liqueur rule only; what the label must say there, and how far its strength may be off, I have not looked up.',
  },

  cautions: {
    allergens: ({ allergens }: Pick<ForGuests, 'allergens'>) =>
      `Write on every bottle: “${allergenWords(allergens)}” Steeping doesn’t take allergens out.`,
    for_guests: (of: Pick<ForGuests, 'advice' | 'allergens'>) =>
      `Write on every bottle${of.allergens.length === 0 ? '' : ' too'}: “${adviceAndKeepAway(of)}”`,
    not_for_sale: () =>
      'Meant for your own table. Selling a bottle, raffling it or giving it for money needs a licence, and duty paid, nearly everywhere:' +
      ' ask your authority before you do.',
  },
}
