import { type Group, group, guess, memory } from './rows.ts'

// biome-ignore format: a table, a plant a row
export const flowers: readonly Group[] = [
  // Dried flowers.
  group('flower', {
    state: 'dried', bulky: true, exchange: [0.9, 1], kept: [0.8, 1.8], daysByAnalogy: true, spirit: [40, 60],
  }, {
    chamomile: { title: 'Chamomile flowers', en: 'chamomile+, camomile+, chamomile flower+',
      it: 'camomilla, camomille, fiore di camomilla, fiori di camomilla', latin: 'Matricaria chamomilla',
      holds: memory(0.12), dose: [10, 20, 40], days: [2, 3, 7, 10, 14, 30], hazards: ['asteraceae_allergy'],
      preparation: ['buy_food_grade'] },
    lavender: { title: 'Lavender flowers', en: 'lavender+, lavender flower+, lavender bud+',
      it: 'lavanda, lavande, fiore di lavanda, fiori di lavanda', latin: 'Lavandula angustifolia',
      holds: guess(0.1), dose: [2, 5, 12], days: [1, 2, 5, 7, 30, 30], spirit: [40, 80],
      hazards: ['ornamental_flowers'], preparation: ['buy_food_grade', 'soapy_taste_daily'] },
    hibiscus: { title: 'Hibiscus (roselle) calyces', en: 'hibiscus+, hibiscus flower+, roselle+, sorrel flower+',
      it: 'ibisco, ibischi, karkadè, karkade, carcadè, carcade, fiori di ibisco', latin: 'Hibiscus sabdariffa',
      holds: memory(0.1), dose: [10, 30, 60], days: [0.5, 1, 3, 7, 14, 30],
      preparation: ['buy_food_grade', 'colour_within_hours'] },
  }),
  // Fresh flowers.
  group('flower', {
    state: 'fresh', bulky: true, exchange: [0.8, 1], kept: [0.6, 1.1], days: [1, 2, 4, 7, 14, 30], daysByAnalogy: true,
    spirit: [40, 60],
  }, {
    elderflower: { title: 'Elderflowers', en: 'elderflower+, elder flower+, elder blossom+',
      it: 'fiore di sambuco, fiori di sambuco', latin: 'Sambucus nigra',
      months: [5, 6], holds: guess(0.8), dose: [50, 100, 200], pieces: { head: [4, 6, 'common_practice'] },
      hazards: ['elder'], preparation: ['flowers_no_green_stalk', 'never_other_elder_parts', 'shake_out_insects'] },
    rose_petals: { title: 'Rose petals', en: 'rose petal+, rose+',
      it: 'petalo di rosa, petali di rosa, rosa, petali di rose', latin: 'Rosa',
      months: [5, 6], holds: guess(0.82), dose: [30, 80, 150], hazards: ['ornamental_flowers'],
      preparation: ['unsprayed_never_florist', 'cut_off_white_heel'] },
  }),
]
