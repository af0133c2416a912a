import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import { isWholePeel } from '../../../core/botanical/catalogue/piece-mass.ts'
import type { PlantIn } from '../../../core/jar/entry/entry.ts'
import type { IngredientsTold } from '../../../core/jar/state/batch-facts.ts'
import type { CountryId } from '../../../core/label/country.ts'
import { countryNamed } from '../../../core/label/parse-country.ts'
import type { FreezerState } from '../../../core/liquid/freezer.ts'
import { volumeMl, water } from '../../../core/liquid/liquid.ts'
import { isJuice, materialOf } from '../../../core/quantity/materials.ts'
import { exactly, type Measured, times } from '../../../core/quantity/measured/measured.ts'
import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import { dayFromIso, type IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { Sweetening } from '../../../core/recipe/sweetening.ts'
import type { Format } from '../format.ts'
import type { FrozenSaid } from '../messages/calculate.ts'
import type {
  BottlesSaid,
  IngredientsSaid,
  PlantName,
  PlantSaid,
  SpiritSaid,
  SweeteningSaid,
  UnknownSaid,
} from '../messages/ingredients.ts'
import { piecesText, plantName } from './cook-names.ts'
import { counted, countWord, dayText, listed, MONTHS, plural } from './phrases.ts'
import { scoopedText, sweetenerName } from './sweeteners.ts'

const FREEZES: Readonly<Record<FreezerState, string>> = {
  pours: 'pours',
  should_pour: 'should pour',
  slush: 'goes slushy',
  solid: 'freezes',
}

/** `pours at −18 °C`, after `it`. */
export const inFreezer = ({ state, freezerC }: FrozenSaid, format: Format): string =>
  `${FREEZES[state]} at ${format.temperature({ value: freezerC, plusMinus: 0 })}`

/** In a kitchen's words: a sentence of its own. */
export const fromFreezer = ({ state }: FrozenSaid): string =>
  ({
    pours: 'Pours from the freezer.',
    should_pour: 'Should pour from the freezer.',
    slush: 'It goes slushy in the freezer.',
    solid: 'It freezes: a full bottle can burst in the freezer.',
  })[state]

/** A note between quotation marks that none of its own can close. */
export const noteText = (note: string): string => `“${note.replace(/[“”]/g, '"')}”`

/** `9 December`, where the year is said beside it. */
const shortDay = ({ month, day }: CalendarDay): string => `${day} ${MONTHS[month - 1]}`

export const isSameDay = (one: CalendarDay, other: CalendarDay): boolean => dayText(one) === dayText(other)

/** `from 9 to 25 December 2026`; one day where both are the same. */
export const daysText = (from: CalendarDay, to: CalendarDay, format: Format): string => {
  if (isSameDay(from, to)) return `on ${format.day(to)}`
  const start = from.year !== to.year ? dayText(from) : from.month !== to.month ? shortDay(from) : `${from.day}`
  return `from ${format.day(from, start)} to ${format.day(to)}`
}

/** `“meadowsweet”`. */
export const unknownName = (name: string): string => `“${name.replace(/[“”]/g, '"')}”`

/** Of a plant that may not be one of the catalogue's. */
export const nameText = ({ id, name }: PlantName): string => (id === null ? unknownName(name) : plantName(id))

/** What was typed, with no break between a number and its unit. */
export const asTyped = (typed: string): string =>
  typed
    .replace(/(\d) ?%/, '$1\u00a0%')
    .replace(/^([\d.,]+) (?=\S+$)/, '$1\u00a0')
    .replace(/^(1\s[a-z]+)s$/, '$1')

const saidAs = ({ id, state }: PlantSaid): string => {
  const name = plantName(id)
  return state === undefined || name.startsWith(state) ? name : `${state} ${name}`
}

/** `84 g ginger`, `peel of 8 lemons (about 80 g)`, `5 cloves (about 0.45 g)`, `1 Ceylon cinnamon stick (about 4 g)`. */
export const plantText = (plant: PlantSaid | UnknownSaid, format: Format): string => {
  if (plant.id === null) return `${format.round.mass(plant.massG.value)} ${unknownName(plant.name)}`
  const mass = plant.typed === undefined ? format.round.mass(plant.massG.value) : asTyped(plant.typed)
  const pieces = piecesText(plant, format)
  return pieces === null ? `${mass} ${saidAs(plant)}` : `${plant.ofZest ? 'peel of ' : ''}${pieces} (about ${mass})`
}
/** `gin`, where its maker called it that. */
export const drinkWord = ({ drink }: Pick<SpiritSaid, 'drink'>): string => drink ?? 'spirit'

/** `700 ml of 75.5 % spirit`, `70 cl of 40 % gin`, `500 ml of 28 % liqueur (250 g/L of sugar)`. */
export const spiritText = (
  { amount, by, abvPercent, sugarGPerL, typed, drink }: SpiritSaid,
  format: Format,
): string => {
  const much = typed === undefined ? format.round[by](amount.value) : asTyped(typed.amount)
  const strength = typed?.strength == null ? format.round.strength(abvPercent) : asTyped(typed.strength)
  const poured = `${much} of ${strength}`
  return sugarGPerL.value === 0
    ? `${poured} ${drinkWord({ drink })}`
    : `${poured} liqueur (${format.sweetness(sugarGPerL)} of sugar)`
}

/** One that was wished for, % vol, to a tenth: `30 % vol`, where proof was typed `60 proof (30 % vol)`. */
export const wishedStrength = (abvPercent: number, format: Format): string =>
  format.strength(exactly(Math.round(10 * abvPercent) / 10))

/** The everyday sweetness of `USUAL`, g/L, and how near to it something still is it. */
const MEDIUM = [180, 200] as const

/** `medium sweet`, `250 g/L`; empty where no sugar is in it. */
export const sweetWords = (sugarGPerL: number, format: Format): string => {
  if (sugarGPerL < 5) return ''
  if (sugarGPerL >= MEDIUM[0] && sugarGPerL <= MEDIUM[1]) return 'medium sweet'
  return format.round.sweet(sugarGPerL)
}

/** A bottle, or a jar that somebody has, by its size. */
export const vesselText = (volumeMl: number, format: Format): string => format.vessel.bottle(volumeMl)

/** A jar to look for, as one is sold. */
export const jarText = (volumeMl: number, format: Format): string => format.vessel.jar(volumeMl)

/** A bag as it is sold: in grams or kilograms, in every kitchen, where it is a round number of them. */
export const packText = (massG: number, format: Format): string =>
  format.in(massG % 50 === 0 ? 'metric' : undefined).round.mass(massG)
/** `4 bottles of 500 ml`; empty where none is filled. */
export const bottlesText = (bottles: readonly BottlesSaid[], format: Format): string =>
  bottles
    .filter(({ count }) => count > 0)
    .map(({ count, volumeMl }) => `${counted(count, 'bottle')} of ${vesselText(volumeMl, format)}`)
    .join(' and ')
/** `five 500 ml bottles and one 200 ml bottle`; empty where none is filled. */
export const bottlesFilled = (bottles: readonly BottlesSaid[], format: Format): string =>
  listed(
    bottles
      .filter(({ count }) => count > 0)
      .map(({ count, volumeMl }) => {
        const [many, size] = [countWord(count), vesselText(volumeMl, format)]
        // `12 500 ml bottles` would be read as one number.
        return /\d/.test(many) ? `${many} bottles of ${size}` : `${many} ${size} ${plural(count, 'bottle')}`
      }),
  )
/** A plant as it went in; counted fruit are taken for their zest where the catalogue knows it. */
export const plantInText = ({ id, name, massG, count, words }: PlantIn, format: Format): string => {
  const said =
    id === null
      ? { id, name, massG }
      : { id, massG, count, unit: words?.unit, ofZest: isWholePeel(botanicalById(id), count, massG.value) }
  return plantText(said, format)
}

/** `later: 80 g coffee beans, whole on 14 December 2026`, a part for each day. */
const laterTexts = (plants: readonly PlantIn[], format: Format, dayOf: (iso: IsoDay) => string): readonly string[] => {
  const days = [...new Set(plants.flatMap(({ addOn }) => addOn ?? []))].sort()
  return days.map((day) => {
    const texts = plants.filter(({ addOn }) => addOn === day).map((plant) => plantInText(plant, format))
    return `later: ${listed(texts)} on ${dayOf(day)}`
  })
}

/** What stands for water is told by volume, as it is poured; null of what is weighed. */
export const pouredMlOf = ({ material, massG }: Sweetening): Measured | null =>
  isJuice(material) && materialOf(material).isSyrup ? times(massG, 1 / materialOf(material).pouredGPerMl) : null

const amountText = (sweetening: Sweetening, format: Format): string => {
  const volumeMl = pouredMlOf(sweetening)
  return volumeMl === null
    ? scoopedText(sweetening.massG.value, sweetening.material, format)
    : format.round.volume(volumeMl.value)
}

/** `500 g sugar` for each; one alone is said as it was typed, where that is known. */
export const sweeteningTexts = (
  sweetenings: readonly SweeteningSaid[],
  format: Format,
  typed: string | null = null,
): readonly string[] =>
  sweetenings
    .filter(({ massG }) => massG.value > 0)
    .map(({ typed: said, ...each }, _, all) => {
      const alone = all.length === 1 ? typed : null
      const amount = said === undefined ? amountText(each, format) : asTyped(said)
      return `${alone ?? amount} ${sweetenerName(each.material)}`
    })

/** `900 ml of plum at 24 %`, which came from another jar. */
const pouredText = ({ other, liquid: { amount, by, abvPercent } }: IngredientsTold['poured'][number], format: Format) =>
  `${format.round[by](amount.value)} of ${other} at ${format.round.strength(abvPercent)}`

const WATER_ML_PER_G = volumeMl(water(1))

/** Water in a sentence: by volume, as it is poured. */
export const waterText = ({ value }: IngredientsSaid['waterG'], format: Format): string =>
  `${format.round.volume(value * WATER_ML_PER_G)} water`

/** `1 l of 95 % vol spirit + 80 g lemon peel + 100 g sugar + 900 ml of plum at 24 %`. */
export const inJarText = (
  { plants, spirits, waterG, sweetenings, poured }: IngredientsSaid,
  format: Format,
  dayOf = (iso: IsoDay): string => format.day(dayFromIso(iso)),
): string => {
  const now = [
    ...spirits.map((spirit) => spiritText(spirit, format)),
    ...plants.filter(({ addOn }) => addOn === null).map((plant) => plantInText(plant, format)),
    ...(waterG.value > 0 ? [waterText(waterG, format)] : []),
    ...sweeteningTexts(sweetenings, format),
    ...poured.map((each) => pouredText(each, format)),
  ].join(' + ')
  return [now, ...laterTexts(plants, format, dayOf)].join(', ')
}

/** As they stand after “in”. */
export const countryNames: Readonly<Record<CountryId, string>> = {
  us: 'the United States',
  uk: 'the United Kingdom',
  ireland: 'Ireland',
  italy: 'Italy',
  france: 'France',
  germany: 'Germany',
  spain: 'Spain',
  australia: 'Australia',
  new_zealand: 'New Zealand',
  canada: 'Canada',
  japan: 'Japan',
  austria: 'Austria',
  iceland: 'Iceland',
  mexico: 'Mexico',
  argentina: 'Argentina',
  chile: 'Chile',
  hong_kong: 'Hong Kong',
  india: 'India',
  poland: 'Poland',
  sweden: 'Sweden',
  denmark: 'Denmark',
  switzerland: 'Switzerland',
  who: 'the count of the World Health Organization',
  portugal: 'Portugal',
  netherlands: 'the Netherlands',
  belgium: 'Belgium',
  norway: 'Norway',
  finland: 'Finland',
  south_korea: 'South Korea',
  brazil: 'Brazil',
  south_africa: 'South Africa',
}

/** Besides those in `country-names.ts`. */
const WITH_ARTICLE = new Set('AE BS CC CF CK DO FK FO GM IM IO KM KY MH MP MV PH SB SC TC TF UM VG VI'.split(' '))

/** What English calls the country of two letters (ISO 3166), standing alone: `Netherlands`. */
export const countryByCode = (code: string): string =>
  new Intl.DisplayNames(['en'], { type: 'region', fallback: 'code' }).of(code) ?? code

/** The same within a sentence: `the Netherlands`. */
export const countryInSentence = (code: string): string => {
  const known = countryNamed(code)
  if (known !== null) return countryNames[known.id]
  return `${WITH_ARTICLE.has(code) ? 'the ' : ''}${countryByCode(code)}`
}

/** What Discord takes is 1024. */
const LONGEST_ALT = 1000

const shortenedTo = (text: string, length: number): string =>
  text.length <= length ? text : `${text.slice(0, length - 1).replace(/[\uD800-\uDBFF]$/, '')}…`

/** Sentences one after the other, as many as have room. */
export const altText = (sentences: readonly string[]): string =>
  shortenedTo(sentences.filter((sentence) => sentence !== '').join(' '), LONGEST_ALT)

/** A list told as fully as there is room for, at last as many of its items before the rest is counted. */
export function altList(
  before: string,
  tellings: readonly (readonly string[])[],
  rest: (count: number) => string,
): string {
  const all = tellings.map((items) => `${before} ${items.join(', ')}.`)
  const whole = all.find((text) => text.length <= LONGEST_ALT)
  if (whole !== undefined) return whole
  const items = tellings.at(-1) ?? []
  const end = (count: number): string => `, ${rest(count)}.`
  const room = LONGEST_ALT - before.length - end(items.length).length
  let count = 0
  for (let length = 0; count < items.length; count++) {
    length += (items[count]?.length ?? 0) + 2
    if (length > room) break
  }
  return `${before} ${items.slice(0, count).join(', ')}${end(items.length - count)}`
}

/** Grams, rounded down so that the amount said is still allowed. */
export const gramsAtMost = (massG: number, format: Format): string => {
  const step = massG < 1 ? 0.01 : massG < 10 ? 0.1 : 1
  return `${format.plain(Math.floor(massG / step + 1e-9) * step, 2)}\u00a0g`
}
