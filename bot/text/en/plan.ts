import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import type { FoodNote } from '../../../core/botanical/food.ts'
import type { Format } from '../format.ts'
import type { Feature, Part } from '../language.ts'
import type { LaterSaid } from '../messages/ingredients.ts'
import type { BatchSaid, PlanMessages, PlanNamed } from '../messages/plan.ts'
import { cautions } from './calculate.ts'
import { capital, counted, listed, MONTHS, plural } from './phrases.ts'
import { monthsText, shortName } from './plant-words.ts'
import { sweetenerName } from './sweeteners.ts'
import {
  bottlesText,
  daysText,
  laterListed,
  plantName,
  plantText,
  spiritText,
  sweeteningTexts,
  vesselText,
} from './words.ts'

/** `700 ml of 95 % vol spirit, 84 g ginger root and 300 g sugar`. */
export const buyText = ({ spirits, plants, sweetenings }: BatchSaid, format: Format): string =>
  listed([
    ...spirits.map((spirit) => spiritText(spirit, format)),
    ...plants.map((plant) => plantText(plant, format)),
    ...sweeteningTexts(sweetenings, format),
  ])

/** `fills 4 bottles of 500 ml`. */
export const fillsText = ({ bottles, volumeMl }: BatchSaid, format: Format): string => {
  const filled = bottlesText(bottles, format)
  return filled === '' ? `makes about ${format.volume(volumeMl)}, less than a bottle` : `fills ${filled}`
}

const laterText = (later: readonly LaterSaid[], format: Format): string =>
  later.length === 0 ? '' : `; later add ${laterListed(later, format)}`

/** First line of a plan: what to buy, when to strain, when it is ready, what it fills. */
const planHeadlines = {
  plan: (values, format) => {
    const { strainFrom, strainBy, ready } = values
    const strain = values.isHours
      ? `within hours ${daysText(strainBy, strainBy, format)}`
      : daysText(strainFrom, strainBy, format)
    return `Buy ${buyText(values, format)}${laterText(values.later, format)}; strain ${strain}, ready by ${format.day(ready)}; ${fillsText(values, format)}.`
  },
} satisfies Part<PlanMessages['headlines']>

/** A teaspoon stays in the jug. */
const LEAST_LEFT_ML = 5

/** The left of a plan's table. */
const planRows = {
  plan_in_jar: () => 'In the jar',
  plan_water_first: () => 'Water first',
  plan_jar: () => 'Jar',
  plan_steeping: () => 'While steeping',
  plan_add_later: () => 'Add later',
  plan_taste: () => 'Taste from',
  plan_strain: () => 'Strain',
  plan_strained: () => 'Strained',
  plan_sweeten: () => 'Sweeten',
  plan_syrup: () => 'Syrup expected',
  plan_stir_in: () => 'Stir in',
  plan_rest: () => 'Filter, rest',
  plan_ready: () => 'Ready',
  plan_bottles: () => 'Bottles',
} satisfies Part<PlanMessages['rows']>
/** And its right. */
const planCells = {
  plan_in_jar: ({ spirits, plants, sweetenings }, format) =>
    [
      ...spirits.map((spirit) => spiritText(spirit, format)),
      ...plants.map((plant) => plantText(plant, format)),
      ...sweeteningTexts(sweetenings, format),
    ].join(' + '),
  plan_water_first: ({ waterMl, abvPercent }, format) =>
    `${format.volume(waterMl)}, to steep at ${format.plain(abvPercent, 1)} % vol`,
  plan_jar: ({ jarMl }, format) => `${vesselText(jarMl, format)}, at most 85 to 90 % full`,
  plan_steeping: ({ abvPercent, plantWaterG }, format) =>
    format.spread.strength(abvPercent) +
    `${plantWaterG.value < 0.5 ? '' : `; the plants bring about ${format.mass(plantWaterG)} water`}`,
  plan_add_later: ({ later }, format) =>
    later.map(({ id, day }) => `${plantName(id)} on ${format.day(day)}`).join(', '),
  plan_day: ({ day }, format) => format.day(day),
  plan_days: ({ from, to }, format) => daysText(from, to, format),
  plan_by: ({ day }, format) => `the day after straining, by ${format.day(day)}`,
  plan_strained: ({ infusionMl, infusionAbvPercent, keptBackMl }, format) =>
    `${format.spread.volume(infusionMl)} at ${format.strength(infusionAbvPercent)};` +
    ` the plants keep about ${format.volume(keptBackMl)}`,
  plan_syrup: ({ sweetener, sugarG, waterMl, syrupG }, format) =>
    syrupG !== null
      ? `about ${format.mass(sugarG)} ${sweetenerName(sweetener)} in ${format.volume(waterMl)} water (${format.mass(syrupG)})`
      : sugarG.value === 0
        ? `about ${format.volume(waterMl)} water, no more sugar`
        : waterMl.value === 0
          ? `${format.mass(sugarG)} ${sweetenerName(sweetener)}, no water`
          : `about ${format.mass(sugarG)} ${sweetenerName(sweetener)} and ${format.volume(waterMl)} water, no syrup`,
  plan_rest: ({ restDays }) =>
    `rest ${counted(restDays, 'day')}; after the first 1 or 2, in the cold, filter or decant`,
  /** Without a best before: too weak for a year in a cupboard. */
  plan_ready: (values, format) => {
    const { ready, bestBefore, isForWeeks } = values
    if (isForWeeks) return `by ${format.day(ready)}; in the fridge all the time, for weeks`
    const how = bestBefore === null ? 'once open, in the fridge' : `best before about ${format.day(bestBefore)}`
    return `by ${format.day(ready)}; ${how}`
  },
  plan_bottles: ({ bottles, leftoverMl }, format) =>
    `${bottlesText(bottles, format) || 'none full'}` +
    `${leftoverMl.value >= LEAST_LEFT_ML ? `, ${format.volume(leftoverMl)} left over` : ', nothing left over'}`,
} satisfies Part<PlanMessages['cells']>
/** `common practice`, or from memory where that is all that is known of one of them. */
const habitOf = (ids: readonly string[]): string =>
  ids.some((id) => botanicalById(id).dose.trust === 'memory') ? 'from memory' : 'common practice'
