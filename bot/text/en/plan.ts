import type { FoodNote } from '../../../core/botanical/food.ts'
import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import { USUAL } from '../../../core/recipe/plan/reach-targets.ts'
import { kitchenRounded } from '../../../core/recipe/tool-precision.ts'
import type { Format } from '../format.ts'
import type { Feature, Part } from '../language.ts'
import type { PlantSaid, SpiritSaid, SweeteningSaid, UnknownSaid } from '../messages/ingredients.ts'
import type { BatchAtHand, BatchSaid, PlanMakes, PlanMessages, PlanNamed } from '../messages/plan.ts'
import { aboutMass, aboutSweetener, aboutVolume, cautions, sweetnessWords } from './calculate.ts'
import { areWord, isMeasured, peeledText, pieceOrName, piecesText, plantName } from './cook-names.ts'
import {
  capital,
  counted,
  countWord,
  listed,
  MONTHS,
  monthText,
  partOfMonth,
  shortDayText,
  spanWords,
} from './phrases.ts'
import { monthsText, southern } from './plant-words.ts'
import { fillerName, sweetenerName } from './sweeteners.ts'
import {
  asTyped,
  bottlesFilled,
  daysText,
  drinkWord,
  fromFreezer,
  isSameDay,
  jarText,
  plantText,
  pouredMlOf,
  spiritText,
  sweeteningTexts,
  unknownName,
} from './words.ts'

/** Of a season that is told without its place. */
const ELSEWHERE = ' (half a year later south of the equator)'

/** `in May`, `June to July`. */
const monthsOf = (months: readonly number[]): string => {
  const text = monthsText(months)
  return text.includes(' to ') ? text : `in ${text}`
}

/** What plans it for its season; of several the first month that all are to be had in, if there is one. */
function startThen([first = [], ...others]: readonly (readonly number[])[]): string {
  const then = first.filter((month) => others.every((months) => months.includes(month)))
  const from = then.find((month) => !then.includes(month === 1 ? 12 : month - 1))
  return from === undefined ? '' : ` For then, say “start it in ${MONTHS[from - 1]}”.`
}

const aboutSweetenings = (sweetenings: readonly SweeteningSaid[], format: Format): readonly string[] =>
  sweetenings
    .filter(({ massG }) => massG.value > 0)
    .map((each) => {
      const volumeMl = pouredMlOf(each)
      if (each.typed !== undefined) return `${asTyped(each.typed)} ${sweetenerName(each.material)}`
      return volumeMl === null
        ? aboutSweetener(each.massG, each.material, format)
        : `${aboutVolume(volumeMl, format)} ${sweetenerName(each.material)}`
    })

const boughtThings = ({ spirits, plants, sweetenings }: BatchSaid, format: Format): readonly string[] => [
  ...plants.map((plant) => boughtText(plant, format)),
  ...spirits.map((spirit) => spiritText(spirit, format)),
  ...aboutSweetenings(sweetenings, format),
]

/** `10 unwaxed lemons, 1 l of 95 % spirit and 540 g sugar`. */
const buyText = (batch: BatchSaid, format: Format): string => listed(boughtThings(batch, format))

/** What is there: fruit whose peel goes in may be waxed. */
const hadThings = ({ spirits, plants, sweetenings }: BatchSaid, format: Format): readonly string[] => [
  ...plants.map((plant) =>
    plant.id !== null && plant.ofZest ? `${muchOf(plant, format)} (scrub off any wax)` : boughtText(plant, format),
  ),
  ...spirits.map((spirit) => spiritText(spirit, format)),
  ...aboutSweetenings(sweetenings, format),
]

/** `You have 1 l of 95 % spirit. Buy 10 unwaxed lemons and 540 g sugar.` */
function atHandText({ had, partly, buy, rest }: BatchAtHand, format: Format): string {
  const there = listed([...hadThings(had, format), ...partly])
  const lacking = [...boughtThings(buy, format), ...boughtThings(rest, format).map((thing) => `another ${thing}`)]
  if (lacking.length === 0) return `You have all you need: ${there}.`
  return there === '' ? `Buy ${listed(lacking)}.` : `You have ${there}. Buy ${listed(lacking)}.`
}

