import type { AskBack } from '../ask-back.ts'
import { addedAskBacks } from './more-ambiguous-names.ts'

/** Words that name more than one plant, form or part. */
export const askBacks: readonly AskBack[] = [
  {
    id: 'coffee',
    words: 'coffee, coffees, decaf coffee, decaffeinated coffee, caffè, caffe, caffé',
    choices: ['coffee_whole', 'coffee_cracked', 'coffee_ground'],
    refused: [],
  },
  {
    id: 'bay',
    words: 'bay, bay leaf, bay leaves, bay laurel, sweet bay, alloro, foglia di alloro, foglie di alloro, lauro',
    choices: ['bay_leaf', 'bay_leaf_fresh'],
    refused: [],
  },
  {
    id: 'chilli',
    words:
      'chilli, chillies, chili, chilies, chile, chiles, chilli pepper, chilli peppers, chili pepper, chili peppers, hot pepper, hot peppers, red chilli, red chillies, red chili, red chilies, green chilli, green chillies, green chili, green chilies, peperoncino rosso, peperoncini rossi, peperoncino, peperoncini',
    choices: ['chilli_fresh', 'chilli_dried'],
    refused: [],
  },
  {
    id: 'cinnamon',
    words:
      'cinnamon, cinnamons, cinnamon stick, cinnamon sticks, cannella, cannelle, stecca di cannella, stecche di cannella',
    choices: ['cinnamon_ceylon', 'cinnamon_cassia'],
    // Its coumarin is the higher one: whoever has the other kind uses less than there may be (BfR 26/2012).
    usual: 'cinnamon_cassia',
    refused: [],
  },
  {
    id: 'mint',
    words: 'mint, mints, mint leaf, mint leaves, menta, mente, foglia di menta, foglie di menta',
    choices: ['peppermint', 'spearmint'],
    refused: [],
  },
  {
    id: 'fennel',
    words: 'fennel, fennels, finocchio, finocchi',
    choices: ['fennel_seed', 'fennel_fronds'],
    refused: [],
  },
  {
    id: 'tea',
    words: 'tea, teas, tea leaf, tea leaves, tè, te, foglie di tè',
    choices: ['tea_black', 'tea_green', 'tea_oolong', 'tea_white'],
    usual: 'tea_black',
    refused: [],
  },
  {
    id: 'pine',
    words: 'pine, pines, pino, pini, mugo, pino mugo',
    choices: ['pine_cones', 'pine_buds'],
    refused: [],
  },
  {
    id: 'citronella',
    words: 'citronella',
    choices: ['lemongrass', 'lemon_balm'],
    refused: [],
  },
  {
    id: 'pepper',
    words: 'pepper, peppers, pepe',
    choices: [
      'black_pepper',
      'white_pepper',
      'pink_pepper',
      'allspice',
      'sweet_pepper',
      'chilli_fresh',
      'chilli_dried',
    ],
    refused: [],
  },
  {
    id: 'coriander',
    words: 'coriander',
    choices: ['coriander_seed', 'coriander_leaf'],
    refused: [],
  },
  {
    id: 'artemisia',
    words: 'artemisia',
    choices: ['wormwood', 'genepi'],
    refused: [],
  },
  {
    id: 'walnut',
    words: 'walnut, walnuts, noce, noci',
    choices: ['walnut', 'green_walnut'],
    refused: [],
  },
  {
    id: 'laurel',
    words: 'laurel, laurels, laurel leaf, laurel leaves',
    choices: ['bay_leaf', 'bay_leaf_fresh'],
    refused: ['cherry_laurel', 'oleander'],
  },
  {
    id: 'wild_fennel',
    words: 'wild fennel, wild fennel frond, wild fennel fronds, finocchietto selvatico, finocchio selvatico',
    choices: ['fennel_fronds', 'fennel_seed'],
    refused: ['hemlock', 'water_hemlock'],
  },
  {
    id: 'elder',
    words: 'elder, elders, sambuco, sambuchi, sambucus, Sambucus nigra',
    choices: ['elderflower'],
    refused: ['elder_raw'],
  },
  {
    id: 'crocus',
    words: 'crocus, crocuses, croco',
    choices: ['saffron'],
    refused: ['colchicum'],
  },
  {
    id: 'illicium',
    words: 'anise tree',
    choices: ['star_anise'],
    refused: ['jp_star_anise'],
  },
  {
    id: 'juniperus',
    words: 'juniper tree, juniperus',
    choices: ['juniper'],
    refused: ['savin'],
  },
  {
    id: 'almond_kernel',
    words: 'almond kernel, almond kernels',
    choices: ['almond_sweet'],
    refused: ['kernels'],
  },
  {
    id: 'stone_fruit',
    words: 'prunus, stone fruit, stone fruits, drupa, drupe',
    choices: ['plum', 'apricot', 'peach', 'sweet_cherry', 'sour_cherry', 'sloe'],
    refused: ['kernels', 'cherry_laurel'],
  },
  {
    id: 'rhubarb',
    words: 'rabarbaro, rabarbari, rheum',
    choices: ['rhubarb_stalk'],
    refused: ['rhubarb_tomato'],
  },
  {
    id: 'fig_tree',
    words: 'Ficus carica, fig tree, albero di fico',
    choices: ['fig', 'fig_dried'],
    refused: ['fig_leaf'],
  },
  {
    id: 'conifer',
    words: 'conifer, conifers, conifera, conifere',
    choices: ['pine_cones', 'pine_buds', 'spruce_tips', 'fir_tips'],
    refused: ['yew', 'savin'],
  },
  {
    id: 'currant',
    words: 'currant, currants, ribes',
    choices: ['blackcurrant', 'redcurrant', 'raisin'],
    refused: [],
  },
  {
    id: 'chocolate',
    words: 'chocolate, chocolates, cocoa, cacao, cioccolato, cioccolata',
    choices: ['dark_chocolate', 'cocoa_powder', 'cocoa_nibs'],
    refused: [],
  },
  {
    id: 'green_pepper',
    words: 'green pepper, green peppers',
    choices: ['sweet_pepper', 'green_pepper'],
    refused: [],
  },
  {
    id: 'poppy',
    words: 'poppy, poppies, papavero, papaveri',
    choices: [],
    refused: ['drugs'],
  },
  ...addedAskBacks,
]
