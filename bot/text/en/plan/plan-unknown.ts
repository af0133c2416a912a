import type { FoodNote } from '../../../../core/botanical/food.ts'
import type { CalendarDay } from '../../../../core/quantity/quantities.ts'
import type { Format } from '../../format.ts'
import { listed } from '../phrases.ts'
import { type BatchSaid, buyText, fillsText } from './plan-headline.ts'

interface Named {
  readonly names: readonly string[]
}

interface UnknownPlanSaid extends BatchSaid, Named {
  readonly strainOn: CalendarDay | null
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

/** In the maker's own words. */
const foodsText = ({ names }: Named): string => listed(names.map((name) => name.replace(/[“”]/g, '"')))

/** First line of a plan with a food that the catalogue has no amounts for. */
export const planUnknownHeadlines = {
  plan_unknown: (values: UnknownPlanSaid, format: Format) => {
    const { strainOn } = values
    const strain =
      strainOn === null ? 'Say days: for a day to strain.' : `Strain on ${format.day(strainOn)}, as you said.`
    return `Buy ${buyText(values, format)}. ${strain} ${capital(fillsText(values, format))}.`
  },
}

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

export const planUnknownCautions = {
  plan_unknown: (values: Named & { readonly notes: readonly FoodNote[] }) => {
    const notes = WORST_FIRST.filter((note) => values.notes.includes(note))
    const said = notes.length === 0 ? 'ask about allergies before you pour' : notes.map((note) => told[note]).join('. ')
    return `${capital(foodsText(values))}: ${said.replace(/\. [a-z]/g, (text) => text.toUpperCase())}.`
  },
}

export const planUnknownNotes = {
  plan_unknown_yours: (values: Named) =>
    `I’ve no figures for ${foodsText(values)}, so the amount and the days are yours. Taste often.`,
  plan_unknown_range: (
    {
      waterPercent,
      keptMinMlPerG,
      keptMaxMlPerG,
    }: { readonly waterPercent: number; readonly keptMinMlPerG: number; readonly keptMaxMlPerG: number },
    format: Format,
  ) =>
    `I don’t know how wet it is, so I used 0 to ${format.plain(waterPercent, 0)} % of water and` +
    ` ${format.plain(keptMinMlPerG, 1)} to ${format.plain(keptMaxMlPerG, 1)} ml kept by each gram (estimated). The ± covers that.` +
    ' Its own sugar isn’t counted.',
  plan_unknown_days: () => 'How long do you steep it? Say it with days:, and I’ll name the day to strain.',
}
