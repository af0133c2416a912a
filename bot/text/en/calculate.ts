import type { LiquidProblems } from '../../../core/liquid/problems.ts'
import { type MaterialId, materialOf, USUAL_MATERIAL } from '../../../core/quantity/materials.ts'
import { exactly, type Measured } from '../../../core/quantity/measured/measured.ts'
import { digits } from '../../../core/quantity/measured/shown-digits.ts'
import type { RecipeProblems } from '../../../core/recipe/problems.ts'
import { measuredOut, pouredMl } from '../../../core/recipe/tool-precision.ts'
import type { Format } from '../format.ts'
import type { Feature, Part, Written } from '../language.ts'
import type { CalculateMessages, MadeDrink, SyrupSaid } from '../messages/calculate.ts'
import { isAre } from './jar-verbs.ts'
import { articleOf, capital, countWord, listed, plural } from './phrases.ts'
import { plannedFillText } from './planned-bottles.ts'
import { fillerName, sweetenerName, sweetenerShort, sweetenerText } from './sweeteners.ts'
import { asTyped, bottlesFilled, bottlesText, fromFreezer, inFreezer, wishedStrength } from './words.ts'

/** As far as it is known, and no finer than a cook rounds. */
export const aboutVolume = ({ value, plusMinus }: Measured, format: Format): string =>
  format.round.volume(digits(value, plusMinus).roundedValue)

export const aboutMass = ({ value, plusMinus }: Measured, format: Format): string =>
  format.round.mass(digits(value, plusMinus).roundedValue)

/** The same of what sweetens. */
export const aboutSweetener = ({ value, plusMinus }: Measured, material: MaterialId, format: Format): string =>
  sweetenerText(digits(value, plusMinus).roundedValue, material, format)

/** `2.51 l at 30 %, 250 g/L: five 500 ml bottles`. */
const madeText = (
  { volumeMl, abvPercent, sugarGPerL, bottles = [], short = null }: MadeDrink,
  format: Format,
): string => {
  const sweet = sugarGPerL.value >= 1 ? `, ${format.round.sweet(sugarGPerL.value)}` : ''
  const filled = short === null ? bottlesFilled(bottles, format) : plannedFillText(short, format)
  return `${aboutVolume(volumeMl, format)} at ${format.round.strength(abvPercent)}${sweet}${filled === '' ? '' : `: ${filled}`}`
}

/** A sentence of its own, and what a freezer does to it. */
const makesText = (values: MadeDrink, format: Format): string =>
  `Makes ${madeText(values, format)}. ${values.isFreezerAsked === true ? `It ${inFreezer(values.freezer, format)}.` : fromFreezer(values.freezer)}`

/** `dry`, `medium sweet (190 g/L)`; in a US kitchen the word alone. */
export const sweetnessWords = (sugarGPerL: number, format: Format): string => {
  if (sugarGPerL < 1) return 'no sugar'
  const word = sugarGPerL < 155 ? 'fairly dry' : sugarGPerL < 230 ? 'medium sweet' : 'very sweet'
  const exact = format.round.sweet(sugarGPerL)
  return /\d/.test(exact) ? `${word} (${exact})` : exact
}

const some = (amount: Measured, text: string): string[] => (amount.value > 0 ? [text] : [])

/** What to do with sugar and water. */
function addition(
  {
    filler,
    sweetener,
    sugarG,
    waterMl,
    syrupG,
  }: Pick<SyrupSaid, 'filler' | 'sweetener' | 'sugarG' | 'waterMl' | 'syrupG'>,
  into: string,
  format: Format,
): string {
  const [sugar, water] = [
    sweetenerText(sugarG.value, sweetener, format),
    `${format.round.volume(waterMl.value)} ${fillerName(filler)}`,
  ]
  if (sugarG.value === 0 && waterMl.value === 0) return 'Nothing to add: it’s already where you want it.'
  if (sugarG.value === 0) return `Stir ${water} into ${into}.`
  if (waterMl.value === 0) return `Stir ${sugar} straight into ${into} and shake daily until it’s gone.`
  if (syrupG === null) return `Stir ${sugar} and ${water} straight into ${into} and shake daily until the sugar’s gone.`
  return `Dissolve ${sugar} in ${water}, cool it, stir it into ${into}.`
}

