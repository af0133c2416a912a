import { type Group, group, near, paper, usda } from './rows.ts'

// biome-ignore format: a table, a plant a row
export const berries: readonly Group[] = [
  // Fresh berries, whole or pricked.
  group('berry', {
    state: 'fresh', exchange: [0.5, 1], kept: [0.3, 0.7], dose: [400, 700, 1200], days: [7, 21, 30, 90, 60, 60],
    spirit: [40, 80], hazards: ['pectin'],
  }, {
    strawberry: { title: 'Strawberries', en: 'strawberry+', it: 'fragola, fragole, fragolina, fragoline',
      latin: 'Fragaria ananassa, Fragaria x ananassa',
      months: [4, 6], holds: usda('09316', 0.9095, 0.0489), dose: [400, 600, 1000], days: [3, 7, 14, 30, 30, 60],
      daysByAnalogy: true, pieces: { each: [7, 27, 'published'] }, hazards: ['pectin', 'allergen_generic'],
      preparation: ['hull_wash_dry'] },
    raspberry: { title: 'Raspberries', en: 'raspberry+', it: 'lampone, lamponi', latin: 'Rubus idaeus',
      months: [6, 9], holds: usda('09302', 0.8575, 0.0442), pieces: { each: [1.9, 1.9, 'published'] },
      preparation: ['pick_over_not_crush'] },
    blackberry: { title: 'Blackberries', en: 'blackberry+, bramble+', it: 'mora, more, mora di rovo, more di rovo',
      latin: 'Rubus fruticosus',
      months: [7, 9], holds: usda('09042', 0.8815, 0.0488), preparation: ['pick_over_rinse_briefly', 'not_crush_hard'],
    },
    blueberry: { title: 'Blueberries / bilberries', en: 'blueberry+, bilberry+, whortleberry+',
      it: 'mirtillo, mirtilli, mirtillo nero, mirtilli neri', latin: 'Vaccinium corymbosum, Vaccinium myrtillus',
      months: [7, 9], holds: usda('09050', 0.8421, 0.0996), pieces: { each: [1.4, 1.4, 'published'] },
      preparation: ['pick_over_wash_dry', 'prick_or_crush_lightly'] },
    cranberry: { title: 'Cranberries', en: 'cranberry+',
      it: 'mirtillo rosso americano, mirtilli rossi americani, ossicocco', latin: 'Vaccinium macrocarpon',
      months: [9, 11], holds: usda('09078', 0.8713, 0.0404), dose: [300, 500, 1000],
      hazards: ['cranberry_warfarin', 'pectin'], preparation: ['pick_over_wash_dry', 'halve_or_crush_lightly'] },
    blackcurrant: { title: 'Blackcurrants', en: 'blackcurrant+, black currant+, cassis', it: 'ribes nero, ribes neri',
      latin: 'Ribes nigrum',
      months: [6, 8], holds: usda('09083', 0.8196, near(0.0737)), preparation: ['strip_from_stalks_crush'] },
    myrtle_berries: { title: 'Myrtle berries', en: 'myrtle berry+, myrtle',
      it: 'mirto, mirti, bacca di mirto, bacche di mirto', latin: 'Myrtus communis',
      months: [11, 1],
      holds: paper(['haciseferogullari_2012', 'myrtle_lipids'], 0.757, { value: 0.07, trust: 'estimated',
        sources: ['ozcan_2017', 'haciseferogullari_2012'], range: [0.04, 0.1] }, [0.72, 0.757]), dose: [300, 450, 700],
      days: [15, 30, 45, 240, 60, 90], daysByAnalogy: true, spirit: [40, 96], spiritTrust: 'published',
      pieces: { berry: [0.5, 1, 'estimated'] }, hazards: ['foraging'],
      preparation: ['remove_leaves_and_stalks', 'fully_ripe'] },
  }),
]
