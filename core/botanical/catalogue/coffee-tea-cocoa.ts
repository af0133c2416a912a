import { type Group, group, like, memory, noted, usda } from './rows.ts'

// biome-ignore format: a table, a plant a row
export const coffeeTeaCocoa: readonly Group[] = [
  // Coffee.
  group('coffee_tea_cocoa', { state: 'roasted', exchange: [0.9, 1], spirit: [40, 96], hazards: ['caffeine'] }, {
    coffee_whole: { title: 'Coffee beans, whole',
      en: 'coffee bean+, whole coffee bean+, whole bean coffee, espresso bean+',
      it: 'chicco di caffè, chicchi di caffè, chicchi di caffe, caffè in grani, caffe in grani',
      latin: 'Coffea arabica, Coffea canephora',
      cut: 'whole', holds: memory(0.03, undefined, [0.01, 0.05]), extract: [0.05, 0.18], kept: [0.5, 1],
      dose: [100, 125, 400],
      days: [14, 21, 28, 30, 14, 30], pieces: { bean: [0.12, 0.15, 'estimated'] },
      preparation: ['leave_beans_whole', 'natural_roast', 'steep_cold'] },
    coffee_cracked: { title: 'Coffee beans, cracked', en: 'cracked coffee, cracked coffee bean+, crushed coffee beans',
      it: 'caffè spezzato, caffe spezzato, chicchi di caffè spezzati, chicchi di caffe spezzati, caffè pestato',
      latin: 'Coffea arabica, Coffea canephora',
      cut: 'cracked', holds: memory(0.03, undefined, [0.01, 0.05]), extract: [0.1, 0.22], kept: [1, 1.6],
      dose: [50, 90, 400],
      days: [3, 5, 10, 21, 14, 30], preparation: ['crack_not_grind', 'natural_roast', 'steep_cold_taste_daily'] },
    coffee_ground: { title: 'Coffee, ground', en: 'ground coffee, coffee grounds, coffee powder, ground coffee beans',
      it: 'caffè macinato, caffe macinato, polvere di caffè', latin: 'Coffea arabica, Coffea canephora',
      cut: 'ground', holds: memory(0.03, undefined, [0.01, 0.05]), extract: [0.15, 0.28], kept: [2, 2.5],
      dose: [40, 100, 200], days: [0.5, 1, 2, 4, 14, 30],
      preparation: ['grind_coarse', 'natural_roast', 'taste_after_hours_strain_paper'] },
  }),
  // Cocoa.
  group('coffee_tea_cocoa', {}, {
    cocoa_nibs: { title: 'Cocoa nibs, roasted', en: 'cocoa nib+, cacao nib+, cocoa bean+, cacao bean+',
      it: 'fava di cacao, fave di cacao, granella di cacao', latin: 'Theobroma cacao',
      state: 'roasted', holds: like('cocoa powder NDB 19165 3.0 %', 0.03), extract: [0.03, 0.12],
      exchange: [0.9, 1], kept: [0.6, 1.2],
      dose: [60, 120, 200], days: [5, 10, 21, 30, 14, 30], daysByAnalogy: true, spirit: [40, 70],
      hazards: ['caffeine', 'allergen_nuts_trace'], preparation: ['use_roasted_nibs', 'chill_and_filter_fat'] },
  }),
  // Cocoa, from memory.
  group('coffee_tea_cocoa', {
    practice: 'memory', state: 'roasted', exchange: [0.9, 1], days: [5, 10, 14, 21, 30, 30], daysByAnalogy: true,
    spirit: [40, 60],
  }, {
    cocoa_powder: { title: 'Cocoa powder', en: 'cocoa powder, cacao powder, unsweetened cocoa',
      it: 'cacao in polvere, cacao amaro', latin: 'Theobroma cacao',
      cut: 'ground', holds: usda('19165', 0.03), kept: [2, 2.5], dose: [50, 100, 150],
      hazards: ['caffeine', 'allergen_nuts_trace'], preparation: ['unsweetened_cocoa', 'settles_strain_paper'] },
    dark_chocolate: { title: 'Dark chocolate', en: 'dark chocolate+, plain chocolate, bitter chocolate',
      it: 'cioccolato fondente, cioccolata fondente', latin: 'Theobroma cacao',
      holds: noted('19904', 0.014, 0.24), extract: [0.02, 0.1], kept: [0.6, 1.2], dose: [50, 150, 250],
      hazards: ['caffeine', 'allergen_milk_soya', 'allergen_nuts_trace'],
      preparation: ['no_milk_chopped', 'chill_and_filter_fat'] },
  }),
  // Tea and what is drunk like it.
  group('coffee_tea_cocoa', {
    state: 'dried', bulky: true, exchange: [0.9, 1], kept: [1.2, 2.2], daysByAnalogy: true, spirit: [30, 60],
    hazards: ['caffeine'], preparation: ['loose_leaf', 'harsh_within_hours'],
  }, {
    tea_black: { title: 'Tea, black',
      en: 'black tea+, black tea leaf+, Assam tea, Darjeeling tea, lapsang souchong, lapsang, English breakfast tea',
      it: 'tè nero, te nero, foglie di tè nero', latin: 'Camellia sinensis',
      holds: memory(0.06, undefined, [0.03, 0.08]), dose: [5, 12, 30], days: [0.1, 0.2, 0.5, 1, 14, 30],
      pieces: { teaspoon: [2, 2.5, 'estimated'] } },
    tea_green: { title: 'Tea, green', en: 'green tea+, green tea leaf+, sencha, jasmine tea',
      it: 'tè verde, te verde, foglie di tè verde, tè al gelsomino', latin: 'Camellia sinensis',
      holds: memory(0.06, undefined, [0.03, 0.08]), dose: [5, 10, 25], days: [0.1, 0.2, 0.4, 1, 14, 30],
      pieces: { teaspoon: [1.5, 2.5, 'estimated'] } },
  }),
  // Tea and what is drunk like it, from memory.
  group('coffee_tea_cocoa', {
    practice: 'memory', state: 'dried', bulky: true, exchange: [0.9, 1], kept: [1.2, 2.2], dose: [5, 12, 30],
    days: [0.1, 0.2, 0.5, 1, 14, 30], daysByAnalogy: true, spirit: [30, 60], hazards: ['caffeine'],
    preparation: ['loose_leaf', 'harsh_within_hours'],
  }, {
    tea_oolong: { title: 'Oolong tea', en: 'oolong+, oolong tea+', it: 'tè oolong, te oolong',
      latin: 'Camellia sinensis',
      holds: memory(0.06, undefined, [0.03, 0.08]), pieces: { teaspoon: [1.5, 2.5, 'memory'] } },
    tea_white: { title: 'White tea', en: 'white tea+', it: 'tè bianco, te bianco', latin: 'Camellia sinensis',
      holds: memory(0.06, undefined, [0.03, 0.08]), pieces: { teaspoon: [1.5, 2.5, 'memory'] } },
    earl_grey: { title: 'Earl Grey tea', en: 'Earl Grey, Earl Grey tea', it: 'tè Earl Grey, te Earl Grey',
      latin: 'Camellia sinensis',
      holds: memory(0.06, undefined, [0.03, 0.08]), pieces: { teaspoon: [1.5, 2.5, 'memory'] },
      preparation: ['carries_bergamot', 'harsh_within_hours'] },
    matcha: { title: 'Matcha', en: 'matcha, matcha powder, matcha tea', it: 'tè matcha, te matcha',
      latin: 'Camellia sinensis',
      bulky: false, holds: memory(0.05, undefined, [0.03, 0.08]), kept: [2, 2.5], dose: [5, 10, 20],
      preparation: ['settles_strain_paper', 'harsh_within_hours'] },
    yerba_mate: { title: 'Yerba mate', en: 'yerba mate, yerba maté, mate tea, maté tea',
      it: 'erba mate, yerba mate, mate', latin: 'Ilex paraguariensis',
      holds: memory(0.07), dose: [5, 15, 30] },
    rooibos: { title: 'Rooibos', en: 'rooibos, rooibos tea, redbush, redbush tea', it: 'rooibos, tè rosso, tè rooibos',
      latin: 'Aspalathus linearis',
      holds: memory(0.07), dose: [5, 15, 30], days: [0.5, 1, 2, 3, 14, 30], hazards: [], preparation: ['loose_leaf'] },
  }),
]