/** First lines: the answer. */
const headlines = {
  makes: makesText,

  syrup: (values, format) => {
    const into =
      values.infusionMl !== null
        ? `${format.round.volume(values.infusionMl.value)} of the infusion`
        : values.typed === undefined
          ? 'the infusion'
          : `your ${asTyped(values.typed)}`
    return addition(values, into, format)
  },

  syrup_expected: ({ name, filler, sweetener, sugarG, waterMl, syrupG }, format) => {
    const sugar = sweetenerText(sugarG.value, sweetener, format)
    const water = `${format.round.volume(waterMl.value)} ${fillerName(filler)}`
    const once = `once ${name} ${isAre(name)} strained`
    if (sugarG.value === 0 && waterMl.value === 0) return `Nothing, ${once}: it’ll be where you want it.`
    if (sugarG.value === 0) return `About ${water}, ${once}.`
    if (waterMl.value === 0) return `About ${sugar}, ${once}.`
    return `About ${sugar} ${syrupG === null ? 'and' : 'in'} ${water}, ${once}.`
  },
  syrup_expected_of: ({ abvPercent, sugarGPerL }, format) =>
    `That’s for ${format.wished.strength(abvPercent, 0)} and ${format.wished.sweetness(sugarGPerL, 0)}. Measure what you strain and I’ll give you the exact amounts.`,

  styles: ({ count, typed, infusionMl, abvPercent }, format) =>
    `${capital(countWord(count))} ${plural(count, 'way')} to finish your ${typed === null ? aboutVolume(infusionMl, format) : asTyped(typed)} at ${format.round.strength(abvPercent)}:`,

  dilute: ({ waterMl, abvPercent }, format) =>
    waterMl.value === 0
      ? `Nothing to add: it’s already at ${format.round.strength(abvPercent)}.`
      : `Stir in ${format.round.volume(waterMl.value)} water.`,

  adjust: (values, format) => {
    const parts = [
      ...some(values.sugarG, sweetenerText(values.sugarG.value, values.sweetener, format)),
      ...some(values.waterMl, `${format.round.volume(values.waterMl.value)} water`),
      ...some(values.spiritMl, `${format.round.volume(values.spiritMl.value)} spirit`),
    ]
    const what = parts.length === 0 ? 'Nothing to add: it’s already where you want it.' : `Stir in ${listed(parts)}.`
    return `${what} ${makesText(values, format)}`
  },
} satisfies Part<CalculateMessages['headlines']>

/** The grams of what is poured, to the same step. */
function waterMass(waterMl: Measured, waterG: Measured, format: Format): string {
  const massG = (pouredMl(waterMl.value) * waterG.value) / waterMl.value
  return format.mass({ value: massG, plusMinus: measuredOut(massG).plusMinus })
}

/** What stands on the left of a table. */
const rows = {
  infusion: () => 'Infusion',
  sugar: () => 'Sugar',
  water: () => 'Water',
  syrup: () => 'Syrup',
  spirit: () => 'Spirit',
  volume: () => 'Makes',
  strength: () => 'Strength',
  sweetness: () => 'Sweetness',
  alcohol: () => 'Alcohol',
  freezes: () => 'Freezes from',
  dry: () => 'Dry',
  everyday: () => 'Everyday',
  rich: () => 'Rich',
  light: () => 'Light',
  usual: () => 'Usual',
  strong: () => 'Strong',
} satisfies Part<CalculateMessages['rows']>

