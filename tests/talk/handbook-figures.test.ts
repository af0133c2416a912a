import { describe, expect, it } from 'vitest'
import { handbook } from '../../bot/text/en/handbook/index.ts'
import type { HandbookId } from '../../bot/text/messages/handbook.ts'
import { botanicalById } from '../../core/botanical/catalogue/catalogue.ts'
import { GREEN_FADES } from '../../core/botanical/evidence/green-fades.ts'
import { categories } from '../../core/label/categories.ts'
import { strengthTolerance } from '../../core/label/strength-tolerance.ts'
import { STRONG_PERCENT } from '../../core/liquid/flash-point.ts'
import { FREEZER_C, leastAbvIceFree } from '../../core/liquid/freezer.ts'
import { KEEPS_ABV_PERCENT, LEAST_ABV_PERCENT } from '../../core/liquid/keeping.ts'
import { mix, spirit, volumeMl, water } from '../../core/liquid/liquid.ts'
import { DOUBTFUL_INFUSION_PERCENT, MOST_NEAT_PERCENT } from '../../core/liquid/neat.ts'
import { abvPercentFromUsProof } from '../../core/liquid/proof.ts'
import { MUG_ML } from '../../core/quantity/customary-bottles.ts'
import { type MaterialId, materials, POURED_SUGAR_G_PER_ML } from '../../core/quantity/materials.ts'
import { REFRACTOMETER_PLUS_MINUS_BRIX } from '../../core/quantity/measured/precision.ts'
import { parseVolume } from '../../core/quantity/read/parse-volume.ts'
import { styleSweetnessGPerL } from '../../core/quantity/read/sweetness-at.ts'
import { USUAL } from '../../core/recipe/plan/reach-targets.ts'
import { FILTER_SHARE } from '../../core/recipe/steep.ts'
import { measuredOut } from '../../core/recipe/tool-precision.ts'
import { testDesk } from '../bot/test-desk.ts'

const numbersIn = (text: string): readonly number[] => (text.match(/\d+(?:\.\d+)?/g) ?? []).map(Number)

const to = (step: number, value: number): number => Math.round(value / step) * step
const { dry, everyday, rich } = styleSweetnessGPerL
const liqueurLaw = categories.find(({ id }) => id === 'eu_liqueur')!
const mlOf = (text: string): number => Math.round(parseVolume(text).volumeMl)
const zest = botanicalById('lemon_peel').zestGPerFruit!
const halfAndHalf = mix(spirit({ volumeMl: 500, abvPercent: 100 }), water(499.1))
const gPerCup = POURED_SUGAR_G_PER_ML * 236.5882365
/** Kilograms with as much sugar as a kilogram of white sugar; what they weigh more is water. */
const kgPerKg = (id: MaterialId): number => {
  const { sucrose, glucoseAndFructose, longer } = materials[id].per100G
  return 100 / (sucrose + glucoseAndFructose + longer)
}
const latestDays = (id: string): number => botanicalById(id).timesDays.latest!
const spiritMost = (id: string): number => botanicalById(id).spiritPercent.max
const { data: plan } = await testDesk().jsonOf('/plan of:1 kg raspberries spirit:1 l 95%')

