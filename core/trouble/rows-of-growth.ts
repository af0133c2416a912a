import { comesBackAllTheSame, everUnder, goesOnAllTheSame, maybeUnder, mayFerment, youngerThan } from './conditions.ts'
import { plants } from './conditions-of-plants.ts'
import { all, any, denied, likely, maybe, not, said, surely } from './logic.ts'
import { cause, danger, type SymptomRow } from './row.ts'

/** Strong enough that nothing lives in it, as far as is known. */
const strong = likely(not(everUnder(20)))

/** Gas of garlic or vegetables: botulism where it may be weak enough for that, and where it is not nobody knows what. */
const gasOfLowAcid = {
  weak_low_acid: all(plants('low_acid'), maybeUnder(20)),
  gas_low_acid: plants('low_acid'),
}

/** What grows, floats or gives off gas. */
export const growthRows = {
  mould: {
    asks: ['growth'],
    causes: {
      fruit_above: danger(1, said('growth'), 'pm', ['mould_press', 'keeping', 'practice']),
      film_yeast: danger(2, all(everUnder(15), maybe), 'p', ['film'], { leadsTo: 'skin_on_top' }),
      not_mould: cause(3, all(denied('growth'), strong), 'c', ['practice']),
    },
  },
  pink_orange_slime: {
    asks: ['growth'],
    causes: {
      growing: danger(1, said('growth'), 'p', ['slime']),
      dye: cause(2, all(denied('growth'), strong), 'm', ['memory'], { leadsTo: 'black_or_metal' }),
    },
  },
  skin_on_top: {
    asks: ['growth'],
    stops: { too_weak: everUnder(15), dairy: said('dairy') },
    causes: {
      fat: cause(1, all(likely(plants('fatty')), strong), 'c', ['practice'], { remedies: ['filter'] }),
      cream: danger(2, said('dairy'), 'p', ['hazards', 'keeping']),
      film_yeast: danger(3, everUnder(15), 'p', ['film']),
      mould: danger(4, said('growth'), 'p', ['mould_press'], { leadsTo: 'mould' }),
      pectin: cause(5, all(likely(plants('fruit')), strong), 'c', ['practice'], { remedies: ['strain', 'filter'] }),
    },
  },
  floating_bits: {
    asks: ['growth'],
    stops: { insects: said('many'), rotten: all(everUnder(20), said('rotten')) },
    causes: {
      light_fruit: cause(1, likely(not(plants('low_acid'))), 'c', ['practice'], { remedies: ['strain'] }),
      mould: danger(2, said('growth'), 'p', ['mould_press'], { leadsTo: 'mould' }),
      flies: cause(3, said('many'), 'm', ['memory'], { leadsTo: 'insects' }),
      crumbs: cause(4, maybe, 'm', ['memory'], { remedies: ['filter'] }),
    },
  },
  insects: {
    stops: { insects: any(said('many'), everUnder(20)) },
    causes: {
      few: cause(1, all(denied('many'), strong), 'm', ['memory'], { remedies: ['strain', 'filter'] }),
      many: danger(2, any(said('many'), everUnder(20)), 'm', ['memory']),
    },
  },
  hairs_or_spines: {
    asks: ['growth'],
    causes: {
      rosehip: cause(1, likely(plants('rosehip')), 'p', ['rosehip'], { remedies: ['filter'] }),
      prickly_pear: cause(2, likely(plants('prickly')), 'c', ['hazards'], { remedies: ['filter'] }),
      mould: danger(3, said('growth'), 'p', ['mould_press'], { leadsTo: 'mould' }),
    },
  },
  fermenting: {
    assumes: { fizz: true },
    stops: {
      vinegar: said('vinegar'),
      rotten: said('rotten'),
      ...gasOfLowAcid,
    },
    asks: ['burst', 'growth', 'dairy'],
    causes: {
      yeast: danger(1, any(mayFerment, goesOnAllTheSame), 'pm', ['keeping', 'emergency', 'memory'], {
        remedies: ['stronger', 'measure'],
      }),
      air: cause(2, all(likely(youngerThan(4)), not(mayFerment)), 'm', ['memory']),
      shaken: cause(3, not(mayFerment), 'm', ['memory']),
    },
  },
  pressure: {
    assumes: { fizz: true },
    stops: {
      vinegar: said('vinegar'),
      ...gasOfLowAcid,
      too_weak: everUnder(15),
    },
    asks: ['burst', 'growth', 'dairy'],
    // Air that grew warm does it too, once: source `cork`.
    strong: {
      assumes: {},
      asks: [],
      stops: {
        vinegar: surely(said('vinegar')),
        gas_low_acid: surely(plants('low_acid')),
      },
      waitsFor: 'recurs',
    },
    causes: {
      yeast: danger(1, any(mayFerment, comesBackAllTheSame), 'p', ['cork', 'keeping', 'emergency'], {
        leadsTo: 'fermenting',
        remedies: ['stronger'],
      }),
      warm_room: cause(2, not(mayFerment), 'p', ['cork']),
      low_acid: danger(3, all(plants('low_acid'), everUnder(20)), 'p', ['bot_ethanol', 'bot_pruno'], {
        leadsTo: 'garlic_or_vegetable',
      }),
    },
  },
  curdled: {
    stops: { dairy: said('dairy'), vinegar: said('vinegar') },
    doubts: ['dairy'],
    causes: {
      met_acid: cause(1, denied('dairy'), 'm', ['memory']),
      soured: danger(2, said('dairy'), 'p', ['hazards', 'keeping']),
    },
  },
  leaves_went_black: {
    stops: { rotten: any(said('rotten'), said('slime')) },
    asks: ['growth'],
    keeps: { id: 'dark_leaves', when: strong },
    causes: {
      air: cause(1, likely(plants('soft_herb', 'green')), 'p', ['basil', 'chloro'], { remedies: ['strain'] }),
      metal: danger(2, said('metal'), 'p', ['warwicker'], { leadsTo: 'black_or_metal' }),
      rot: danger(3, all(everUnder(20), maybe), 'm', ['memory']),
    },
  },
} as const satisfies Readonly<Record<string, SymptomRow>>
