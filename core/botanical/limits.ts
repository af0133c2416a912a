import type { Botanical, Limit, LimitKey, PlantState } from './botanical.ts'
import type { HazardKey } from './hazards.ts'
import { FINISHED_PER_SPIRIT } from './per-finished.ts'
import type { Trust } from './trust.ts'

/** A liqueur glass, mL. Common practice, no source. */
export const GLASS_ML = 40

/** Body weight that daily intakes are worked out for, kg: as BfR 26/2012 and EFSA do. */
const BODY_KG = 60

/** Milligrams in a litre of finished drink that put so many into one glass. */
const perGlass = (mg: number): number => (mg * 1000) / GLASS_ML

/** What a litre of FINISHED drink may hold of a substance, mg. */
interface Substance {
  readonly mgPerLFinished: number
  readonly trust: Trust
  /** Where the figure comes from. */
  readonly from: string
}

export const substances = {
  caffeine: {
    mgPerLFinished: perGlass(200),
    trust: 'memory',
    from: 'EFSA Journal 2015;13(5):4102 (from memory): 200 mg at once for an adult, all of it in one glass',
  },
  coumarin: {
    mgPerLFinished: 10,
    trust: 'published',
    from: 'Directive 88/388/EEC Annex II: 10 mg/kg in alcoholic drinks (repealed 2011; the law in force has no figure for them)',
  },
  thujone: {
    mgPerLFinished: 10,
    trust: 'published',
    from: 'Regulation (EC) 1334/2008 Annex III: 10 mg/kg in alcoholic drinks; the 35 mg/kg for Artemisia is not used up',
  },
  eugenol: {
    mgPerLFinished: perGlass(2.5 * BODY_KG),
    trust: 'memory',
    from: 'JECFA 1982 (from memory): 2.5 mg/kg a day, 150 mg for 60 kg, all of it in one glass',
  },
  anethole: {
    mgPerLFinished: 2000,
    trust: 'memory',
    from: 'Regulation (EU) 2019/787 (from memory): the strongest aniseed drinks hold 2 g/L; one glass then holds 80 mg, and JECFA 1998 (from memory) allows 2 mg/kg a day',
  },
  linalool: {
    mgPerLFinished: perGlass(0.5 * BODY_KG),
    trust: 'memory',
    from: 'JECFA 1979 (from memory): 0.5 mg/kg a day for linalool and its kin, 30 mg for 60 kg, all of it in one glass',
  },
  turmeric_liver: {
    mgPerLFinished: perGlass(180),
    trust: 'published',
    from: 'EFSA by ANSES 2022: 180 mg of curcumin a day for 60 kg, all of it in one glass',
  },
  angelica_furocoumarins: {
    mgPerLFinished: perGlass(15),
    trust: 'memory',
    from: 'DFG-SKLM 2004 (from memory): from about 15 mg at once a skin burns in the sun, all of it in one glass',
  },
} as const satisfies { readonly [Key in LimitKey]?: Substance }

/**
 * What one gram of a plant holds, mg, at the upper end of what is told of it; spirit draws out all of it. No source was read
 * for these: they are from memory.
 */
interface Content {
  readonly latin: string
  readonly state: PlantState
  readonly key: keyof typeof substances
  readonly mgPerG: number
  readonly from: string
}