/** What stands on the right. */
const cells = {
  pour: ({ volumeMl }, format) => format.pour(volumeMl.value),
  weigh: ({ massG, sweetener }, format) =>
    `${format.weigh(massG.value)}${sweetener === USUAL_MATERIAL ? '' : ` ${sweetenerName(sweetener)}`}`,
  volume_spread: ({ volumeMl }, format) => format.spread.volume(volumeMl),
  mass: ({ massG }, format) => format.mass(massG),
  water: ({ filler = null, waterMl, waterG }, format) =>
    waterMl.value === 0
      ? format.pour(0)
      : `${format.pour(waterMl.value)}${filler === null ? '' : ` ${fillerName(filler)}`} = ${waterMass(waterMl, waterG, format)}`,
  syrup: ({ syrupMl, syrupG }, format) => `${format.weigh(syrupG.value)} = ${format.pour(syrupMl.value)}`,
  spirit: ({ spiritMl, abvPercent }, format) =>
    `${format.pour(spiritMl.value)} of ${wishedStrength(abvPercent, format)}`,
  strength_spread: ({ abvPercent }, format) => (abvPercent.value === 0 ? 'none' : format.spread.strength(abvPercent)),
  sweetness_spread: ({ sugarGPerL }, format) => (sugarGPerL.value === 0 ? 'none' : format.spread.sweetness(sugarGPerL)),
  freezes: ({ freezesAtC, freezer }, format) =>
    freezesAtC.value < -25
      ? `below ${format.temperature({ value: -25, plusMinus: 0 })}: ${inFreezer(freezer, format)}`
      : `about ${format.temperature(freezesAtC)}${freezesAtC.plusMinus < 0.5 ? '' : ` ± ${format.give.temperature(freezesAtC)}`}: ${inFreezer(freezer, format)}`,
  style_short: (values, format) => {
    const added = [
      ...(values.infusionMl === null ? [] : [`${format.round.volume(values.infusionMl.value)} of it`]),
      ...some(values.sugarG, sweetenerShort(values.sugarG.value, values.sweetener, format)),
      ...some(values.waterMl, `${format.round.volume(values.waterMl.value)} ${fillerName(values.filler)}`),
    ]
    const what = added.length === 0 ? 'nothing to add' : added.join(', ')
    return `${what}: ${aboutVolume(values.volumeMl, format)} at ${format.round.strength(values.abvPercent)}`
  },
  style: (values, format) =>
    `${format.weigh(values.sugarG.value)} ${sweetenerName(values.sweetener)}, ${format.pour(values.waterMl.value)} ${fillerName(values.filler)}:` +
    ` ${format.volume(values.volumeMl)} at ${format.strength(values.abvPercent)}, ${format.sweetness(values.sugarGPerL)}, ${inFreezer(values.freezer, format)}`,
} satisfies Part<CalculateMessages['cells']>

/** How far the numbers can be trusted. */
const sure = {
  spread: (values, format) => {
    const parts = [
      ...(values.abvPercent.value > 0 ? [`±${format.give.strength(values.abvPercent)}`] : []),
      ...(values.sugarGPerL.value > 0 ? [`±${format.give.sweetness(values.sugarGPerL)}`] : []),
    ]
    return `Good to about ${listed(parts)} with a kitchen jug and scale${values.byVolume ? ', and better if you weigh' : ''}.`
  },
} satisfies Part<CalculateMessages['sure']>

/** Less than a glass is not worth a word, ml. */
const LEAST_LEFT_ML = 20

