/**
 * Fresh plants that are picked, or sold for a few weeks: outside their months no shop has them, neither fresh nor frozen. All others
 * with months are best then, and sold all year from somewhere. Common practice, no source.
 */
const ONLY: ReadonlySet<string> = new Set([
  'bitter_orange_peel',
  'bergamot_peel',
  'yuzu_peel',
  'myrtle_berries',
  'mulberry',
  'sea_buckthorn',
  'rosehip',
  'sloe',
  'cherry_plum',
  'cornelian_cherry',
  'quince',
  'loquat',
  'blackcurrant_leaf',
  'raspberry_leaf',
  'strawberry_leaf',
  'vine_leaf',
  'artichoke_leaf',
  'elderflower',
  'rose_petals',
  'orange_blossom',
  'linden',
  'jasmine',
  'violet',
  'cowslip',
  'acacia_blossom',
  'dandelion_flower',
  'calendula',
  'cornflower',
  'mallow_flower',
  'red_clover',
  'daisy',
  'heather',
  'green_walnut',
  'pine_cones',
  'pine_buds',
  'spruce_tips',
  'fir_tips',
])

/** Whether a plant of the catalogue is to be had in its months alone, by its id. */
export const isOnlyInSeason = (id: string): boolean => ONLY.has(id)
