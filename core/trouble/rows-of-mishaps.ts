import { everUnder, mayFerment, olderThan, steepedDaysOver, steepedOver } from './conditions.ts'
import { plants, tooLong } from './conditions-of-plants.ts'
import { all, always, any, denied, likely, maybe, not, notBought, said } from './logic.ts'
import { cause, danger, type SymptomRow } from './row.ts'

const strong = likely(not(everUnder(20)))

/** What happened to it, and what may be in it. */
export const mishapRows = {
  spilled_or_burnt: {
    stops: { burnt: said('burnt') },
    causes: {
      vapour: danger(1, always, 'p', ['fire', 'emergency']),
      spilled: danger(2, always, 'm', ['emergency', 'memory']),
    },
  },
  someone_ill: {
    assumes: { ill: true },
    causes: {
      poison: danger(1, always, 'p', ['emergency']),
    },
  },
  wrong_spirit: {
    doubts: ['bought'],
    asks: ['not_for_drinking'],
    causes: {
      denatured: danger(1, notBought, 'pm', ['hazards', 'fake_spirit', 'emergency', 'memory']),
      other_spirit: cause(2, said('bought'), 'd', ['core'], { remedies: ['correct'] }),
    },
  },
  unknown_plant: {
    doubts: ['sure'],
    asks: ['plant_unsure'],
    causes: {
      look_alike: danger(1, denied('sure'), 'pm', ['hazards', 'emergency', 'memory']),
      right_plant: cause(2, said('sure'), 'p', ['hazards']),
    },
  },
  cracked_stones: {
    doubts: ['stones'],
    asks: ['kernels'],
    causes: {
      cracked: danger(1, said('stones'), 'pc', ['hazards', 'kernel_study']),
      split: cause(2, denied('stones'), 'm', ['hazards', 'memory'], { remedies: ['strain'] }),
      whole_long: cause(3, all(denied('stones'), likely(steepedDaysOver(90))), 'pc', ['hazards'], {
        remedies: ['strain'],
      }),
    },
  },
  broken_glass: {
    asks: ['glass'],
    causes: {
      splinters: danger(1, said('glass'), 'c', ['emergency']),
      old_scratch: cause(2, denied('glass'), 'm', ['memory']),
    },
  },
  lead_crystal: {
    asks: ['metal'],
    causes: {
      lead: danger(1, said('metal'), 'pc', ['lead']),
      safe_glass: cause(2, denied('metal'), 'm', ['memory']),
    },
  },
  left_in_sun: {
    stops: { dairy: said('dairy'), fizzed: said('fizz') },
    causes: {
      light_and_warmth: cause(1, strong, 'p', ['dugo', 'lemonoil']),
      hot_jar: danger(2, maybe, 'm', ['fire', 'memory']),
      fermenting: danger(3, mayFerment, 'd', ['keeping'], { leadsTo: 'fermenting', remedies: ['stronger'] }),
      dairy: danger(4, said('dairy'), 'p', ['hazards']),
      plastic: danger(5, said('plastic'), 'm', ['plastic', 'memory'], { leadsTo: 'plastic_taste' }),
    },
  },
  forgotten: {
    asks: ['growth', 'dairy', 'weak_low_acid'],
    stops: { contents_unknown: denied('known'), rotten: all(everUnder(20), said('rotten')) },
    keeps: { id: 'age', when: likely(not(everUnder(25))) },
    causes: {
      over_steeped: cause(
        1,
        all(likely(steepedOver(25)), likely(any(tooLong(), olderThan(60)))),
        'c',
        ['practice', 'keeping'],
        {
          remedies: ['strain'],
        },
      ),
      stone_fruit: cause(2, likely(plants('stone')), 'pc', ['hazards'], {
        leadsTo: 'cracked_stones',
        remedies: ['strain'],
      }),
      nobody_knows: danger(3, denied('known'), 'm', ['memory']),
      weak: danger(4, any(everUnder(20), mayFerment), 'd', ['keeping'], { remedies: ['stronger'] }),
      dairy_garlic: danger(5, any(said('dairy'), all(plants('low_acid'), everUnder(20))), 'p', [
        'hazards',
        'bot_ethanol',
      ]),
    },
  },
  leaking_lid: {
    asks: ['glass'],
    causes: {
      worn_ring: cause(1, maybe, 'c', ['practice'], { remedies: ['measure'] }),
      gas: danger(2, all(mayFerment, said('fizz')), 'p', ['cork'], { leadsTo: 'pressure' }),
      heat_or_frost: cause(3, maybe, 'p', ['cork']),
      cracked: danger(4, said('glass'), 'c', ['emergency'], { leadsTo: 'broken_glass' }),
    },
  },
} as const satisfies Readonly<Record<string, SymptomRow>>