const perLitre = (gPerL: number, format: Format): string => `${format.plain(gPerL, gPerL < 10 ? 1 : 0)} g`

/** What a maker should know of a planned batch. */
export const planNotes = {
  plan_assumed: ({ abvPercent, sugarGPerL, bottleMl }, format) => {
    const taken = [
      ...(abvPercent === null ? [] : [`${format.plain(abvPercent, 1)} % vol`]),
      ...(sugarGPerL === null ? [] : [`${format.plain(sugarGPerL, 0)} g/L of sugar`]),
      ...(bottleMl === null ? [] : [`bottles of ${vesselText(bottleMl, format)}`]),
    ]
    return `You did not say, so I took ${listed(taken)}.`
  },
  plan_nearest: () => 'That is the nearest to the usual 30 % vol and 190 g/L that this infusion can be.',
  plan_form_taken: ({ forms }) =>
    `I took ${listed(forms.map(({ id, state }) => `${plantName(id)} as ${state}`))}; say so if it is not.`,
  plan_corrected: ({ ids }) => `I read ${listed(ids.map(plantName))}.`,
  plan_days_known: () => 'I’ve left out your days: I know how long these plants take. Strain when you like it.',
  plan_zest: () =>
    'The zest of one fruit differs by 40 % from the next (derived): weigh what you peel, and plan again with grams.',
  plan_pieces: () => 'Pieces differ, and their weights are common practice or estimated: weigh them if you can.',
  plan_typical: ({ ids }) =>
    `The usual amount of ${listed(ids.map(plantName))} is ${habitOf(ids)}, grams for each litre of steeping spirit.`,
  plan_more_than_usual: ({ id, gPerL, limitGPerL }, format) =>
    `${perLitre(gPerL, format)} of ${plantName(id)} in a litre of spirit is more than most take (up to ${perLitre(limitGPerL, format)}): taste early.`,
  plan_less_than_usual: ({ id, gPerL, limitGPerL }, format) =>
    `${perLitre(gPerL, format)} of ${plantName(id)} in a litre of spirit is less than most take (from ${perLitre(limitGPerL, format)}): it will be faint.`,
  plan_far_off: ({ plant, pouredMl, usualG }, format) => {
    const share = plant.massG.value / usualG
    const times =
      share > 1 ? `${format.plain(share, 0)} times` : `only ${format.plain(100 * share, share < 0.01 ? 1 : 0)} % of`
    return `${plantText(plant, format)} in ${format.pour(pouredMl)} of spirit is ${times} the usual (${format.mass({ value: usualG, plusMinus: usualG / 10 })}); typed right?`
  },
  plan_above_wise: ({ id, gPerL, limitGPerL }, format) =>
    `${perLitre(gPerL, format)} of ${plantName(id)} in a litre of spirit is above the ${perLitre(limitGPerL, format)} that is wise.`,
  plan_caffeine: ({ mg, mostMg, glassMl }) =>
    `A ${glassMl} ml glass of it has up to ${mg} mg of caffeine. ${mostMg} mg at once is the most for an adult.`,
  plan_capped: ({ ids }) =>
    `I took less than the usual ${listed(ids.map(plantName))}, to stay under the limit for a finished drink.`,
  plan_spirit_usual: ({ id, lowPercent, highPercent, isTooStrong }, format) =>
    `For ${plantName(id)} most take spirit of ${format.plain(lowPercent, 0)} to ${format.plain(highPercent, 0)} % vol (common practice)${isTooStrong ? '; steep-at: dilutes it first' : '; yours is weaker'}.`,

  plan_hurried_rest: ({ restDays }) =>
    `The day you named leaves ${restDays} days of rest: it will taste harsh, and better later.`,
  plan_hurried_steep: ({ restDays }) =>
    `The day you named leaves a short steep and ${restDays} days of rest: taste before you strain, and expect it faint and harsh.`,
  plan_latest_start: ({ day }, format) => `It is in time if you start by ${format.day(day)}.`,
  plan_out_of_season: ({ month, plants }) =>
    `Out of season in ${MONTHS[month - 1]}, north of the equator (common practice): ` +
    `${listed(plants.map(({ id, months }) => `${shortName(id)} (${monthsText(months)})`))}; south of it the year is turned by six months.`,
  plan_empty: ({ empty, limitId, isPlantSaid, isSpiritSaid, isStrengthSaid }) => {
    const stay = `${empty === 1 ? 'One of your bottles stays' : `${empty} of your bottles stay`} empty`
    const spirit = isStrengthSaid
      ? 'say nothing of how much spirit there is (spirit:)'
      : 'say only how strong the spirit is (strength:), not how much there is (spirit:)'
    const ways = [
      ...(isPlantSaid ? ['say nothing of the plants you have (of:)'] : []),
      ...(isSpiritSaid ? [spirit] : []),
    ]
    const why = limitId === null ? '' : `, for want of ${plantName(limitId)}`
    return `${stay}${why}; ${listed(ways)}, to be told how much would fill ${plural(empty, 'it', 'them')}.`
  },

  /** Where sugar is in the jar, a hydrometer and /syrup, which takes the infusion as unsweetened, are both wrong. */
  plan_adjust: (values, format) =>
    'The strained liquid holds sugar already, so a hydrometer cannot read it. Measure how much there is, put that in, and type:' +
    ` /adjust liqueur:${Math.round(values.infusionMl)} ml strength:${format.plain(values.abvPercent, 1)}% sweetness:${Math.round(values.sugarGPerL)} g/L` +
    ` to-strength:${format.plain(values.toAbvPercent, 1)}% to-sweetness:${format.plain(values.toSugarGPerL, 0)} g/L`,
  plan_measure: ({ isSyrup }) =>
    isSyrup
      ? 'The syrup is what I expect; after straining, measure the liquid and ask /syrup for the real one.'
      : 'What is to be stirred in is what I expect; after straining, measure the liquid and ask /syrup for the real amounts.',
  plan_no_syrup: cautions.syrup_too_thick,
  plan_sugar_alone: cautions.sugar_alone,
  plan_care: ({ bulky }) =>
    `Keep the jar dark and closed, every plant under the liquid${bulky ? ' (press the leaves down)' : ''}, and shake it every day or two (common practice).`,
  plan_pith: () => 'Peel thinly: the white pith is bitter and soaks up spirit.',
  plan_crack: () =>
    'Crack the coffee rather than grind it: ground coffee turns bitter and is hard to filter (common practice).',
  plan_sugar_slow: () =>
    'So much sugar does not dissolve in strong spirit: shake it now and then, and stir what is left into the strained liquid.',
  plan_fruit_sugar: ({ sugarG }, format) =>
    `The plants bring about ${format.mass(sugarG)} of sugar of their own (estimated; counted as table sugar).`,
  plan_pectin: () => 'Fruit with pectin may gel or cloud in strong spirit: harmless; filter it cold.',
  plan_citrus_cloud: () =>
    'Peel oil clouds somewhere between about 75 and 45 % vol as it is diluted; at 25 to 35 it is normally cloudy and harmless (no measured figure).',
  plan_anethole_cloud: () => 'Anise oils cloud when water is added: harmless.',
  plan_green: () => 'The green fades, fastest near 40 % vol: keep it dark and cold, and expect olive-brown.',
  plan_spent: ({ keptBackMl, rinse }, format) =>
    `The spent plants hold about ${format.volume(keptBackMl)} of strong liquid${rinse === null ? '.' : `: rinse them with part of the ${rinse === 'syrup' ? 'syrup’s water' : 'water that goes in'} and count it.`}` +
    ' A second steep of them is weaker and wants its own jar. They burn and intoxicate: no flame, no children, no animals.',
  plan_water: () => 'Take low-mineral water: hard water can leave a haze.',
  plan_estimates: ({ memoryIds }) =>
    'How much water the plants give, what they keep and what filters take are estimates' +
    `${memoryIds.length === 0 ? '' : `; the water in ${listed(memoryIds.map(plantName))} is from memory or estimated too`}.`,
  plan_law: () =>
    'Only taxed food spirit, never industrial, denatured, rubbing or fuel alcohol, and nothing here is distilling. Local law and your doctor come before anything I say.',
} satisfies Part<PlanMessages['notes']>

