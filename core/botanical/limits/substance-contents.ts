import type { PlantState } from '../botanical.ts'
import type { substances } from './substances.ts'

/**
 * What one gram of a plant holds, mg, at the upper end of what is told of it; spirit draws out all of it. No source was read
 * for these: they are from memory.
 */
export interface Content {
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
