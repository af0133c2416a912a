import { type Group, group, guess, usda } from './rows.ts'

// biome-ignore format: a table, a plant a row
export const nuts: readonly Group[] = [
  // Green nuts.
  group('nut', {}, {
    green_walnut: { title: 'Green (unripe) walnuts', en: 'green walnut+, unripe walnut+',
      it: 'noce verde, noci verdi, malli verdi, noce acerba, noci acerbe', latin: 'Juglans regia',
      state: 'fresh', months: [6, 7], holds: guess(0.86), exchange: [0.5, 1], kept: [0.3, 0.7], dose: [400, 800, 1200],
      days: [30, 40, 60, 120, 180, 365], spirit: [60, 96], pieces: { nut: [25, 35, 'common_practice'] },
      hazards: ['allergen_nuts', 'stain'],
      preparation: ['needle_goes_through', 'quarter_with_gloves_stains', 'nut_allergen_stays'] },
  }),
  // Kernels.
  group('nut', {
    state: 'dried', exchange: [0.9, 1], kept: [0.3, 0.7], dose: [100, 200, 300], days: [7, 14, 30, 45, 30, 30],
    daysByAnalogy: true, spirit: [40, 70],
  }, {
    almond_sweet: { title: 'Almonds, sweet', en: 'sweet almond+, almond+',
      it: 'mandorla, mandorle, mandorla dolce, mandorle dolci', latin: 'Prunus dulcis var. dulcis',
      holds: usda('12061', 0.0441, 'stays_in_kernel'), pieces: { nut: [1.2, 1.3, 'published'] },
      hazards: ['allergen_nuts', 'bitter_almond'], preparation: ['only_sweet_almonds', 'nut_allergen_stays'] },
    hazelnut: { title: 'Hazelnuts', en: 'hazelnut+, cobnut+, filbert+', it: 'nocciola, nocciole',
      latin: 'Corylus avellana',
      holds: usda('12120', 0.0531, 'stays_in_kernel'), pieces: { nut: [1.3, 1.4, 'published'] },
      hazards: ['allergen_nuts'], preparation: ['roast_and_crush', 'chill_and_filter_fat'] },
  }),
]
