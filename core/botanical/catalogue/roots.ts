import { type Group, group, memory, noted, paper, usda } from './rows.ts'

// biome-ignore format: a table, a plant a row
export const roots: readonly Group[] = [
  // Fresh roots.
  group('root', { state: 'fresh', exchange: [0.8, 1], kept: [0.5, 0.9], daysByAnalogy: true, spirit: [40, 96] }, {
    ginger: { title: 'Ginger root', en: 'ginger+, ginger root+, fresh ginger',
      it: 'zenzero, zenzeri, zenzero fresco, radice di zenzero, radici di zenzero', latin: 'Zingiber officinale',
      driedPerFresh: [1 / 5, 'common_practice'], holds: usda('11216', 0.7889), dose: [50, 150, 400],
      days: [5, 14, 21, 30, 30, 30], daysByAnalogy: false, pieces: { thumb: [20, 30, 'common_practice'] },
      preparation: ['scrub_peel_slice'] },
    turmeric: { title: 'Turmeric root', en: 'turmeric+, turmeric root+, fresh turmeric',
      it: 'curcuma, curcume, radice di curcuma, radici di curcuma', latin: 'Curcuma longa',
      driedPerFresh: [1 / 5, 'common_practice'], holds: paper(['turmeric_2021'], 0.8), dose: [20, 50, 150],
      days: [3, 7, 14, 30, 30, 30], pieces: { finger: [10, 20, 'estimated'] }, hazards: ['turmeric_liver', 'bile'],
      preparation: ['scrub_slice_stains_yellow'] },
    horseradish: { title: 'Horseradish root', en: 'horseradish+, horseradish root+',
      it: 'rafano, rafani, cren, kren, barbaforte', latin: 'Armoracia rusticana',
      months: [10, 3], holds: memory(0.75), dose: [20, 60, 150], days: [0.5, 1, 3, 7, 14, 14], spirit: [40, 80],
      preparation: ['peel_slice_grating_sharper', 'open_window_stings_eyes'] },
  }),
  // Fresh roots, from memory.
  group('root', {}, {
    burdock: { title: 'Burdock root', en: 'burdock, burdock root+', it: 'bardana, radice di bardana, radici di bardana',
      latin: 'Arctium lappa',
      practice: 'memory', state: 'fresh', driedPerFresh: [1 / 5, 'memory'], months: [10, 3],
      holds: noted('11104', 0.801, 'below_3_percent'), exchange: [0.8, 1], kept: [0.5, 0.9], dose: [30, 80, 150],
      days: [7, 14, 21, 30, 30, 30], daysByAnalogy: true, spirit: [40, 60],
      hazards: ['burdock_double', 'asteraceae_allergy'], preparation: ['bought_root_scrub_slice'] },
  }),
  // Dried roots.
  group('root', { state: 'dried', exchange: [0.9, 1], kept: [0.8, 1.8], spirit: [40, 70] }, {
    liquorice_root: { title: 'Liquorice root', en: 'liquorice+, licorice+, liquorice root+, licorice root+',
      it: 'liquirizia, liquirizie, radice di liquirizia, radici di liquirizia', latin: 'Glycyrrhiza glabra',
      holds: memory(0.1), dose: [5, 10, 20], ceiling: [20, 'derived', 'liquorice'], days: [3, 7, 14, 30, 30, 30],
      daysByAnalogy: true, hazards: ['liquorice', 'pregnancy_breastfeeding'],
      preparation: ['cut_root_not_extract', 'not_blood_pressure_or_pregnancy'] },
    angelica_root: { title: 'Angelica root', en: 'angelica+, angelica root+, garden angelica',
      it: 'arcangelica, angeliche, radice di angelica, radici di angelica', latin: 'Angelica archangelica',
      holds: memory(0.1), dose: [2, 6, 20], days: [3, 10, 21, 30, 90, 90],
      hazards: ['angelica_furocoumarins', 'carrot_family', 'pregnancy_breastfeeding'],
      preparation: ['bought_dried_root', 'never_dig_hemlock'] },
  }),
  // Dried roots, from memory.
  group('root', { practice: 'memory', exchange: [0.9, 1], kept: [0.8, 1.8], daysByAnalogy: true }, {
    galangal: { title: 'Galangal', en: 'galangal+, galangal root+, dried galangal',
      it: 'galanga, galanghe, radice di galanga, radici di galanga', latin: 'Alpinia officinarum, Alpinia galanga',
      state: 'dried', holds: memory(0.1), dose: [5, 15, 40], days: [5, 10, 14, 21, 30, 30], spirit: [40, 70],
      preparation: ['buy_food_grade', 'crush_lightly'] },
    chicory_root: { title: 'Roasted chicory root',
      en: 'roasted chicory, roasted chicory root+, chicory root, chicory coffee',
      it: 'cicoria tostata, radice di cicoria, radici di cicoria', latin: 'Cichorium intybus',
      state: 'roasted', holds: memory(0.05, 'not_found'), dose: [20, 50, 100], days: [2, 5, 7, 10, 30, 30],
      spirit: [40, 60], hazards: ['asteraceae_allergy', 'bile'],
      preparation: ['natural_roast', 'taste_daily_strain_paper'] },
  }),
]