/** How far the numbers of a plan can be trusted. */
const planSure = {
  plan_expected: (values, format) =>
    `Expected, not measured: with ${values.isSyrup ? 'this syrup' : 'these amounts'} it comes out within ±${format.give.strength(values.abvPercent)} and ±${format.give.volume(values.volumeMl)} 19 times in 20.`,
} satisfies Part<PlanMessages['sure']>
/** In the maker's own words. */
const foodsText = ({ names }: PlanNamed): string => listed(names.map((name) => name.replace(/[“”]/g, '"')))

/** First line of a plan with a food that the catalogue has no amounts for. */
const planUnknownHeadlines = {
  plan_unknown: (values, format) => {
    const { strainOn } = values
    const strain =
      strainOn === null ? 'Say days: for a day to strain.' : `Strain on ${format.day(strainOn)}, as you said.`
    return `Buy ${buyText(values, format)}. ${strain} ${capital(fillsText(values, format))}.`
  },
} satisfies Part<PlanMessages['headlines']>

/** What a food can do to whoever drinks of it; from memory. */
const told: { readonly [Note in FoodNote]: string } = {
  kidney: 'never with kidney disease',
  allergen: 'it can set off an allergy, so tell whoever drinks it',
  gluten: 'it has gluten, so tell whoever drinks it',
  grapefruit: 'it changes how medicines work, so ask your pharmacist',
  medicines: 'it can act on medicines, so ask your pharmacist',
  pregnancy: 'not in pregnancy',
  epilepsy: 'not with epilepsy',
  aspirin: 'not with an aspirin allergy or blood thinners',
  cashew_kin: 'it can set off a cashew allergy',
  latex: 'it can set off a latex allergy',
  legume: 'it can set off a legume allergy',
  daisy: 'it can set off a daisy allergy',
  sulphites: 'it may have sulphites, so tell whoever drinks it',
  oil: 'never keep it in oil at room temperature',
  caffeine: 'it has caffeine',
  drowsy: 'it makes you drowsy, more so with alcohol',
  iodine: 'it has a lot of iodine, so not with thyroid trouble',
  oxalate: 'it has oxalate, so not with kidney stones',
  sunburn: 'the juice and sun burn skin',
  estragole: 'not for every day',
  a_little: 'use only a little',
  hairs: 'strain out the hairs through a cloth',
  spoils: 'it spoils in a day',
  waxed: 'use unwaxed, unsprayed fruit',
}