/** Every figure of an entry: those that core knows, and those that only its source has. */
const FIGURES: Partial<Record<HandbookId, { readonly core?: readonly number[]; readonly cited?: readonly number[] }>> =
  {
    jar_fill: { cited: [85, 90] },
    steep_too_long: { core: [KEEPS_ABV_PERCENT, latestDays('sour_cherry'), latestDays('plum')] },
    keep_green: { core: [GREEN_FADES.fastestNearPercent, spiritMost('basil')], cited: [90] },
    peel_how: { core: [...zest.strips, ...zest.grated] },
    stones_whole: { core: [latestDays('sour_cherry'), latestDays('plum')] },
    green_walnut_when: { cited: [24] },
    old_enough: { cited: [18, 20, 21] },
    sugar_crystals: { cited: [350] },
    which_spirit: { core: [spiritMost('lemon_peel'), botanicalById('raspberry').spiritPercent.min], cited: [90] },
    brown_spirit: { cited: [40] },
    // 70 % for dried herbs and ginger: J. Sci. Food Agric. 2016, 10.1002/jsfa.7822.
    dilute_first: { cited: [50, 70] },
    wine_base: { core: [KEEPS_ABV_PERCENT] },
    fruit_water: {
      core: [to(10, plan.infusionAbvPercent), Math.round(plan.infusionAbvPercentPlusMinus), DOUBTFUL_INFUSION_PERCENT],
      cited: [95],
    },
    kept_back: {
      core: [100 * (FILTER_SHARE.value - FILTER_SHARE.plusMinus), 100 * (FILTER_SHARE.value + FILTER_SHARE.plusMinus)],
    },
    dry_sugar: { cited: [80, 95] },
    honey: { core: [to(0.1, kgPerKg('honey')), to(100, 1000 * kgPerKg('honey') - 1000)] },
    other_syrups: {
      core: [to(0.1, kgPerKg('maple_syrup')), to(0.1, kgPerKg('agave_syrup')), to(0.05, kgPerKg('golden_syrup'))],
    },
    sweeteners: { core: [KEEPS_ABV_PERCENT] },
    sweetness_trial: { cited: [100] },
    // Shop liqueurs: CoFID 2021, 24.4 and 32.8 g/100 ml as monosaccharide. Sorrento: its file of 2012.
    sweetness_words: { core: [dry, everyday, rich, to(10, 244 / 1.05), to(10, 328 / 1.05)], cited: [200, 350] },
    syrup_ratio: { core: [Math.round(gPerCup)] },
    volumes_shrink: { core: [Math.round(volumeMl(halfAndHalf))], cited: [95, 47.5] },
    // The burn grows by half from 32 to 48 %: Nolden and Hayes (2015).
    usual_strength: { core: [USUAL.abvPercent], cited: [25, 32] },
    weak_keeps: { core: [KEEPS_ABV_PERCENT, LEAST_ABV_PERCENT] },
    hydrometer_temperature: { cited: [20, 78, 26] },
    refractometer: { core: [REFRACTOMETER_PLUS_MINUS_BRIX] },
    // 70 degrees of British proof: 70 × 4/7.
    proof: {
      core: [Math.round(abvPercentFromUsProof(190)), Math.round(abvPercentFromUsProof(80)), 70 * (4 / 7)],
      cited: [190, 80, 70],
    },
    label_strength: { core: [strengthTolerance.eu.percent, strengthTolerance.eu.withPlantsPercent!] },
    citrus_cloud: { cited: [25, 35] },
    anise_cloud: { cited: [38] },
    freezer_keep: {
      core: [-FREEZER_C, Math.round(leastAbvIceFree(200)), Math.round(leastAbvIceFree(0))],
      cited: [200],
    },
    freezes: {
      core: [-FREEZER_C, Math.round(leastAbvIceFree(200)), Math.round(leastAbvIceFree(0))],
      cited: [200],
    },
    serve_temperature: { cited: [3, 7, 15] },
    serving_size: { cited: [25, 40, 500] },
    keep_time: { core: [KEEPS_ABV_PERCENT] },
    fridge: { core: [KEEPS_ABV_PERCENT] },
    label_date: { cited: [10] },
    clean_bottles: { core: [KEEPS_ABV_PERCENT] },
    flame: { core: [to(10, STRONG_PERCENT)] },
    strong_neat: { core: [MOST_NEAT_PERCENT, USUAL.abvPercent] },
    garlic: { core: [KEEPS_ABV_PERCENT] },
    diabetes: { core: [Math.round(0.03 * everyday)] },
    egg: { cited: [20, 71] },
    name_limoncello: { core: [liqueurLaw.abvPercent.least!, liqueurLaw.invertGPerL.least!] },
    posting: { cited: [70] },
    tasting_table: { core: [10 * 50], cited: [10] },
    cost_rule: { core: [USUAL.abvPercent], cited: [95, 40] },
    presents: { cited: [100, 250] },
    cups: {
      core: [
        ...['1 cup', '1 fl oz', '1 tbsp', '1 tsp', '1 pint', '1 imperial pint', '1 fifth'].map(mlOf),
        ...[mlOf('1 quart') / mlOf('1 cup'), Math.floor(mlOf('1 fifth') / mlOf('1 cup'))].map(Math.round),
        ...[mlOf('1 handle') / 1000, Math.floor(mlOf('1 handle') / mlOf('1 cup'))],
        Math.round(mlOf('1 handle') / mlOf('1 quart')),
      ],
    },
    no_scales: {
      core: [
        gPerCup / 16,
        Math.round(gPerCup),
        to(10, MUG_ML * POURED_SUGAR_G_PER_ML),
        to(50, 1000 * POURED_SUGAR_G_PER_ML),
      ],
    },
    weigh_or_jug: { core: [measuredOut(100).plusMinus], cited: [770, 920] },
  }

const rounded = (numbers: readonly number[]): readonly number[] =>
  [...new Set(numbers.map((each) => Number(each.toFixed(3))))].sort((one, other) => one - other)

describe('a figure in the handbook', () => {
  it.each(Object.keys(handbook) as HandbookId[])('is core’s own, or is one that its source has: %s', (id) => {
    const { core = [], cited = [] } = FIGURES[id] ?? {}
    expect(rounded(numbersIn(handbook[id].text))).toEqual(rounded([...core, ...cited]))
  })

  it('is mostly core’s', () => {
    const all = Object.values(FIGURES)
    const known = all.flatMap(({ core = [] }) => core).length
    expect(known).toBeGreaterThan(all.flatMap(({ cited = [] }) => cited).length)
  })
})