/** What a maker should know, besides the answer. */
const notes = {
  adjust_bottles: ({ bottles, leftoverMl }, format) => {
    const filled = bottlesText(bottles, format)
    return leftoverMl < LEAST_LEFT_ML
      ? `Makes ${filled}.`
      : `Makes ${filled}, ${format.round.volume(leftoverMl)} left over.`
  },
  adjust_try: ({ glassMl, spiritMl, spiritPercent, drink, waterMl, sugarG, sweetener }, format) => {
    const poured = (volumeMl: number): string => format.glass.volume(volumeMl)
    const sugar = format.glass.sugar(sugarG, materialOf(sweetener).pouredGPerMl)
    const parts = [
      ...(sugarG > 0 ? [`${sugar} ${sweetenerName(sweetener)}`] : []),
      ...(waterMl > 0 ? [`${poured(waterMl)} water`] : []),
      ...(spiritMl > 0 && spiritPercent !== null
        ? [`${poured(spiritMl)} of the ${format.wished.strength(spiritPercent, 1)} ${drink ?? 'spirit'}`]
        : []),
    ]
    return `Try it first: ${listed(parts)} in ${poured(glassMl)} of it.`
  },
  numbers_planned: ({ jar }) => `${jar} isn’t sweetened yet, so this goes by its plan.`,
  adjust_own_spirit: ({ spiritPercent, drink, line }, format) =>
    `I’ve gone by ${spiritPercent} % ${drink ?? 'spirit'}. For another: ${format.call(line)}`,
  bottle_named: ({ names }) => `I’ve read ${listed(names.map((name) => `“${name}”`))} as the name on the bottle.`,
  // Readings taken where the text left room for another.
  percent_vol: () => 'I’ve read the strength as percent by volume.',
  grams_per_litre: () => 'I’ve read the sweetness as grams of sugar in a litre.',
  us_measure: () => 'Cups, fluid ounces, pints, quarts and gallons are US ones here. For imperial write “imp pint”.',
  us_proof: () => 'Proof is US proof here: twice the percent, at 60 °F.',
  decimal_point: () => 'I’ve read the comma or point with three digits after it as a decimal point.',
  thousands_separator: () => 'I’ve read the comma or point with three digits after it as thousands.',
  sugar_ounces: () => 'Ounces of sugar are a weight here, 28.35 g each. “fl oz” would be a volume.',
  whole_fruit: () =>
    'That’s the weight of whole citrus, so I’ve counted the fruit and their peel. Weighed the peel alone? Say “peel”.',
  sugar_by_volume: () => 'A US cup of sugar weighs about 200 g (USDA), give or take 10 %.',
  volume_at_20: () => 'I’ve brought the volume to 20 °C, as read in a glass jug.',
  strength_at_20: () =>
    'I’ve brought the strength to 20 °C, as read on a glass hydrometer (one in proof is made for 60 °F).',
  strength_drifts: ({ abvPercent, line }, format) =>
    `That weakens it to ${format.round.strength(abvPercent)}. To keep the strength, say what spirit you have: ${format.call(line)}`,
  as_before: ({ what }) => `I’ve kept the ${what} as it is.`,
  unsweetened: () => 'How sweet is it now? I’ve assumed no sugar at all.',

  plain_parts: () =>
    'A part without a strength counts as having no alcohol, one without a sweetness as having no sugar.',

  flash_point: ({ lowC }, format) =>
    `Its vapour catches fire from about ${format.temperature({ value: lowC, plusMinus: 1 })}. Never heat it.`,

  // How it is done.
  syrup_by_weight: ({ syrupG }, format) =>
    `If you boil the syrup, top it up with water to ${format.weigh(syrupG.value)}: boiling loses water.`,
  strained_strength: () => 'I’ve read that as the strength of what you strained, not of the bottle you started with.',
  nothing_dissolved: () =>
    'That’s right if nothing is dissolved in it. Coffee, roots and fruit hide strength from a hydrometer.' +
    ' Tell me which plants and how much spirit went in, and I’ll allow for it.',
  strength_surprising: ({ abvPercent }, format) =>
    `From what went in I expected about ${format.round.strength(abvPercent)}. Is the number right?`,
  strength_expected: ({ abvPercent, line }, format) =>
    `Going by what went in, the strained liquid should have about ${format.round.strength(abvPercent)}. Got a hydrometer? Say what it shows: ${format.call(line)}`,
  fresh_plants: () => 'Is that from the bottle? Fresh plants weaken it: measure what you strained.',
  fresh_plants_why: () =>
    'Lemon peel is 82 % water, ginger 79, basil 92 (USDA). Going by the bottle, you’d add too much.',
  settle: () => 'Let it cool before you measure: it shrinks a little.',
  bounded: ({ leftMl }, format) =>
    `You need only part of it: keep back ${format.round.volume(leftMl)} of the infusion.`,
  sweet_reading: () =>
    'A hydrometer can’t read anything with sugar in it (10 g/L moves it by 2 to 3.5 %). Use the strength worked out here.',
} satisfies Part<CalculateMessages['notes']>