const WORST_FIRST = Object.keys(told) as readonly FoodNote[]

const planUnknownCautions = {
  plan_unknown: (values) => {
    const notes = WORST_FIRST.filter((note) => values.notes.includes(note))
    const said = notes.length === 0 ? 'ask about allergies before you pour' : notes.map((note) => told[note]).join('. ')
    return `${capital(foodsText(values))}: ${said.replace(/\. [a-z]/g, (text) => text.toUpperCase())}.`
  },
} satisfies Part<PlanMessages['cautions']>

const planUnknownNotes = {
  plan_unknown_yours: (values) =>
    `I’ve no figures for ${foodsText(values)}, so the amount and the days are yours. Taste often.`,
  plan_unknown_range: ({ waterPercent, keptMinMlPerG, keptMaxMlPerG }, format) =>
    `I don’t know how wet it is, so I used 0 to ${format.plain(waterPercent, 0)} % of water and` +
    ` ${format.plain(keptMinMlPerG, 1)} to ${format.plain(keptMaxMlPerG, 1)} ml kept by each gram (estimated). The ± covers that.` +
    ' Its own sugar isn’t counted.',
  plan_unknown_days: () => 'How long do you steep it? Say it with days:, and I’ll name the day to strain.',
} satisfies Part<PlanMessages['notes']>

/** What `/plan` says. */
export const planSentences = {
  headlines: { ...planHeadlines, ...planUnknownHeadlines },
  rows: planRows,
  cells: planCells,
  sure: planSure,
  notes: { ...planNotes, ...planUnknownNotes },
  cautions: planUnknownCautions,
} satisfies Feature<PlanMessages>
