import { CUP_ML } from './customary.ts'
import { juices } from './juices.ts'
import type { Material } from './material.ts'

/**
 * Granulated sugar as it is poured, g/ml: 200 g in a US cup of 236.588 ml.
 * Source: USDA FoodData Central, SR Legacy, NDB 19335 (sugars, granulated), 1 cup = 200 g.
 */
export const POURED_SUGAR_G_PER_ML = 200 / CUP_ML

/** A cup of what is dry, and of what is a syrup: how it is filled, and what clings to it. Common practice, no source. */
const DRY_SHARE = 0.1
const SYRUP_SHARE = 0.03

const barSyrup = (names: readonly string[], sucrose: number, pouredGPerMl: number, sugarsPlusMinusG: number) =>
  ({
    names,
    kinds: '',
    isSyrup: true,
    pouredGPerMl,
    pouredPlusMinusShare: SYRUP_SHARE,
    per100G: { water: 100 - sucrose, sucrose, glucoseAndFructose: 0, longer: 0 },
    sugarsPlusMinusG,
    sweetness: { usual: sucrose / 100, low: sucrose / 100, high: sucrose / 100 },
    trust: 'derived',
    source: 'its parts; density by ICUMSA SPS-4; a US cup of sugar 200 g (USDA 19335), of water 236.2 g',
  }) as const satisfies Material

/**
 * What sweetens, and what stands for water. White sugar counts as dry sucrose: 99.8 g of sugars in 100 g (USDA FoodData Central, NDB 19335). Sweetness is derived
 * from fructose 1.2, glucose 0.8, maltose 0.45, which published tables give as 1.03 to 1.73, 0.5 to 0.8 and 0.3 to 0.5.
 */