/** What can hurt, or spoil a batch. */
export const cautions = {
  note_names: ({ names }) =>
    `You’ve noted ${listed(names)}. If any of it went in, don’t taste it and don’t give it away.`,
  flame: () => 'Keep it away from the hob and any flame.',
  cool_first: () => 'Cool the syrup completely first.',
  not_neat: ({ abvPercent }, format) =>
    `Don’t drink it neat: at ${format.round.strength(abvPercent)} it burns mouth and throat. Dilute it first.`,
  syrup_too_thick: (values, format) =>
    `Skip the syrup: that water dissolves only about ${format.weigh(values.dissolvesG)} of the sugar. Put both straight in and shake daily until the sugar’s gone.`,
  sugar_alone: () => 'Put the sugar straight in and shake it daily until it’s gone. Don’t heat it.',
  may_crystallise: () => 'That’s close to as much sugar as stays dissolved: it may crystallise in the cold.',
  sugar_limit_not_known: () => 'That’s about as much sugar as will dissolve. Try a small amount first.',
  bottle_bursts: () => 'A full bottle can burst in the freezer: leave room in it, or keep it out.',
} satisfies Part<CalculateMessages['cautions']>

/** What a ready command does. */
const actions = {
  style: ({ abvPercent, sugarGPerL }, format) =>
    `Make it ${format.wished.strength(abvPercent, 1)}, ${format.wished.sweetness(sugarGPerL, 0)}`,
  start_jar: () => 'Start this jar',
  adjust_done: () => 'Once it’s in',
  adjust_sweet: () => 'It’s medium sweet',
} satisfies Part<CalculateMessages['actions']>

/** What the calculating commands say. */
export const calculateSentences = {
  headlines,
  rows,
  cells,
  sure,
  notes,
  cautions,
  actions,
} satisfies Feature<CalculateMessages>

const between = (low: number, high: number, unit: string, format: Format): string =>
  `${format.plain(low)} to ${format.plain(high)} ${unit}`

export const liquidProblems = {
  temperature_out_of_range: ({ tempC, lowC, highC }, format) =>
    `${format.temperature(exactly(tempC))} is outside what I can work with, ${between(lowC, highC, '°C', format)}. How warm is it?`,
  strength_out_of_range: ({ abvPercent }, format) =>
    `${format.plain(abvPercent)} % isn’t possible. How strong is it? It’s on the label.`,
  proof_out_of_range: ({ usProof }, format) =>
    `${format.plain(usProof)} proof isn’t possible. How strong is it? It’s on the label.`,
  sweetness_out_of_range: ({ sugarGPerL }, format) =>
    sugarGPerL < 0
      ? 'That’s less than no sugar. How sweet is it?'
      : `${format.wished.sweetness(sugarGPerL)} is more sugar than fits in a ${format.dose.each}. Is the number right?`,
  negative_volume: () => 'That’s less than nothing. How much is it?',
  negative_mass: () => 'That’s less than nothing. How much is it?',
  mass_fraction_out_of_range: ({ massFraction }, format) =>
    `${format.plain(100 * massFraction)} % by weight isn’t possible. How much is it?`,
  density_out_of_range: () => 'No mix of alcohol and water weighs that. Is the number right?',
  reading_out_of_scale: ({ readingPercent }, format) =>
    `No mix of alcohol and water shows ${format.plain(readingPercent)} % at that temperature. Did the hydrometer float free?`,
  readings_do_not_fit: ({ reading }) =>
    ({
      density: 'No liqueur reads like that on a hydrometer. Did it float free, and is it the right scale?',
      brix: 'No liqueur reads like both of these. Are the refractometer and the hydrometer swapped?',
      boiled: 'What’s left after boiling can’t be lighter than water. Are the two readings swapped?',
    })[reading],
  no_room_for_water: ({ abvPercent, sugarGPerL }, format) =>
    `${format.wished.strength(abvPercent, 1)} and ${format.wished.sweetness(sugarGPerL, 0)} don’t fit in the same litre. Which one shall I lower?`,
  no_sign_change: () => 'Sorry, I can’t work that out. The fault is mine, not yours.',
  no_convergence: () => 'Sorry, I can’t work that out. The fault is mine, not yours.',
} satisfies Written<LiquidProblems>

const percent = (value: number, format: Format) => `${format.plain(value, 1)} %`

