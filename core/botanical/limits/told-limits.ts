import type { LimitKey, PlantState } from '../botanical.ts'
import type { HazardKey } from '../evidence/hazards.ts'
import type { Trust } from '../evidence/trust.ts'

/** A limit that no content gives. */
interface ToldLimit {
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

export const toldLimits: readonly ToldLimit[] = [
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