export const materials = {
  white_sugar: {
    names: ['sugar', 'zucchero'],
    kinds: 'white caster castor granulated table fine superfine cane beet bianco semolato extrafine',
    isSyrup: false,
    pouredGPerMl: POURED_SUGAR_G_PER_ML,
    pouredPlusMinusShare: DRY_SHARE,
    per100G: { water: 0, sucrose: 100, glucoseAndFructose: 0, longer: 0 },
    sugarsPlusMinusG: 0,
    sweetness: { usual: 1, low: 1, high: 1 },
    trust: 'published',
    source: 'USDA SR 19335',
  },
  invert_syrup: {
    names: ['invert syrup', 'invert sugar', 'invert sugar syrup', 'inverted sugar', 'zucchero invertito'],
    kinds: 'liquid',
    isSyrup: true,
    pouredGPerMl: 1.386,
    pouredPlusMinusShare: SYRUP_SHARE,
    per100G: { water: 23.45, sucrose: 0, glucoseAndFructose: 76.55, longer: 0 },
    sugarsPlusMinusG: 2,
    sweetness: { usual: 0.77, low: 0.65, high: 0.98 },
    trust: 'published',
    source: 'solids: honey trade board, “baking with honey”; wholly inverted; density derived from sucrose’s',
  },
  honey: {
    names: ['honey', 'miele'],
    kinds:
      'runny clear set raw light dark mild liquid local wildflower flower blossom clover heather acacia chestnut lavender lime ' +
      'thyme orange forest acacia castagno millefiori tiglio arancio eucalipto',
    isSyrup: true,
    pouredGPerMl: 1.422,
    pouredPlusMinusShare: SYRUP_SHARE,
    per100G: { water: 17.2, sucrose: 1.3, glucoseAndFructose: 69.5, longer: 11.3 },
    longerAsSucrose: 0.95,
    sugarsPlusMinusG: 3,
    sweetness: { usual: 0.76, low: 0.68, high: 1.03 },
    trust: 'published',
    source:
      'all sugars: USDA SR 19296; water (± 2.9 in 490 honeys) and kinds: White et al., USDA Tech. Bull. 1261 (1962), what it left ' +
      'undetermined counted with the longer ones; density from memory',
  },
  maple_syrup: {
    names: ['maple syrup', 'maple', 'sciroppo acero'],
    kinds: 'pure amber dark golden',
    isSyrup: true,
    pouredGPerMl: 1.328,
    pouredPlusMinusShare: SYRUP_SHARE,
    per100G: { water: 32.1, sucrose: 62.75, glucoseAndFructose: 3.25, longer: 0 },
    sugarsPlusMinusG: 2,
    sweetness: { usual: 0.66, low: 0.6, high: 0.68 },
    trust: 'published',
    source:
      'water, glucose and fructose: USDA SR 19353; all sugars: 66.0 to 68.9 Brix of a legal syrup, 67.1 g by difference there; ' +
      'range: Stuckel and Low, Food Res. Int. 29 (1996) 373–379',
  },
  agave_syrup: {
    names: ['agave syrup', 'agave', 'agave nectar', 'sciroppo agave', 'nettare agave'],
    kinds: 'light dark blue raw',
    isSyrup: true,
    pouredGPerMl: 1.38,
    pouredPlusMinusShare: SYRUP_SHARE,
    per100G: { water: 22.9, sucrose: 0, glucoseAndFructose: 73, longer: 3 },
    sugarsPlusMinusG: 8,
    sweetness: { usual: 0.84, low: 0.75, high: 1 },
    trust: 'published',
    source:
      'water: USDA SR 19912, which has 76.4 g of carbohydrate and 68.0 g of sugars; fructose 84 % of the carbohydrate: Willems and ' +
      'Low, J. Agric. Food Chem. 60 (2012), 19 syrups',
  },
  demerara: {
    names: [
      'demerara sugar',
      'demerara',
      'turbinado',
      'turbinado sugar',
      'raw sugar',
      'raw cane sugar',
      'golden caster sugar',
      'golden granulated sugar',
      'zucchero canna',
      'zucchero grezzo',
    ],
    kinds: 'unrefined',
    isSyrup: false,
    pouredGPerMl: 0.93,
    pouredPlusMinusShare: DRY_SHARE,
    per100G: { water: 0.5, sucrose: 99.4, glucoseAndFructose: 0, longer: 0 },
    sugarsPlusMinusG: 0.5,
    sweetness: { usual: 0.99, low: 0.98, high: 1 },
    trust: 'published',
    source: 'sugars: CoFID 2021; water and how it pours from memory',
  },
  brown_sugar: {
    names: ['brown sugar', 'zucchero bruno'],
    kinds: 'soft light dark packed',
    isSyrup: false,
    pouredGPerMl: 220 / CUP_ML,
    pouredPlusMinusShare: DRY_SHARE,
    per100G: { water: 1.77, sucrose: 90.61, glucoseAndFructose: 5.6, longer: 0 },
    sugarsPlusMinusG: 1,
    sweetness: { usual: 0.95, low: 0.93, high: 0.98 },
    trust: 'published',
    source: 'USDA SR 19334; 220 g in a US cup, packed',
  },
  muscovado: {
    names: ['muscovado', 'muscovado sugar', 'mascobado', 'zucchero muscovado', 'zucchero mascobado'],
    kinds: 'light dark unrefined chiaro scuro',
    isSyrup: false,
    pouredGPerMl: 220 / CUP_ML,
    pouredPlusMinusShare: DRY_SHARE,
    per100G: { water: 2.8, sucrose: 90, glucoseAndFructose: 6, longer: 0 },
    sugarsPlusMinusG: 2,
    sweetness: { usual: 0.95, low: 0.9, high: 0.98 },
    trust: 'published',
    source:
      'sugars: labels, light 97.4 g and dark 94.4 g; water, kinds and how it pours from memory and like brown sugar',
  },
  glucose_syrup: {
    names: ['glucose syrup', 'liquid glucose', 'corn syrup', 'light corn syrup', 'sciroppo glucosio'],
    kinds: '',
    isSyrup: true,
    pouredGPerMl: 1.412,
    pouredPlusMinusShare: SYRUP_SHARE,
    per100G: { water: 20.1, sucrose: 0, glucoseAndFructose: 15.2, longer: 64.7 },
    longerAsSucrose: 0.55,
    sugarsPlusMinusG: 3,
    sweetness: { usual: 0.3, low: 0.2, high: 0.4 },
    trust: 'published',
    source:
      'water: USDA SR 19350, light corn syrup; 42 DE: glucose 19 %, maltose 14 %, longer 67 % of the solids: “Natural Food Additives, ' +
      'Ingredients and Flavourings”, section 13.2.2; the freezing of the longer ones derived from their molar masses',
  },
  golden_syrup: {
    names: ['golden syrup', 'light treacle'],
    kinds: '',
    isSyrup: true,
    pouredGPerMl: 1.41,
    pouredPlusMinusShare: SYRUP_SHARE,
    per100G: { water: 20, sucrose: 33, glucoseAndFructose: 46, longer: 0 },
    sugarsPlusMinusG: 4,
    sweetness: { usual: 0.78, low: 0.7, high: 0.9 },
    trust: 'memory',
    source: 'all sugars: CoFID 2021, 17-065; water and kinds from memory',
  },
  date_syrup: {
    names: ['date syrup', 'sciroppo datteri'],
    kinds: '',
    isSyrup: true,
    pouredGPerMl: 1.36,
    pouredPlusMinusShare: SYRUP_SHARE,
    per100G: { water: 27, sucrose: 4, glucoseAndFructose: 62, longer: 0 },
    sugarsPlusMinusG: 6,
    sweetness: { usual: 0.62, low: 0.5, high: 0.75 },
    trust: 'derived',
    source:
      'glucose and fructose: 62 g in three varieties; Brix 70 or more and at most 4 g of sucrose in a trade specification',
  },
  syrup_1_1_weight: barSyrup(['1:1 syrup by weight'], 50, 1.2297, 1),
  syrup_1_1_cup: barSyrup(['1:1 syrup by cup'], 45.85, 1.2072, 2.5),
  syrup_2_1_weight: barSyrup(['2:1 syrup by weight'], 66.67, 1.3268, 1),
  syrup_2_1_cup: barSyrup(['2:1 syrup by cup'], 62.87, 1.3037, 2.5),
  ...juices,
} as const satisfies Readonly<Record<string, Material>>

export type MaterialId = keyof typeof materials

/** What is meant where nothing is said. */
export const USUAL_MATERIAL: MaterialId = 'white_sugar'

export const materialIds = Object.keys(materials) as readonly MaterialId[]

export const materialOf = (id: MaterialId): Material => materials[id]

/** Whether it stands for the water, not for the sugar. */
export const isJuice = (id: MaterialId): boolean => materialOf(id).isJuice === true

/** All sugars of a material, as a share of its mass. */
export const sugarsShare = (id: MaterialId): number => {
  const { sucrose, glucoseAndFructose, longer } = materials[id].per100G
  return (sucrose + glucoseAndFructose + longer) / 100
}

/** How it is written after an amount: ` honey`; nothing for the usual one. */
export const materialText = (id: MaterialId): string => (id === USUAL_MATERIAL ? '' : ` ${materials[id].names[0]}`)