const ratio = (value: number, format: Format) => `${format.plain(value, 2)}:1`

/** `an 82 %`, `a 2:1`. */
const one = (number: string) => `${articleOf(number)} ${number}`

/** Why a recipe cannot be, and the nearest that can. */
export const recipeProblems = {
  sugar_crystallises: ({ abvPercent, largestGPerL }, format) =>
    `That much sugar won’t stay dissolved at ${percent(abvPercent, format)}. Stay under about ${format.wished.sweetness(largestGPerL, 0)}, or make it weaker.`,
  water_only_lowers: ({ abvPercent, toAbvPercent }, format) =>
    `Water can’t take ${percent(abvPercent, format)} up to ${percent(toAbvPercent, format)}. How strong should it be?`,
  infusion_too_weak: (values, format) => {
    const { infusionAbvPercent: own, toAbvPercent, toSugarGPerL, line = null } = values
    const isSweet = values.isSweetnessNamed && toSugarGPerL > 0
    const sweet = isSweet ? ` with ${format.round.sweetness(toSugarGPerL)}` : ''
    const why = `It’s too weak for that: ${percent(own, format)} can’t become ${percent(toAbvPercent, format)}${sweet}.`
    if (line === null) return `${why} Use stronger spirit.`
    const most = /to-strength:(\S+)/.exec(line)?.[1]
    // Plants bring water.
    const more = line.startsWith('/plan ') ? ' For more, use stronger spirit or steep less in it.' : ''
    return most === undefined
      ? `${why}${more} This works: ${line}`
      : `${why}${more} At most ${most.replace('%', '\u00a0%')}: ${line}`
  },
  already_sweeter: ({ sugarGPerL, toSugarGPerL }, format) => {
    const [wanted, own] = [format.wished.sweetness(toSugarGPerL, 0), format.round.sweetness(sugarGPerL)]
    // Where rounding hides which is the sweeter, every gram is told.
    const is = own === wanted ? format.wished.sweetness(sugarGPerL, 0) : own
    return `It’s already sweeter than ${wanted} (${is}), and you can’t take sugar out. How sweet should it be?`
  },
  syrup_not_sweet_enough: ({ toSugarGPerL, sugarPerWater, line }, format) =>
    `${capital(one(ratio(sugarPerWater, format)))} syrup isn’t sweet enough for ${format.wished.sweetness(toSugarGPerL, 0)}. Use more sugar to the water${line == null ? '.' : `: ${line}`}`,
  sweetener_too_thin: ({ toSugarGPerL }, format) =>
    `That sweetener is too thin for ${format.wished.sweetness(toSugarGPerL, 0)}. Use sugar, or make it less sweet.`,
  filler_too_sweet: ({ toSugarGPerL, leastGPerL, line }, format) =>
    `That much juice alone makes it ${format.wished.sweetness(leastGPerL, 0)}, sweeter than ${format.wished.sweetness(toSugarGPerL, 0)}. Use less of it, or ask for` +
    ` that${line == null ? '.' : `: ${line}`}`,
  targets_clash: ({ sugarPerWater, neededSugarPerWater }, format) =>
    `That needs ${neededSugarPerWater === null ? 'sugar alone, no water' : neededSugarPerWater === 0 ? 'water alone, no sugar' : `${one(ratio(neededSugarPerWater, format))} syrup`}, not ${ratio(sugarPerWater, format)}.` +
    ' Leave out strength, sweetness or ratio.',
  adjust_needs_spirit: ({ line }) =>
    `You need some spirit for that. How strong is yours?${line == null ? '' : ` For example: ${line}`}`,
  adjust_spirit_too_weak: ({ spiritAbvPercent, strongestAbvPercent }, format) =>
    `${percent(spiritAbvPercent, format)} spirit isn’t strong enough for that: you’d stay under ${percent(strongestAbvPercent, format)}.` +
    ' Have you got stronger spirit?',
  adjust_keeps_sugar: ({ sugarGPerL }, format) =>
    `It has ${format.wished.sweetness(sugarGPerL, 0)} of sugar, and you can’t take that out. How sweet should it be?`,
} satisfies Written<RecipeProblems>
