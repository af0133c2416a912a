import type { AskBack } from '../ask-back.ts'

/** A name of the catalogue that stands here too is the catalogue's. */
export const addedAskBacks: readonly AskBack[] = [
  { id: 'rosebay', words: 'rosebay', choices: [], refused: ['oleander'], yields: true },
  { id: 'leopards_bane', words: "leopard's bane, leopards bane", choices: [], refused: ['aconite'], yields: true },
  {
    id: 'almond_extract',
    words:
      'almond extract, almond extracts, almond essence, almond flavouring, almond flavour, almond flavor, almond aroma, bitter almond flavour, bitter almond flavouring, ' +
      'bitter almond flavor, bitter almond flavoring, bitter almond extract, bitter almond essence, bitter almond aroma, aroma di mandorla amara, aroma mandorla amara, aroma di mandorla, aroma di mandorle amare, ' +
      'essenza di mandorla amara, estratto di mandorla amara',
    choices: ['almond_sweet'],
    refused: ['kernels'],
    yields: true,
  },
  { id: 'mahleb', words: 'mahleb, mahaleb, mahlab, mahlepi', choices: [], refused: ['kernels'], yields: true },
  { id: 'cherry_laurel_fruit', words: 'karayemiş', choices: [], refused: ['cherry_laurel'], yields: true },
  {
    id: 'elder',
    words: 'czarny bez, sabugueiro, mürver, sureau, saúco, Holunder',
    choices: ['elderflower'],
    refused: ['elder_raw'],
    yields: true,
  },
  {
    id: 'coumarin_herb',
    words: "sweetgrass, żubrówka, zubrowka, sweet clover, melilot, meliloto, Steinklee, deer's tongue",
    choices: ['vanilla'],
    refused: ['tonka'],
    yields: true,
  },
  { id: 'wild_ginger', words: 'wild ginger', choices: ['ginger'], refused: ['aristolochia'], yields: true },
  { id: 'costmary', words: 'erba amara', choices: [], refused: ['tansy'], yields: true },
  { id: 'mugwort', words: 'mugwort, mugworts, artemisia vulgaris', choices: [], refused: ['tansy'], yields: true },
  { id: 'skullcap', words: 'skullcap, skullcaps', choices: [], refused: ['germander'], yields: true },
  {
    id: 'pine_tips',
    words: 'pine tip, pine tips, pine needle, pine needles, aghi di pino',
    choices: ['pine_buds'],
    refused: ['yew'],
  },
  {
    id: 'berries_mixed',
    words:
      'berries, mixed berries, frozen berries, frozen mixed berries, mixed fruit, frozen mixed fruit, summer fruit, summer fruits, summer berries, forest fruit, forest fruits, forest berries, fruits of the forest, red fruits, red berries mix, frutti di bosco, frutti rossi, frutti di bosco surgelati, misto di bosco',
    choices: [],
    refused: [],
    yields: true,
  },
  {
    id: 'spices_mixed',
    words:
      'spices, mixed spice, mixed spices, mulled wine spice, mulled wine spices, mulling spice, mulling spices, gingerbread spice, gingerbread spices, pumpkin pie spice, pumpkin spice, apple pie spice, five spice, five spice powder, Chinese five spice, garam masala, curry, curry powder, spezie miste, spezie',
    choices: [],
    refused: [],
    yields: true,
  },
  {
    id: 'sweet_things',
    words:
      'honey, maple syrup, golden syrup, agave syrup, treacle, molasses, caramel, caramels, toffee, toffees, fudge, sweets, candy, candies, boiled sweets, miele, caramello, caramelle, sciroppo d’acero',
    choices: [],
    refused: [],
    yields: true,
  },
  {
    id: 'vanilla_made',
    words: 'vanilla extract, vanilla essence, vanilla paste, vanilla bean paste, vanilla sugar, estratto di vaniglia',
    choices: ['vanilla'],
    refused: [],
    yields: true,
  },
  {
    id: 'coffee_made',
    words:
      'instant coffee, instant coffee powder, instant coffee granules, instant espresso, instant espresso powder, espresso powder, coffee granules, soluble coffee, freeze-dried coffee, caffè solubile, caffè istantaneo',
    choices: ['coffee_whole', 'coffee_cracked', 'coffee_ground'],
    refused: [],
    yields: true,
  },
  {
    id: 'not_listed',
    words:
      'pineapple sage, scented geranium, scented geraniums, costmary, costmary leaf, costmary leaves, Douglas fir, larch, larch tip, larch tips, Swiss pine cone, Swiss pine cones, lilac, lilacs, lilac flowers, lillà, magnolia, magnolias, magnolia petals, gorse, gorse flowers, honeysuckle, honeysuckle flower, honeysuckle flowers, butterfly pea, butterfly pea flower, butterfly pea flowers, peony, peonies, peony petals, peonia',
    choices: [],
    refused: [],
    yields: true,
  },
  {
    id: 'blossom_cyanide',
    words:
      'apple blossom, apple blossoms, cherry blossom, cherry blossoms, almond blossom, almond blossoms, peach blossom, peach blossoms, plum blossom, plum blossoms, fiori di ciliegio, fiori di pesco, Kirschblüten',
    choices: ['elderflower'],
    refused: ['kernels'],
    yields: true,
  },
  {
    id: 'rhubarb_root',
    words: 'rhubarb root, rhubarb roots, radice di rabarbaro',
    choices: ['rhubarb_stalk'],
    refused: [],
    yields: true,
  },
  {
    id: 'eucalyptus',
    words: 'eucalyptus, eucalyptus leaf, eucalyptus leaves, eucalipto, foglie di eucalipto',
    choices: ['peppermint'],
    refused: [],
    yields: true,
  },
  {
    id: 'asafoetida',
    words: 'asafoetida, asafetida, hing, assafetida',
    choices: ['fennel_seed'],
    refused: [],
    yields: true,
  },
  {
    id: 'seaweed',
    words: 'seaweed, seaweeds, algae, alghe',
    choices: [],
    refused: [],
    yields: true,
  },
  {
    id: 'wood_chips',
    words: 'cherry wood chips, cherry wood, maple wood chips, maple wood, apple wood chips, beech chips, wood chips',
    choices: ['oak_chips'],
    refused: [],
    yields: true,
  },
]
