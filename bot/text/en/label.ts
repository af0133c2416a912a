import { type Allergen, allergens } from '../../../core/label/allergens.ts'
import type { CategoryId, Missing } from '../../../core/label/category.ts'
import type { FiningId } from '../../../core/label/fining.ts'
import type { ForGuests } from '../../../core/label/for-guests.ts'
import type { GuestAdvice } from '../../../core/label/guest-advice.ts'
import type { Region } from '../../../core/label/parse-region.ts'
import type { LabelProblems } from '../../../core/label/problems.ts'
import type { Verdict } from '../../../core/label/verdict.ts'
import { lineTyped } from '../../calls/write-line.ts'
import type { Format } from '../format.ts'
import type { Feature, Written } from '../language.ts'
import type { FoundCategory, LabelMessages } from '../messages/label.ts'
import { listed } from './phrases.ts'
import { cited } from './serving.ts'
import { honeyWarning } from './sweeteners.ts'
import { countryInSentence, unknownName } from './words.ts'

/** As they stand on a label, after `Contains` or `May contain`. */
const allergenNames: Readonly<Record<Allergen, string>> = {
  peanut: 'peanut',
  walnut: 'walnut (a nut)',
  almond: 'almond (a nut)',
  hazelnut: 'hazelnut (a nut)',
  cashew: 'cashew (a nut)',
  pecan: 'pecan (a nut)',
  brazil_nut: 'Brazil nut (a nut)',
  pistachio: 'pistachio (a nut)',
  macadamia: 'macadamia (a nut)',
  nut: 'nuts',
  sesame: 'sesame',
  mustard: 'mustard',
  celery: 'celery',
  lupin: 'lupin',
  soya: 'soya',
  wheat: 'wheat (gluten)',
  rye: 'rye (gluten)',
  barley: 'barley (gluten)',
  oats: 'oats (gluten)',
  gluten: 'cereals with gluten',
  sulphites: 'sulphites (from dried fruit)',
  nut_traces: 'traces of nuts (from cocoa)',
  milk_traces: 'milk (from chocolate)',
  soya_traces: 'soya (from chocolate)',
  egg_fined: 'egg (used to clear it)',
  fish_fined: 'fish (used to clear it)',
  milk_fined: 'milk (used to clear it)',
  crustacean_fined: 'crustaceans (used to clear it)',
  cashew_family: 'pink pepper (kin to cashew and pistachio)',
  daisy_family: 'plants of the daisy family',
}

/** What a drink was cleared with. */
export const finingNames: Readonly<Record<FiningId, string>> = {
  egg_white: 'egg white',
  isinglass: 'isinglass',
  milk: 'milk',
  gelatine: 'gelatine',
  chitosan: 'chitosan',
  bentonite: 'bentonite',
  kieselsol: 'kieselsol',
  agar: 'agar',
}

/** As they stand after “in”. */
const regionNames: Readonly<Record<Region, string>> = {
  eu: 'the EU',
  us: 'the United States',
  uk: 'Great Britain',
}