/** Nobody sells a half of a lemon. */
const whole = (plant: PlantSaid): PlantSaid =>
  plant.count === null || isMeasured(plant.unit) ? plant : { ...plant, count: Math.ceil(plant.count - WHOLE_ENOUGH) }

/** So little more of a fruit is not worth another. */
const WHOLE_ENOUGH = 0.1

/** What nobody weighed is bought by the round number. */
const asBought = (plant: PlantSaid | UnknownSaid, format: Format): PlantSaid | UnknownSaid =>
  plant.id === null || plant.typed !== undefined ? plant : { ...plant, typed: aboutMass(plant.massG, format) }

const isByCup = (plant: PlantSaid | UnknownSaid): plant is PlantSaid => plant.id !== null && plant.unit === 'cup'

const boughtText = (plant: PlantSaid | UnknownSaid, format: Format): string => {
  const text = boughtAs(plant, format)
  // What a cup holds is assumed: a US cup, loosely filled.
  return isByCup(plant) ? `${text} (about ${aboutMass(plant.massG, format)})` : text
}

const boughtAs = (plant: PlantSaid | UnknownSaid, format: Format): string =>
  (plant.id === null ? null : piecesText(whole(plant), format, 'unwaxed ')) ??
  plantText(asBought(plant, format), format)

/** `19 lemons`, `30 g ginger`. */
const muchOf = (plant: PlantSaid, format: Format): string =>
  piecesText(plant, format) ?? `${aboutMass(plant.massG, format)} ${plantName(plant.id)}`

/** `five 500 ml bottles and 370 ml over`. */
export const fillsText = (
  { bottles, volumeMl, leftoverMl }: Pick<PlanMakes, 'bottles' | 'volumeMl' | 'leftoverMl'>,
  format: Format,
): string => {
  const filled = bottlesFilled(bottles, format)
  if (filled === '') return `about ${aboutVolume(volumeMl, format)}, not quite a bottle`
  return leftoverMl.value < LEAST_LEFT_ML ? filled : `${filled} and ${aboutVolume(leftoverMl, format)} over`
}

/** A teaspoon stays in the jug. */
const LEAST_LEFT_ML = 5

/** Of more things the liquids are a sentence of their own. */
const MOST_BOUGHT = 5

/** First lines of a plan: what to buy, what it makes. */
const planHeadlines = {
  plan: (values, format) => {
    const { spirits, plants, sweetenings, atHand } = values
    if (atHand !== null) return atHandText(atHand, format)
    // What a cup weighs is told with it.
    const cups = plants.filter(isByCup).length
    if (plants.length + cups + spirits.length + sweetenings.length <= MOST_BOUGHT)
      return `Buy ${buyText(values, format)}.`
    const none = { spirits: [], plants: [], sweetenings: [] }
    return `Buy ${buyText({ ...none, plants }, format)}. You’ll also need ${buyText({ ...none, spirits, sweetenings }, format)}.`
  },
  plan_short: ({ empty, filled, limitId }) => {
    const what = limitId === null ? 'The spirit' : `The ${plantName(limitId)}`
    const one = limitId === null || areWord(limitId) === 'is'
    const fills =
      filled === 0
        ? `${one ? 'doesn’t' : 'don’t'} fill even one`
        : `${one ? 'fills' : 'fill'} only ${countWord(filled)}`
    return `${what} ${fills} of your ${countWord(empty + filled)} bottles.`
  },
  plan_makes: (values, format) => {
    const { abvPercent, ready, start } = values
    const when = ready === null ? '' : ` Ready ${format.day(ready, `in ${partOfMonth(ready, start)}`)}.`
    return `Makes ${fillsText(values, format)}, at ${format.round.strength(abvPercent)}.${when}`
  },
} satisfies Part<PlanMessages['headlines']>

