import type { Between, Category, CategoryId, SugarException } from './category.ts'
import type { Region } from './parse-region.ts'
import type { Cited } from './sources.ts'

const ANY: Between = { least: null, most: null }
const atLeast = (least: number): Between => ({ least, most: null })
const between = (least: number, most: number): Between => ({ least, most })

type Own = Omit<Partial<Category>, 'id' | 'region'> & Cited

const category = (id: CategoryId, region: Region, own: Own): Category => ({
  id,
  region,
  abvPercent: ANY,
  invertGPerL: ANY,
  leastSugarMassPercent: null,
  exceptions: [],
  onlyOf: null,
  also: [],
  plantGPerL: ANY,
  steepDays: ANY,
  ...own,
})

const exceptions = (bitterPlants: readonly string[], cited: Cited): readonly SugarException[] => [
  { leastInvertGPerL: 80, onlyOf: bitterPlants, also: [], ...cited },
  { leastInvertGPerL: 70, onlyOf: ['sour_cherry'], also: ['cherry_spirit_only'], ...cited },
]

const PUBLISHED_EU: Cited = { trust: 'published', sources: ['eu_2019_787', 'eu_110_2008'] }
const PUBLISHED_UK: Cited = { trust: 'published', sources: ['eu_110_2008'] }
/** The text of these categories was not seen. */
const REMEMBERED_EU: Cited = { trust: 'memory', sources: ['eu_2019_787'] }

/**
 * Names that a steeped drink can carry, from the loosest to the narrowest of each region. Left out because steeping
 * alone cannot make them or the bot does not plan them: sambuca, maraschino, egg liqueur; flavoured vodka, because the
 * kind of spirit is not asked. Figures of product files that do not say their basis are read as invert sugar, the
 * basis of the regulation they stand under.
 */
export const categories: readonly Category[] = [
  category('eu_spirit_drink', 'eu', { abvPercent: atLeast(15), trust: 'published', sources: ['eu_2019_787'] }),
  category('eu_bitter', 'eu', { abvPercent: atLeast(15), onlyOf: ['gentian_root', 'wormwood'], ...REMEMBERED_EU }),
  category('eu_liqueur', 'eu', {
    abvPercent: atLeast(15),
    invertGPerL: atLeast(100),
    exceptions: exceptions(['gentian_root', 'wormwood'], PUBLISHED_EU),
    ...PUBLISHED_EU,
  }),
  category('eu_creme_de', 'eu', { abvPercent: atLeast(15), invertGPerL: atLeast(250), ...REMEMBERED_EU }),
  category('eu_creme_de_cassis', 'eu', {
    abvPercent: atLeast(15),
    invertGPerL: atLeast(400),
    onlyOf: ['blackcurrant'],
    ...REMEMBERED_EU,
  }),
  category('eu_nocino', 'eu', {
    abvPercent: atLeast(30),
    invertGPerL: atLeast(100),
    onlyOf: ['green_walnut'],
    also: ['whole_walnuts'],
    ...REMEMBERED_EU,
  }),
  category('eu_sloe', 'eu', {
    abvPercent: atLeast(25),
    invertGPerL: between(80, 250),
    onlyOf: ['sloe'],
    also: ['plant_amount', 'aniseed_flavour'],
    plantGPerL: atLeast(125),
    ...REMEMBERED_EU,
  }),
  category('gi_sorrento', 'eu', {
    abvPercent: atLeast(30),
    invertGPerL: between(200, 350),
    onlyOf: ['lemon_peel'],
    also: ['plant_amount', 'steep_time', 'made_in_area'],
    plantGPerL: atLeast(250),
    steepDays: atLeast(2),
    trust: 'published',
    sources: ['gi_sorrento'],
  }),
  category('gi_mirto', 'eu', {
    abvPercent: between(28, 36),
    invertGPerL: { least: null, most: 270 },
    onlyOf: ['myrtle_berries'],
    also: ['plant_amount', 'steep_time', 'made_in_area'],
    plantGPerL: atLeast(150),
    steepDays: between(15, 240),
    trust: 'published',
    sources: ['gi_mirto'],
  }),
  category('gi_genepi', 'eu', {
    abvPercent: atLeast(30),
    invertGPerL: atLeast(100),
    onlyOf: ['genepi'],
    also: ['plant_amount', 'steep_time', 'made_in_area'],
    plantGPerL: atLeast(7),
    steepDays: between(30, 60),
    trust: 'published',
    sources: ['gi_genepi'],
  }),
  category('gi_pacharan', 'eu', {
    abvPercent: between(25, 30),
    invertGPerL: between(80, 250),
    onlyOf: ['sloe'],
    also: ['plant_amount', 'steep_time', 'made_in_area'],
    plantGPerL: between(125, 250),
    steepDays: between(30, 240),
    trust: 'secondary',
    sources: ['gi_pacharan'],
  }),
  category('us_liqueur', 'us', { leastSugarMassPercent: 2.5, trust: 'memory', sources: ['cfr_27_5'] }),
  category('uk_liqueur', 'uk', {
    abvPercent: atLeast(15),
    invertGPerL: atLeast(100),
    exceptions: exceptions(['gentian_root'], PUBLISHED_UK),
    ...PUBLISHED_UK,
  }),
]
