import {
  canHaveSugar,
  canHaveSyrup,
  drier,
  everUnder,
  fell,
  mayFerment,
  mayFreeze,
  noRoom,
  oddlySweetened,
  restedUnder,
  steepedOver,
  steeping,
  stronger,
  sweeter,
  weaker,
} from './conditions.ts'
import { dosedOver, plants } from './conditions-of-plants.ts'
import { all, any, denied, likely, maybe, not, notBought, said } from './logic.ts'
import { cause, danger, type SymptomRow } from './row.ts'

/** Strong enough that nothing lives in it, as far as is known. */
const strong = likely(not(everUnder(20)))

/** Oil stays dissolved above this strength, and is out of it below: % vol. Source: `clouding`. */
const oilComesOut = all(likely(plants('oily')), likely(fell(50, 45)))

/** What is to be seen in the liquid itself. */
export const cloudRows = {
  cloudy_on_mixing: {
    asks: ['not_for_drinking'],
    keeps: { id: 'cloud', when: oilComesOut },
    causes: {
      oil: cause(1, oilComesOut, 'pc', ['clouding', 'cooley', 'treatise']),
      pectin: cause(2, likely(plants('pectin')), 'p', ['pectin_test', 'pectin_wine'], { remedies: ['filter'] }),
      plant_bits: cause(3, all(steeping, strong), 'c', ['practice'], { remedies: ['filter'] }),
      hot_syrup: cause(4, all(maybe, canHaveSyrup), 'cm', ['practice', 'memory']),
      hard_water: cause(5, not(likely(plants('oily'))), 'p', ['calcium', 'glass22', 'warwicker'], {
        remedies: ['filter'],
      }),
      yeast: danger(6, mayFerment, 'dm', ['keeping', 'memory'], { leadsTo: 'cloudy_later', remedies: ['stronger'] }),
      wrong_spirit: danger(7, notBought, 'm', ['memory'], { leadsTo: 'wrong_spirit' }),
    },
  },
  cloudy_in_cold: {
    keeps: { id: 'cloud', when: all(likely(plants('oily')), likely(not(mayFreeze))) },
    causes: {
      oil_falls_out: cause(1, maybe, 'c', ['clouding', 'practice'], { remedies: ['filter'] }),
      first_ice: cause(2, mayFreeze, 'd', ['core'], { leadsTo: 'frozen', remedies: ['stronger'] }),
      fat: cause(3, likely(plants('fatty')), 'c', ['practice'], { remedies: ['filter'] }),
    },
  },
  cloudy_later: {
    stops: {
      too_weak: everUnder(15),
      vinegar: said('vinegar'),
      fizzed: said('fizz'),
      rotten: said('rotten'),
    },
    causes: {
      settling: cause(1, all(likely(plants('fruit', 'tannic')), strong), 'c', ['practice', 'pectin_test'], {
        remedies: ['filter'],
      }),
      cold_or_weaker: cause(2, all(likely(plants('oily')), strong), 'c', ['clouding']),
      yeast: danger(3, mayFerment, 'pm', ['warwicker', 'keeping', 'memory'], { remedies: ['stronger'] }),
    },
  },
  oil_ring: {
    asks: ['fuel'],
    keeps: { id: 'oil_ring', when: likely(plants('oily', 'fatty')) },
    causes: {
      peel_oil: cause(
        1,
        all(
          likely(plants('citrus', 'anise')),
          likely(weaker(40)),
          likely(any(dosedOver(1.5, 'citrus', 'anise'), maybe)),
        ),
        'pc',
        ['treatise', 'cooley'],
      ),
      fat: cause(2, likely(plants('fatty')), 'cm', ['practice', 'memory'], { remedies: ['filter'] }),
      greasy_bottle: cause(3, maybe, 'm', ['memory']),
      fuel: danger(4, said('fuel'), 'm', ['memory'], { leadsTo: 'solvent' }),
    },
  },
  separated: {
    stops: { dairy: said('dairy') },
    causes: {
      unmixed_syrup: cause(1, all(canHaveSyrup, likely(restedUnder(2))), 'c', ['practice']),
      cream: danger(2, said('dairy'), 'm', ['memory'], { leadsTo: 'curdled' }),
      oil: cause(3, likely(plants('oily', 'fatty')), 'c', ['practice'], { leadsTo: 'oil_ring' }),
      too_much_sugar: cause(4, all(stronger(50), sweeter(500)), 'm', ['memory']),
    },
  },
  sediment: {
    asks: ['glass'],
    stops: { glass: any(said('glass'), said('hard')) },
    keeps: { id: 'sediment', when: strong },
    causes: {
      plant_matter: cause(1, likely(plants('fruit', 'long', 'tannic', 'citrus', 'fatty')), 'c', ['practice'], {
        remedies: ['filter'],
      }),
      hard_water: cause(2, maybe, 'p', ['calcium', 'glass22'], { remedies: ['filter'] }),
      sugar: cause(3, noRoom, 'd', ['core'], { leadsTo: 'crystals' }),
      odd_sugar: cause(4, oddlySweetened, 'm', ['memory'], { remedies: ['filter'] }),
      glass: danger(5, any(said('glass'), said('hard')), 'c', ['emergency'], { leadsTo: 'broken_glass' }),
      yeast: danger(6, mayFerment, 'dm', ['keeping', 'memory'], { leadsTo: 'fermenting', remedies: ['stronger'] }),
    },
  },
  gelled: {
    stops: {
      too_weak: all(said('slime'), everUnder(15)),
      rotten: said('rotten'),
    },
    keeps: { id: 'pectin', when: strong },
    causes: {
      pectin: cause(1, likely(plants('pectin')), 'p', ['pectin_test', 'pectin_wine'], {
        remedies: ['strain', 'filter'],
      }),
      mucilage: cause(2, all(plants('mucilage'), strong), 'm', ['memory'], { remedies: ['strain'] }),
      ropy: danger(3, all(everUnder(20), said('slime')), 'm', ['memory']),
    },
  },
  crystals: {
    asks: ['glass'],
    stops: { glass: any(said('glass'), said('hard')) },
    keeps: { id: 'sugar', when: denied('hard') },
    causes: {
      too_much_sugar: cause(1, likely(noRoom), 'dm', ['core', 'solubility', 'memory'], { remedies: ['less_sweet'] }),
      never_dissolved: cause(2, all(canHaveSugar, likely(any(stronger(60), steepedOver(60)))), 'c', ['practice'], {
        leadsTo: 'sugar_not_dissolving',
      }),
      anethole: cause(3, likely(plants('anise')), 'm', ['memory']),
      hard_water: cause(4, maybe, 'p', ['calcium'], { remedies: ['filter'] }),
      glass: danger(5, any(said('glass'), said('hard')), 'c', ['emergency'], { leadsTo: 'broken_glass' }),
    },
  },
  frozen: {
    asks: ['glass'],
    keeps: { id: 'ice', when: denied('glass') },
    causes: {
      too_weak: cause(1, likely(mayFreeze), 'd', ['core'], { remedies: ['stronger'] }),
      too_full: cause(2, maybe, 'm', ['memory']),
      cracked: danger(3, said('glass'), 'c', ['emergency'], { leadsTo: 'broken_glass' }),
    },
  },
  stuck_filter: {
    causes: {
      pulp: cause(1, likely(plants('fruit', 'pectin')), 'c', ['practice']),
      sugar_in: cause(2, sweeter(100), 'c', ['practice']),
      fat: cause(3, likely(plants('fatty', 'citrus')), 'c', ['practice']),
    },
  },
  sugar_not_dissolving: {
    causes: {
      too_strong: cause(1, likely(any(stronger(60), steepedOver(60))), 'pm', ['solubility', 'memory'], {}),
      no_room: cause(2, noRoom, 'd', ['core', 'solubility'], { leadsTo: 'crystals', remedies: ['less_sweet'] }),
      coarse: cause(3, all(canHaveSugar, likely(not(drier(1)))), 'c', ['practice']),
    },
  },
} as const satisfies Readonly<Record<string, SymptomRow>>