/** A legal name with its article. */
const categoryNames: Readonly<Record<CategoryId, string>> = {
  eu_spirit_drink: 'a spirit drink',
  eu_bitter: 'a bitter spirit drink',
  eu_liqueur: 'a liqueur',
  eu_creme_de: 'a “crème de” liqueur',
  eu_creme_de_cassis: 'a crème de cassis',
  eu_nocino: 'a nocino',
  eu_sloe: 'a sloe-aromatised spirit drink',
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
    ...(missing.includes('made_in_area')
      ? {}
      : { plant_amount: `at least ${format.plain(category.plantGPerL.least ?? 0)} g of the fruit a litre` }),
    aniseed_flavour: 'natural aniseed flavour',
    whole_walnuts: 'mainly whole green walnuts, not cut ones',
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
const verdictWords = (verdict: Verdict, format: Format): string => {
  const lacking = missingWords(verdict, format)
  const need = lacking === '' ? '' : `it would need ${lacking}`
  if (verdict.meets) return `yes: ${limitWords(verdict, format)}`
  if (!verdict.missing.includes('made_in_area')) return `no: ${need}`
  const fits = need === '' ? 'strength and sugar would fit' : need
  return `no: the name belongs to makers in its own area (${jarWords(verdict, format)}), and ${fits}`
}

/** Short, for they stand on a bottle; the first words of liquorice are those of Regulation (EU) 1169/2011, Annex III. */
const ADVICE: Readonly<Record<GuestAdvice, string>> = {
  medicines: 'Can change how medicines work: if you take any, ask a pharmacist first.',
  warfarin: 'Cranberry: if you take warfarin, ask a doctor first.',
  honey_infant: honeyWarning,
  thujone: 'Contains thujone: not with epilepsy.',
  liquorice: 'Contains liquorice: people with high blood pressure should avoid excessive consumption.',
  quinine: 'Contains quinine: not with a heart rhythm disorder.',
  liver: 'Turmeric: not with liver disease.',
  gallstones: 'Not with gallstones.',
  caffeine: 'Contains caffeine.',
}

const sentence = (begins: string, of: readonly Allergen[]): readonly string[] =>
  of.length === 0 ? [] : [`${begins} ${listed(of.map((each) => allergenNames[each]))}.`]

/** `Contains hazelnut (a nut). May contain sulphites (from dried fruit).`; empty where there is none. */
export const allergenWords = (found: readonly Allergen[]): string =>
  [
    ...sentence(
      'Contains',
      found.filter((each) => allergens[each].is === 'certain'),
    ),
    ...sentence(
      'May contain',
      found.filter((each) => allergens[each].is === 'possible'),
    ),
  ].join(' ')

/** Of which plants nobody knows the allergens; empty where of none. */
export const strangerWords = (unknown: readonly string[]): string =>
  unknown.length === 0 ? '' : `Allergens of ${listed(unknown.map(unknownName))} not known.`

const joined = (...sentences: readonly string[]): string => sentences.filter((said) => said !== '').join(' ')

/** The allergens, and of which plants nobody knows theirs. */
export const allAllergenWords = ({ allergens, unknown }: Pick<ForGuests, 'allergens' | 'unknown'>): string =>
  joined(allergenWords(allergens), strangerWords(unknown))

/** A sentence for each, worst first; empty where there is none. */
export const adviceWords = (advice: readonly GuestAdvice[]): string => advice.map((each) => ADVICE[each]).join(' ')

/** All that this drink has to say to a guest; empty where that is nothing. */
export const guestWords = (of: ForGuests): string => joined(allAllergenWords(of), adviceWords(of.advice))

/** What every bottle with alcohol says. */
export const keepAwayWords = (): string => 'Not in pregnancy. Keep out of reach of children.'

/** The advice, and what every bottle with alcohol says. */
export const adviceAndKeepAway = ({ advice }: Pick<ForGuests, 'advice'>): string =>
  joined(adviceWords(advice), keepAwayWords())
const foundWords = ({ region, best }: FoundCategory): string =>
  best === null
    ? `no ${region === 'eu' ? 'spirit drink' : 'liqueur'} in ${regionNames[region]}`
    : `${categoryNames[best.category.id]} in ${regionNames[region]}`

/** What `/label` says. */
export const labelSentences = {
  headlines: {
    label: ({ abvPercent, sugarGPerL, found }, format) => {
      const sweet = sugarGPerL.value === 0 ? 'without sugar' : `with ${format.sweetness(sugarGPerL)} of sugar`
      return `At ${format.round.strength(abvPercent)} ${sweet} it’s ${listed(found.map(foundWords))}.`
    },
  },

  rows: {
    eu_spirit_drink: () => 'EU spirit drink',
    eu_bitter: () => 'EU bitter',
    eu_liqueur: () => 'EU liqueur',
    eu_creme_de: () => 'EU “crème de”',
    eu_creme_de_cassis: () => 'EU crème de cassis',
    eu_nocino: () => 'EU nocino',
    eu_sloe: () => 'EU sloe-aromatised',
    us_liqueur: () => 'US liqueur or cordial',
    uk_liqueur: () => 'GB liqueur',
    gi_sorrento: () => 'Limone di Sorrento',
    gi_mirto: () => 'Mirto di Sardegna',
    gi_genepi: () => 'Genepì del Piemonte',
    gi_pacharan: () => 'Pacharán Navarro',
    label_eu: () => 'EU label',
    label_us: () => 'US label',
    label_uk: () => 'GB label',
  },

  cells: {
    verdict: ({ verdict }, format) => `${verdictWords(verdict, format)}${cited(verdict.category)}`,
    /** What to print, and how far the truth may be from it. */
    printed: ({ region, labelPercent, tolerance }, format) => {
      const print =
        region === 'us' ? `${format.plain(labelPercent, 1)} % alc./vol.` : `${format.plain(labelPercent, 1)} % vol`
      const [low, high] = [labelPercent - tolerance.percent, labelPercent + tolerance.percent]
      const plants =
        tolerance.withPlantsPercent === null
          ? ''
          : ` (±${format.plain(tolerance.withPlantsPercent)} with macerated fruit or plant parts)`
      return `${print}, true from ${format.number(Math.max(0, low), 1)} to ${format.number(high, 1)}${plants}${cited(tolerance)}`
    },
  },

  sure: {
    as_invert: ({ invertGPerL, exact }, format) =>
      `Limits in g/L count sugar as invert sugar: ${exact ? `${format.number(invertGPerL.value, 1)} g/L` : format.sweetness(invertGPerL)} of it here.`,
    near_limit: (values, format) => {
      const words = values.near.map((what) =>
        what === 'strength'
          ? `strength (±${format.give.strength(values.abvPercent)})`
          : `sugar (±${format.give.sweetness(values.invertGPerL)})`,
      )
      return `Too near a limit to be sure: ${listed(words)}. Stay clear of it, or have it measured.`
    },
  },

  notes: {
    both_regions: ({ line }, format) =>
      `I’ve looked at the EU and the United States. For Great Britain: ${format.call(line)}`,
    own_region: ({ region, code }) =>
      `That’s for ${countryInSentence(code)}, from your /settings${region === 'eu' ? ': the law of the EU' : ''}.`,
    unknown_plant: ({ typed }) =>
      `I don’t know “${typed}”, so I went by the general rules. Check its allergens yourself.`,
    allergen_known: ({ typed }) =>
      `I don’t know how to steep “${typed}”, but I know what its label has to say. For the rest I went by the general rules.`,
    law_liquorice: ({ fromMgPerL, rootGPerL }, format) =>
      `Liquorice: over 1.2 % vol the words on blood pressure are due from ${format.plain(fromMgPerL)} mg of glycyrrhizinic acid in a litre.` +
      ` A rich root brings that with ${format.plain(rootGPerL, 1)} g a litre, so always write them (Regulation (EU) 1169/2011, Annex III, from memory).`,
    law_caffeine: ({ fromMgPerL }, format) =>
      `Caffeine: above ${format.plain(fromMgPerL)} mg in a litre a shop’s label says “High caffeine content. Not recommended for children or pregnant or breast-feeding women”.` +
      ' With coffee or tea in its name it’s let off. Tell your guests all the same (Regulation (EU) 1169/2011, Annex III, from memory).',
    law_sulphites: ({ fromMgPerL }, format) =>
      `Sulphites are named from ${format.plain(fromMgPerL)} mg in a litre, counted as sulphur dioxide (Regulation (EU) 1169/2011, Annex II, from memory). Fruit sold as unsulphured brings none: write “unsulphured” before it.`,
    lemon_name: () =>
      'In the EU “limoncello” is only a name for a lemon liqueur. The names of Sorrento and the Costa d’Amalfi are protected.',
    natural_only: () =>
      'In the EU a liqueur of this fruit may only have natural flavouring, which your fruit is (Regulation (EC) 110/2008).',
    eu_label_says: () =>
      'An EU label says: the legal name, the strength with one decimal at most (needed above 1.2 % vol: Regulation (EU) 1169/2011),' +
      ' the volume, the allergens, and who answers for it (the rest from memory).',
    us_label_says: () =>
      'A US label says: the class of drink, the strength, the volume, who made it, and the government’s health warning' +
      ' (from memory 27 CFR parts 5 and 16).',
    uk_label_says: () =>
      'For Great Britain I only know the liqueur rule and how far off the strength may be. I don’t know its other rules.',
  },

  cautions: {
    allergens: ({ allergens }) =>
      `Write on every bottle: “${allergenWords(allergens)}” Steeping doesn’t take allergens out.`,
    for_guests: (of) => `Write on every bottle${of.allergens.length === 0 ? '' : ' too'}: “${adviceAndKeepAway(of)}”`,
    not_for_sale: () =>
      'It’s for your own table. Selling it, raffling it or giving it for money needs a licence and paid duty nearly everywhere.' +
      ' Ask your local authority first.',
  },
} satisfies Feature<LabelMessages>

/** Why a label cannot be answered. */
export const labelProblems = {
  unknown_region: ({ typed }) => `I have no labelling rules for “${typed}”. Is it EU, US or UK?`,
  unknown_country_code: ({ typed, nearest }) =>
    nearest === null
      ? `I don’t know the country “${typed}”. What are its two letters? For example: ${lineTyped('settings', { country: 'IE' })}`
      : `I don’t know the country “${typed}”. Did you mean ${countryInSentence(nearest)}?`,
} satisfies Written<LabelProblems>