/** The left of a plan's table. */
const planRows = {
  plan_on: ({ day }) => shortDayText(day),
  plan_same_day: () => 'Same day',
  plan_when_done: () => 'When done',
  plan_jar: () => 'Jar',
  plan_steeping: () => 'Steeping',
  plan_add_later: () => 'Add later',
  plan_taste: () => 'Taste from',
  plan_strain: () => 'Strain',
  plan_strained: () => 'Strained',
  plan_syrup: () => 'Syrup',
  plan_stir_in: () => 'Stir in',
  plan_rest: () => 'Rest',
  plan_ready: () => 'Best before',
} satisfies Part<PlanMessages['rows']>

/** What they are all called, else spirit. */
const spiritName = (spirits: readonly SpiritSaid[]): string => {
  const [first, ...others] = [...new Set(spirits.map(drinkWord))]
  if (first !== undefined && first !== 'spirit' && others.length === 0) return first
  return spirits.length === 1 ? 'spirit' : 'spirits'
}

const nameOf = (plant: PlantSaid | UnknownSaid): string =>
  plant.id === null ? unknownName(plant.name) : pieceOrName(plant)

/** `Peel the lemons thinly, no bitter pith: about 110 g.` */
const peelText = (peeled: readonly PlantSaid[], format: Format): string => {
  const fruit = listed(peeled.map(({ id, count }) => peeledText(id, count ?? 2)))
  const masses = peeled.map(({ massG }) => aboutMass(massG, format))
  return `Peel the ${fruit} thinly, no bitter pith: about ${listed(masses)}.`
}

const isPeeled = (plant: PlantSaid | UnknownSaid): plant is PlantSaid => plant.id !== null && plant.ofZest

/** And its right. */
const planCells = {
  plan_put_in: ({ spirits, plants, sweetenings, waterMl, jarMl, isHours }, format) => {
    const peeled = plants.filter(isPeeled)
    const others = plants.filter((plant) => !isPeeled(plant))
    const spirit = spiritName(spirits)
    const first = waterMl === null ? [] : [`Mix the ${spirit} with ${format.round.volume(waterMl.value)} water.`]
    const peel = peeled.length === 0 ? [] : [peelText(peeled, format)]
    const sugar = sweeteningTexts(sweetenings, format)
    const jar = `a closed ${jarText(jarMl, format)} jar`
    const things = `the ${listed([...others.map(nameOf), spirit, ...sugar])}`
    const put =
      peeled.length > 0
        ? `Put ${others.length + sugar.length > 0 ? 'the peel' : 'it'} in ${jar} with ${things}, in the dark.`
        : `Put ${things} in ${jar}, in the dark.`
    return [...first, ...peel, put, isHours ? 'Shake it now and then.' : 'Shake every day or two.'].join(' ')
  },
  plan_add: ({ ids }) => `Add ${listed(ids.map((id) => `the ${plantName(id)}`))}.`,
  plan_taste_strain: ({ from, to, isTasted, isHours, infusionMl }, format) => {
    const much = `: about ${aboutVolume(infusionMl, format)}`
    const day = (on: CalendarDay): string => format.day(on, shortDayText(on))
    if (isHours) return `Taste every hour or two. Strain${to === null ? '' : ` by ${day(to)}`}${much}.`
    if (to === null) return `${isTasted ? 'Taste and strain' : 'Strain'}${much}.`
    if (from === null) return `Taste. Strain when you like it, by ${day(to)}${much}.`
    if (isSameDay(from, to)) return `Taste. Strain on ${day(to)}${much}.`
    const begin = from.month === to.month && from.year === to.year ? format.day(from, String(from.day)) : day(from)
    return `Taste. Strain when you like it, ${begin} to ${day(to)}${much}.`
  },
  plan_stir_in: ({ sweetener, filler, sugarG, waterMl, syrupG, isCloudy }, format) => {
    const [sugar, water] = [
      aboutSweetener(sugarG, sweetener, format),
      `${aboutVolume(waterMl, format)} ${fillerName(filler)}`,
    ]
    const cloudy = isCloudy ? ' It clouds.' : ''
    if (sugarG.value === 0 && waterMl.value === 0)
      return 'Nothing to add: it’s already as sweet and strong as you want it.'
    if (syrupG !== null) return `Stir in cooled syrup: ${sugar} in ${water}.${cloudy}`
    if (sugarG.value === 0) return `Stir in ${water}.${cloudy}`
    if (waterMl.value === 0) return `Stir in ${sugar}. Shake daily until it’s gone.`
    return `Stir in ${sugar} and ${water}. Shake daily until it’s dissolved.${cloudy}`
  },
  plan_ready_so: ({ freezer, isForWeeks }) =>
    isForWeeks ? 'Ready. Keep it in the fridge and drink it within weeks.' : `Ready. ${fromFreezer(freezer)}`,
  plan_jar: ({ jarMl }, format) => jarText(jarMl, format),
  plan_steeping: ({ abvPercent, plantWaterG }, format) =>
    `${format.spread.strength(abvPercent)}${plantWaterG.value < LEAST_TOLD_G ? '' : `, with ${format.mass(plantWaterG)} water from the plants`}`,
  plan_add_later: ({ later }, format) =>
    later.map(({ id, day }) => `${plantName(id)} on ${format.day(day)}`).join(', '),
  plan_day: ({ day }, format) => format.day(day),
  plan_days: ({ from, to }, format) => daysText(from, to, format),
  plan_strained: ({ infusionMl, infusionAbvPercent }, format) =>
    `${format.spread.volume(infusionMl)} at ${format.strength(infusionAbvPercent)}`,
  plan_syrup: ({ sweetener, filler, sugarG, waterMl, syrupG }, format) => {
    const water = `${format.volume(waterMl)} ${fillerName(filler)}`
    const sugar = `${format.mass(sugarG)} ${sweetenerName(sweetener)}`
    if (syrupG !== null) return `${sugar} in ${water}, ${format.mass(syrupG)} in all`
    if (sugarG.value === 0) return waterMl.value === 0 ? 'none' : `${water}, no more sugar`
    if (waterMl.value === 0) return `${sugar}, no ${fillerName(filler)}`
    return `${sugar} and ${water}, no syrup`
  },
  plan_rest: ({ restDays }) => counted(restDays, 'day'),
  plan_ready: ({ bestUntil, isForWeeks }) =>
    isForWeeks
      ? 'some weeks, in the fridge'
      : bestUntil === null
        ? 'unopened, it won’t spoil'
        : `about ${monthText(bestUntil)}`,
} satisfies Part<PlanMessages['cells']>
/** Below that no jug tells. */
const LEAST_TOLD_G = 10

