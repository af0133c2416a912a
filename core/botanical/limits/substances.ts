import type { LimitKey } from '../botanical.ts'
import type { Trust } from '../evidence/trust.ts'

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
