import { everUnder, mayFerment, olderThan, stronger, sweeter } from './conditions.ts'
import { plants } from './conditions-of-plants.ts'
import { all, any, likely, maybe, not, notBought, said, surely } from './logic.ts'
import { cause, danger, type SymptomRow } from './row.ts'

const strong = likely(not(everUnder(20)))

/** What smells of nail varnish is neither fuel nor old oil; unasked where nobody says so. */
const noVarnish = likely(not(said('varnish')))

/** What it smells of. */
export const smellRows = {
  vinegar: {
    assumes: { vinegar: true },
    stops: { vinegar: everUnder(20) },
    causes: {
      bacteria: danger(1, everUnder(20), 'pm', ['aab_wine', 'memory']),
      old_lid: cause(2, not(everUnder(20)), 'm', ['memory']),
    },
  },
  solvent: {
    asks: ['not_for_drinking', 'fuel', 'varnish'],
    causes: {
      wrong_spirit: danger(1, notBought, 'p', ['fake_spirit', 'hazards'], { leadsTo: 'wrong_spirit' }),
      fuel: danger(2, all(said('fuel'), noVarnish), 'm', ['memory']),
      spoiling: danger(3, all(everUnder(20), said('varnish')), 'p', ['aab_wine']),
      // Bought as a drink, never weak, and not so strong that the nose smells nothing else.
      tainted: danger(
        4,
        all(said('varnish'), surely(all(said('bought'), not(everUnder(20)))), not(surely(stronger(60)))),
        'pm',
        ['fake_spirit', 'memory'],
        { leadsTo: 'wrong_spirit' },
      ),
      old_oil: cause(5, all(likely(plants('citrus')), strong, likely(olderThan(60)), noVarnish), 'p', [
        'lemonoil',
        'lemonshu',
        'dugo',
      ]),
      only_alcohol: cause(6, all(any(surely(stronger(60)), all(likely(stronger(60)), noVarnish)), strong), 'm', [
        'memory',
      ]),
    },
  },
  rotten_egg: {
    stops: {
      fizzed: said('fizz'),
      too_weak: everUnder(15),
      rotten: said('rotten'),
    },
    causes: {
      yeast: danger(1, all(mayFerment, likely(plants('fruit'))), 'p', ['h2s', 'keeping'], { leadsTo: 'fermenting' }),
      rot: danger(2, said('rotten'), 'm', ['memory']),
      sulphites: cause(3, likely(plants('dried_fruit')), 'pc', ['h2s', 'hazards']),
      garlic: cause(4, all(likely(plants('garlic')), strong), 'm', ['memory']),
      water_or_ring: cause(5, strong, 'mp', ['metal', 'h2s', 'memory']),
    },
  },
  musty: {
    asks: ['growth'],
    stops: { spoiled_fruit: said('spoiled') },
    causes: {
      cork: cause(1, strong, 'm', ['memory']),
      spoiled_fruit: danger(2, said('spoiled'), 'm', ['mould_press', 'memory']),
      mould: danger(3, said('growth'), 'p', ['mould_press'], { leadsTo: 'mould' }),
    },
  },
  hydrometer_odd: {
    asks: ['not_for_drinking'],
    causes: {
      sugar: cause(1, likely(sweeter(5)), 'p', ['core'], { remedies: ['measure'] }),
      wrong_scale: cause(2, maybe, 'p', ['core'], { remedies: ['measure'] }),
      temperature: cause(3, maybe, 'p', ['core'], { remedies: ['measure'] }),
      misread: cause(4, maybe, 'm', ['memory']),
      really_weak: danger(5, any(everUnder(20), notBought), 'dm', ['keeping', 'fake_spirit', 'memory'], {
        leadsTo: 'too_weak',
        remedies: ['measure'],
      }),
    },
  },
} as const satisfies Readonly<Record<string, SymptomRow>>
