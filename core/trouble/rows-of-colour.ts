import { everUnder, oddlySweetened, steepedOver } from './conditions.ts'
import { plants } from './conditions-of-plants.ts'
import { all, any, denied, likely, maybe, not, said } from './logic.ts'
import { cause, danger, type SymptomRow } from './row.ts'

/** Strong enough that nothing lives in it, as far as is known. */
const strong = likely(not(everUnder(20)))

/** What became of its colour. */
export const colourRows = {
  brown: {
    asks: ['growth', 'metal'],
    keeps: { id: 'colour', when: strong },
    causes: {
      chlorophyll: cause(1, likely(plants('green')), 'p', ['chloro']),
      oxidised: cause(2, likely(plants('pale')), 'c', ['practice']),
      light: cause(3, maybe, 'p', ['dugo', 'keeping']),
      brown_sugar: cause(4, oddlySweetened, 'p', ['solubility']),
      metal: danger(5, all(likely(plants('tannic')), said('metal')), 'p', ['warwicker'], { leadsTo: 'black_or_metal' }),
    },
  },
  faded: {
    stops: { cleaner: said('cleaner') },
    keeps: { id: 'colour', when: strong },
    causes: {
      red_breaks_down: cause(1, likely(plants('red')), 'p', ['molecules', 'keeping']),
      too_little_acid: cause(2, likely(plants('red')), 'm', ['memory']),
      bleach: danger(3, said('cleaner'), 'm', ['memory']),
    },
  },
  black_or_metal: {
    asks: ['metal'],
    causes: {
      iron: cause(1, likely(plants('tannic')), 'pm', ['warwicker', 'memory']),
      own_colour: cause(2, likely(plants('black')), 'c', ['practice']),
      copper: danger(3, said('metal'), 'p', ['metal', 'warwicker']),
      zinc: danger(4, said('metal'), 'p', ['metal']),
    },
  },
  fruit_went_pale: {
    asks: ['growth'],
    keeps: { id: 'spent', when: strong },
    causes: {
      spent: cause(1, maybe, 'c', ['peelwhite'], { remedies: ['strain'] }),
      fur: danger(2, said('growth'), 'p', ['mould_press'], { leadsTo: 'mould' }),
      shrivelled: cause(3, likely(steepedOver(60)), 'm', ['memory']),
    },
  },
  garlic_or_vegetable: {
    stops: { weak_low_acid: any(everUnder(20), said('oil')) },
    keeps: { id: 'blue_garlic', when: denied('oil') },
    causes: {
      botulism: danger(1, any(everUnder(20), said('oil')), 'pm', ['bot_ethanol', 'bot_pruno', 'memory']),
      blue_garlic: cause(2, likely(plants('garlic')), 'p', ['garlicblue']),
    },
  },
} as const satisfies Readonly<Record<string, SymptomRow>>