const perLitre = (gPerL: number, format: Format): string => format.dose.mass(kitchenRounded(gPerL).value, 1)

const areThese = (ids: readonly string[]): string => listed(ids.map(plantName))

/** Why it is not what is usual. */
const endOf = (nearest: 'strength' | 'sweetness' | 'dryness', format: Format): string =>
  nearest === 'strength'
    ? `any nearer to ${format.wished.strength(USUAL.abvPercent)}`
    : nearest === 'sweetness'
      ? 'any sweeter'
      : 'any drier'

/** What a maker should know of a planned batch. */
export const planNotes = {
  plan_assumed: ({ abvPercent, sugarGPerL, nearest }, format) => {
    const gone = [
      ...(abvPercent === null ? [] : [format.round.strength(abvPercent)]),
      ...(sugarGPerL === null ? [] : [sweetnessWords(sugarGPerL, format)]),
    ]
    return `I’ve gone for ${gone.join(', ')}${nearest === null ? '' : `: it can’t get ${endOf(nearest, format)}`}.`
  },
  plan_own_syrup: ({ water, sugar, sweetener, filler, abvPercent, sugarGPerL }, format) => {
    const strength = format.round.strength(abvPercent)
    const [poured, sweetens] = [fillerName(filler), sweetenerName(sweetener)]
    if (water === 'own') {
      const made = `Your own ${poured} ${sugar === 'own' ? `and ${sweetens} make` : 'makes'} it ${strength}`
      const sweet = sugar === 'own' && sugarGPerL !== null ? `, ${sweetnessWords(sugarGPerL, format)}` : ''
      return `${made}${sweet}.${sugar === 'wished' ? ` For that sweetness I’ve changed the ${sweetens}.` : ''}`
    }
    return `For that strength I’ve changed the ${poured}${sugar === 'wished' ? `, and the ${sweetens} for that sweetness` : ''}.`
  },
  plan_form_taken: ({ forms }) =>
    `I’ve assumed ${listed(forms.map(({ id, state }) => `the ${plantName(id).replace(new RegExp(`^${state} `), '')} ${areWord(id)} ${state}`))}. If not, say so.`,
  plan_corrected: ({ ids }) => `I’ve read that as ${areThese(ids)}.`,
  plan_all_in: ({ ids, ...usual }) =>
    `Everything goes in at once. The ${listed(ids.map(plantName))} usually steep${ids.length === 1 ? 's' : ''} only ${spanWords(usual)}, so taste often.`,
  plan_diluted_first: ({ taken, enough }, format) =>
    `Diluting it first takes ${muchOf(taken, format)}. ${capital(muchOf(enough, format))} would do for as much taste in the glass.`,
  plan_days_said: (usual) => `The days are yours. Most steep these plants ${spanWords(usual)}. Taste as it goes.`,
  plan_zest: () => 'Fruit varies: weigh the peel if you can.',
  plan_pieces: () => 'Pieces vary: weigh them if you can.',
  plan_typical: ({ ids }) => `${capital(areThese(ids))}: the usual amount.`,
  plan_more_than_usual: ({ id, gPerL, limitGPerL }, format) =>
    `That’s a lot of ${plantName(id)}: ${perLitre(gPerL, format)} a ${format.dose.each}, where most use up to ${perLitre(limitGPerL, format)}. Taste early.`,
  plan_less_than_usual: ({ id, gPerL, limitGPerL }, format) =>
    `That’s not much ${plantName(id)}: ${perLitre(gPerL, format)} a ${format.dose.each}, where most use ${perLitre(limitGPerL, format)} or more. It will be faint.`,
  plan_sweeter_than_usual: ({ sugarGPerL, richGPerL }, format) =>
    `That’s very sweet: about ${format.dose.mass(sugarGPerL, 0)} of sugar in a ${format.dose.each}. Even a rich liqueur has about ${format.dose.mass(richGPerL, 0)}.`,
  plan_far_off: ({ plant, usualG }, format) => {
    const share = plant.massG.value / usualG
    const times =
      share > 1
        ? `${format.plain(share, 0)} times`
        : `only ${format.plain(100 * share, share < 0.01 ? 1 : 0)}\u00a0% of`
    return `${capital(plantText(plant, format))} is ${times} the usual ${aboutMass({ value: usualG, plusMinus: usualG / 10 }, format)}. Is the number right?`
  },
  plan_above_wise: ({ id, gPerL, limitGPerL }, format) =>
    `${perLitre(gPerL, format)} of ${plantName(id)} a ${format.dose.each} is more than is sensible. Keep to ${perLitre(limitGPerL, format)}.`,
  plan_caffeine: ({ mg, mostMg, glassMl }) =>
    `A ${glassMl} ml glass has up to ${mg} mg of caffeine. ${mostMg} mg at once is the most for an adult.`,
  plan_capped: ({ ids }) =>
    `I’ve used less than the usual ${areThese(ids)}, to stay under the limit for a finished drink.`,
  plan_spirit_usual: ({ ids, lowPercent, highPercent, diluted }, format) =>
    diluted !== null
      ? `Weaker spirit suits ${areThese(ids)} better (${strengthRange(lowPercent, highPercent, format)}). To dilute it first: ${format.call(diluted)}`
      : `Stronger spirit suits ${areThese(ids)} better (${strengthRange(lowPercent, highPercent, format)}).`,

  plan_hurried_rest: ({ restDays }) =>
    `That leaves ${counted(restDays, 'day')} to rest: it will taste harsh at first, and better later.`,
  plan_hurried_steep: ({ restDays }) =>
    `That leaves a short steep and ${counted(restDays, 'day')} to rest. Taste before you strain, and expect it faint and harsh.`,
  plan_latest_start: ({ day }, format) => `Start by ${format.day(day)} to make it.`,
  plan_out_of_season: ({ plants, isSouth }) =>
    `${capital(listed(plants.map(({ id, months }) => `${plantName(id)} ${areWord(id)} best ${monthsText(isSouth ? southern(months) : months)}`)))}${isSouth ? '' : ELSEWHERE}.`,
  plan_only_in_season: ({ plants, isSouth }) =>
    `You only get ${listed(plants.map(({ id, months }) => `${plantName(id)} ${monthsOf(isSouth ? southern(months) : months)}`))}.${startThen(plants.map(({ months }) => (isSouth ? southern(months) : months)))}`,

  /** Where sugar is in the jar, a hydrometer and /syrup, which takes the infusion as unsweetened, are both wrong. */
  plan_adjust: () => 'Sugar is in, so don’t trust a hydrometer. Just measure how much you strain.',
  plan_measure: () => 'Measure what you strain for exact amounts.',
  plan_no_syrup: cautions.syrup_too_thick,
  plan_care: ({ bulky }) => `Keep every plant under the liquid${bulky ? ': press the leaves down' : ''}.`,
  plan_crack: () => 'Cracked coffee is easier: ground turns bitter and clogs filters.',
  plan_sugar_slow: () => 'Sugar dissolves slowly in strong spirit. Stir what’s left into the strained liquid.',
  plan_fruit_sugar: ({ sugarG }, format) => `The plants bring about ${format.mass(sugarG)} of sugar.`,
  plan_pectin: () => 'Some fruit sets or clouds, and it’s harmless. Chill it, then filter.',
  plan_citrus_cloud: () => 'The cloud is oil from the peel, and it’s fine.',
  plan_anethole_cloud: () => 'It clouds with water. That’s anise oil, and it’s harmless.',
  plan_green: () => 'The green fades to brown, slower in the dark and cold.',
  plan_spent: ({ keptBackMl, rinse }, format) =>
    `About ${format.volume(keptBackMl)} stays in the plants.` +
    `${rinse === null ? '' : ` Rinse it out with a little of the ${rinse === 'syrup' ? 'syrup ' : ''}water.`}` +
    ' Bin them away from flames, children and pets.',
  plan_water: () => 'Soft or filtered water leaves no haze.',
  plan_law: () =>
    'Only spirit sold for drinking, never industrial, denatured, rubbing or fuel alcohol. Don’t distil. Law and doctor come first.',
} satisfies Part<PlanMessages['notes']>