export const contents: readonly Content[] = [
  {
    latin: 'Coffea arabica',
    state: 'roasted',
    key: 'caffeine',
    mgPerG: 16,
    from: 'a blend of half arabica (12 mg/g) and half robusta (20 mg/g); all of it robusta, the glass holds 250 mg',
  },
  { latin: 'Camellia sinensis', state: 'dried', key: 'caffeine', mgPerG: 35, from: '20 to 45 mg/g of leaf' },
  { latin: 'Ilex paraguariensis', state: 'dried', key: 'caffeine', mgPerG: 20, from: '10 to 20 mg/g of leaf' },
  { latin: 'Paullinia cupana', state: 'dried', key: 'caffeine', mgPerG: 60, from: '40 to 60 mg/g of seed' },
  { latin: 'Cola acuminata', state: 'dried', key: 'caffeine', mgPerG: 25, from: '15 to 25 mg/g of nut' },
  {
    latin: 'Cinnamomum verum',
    state: 'dried',
    key: 'coumarin',
    mgPerG: 0.3,
    from: 'most samples hold 0.01 mg/g, the richest of true Ceylon cinnamon 0.3',
  },
  {
    latin: 'Galium odoratum',
    state: 'dried',
    key: 'coumarin',
    mgPerG: 10,
    from: 'about 1 % of the wilted, dried herb',
  },
  { latin: 'Hierochloe odorata', state: 'dried', key: 'coumarin', mgPerG: 5, from: '0.2 to 0.5 % of the dried grass' },
  {
    latin: 'Artemisia vulgaris',
    state: 'dried',
    key: 'thujone',
    mgPerG: 2,
    from: 'up to 0.5 % oil, up to 40 % of it thujone',
  },
  {
    latin: 'Artemisia pontica',
    state: 'dried',
    key: 'thujone',
    mgPerG: 2,
    from: 'up to 0.5 % oil, up to 40 % of it thujone',
  },
  {
    latin: 'Artemisia abrotanum',
    state: 'dried',
    key: 'thujone',
    mgPerG: 2,
    from: 'taken as mugwort, of which more is known',
  },
  {
    latin: 'Syzygium aromaticum',
    state: 'dried',
    key: 'eugenol',
    mgPerG: 150,
    from: 'up to 18 % oil, 85 % of it eugenol',
  },
  { latin: 'Pimenta dioica', state: 'dried', key: 'eugenol', mgPerG: 36, from: 'up to 4.5 % oil, 80 % of it eugenol' },
  {
    latin: 'Illicium verum',
    state: 'dried',
    key: 'anethole',
    mgPerG: 70,
    from: 'up to 8 % oil, 90 % of it anethole',
  },
  {
    latin: 'Pimpinella anisum',
    state: 'dried',
    key: 'anethole',
    mgPerG: 27,
    from: 'up to 3 % oil, 90 % of it anethole',
  },
  {
    latin: 'Foeniculum vulgare',
    state: 'dried',
    key: 'anethole',
    mgPerG: 30,
    from: 'up to 5 % oil, 60 % of it anethole',
  },
  {
    latin: 'Lavandula angustifolia',
    state: 'dried',
    key: 'linalool',
    mgPerG: 14,
    from: 'about 2 % oil, 70 % of it linalool and linalyl acetate',
  },
  {
    latin: 'Curcuma longa',
    state: 'fresh',
    key: 'turmeric_liver',
    mgPerG: 12,
    from: 'up to 6 % curcumin in the dried root, which is a fifth of the fresh',
  },
  { latin: 'Curcuma longa', state: 'dried', key: 'turmeric_liver', mgPerG: 60, from: 'up to 6 % curcumin' },
  {
    latin: 'Angelica archangelica',
    state: 'dried',
    key: 'angelica_furocoumarins',
    mgPerG: 5,
    from: 'up to 0.5 % furocoumarins; amounts vary a lot, and none was found for an infusion',
  },
]

/** A limit that no content gives. */
interface Told {
  readonly latin: string
  readonly state: PlantState
  /** Only of the plants of that name that bring this: a sweet pepper is a chilli without its heat. */
  readonly hazard?: HazardKey
  readonly key: LimitKey
  /** More is refused; null where nothing supports a refusal. */
  readonly ceilingGPerLSpirit: number | null
  /** More is said to be more than is wise; null where the usual dose says enough. */
  readonly warnAboveGPerLSpirit: number | null
  readonly trust: Trust
  readonly from: string
}

