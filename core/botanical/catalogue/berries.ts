import { type Group, group, memory, near, noted, paper, usda } from './rows.ts'

/*
 * A US cup (237 ml) of whole fruit, stones and all, as USDA's food tables have it among their household weights (SR, release 28;
 * from memory); loosely or closely filled it differs by a fifth.
 */

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
      daysByAnalogy: true, pieces: { cup: [144, 144, 'memory'], each: [7, 27, 'published'] }, hazards: ['pectin', 'allergen_generic'],
      preparation: ['hull_wash_dry'] },
    raspberry: { title: 'Raspberries', en: 'raspberry+', it: 'lampone, lamponi', latin: 'Rubus idaeus',
      months: [6, 9], holds: usda('09302', 0.8575, 0.0442), pieces: { cup: [123, 123, 'memory'], each: [1.9, 1.9, 'published'] },
      preparation: ['pick_over_not_crush'] },
    blackberry: { pieces: { cup: [144, 144, 'memory'] }, title: 'Blackberries', en: 'blackberry+, bramble+', it: 'mora, more, mora di rovo, more di rovo',
      latin: 'Rubus fruticosus',
      months: [7, 9], holds: usda('09042', 0.8815, 0.0488), preparation: ['pick_over_rinse_briefly', 'not_crush_hard'],
    },
    blueberry: { title: 'Blueberries / bilberries', en: 'blueberry+, bilberry+, whortleberry+',
      it: 'mirtillo, mirtilli, mirtillo nero, mirtilli neri', latin: 'Vaccinium corymbosum, Vaccinium myrtillus',
      months: [7, 9], holds: usda('09050', 0.8421, 0.0996), pieces: { cup: [148, 148, 'memory'], each: [1.4, 1.4, 'published'] },
      preparation: ['pick_over_wash_dry', 'prick_or_crush_lightly'] },
    cranberry: { pieces: { cup: [100, 100, 'memory'] }, title: 'Cranberries', en: 'cranberry+',
      it: 'mirtillo rosso americano, mirtilli rossi americani, ossicocco', latin: 'Vaccinium macrocarpon',
      months: [9, 11], holds: usda('09078', 0.8713, 0.0404), dose: [300, 500, 1000],
      hazards: ['cranberry_warfarin', 'pectin'], preparation: ['pick_over_wash_dry', 'halve_or_crush_lightly'] },
    blackcurrant: { pieces: { cup: [112, 112, 'memory'] }, title: 'Blackcurrants', en: 'blackcurrant+, black currant+, cassis', it: 'ribes nero, ribes neri',
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
  // Fresh berries, whole or pricked, from memory.
  group('berry', {
    practice: 'memory', state: 'fresh', exchange: [0.5, 1], kept: [0.3, 0.7], days: [7, 21, 30, 60, 60, 60],
    daysByAnalogy: true, spirit: [40, 60], hazards: ['pectin'],
  }, {
    redcurrant: { pieces: { cup: [112, 112, 'memory'] }, title: 'Redcurrants', en: 'redcurrant+, red currant+, whitecurrant+, white currant+',
      it: 'ribes rosso, ribes rossi, ribes bianco', latin: 'Ribes rubrum',
      months: [6, 8], holds: noted('09084', 0.84, 0.0737), dose: [400, 700, 1200],
      preparation: ['strip_from_stalks_crush'] },
    gooseberry: { title: 'Gooseberries', en: 'gooseberry+', it: 'uva spina, uve spine', latin: 'Ribes uva-crispa',
      months: [6, 8], holds: noted('09107', 0.879, 'not_found'), dose: [400, 700, 1000],
      pieces: { cup: [150, 150, 'memory'], each: [3, 10, 'memory'] }, preparation: ['top_tail_and_prick'] },
    lingonberry: { title: 'Lingonberries', en: 'lingonberry+, cowberry+', it: 'mirtillo rosso, mirtilli rossi',
      latin: 'Vaccinium vitis-idaea',
      months: [8, 10], holds: memory(0.86, { value: 0.055, trust: 'memory', sources: ['unverified'] }, [0.84, 0.88]),
      dose: [300, 500, 1000], hazards: ['pectin', 'foraging'],
      preparation: ['pick_over_wash_dry', 'prick_or_crush_lightly'] },
    mulberry: { pieces: { cup: [140, 140, 'memory'] }, title: 'Mulberries', en: 'mulberry+, black mulberry+', it: 'mora di gelso, more di gelso, gelso, gelsi',
      latin: 'Morus nigra, Morus alba',
      months: [6, 8], holds: noted('09190', 0.877, 0.081), dose: [400, 700, 1000],
      preparation: ['fully_ripe', 'pick_over_rinse_briefly'] },
    aronia: { title: 'Aronia berries', en: 'aronia berry+, aronia, chokeberry+, black chokeberry+',
      it: 'bacca di aronia, bacche di aronia', latin: 'Aronia melanocarpa',
      months: [8, 10], holds: memory(0.84, { value: 0.06, trust: 'memory', sources: ['unverified'] }, [0.8, 0.86]),
      dose: [300, 500, 800], preparation: ['pick_over_wash_dry', 'prick_or_freeze'] },
    sea_buckthorn: { title: 'Sea buckthorn berries', en: 'sea buckthorn, sea buckthorn berry+',
      it: 'olivello spinoso, bacca di olivello spinoso, bacche di olivello spinoso', latin: 'Hippophae rhamnoides',
      months: [8, 10], holds: memory(0.83, { value: 0.045, trust: 'memory', sources: ['unverified'] }, [0.8, 0.86]),
      dose: [300, 500, 800], hazards: ['foraging'], preparation: ['never_plain_buckthorn', 'oil_ring_no_fault'] },
    rosehip: { title: 'Rosehips', en: 'rosehip+, rose hip+',
      it: 'cinorrodo, cinorrodi, bacca di rosa canina, bacche di rosa canina, rosa canina', latin: 'Rosa canina',
      driedPerFresh: [1 / 3, 'memory'], months: [9, 11], holds: noted('35203', 0.587, 'below_3_percent'),
      dose: [200, 400, 700], days: [21, 40, 50, 60, 60, 60], pieces: { each: [1.5, 3, 'memory'] },
      hazards: ['foraging'], preparation: ['halve_scrape_hairs', 'strain_through_cloth'] },
  }),
]