/** How far the numbers of a plan can be trusted. */
const planSure = {
  plan_expected: ({ abvPercent, volumeMl }, format) =>
    `Expected to about ±${format.give.strength(abvPercent)} and ±${format.give.volume(volumeMl)}: what plants give and soak up varies.`,
} satisfies Part<PlanMessages['sure']>

/** What is offered after a plan. */
const planActions = {
  plan_drier: () => 'Make it drier',
  plan_fill: ({ bottles }) => `Fill all ${countWord(bottles)}`,
  plan_stronger: () => 'Make it stronger',
  plan_as_usual: () => 'Plan the usual',
  plan_with: ({ plant }, format) => `Use ${muchOf(plant, format)}`,
} satisfies Part<PlanMessages['actions']>

/** In the maker's own words. */
const foodsText = ({ names }: PlanNamed): string => listed(names.map((name) => name.replace(/[“”]/g, '"')))

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
  plan_unknown_days: ({ line }, format) =>
    line === null
      ? 'I don’t know how long it steeps, so taste it and strain when you like it.'
      : `How long do you steep it? For two weeks: ${format.call(line)}`,
} satisfies Part<PlanMessages['notes']>

/** `40 to 60 %`. */
const strengthRange = (lowPercent: number, highPercent: number, format: Format): string =>
  `${format.wished.strength(lowPercent, 0).split('\u00a0')[0]} to ${format.wished.strength(highPercent, 0)}`

/** What `/plan` says. */
export const planSentences = {
  headlines: planHeadlines,
  rows: planRows,
  cells: planCells,
  sure: planSure,
  notes: { ...planNotes, ...planUnknownNotes },
  actions: planActions,
  cautions: planUnknownCautions,
} satisfies Feature<PlanMessages>