export const told: readonly Told[] = [
  {
    latin: 'Artemisia genipi',
    state: 'dried',
    key: 'thujone',
    ceilingGPerLSpirit: 25,
    warnAboveGPerLSpirit: 20,
    trust: 'derived',
    from: 'The Piedmont product file asks for at least 7 g in a litre of finished drink. At 12.5 g a glass of the richest kind (10 mg/g, from memory) holds the 5.0 mg that EMA (2011) allows a day',
  },
  {
    latin: 'Hyssopus officinalis',
    state: 'fresh',
    key: 'thujone',
    ceilingGPerLSpirit: 30,
    warnAboveGPerLSpirit: null,
    trust: 'common_practice',
    from: 'Common practice, no source. Its pinocamphone acts on the nerves as thujone does (from memory), so the two add up',
  },
  {
    latin: 'Myristica fragrans',
    state: 'dried',
    key: 'nutmeg',
    ceilingGPerLSpirit: 1,
    warnAboveGPerLSpirit: null,
    trust: 'derived',
    from: 'As nutmeg: a fifth of the 5 g from which poisonings are reported (ALiEM/ACMT), in 20 glasses and more; mace holds as much myristicin (from memory)',
  },
  {
    latin: 'Capsicum annuum',
    state: 'fresh',
    hazard: 'capsaicin',
    key: 'capsaicin',
    ceilingGPerLSpirit: 160,
    warnAboveGPerLSpirit: 40,
    trust: 'common_practice',
    from: 'Common practice, no source: four times what is still wise burns mouth and stomach',
  },
  {
    latin: 'Capsicum annuum',
    state: 'dried',
    hazard: 'capsaicin',
    key: 'capsaicin',
    ceilingGPerLSpirit: 32,
    warnAboveGPerLSpirit: 8,
    trust: 'common_practice',
    from: 'As fresh chilli, of which a fifth is left when it is dried',
  },
  {
    latin: 'Salvia rosmarinus',
    state: 'fresh',
    key: 'camphor',
    ceilingGPerLSpirit: null,
    warnAboveGPerLSpirit: 40,
    trust: 'common_practice',
    from: 'Common practice, no source. EFSA 2008 (from memory) allows 2 mg of camphor per kg at once: that is a kilogram and more in a litre, so that no figure supports a refusal',
  },
]

/** An amount that can be weighed out: two digits, rounded down. */
const weighable = (gPerL: number): number => {
  const step = 10 ** (Math.floor(Math.log10(gPerL)) - 1)
  return Number((Math.floor(gPerL / step + 1e-9) * step).toPrecision(2))
}

/** Grams in a litre of steeping spirit, of which a litre of finished drink may hold half. */
export const gPerLSpiritOf = ({ key, mgPerG }: Pick<Content, 'key' | 'mgPerG'>): number =>
  weighable(substances[key].mgPerLFinished / mgPerG / FINISHED_PER_SPIRIT)

const isOf = ({ names, form }: Botanical, row: { readonly latin: string; readonly state: PlantState }): boolean =>
  names.latin.includes(row.latin) && form.state === row.state

/** What the two tables say of a plant; null where they say nothing. */
function limitsOf(botanical: Botanical): { readonly ceiling: Limit | null; readonly warnAbove: Limit | null } {
  const row = told.find((each) => {
    return isOf(botanical, each) && (each.hazard === undefined || botanical.hazards.includes(each.hazard))
  })
  if (row !== undefined) {
    const { key, trust, ceilingGPerLSpirit, warnAboveGPerLSpirit } = row
    const limit = (gPerLSpirit: number | null) => (gPerLSpirit === null ? null : { key, gPerLSpirit, trust })
    return { ceiling: limit(ceilingGPerLSpirit), warnAbove: limit(warnAboveGPerLSpirit) }
  }
  const content = contents.find((each) => isOf(botanical, each))
  if (content === undefined) return { ceiling: null, warnAbove: null }
  return { ceiling: { key: content.key, gPerLSpirit: gPerLSpiritOf(content), trust: 'derived' }, warnAbove: null }
}

/**
 * The plant with its limits: those of its own row count before those of the tables here.
 * Coffee, tea, spices and roots that are not here have none because no figure supports one at any dose that is drunk: cocoa
 * (2 mg/g of caffeine), mint (0.1 mg/g of pulegone beside 100 mg/L, Regulation (EC) 1334/2008 from memory), basil and
 * tarragon (estragole: no figure for alcoholic drinks in that law).
 */
export function withLimits(botanical: Botanical): Botanical {
  const { ceiling, warnAbove } = limitsOf(botanical)
  return { ...botanical, ceiling: botanical.ceiling ?? ceiling, warnAbove: botanical.warnAbove ?? warnAbove }
}
