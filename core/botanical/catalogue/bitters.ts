import { type Group, group, guess, like, memory } from './rows.ts'

// biome-ignore format: a table, a plant a row
export const bitters: readonly Group[] = [
  // Dried.
  group('bitter', { state: 'dried', bulky: true, exchange: [0.9, 1], kept: [0.8, 1.8], daysByAnalogy: true }, {
    gentian_root: { title: 'Gentian root', en: 'gentian+, gentian root+, yellow gentian',
      it: 'genziana, genziane, radice di genziana, radici di genziana, genziana maggiore', latin: 'Gentiana lutea',
      bulky: false, holds: guess(0.1), dose: [2, 5, 30], ceiling: [30, 'common_practice', 'bitterness'],
      days: [3, 10, 21, 30, 90, 90], daysByAnalogy: false, spirit: [40, 70], hazards: ['veratrum_confusion'],
      preparation: ['bought_dried_root', 'never_dig', 'very_bitter_start_low'] },
    wormwood: { title: 'Wormwood', en: 'wormwood+, absinthe wormwood, grand wormwood',
      it: 'assenzio, assenzi, assenzio maggiore, artemisia assenzio', latin: 'Artemisia absinthium',
      holds: memory(0.1), dose: [0.5, 1, 2], ceiling: [2, 'derived', 'thujone'], days: [0.2, 0.5, 2, 3, 90, 90],
      spirit: [40, 90], hazards: ['thujone', 'pregnancy_breastfeeding', 'asteraceae_allergy'],
      preparation: ['tiny_dose_only', 'buy_food_grade', 'not_pregnancy_or_epilepsy', 'never_wormwood_oil'] },
    genepi: { title: 'Genepi (alpine Artemisia)', en: 'genepi+, génépi, alpine wormwood',
      it: 'genepì, genepy, artemisia genepi', latin: 'Artemisia genipi, Artemisia umbelliformis',
      holds: guess(0.1), dose: [12, 16, 20], warnAbove: [20, 'common_practice', 'thujone'],
      days: [20, 30, 60, 60, 90, 90], spirit: [70, 90], spiritTrust: 'published',
      hazards: ['thujone', 'pregnancy_breastfeeding', 'protected_plant'], preparation: ['cultivated_only'] },
  }),
  // Fresh.
  group('bitter', {}, {
    artichoke_leaf: { title: 'Artichoke leaf', en: 'artichoke leaf+, artichoke+',
      it: 'foglia di carciofo, foglie di carciofo, carciofo, carciofi', latin: 'Cynara cardunculus, Cynara scolymus',
      state: 'fresh', driedPerFresh: [1 / 10, 'common_practice'], bulky: true, months: [3, 5],
      holds: like('artichoke heads NDB 11007 0.8494', 0.85), exchange: [0.8, 1], kept: [0.6, 1.1], dose: [50, 100, 200],
      days: [5, 10, 20, 30, 90, 90], daysByAnalogy: true, spirit: [40, 70], hazards: ['asteraceae_allergy', 'bile'],
      preparation: ['green_leaf_washed', 'not_with_gallstones'] },
  }),
]
