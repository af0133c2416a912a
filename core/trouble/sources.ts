/** Where what is known of troubles was read, and how: abstracts and pages as named, none of them whole papers. */
export const troubleSources = {
  aab_wine: 'two public winemaking pages on acetic bacteria: they need air, vinegar and ethyl acetate come together',
  basil: 'kitchen pages: cut, bruised or chilled basil goes dark by enzymes and air',
  bot_ethanol:
    'Daifas et al., J. Food Prot. 66:610–617 (2003), abstract: 6 % ethanol by mass stopped C. botulinum in broth',
  bot_pruno: 'CDC MMWR 61(39):782–784 (2012) and 65(52) (2017): botulism from weak home-brewed alcohol',
  calcium: 'a water-treatment page: calcium gives an oxalate floc, magnesium a haze, iron darkens',
  chilliburn: 'two kitchen-science pages: capsaicin leaves with milk and fat, sugar masks it',
  chloro: 'Shen et al., J. Agric. Food Chem. 58:8056 (2010): chlorophyll in ethanol, half-life from 1.2 h',
  clouding:
    'limonene is one phase with ethanol from 79.6 % vol, citral from 52.7, no measured cloud point of a zest infusion',
  cooley: 'Cooley and Tuson, Cyclopaedia, 6th ed. (1880), vol. II, Liqueurs: too much oil makes a cordial milky',
  cork: 'wine pages: a pushed cork is fermentation in the bottle, or heat, freezing or filling too full',
  core: 'worked out from the jar’s own entries',
  dugo: 'Dugo et al., Ital. J. Food Sci. 12(3):343–351 (2000), abstract: acid, warmth and UV change lemon liqueur',
  emergency: 'my first-aid steps, each with its own source',
  fake_spirit: 'food-standards warnings as reported in the press: counterfeit vodka that smelled of nail varnish',
  film: 'wine pages quoting Dittrich (1977): film yeast grows with air in wine up to about 14 % vol',
  fire: 'flash points of ethanol and water, as I work them out',
  garlicblue: 'pickling pages: garlic turns blue or green in acid, harmless',
  glass22: 'Glass Worldwide, Nov/Dec 2022, p. 102: white patches in bottles within a day, from hard water',
  h2s: 'winemaking pages on hydrogen sulphide: yeast makes it, it is smelt from about 1 µg/L',
  hazards: 'my own lists of hazards and of what I refuse, each with its own source',
  keeping: 'Delle units, vinlab.com of 10 April 2017, and Amerine and Kunkee, Vitis 5:187–194 (1965)',
  kernel_study: 'abstract of a study of liqueurs from crushed kernels (2016): 16 to 39 µg cyanogenic glycosides a mL',
  lead: 'J. Food Prot. 54:378 (1991, year from memory), abstract: 116 to 2576 ppb of lead after 60 weeks in lead crystal',
  lemonoil: 'Nguyen et al., Food Chem. 112:388–393 (2009), abstract: air, warmth, UV and copper oxidise lemon oil',
  lemonshu: 'J. Jpn. Soc. Food Nutr. 31(5):518, abstract: lemon slices in spirit lose their flavour in several days',
  limonin:
    'Premi et al. (1995) and Puri et al., Crit. Rev. Biotechnol. 16:145 (1996), as quoted: limonin in seeds and peel',
  memory: 'from memory',
  metal: 'Tokyo Metropolitan food-safety pages: acid drinks dissolve copper, aluminium, iron and zinc',
  molecules:
    'Sokół-Łętowska et al., Molecules 23(9):2156 (2018), abstract: half-lives of the red of sour-cherry liqueur',
  mould_press: 'government mould guidance as quoted by the press (2023): moist and soft foods are thrown away',
  nolden: 'Nolden and Hayes (2015), as I have it: what burns is the alcohol, sugar doesn’t cool it',
  paper: 'coffee pages: paper filters taste of cardboard unless rinsed, one finds no difference',
  peelwhite: 'a maker’s page on when peel is spent: pale, greyish, translucent',
  pectin_test:
    'pectin test, leaf.tv and recipes.epicurean.com 13283: one part drink and four of strong alcohol, clots are pectin',
  pectin_wine: 'pectic enzyme in wine, leaf.tv: 4 to 5 days at 21 °C, on the fruit before the spirit',
  plastic: 'plastics pages: soft PVC holds plasticisers that leach, faster in strong spirit',
  practice: 'common practice, no source',
  rosehip: 'herb pages: the hairs round the seeds irritate, strain twice through muslin',
  slime: 'pages on fermented vegetables: coloured growth or slime is thrown away',
  solubility: 'solubility of sucrose, as I work it out',
  steep: 'steeping times of the catalogue, each with its own trust',
  thibodeau: 'Thibodeau et al., as I have it: sweetness hides bitterness',
  treatise: 'a 19th-century treatise on cordials, p. 78: too much flavouring clouds, a little more spirit clears',
  tsuzuki: 'Tsuzuki and Yamazaki, as I have it: fructose tastes sweeter cold',
  warwicker:
    'a distillers’ magazine citing Warwicker (1960, 1963): copper gives a white, iron a brown deposit within days',
} as const satisfies Readonly<Record<string, string>>

export type TroubleSource = keyof typeof troubleSources
