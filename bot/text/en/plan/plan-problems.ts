import { exactly } from '../../../../core/quantity/measured/measured.ts'
import type { OtherThing } from '../../../../core/recipe/plan/other-than-plants.ts'
import type { PlanProblems } from '../../../../core/recipe/plan/problems.ts'
import type { Format } from '../../format.ts'
import { weakText } from '../jar/safety-problems.ts'
import { plantName } from './plan-words.ts'

type Instead = NonNullable<PlanProblems['steep_too_weak']['instead']>

function wouldDo(instead: Instead): string {
  const { spiritAbvPercent, isSpiritGiven, steepAtPercent, isDilutedFirst, fewerPlants, lessSugar } = instead
  const spirit = isSpiritGiven ? 'As much spirit' : 'Spirit'
  const fewer = `${fewerPlants ? ', or fewer plants' : ''}${lessSugar ? ', or less sugar' : ''}`
  if (steepAtPercent !== null) return `Bring it down less: steep-at:${steepAtPercent}% would do${fewer}.`
  if (spiritAbvPercent !== null) return `${spirit} of ${spiritAbvPercent} % vol would do${fewer}.`
  if (fewerPlants || lessSugar) {
    const less = [fewerPlants ? 'fewer plants' : '', lessSugar ? 'less sugar' : ''].filter((text) => text !== '')
    return `Take ${less.join(' or ')}${isSpiritGiven ? ', or more spirit' : ''}.`
  }
  const rest = `${isDilutedFirst ? ', without steep-at:,' : ''} and ask for fewer plants or a weaker drink too`
  return `No one change will do: take stronger spirit${rest}.`
}

/** What to write for what has its own option. */
const itsOption: { readonly [Thing in OtherThing]: (value: string) => string } = {
  sugar: (value) => `take it out and write sugar:${value || '500 g'}`,
  water: (value) =>
    `leave it out. A plan works its water out, and steep-at: thins the spirit first; /jar add takes water:${value || '500 ml'}`,
  spirit: (value) =>
    `take it out and write spirit:${value || '1 l 40%'}${value === '' || /[%°]|proof/i.test(value) ? '' : ' and its strength, such as 40%'}`,
}

/** Why a batch cannot be planned so, and what can. */
export const planProblems = {
  steep_too_weak: ({ instead, ...weak }) => {
    const why = `It would steep at ${weakText(weak)}. That can ferment, and a closed jar of it can burst.`
    return instead === null ? why : `${why} ${wouldDo(instead)}`
  },
  drink_ferments: ({ abvPercent, sugarGPerL, keepsFromPercent }) =>
    `At ${weakText({ abvPercent, sugarGPerL, lowAbvPercent: null })} it can ferment, and a closed bottle of it can burst. From ${keepsFromPercent} % vol it keeps.`,
  plants_drink_all: ({ plantsG, liquidMl, enoughMl }, format) =>
    `${format.mass({ value: plantsG, plusMinus: plantsG * 0.02 })} of plants would keep nearly all of ${format.volume(exactly(liquidMl))};` +
    ` take about ${format.volume({ value: enoughMl, plusMinus: enoughMl * 0.05 })} of spirit, or fewer plants.`,
  plant_not_weighed: ({ typed }) =>
    `“${typed}” says no weight, and plants are too unlike to guess one: weigh it, as in 30 g ginger.`,
  not_a_plant: ({ typed, thing, value }) => `“${typed}” is no plant: ${itsOption[thing](value)}.`,
  plant_not_named: ({ typed }) =>
    `“${typed}” names no plant: write it after the amount, as in 30 g ginger or 8 lemons.`,
  piece_not_weighed: ({ typed, id, typicalGPerL }, format) =>
    `I don’t know what “${typed}” weighs, so weigh it. Of ${plantName(id)}, ${format.plain(typicalGPerL)} g in a litre of spirit is usual.`,
  plant_twice: ({ typed, id }) =>
    `“${typed}” names ${id === null ? 'a plant' : plantName(id)} a second time: give it once, with its whole amount.`,
  bottles_not_read: ({ typed }) => `“${typed}” are no bottles I can read: write 4 x 500 ml, 4, or 500 ml.`,
  spirit_out_of_range: ({ wantedMl }, format) =>
    `No amount of such a spirit fills ${format.volume(exactly(wantedMl))} with these plants: take fewer of them or a stronger spirit.`,
  ready_too_soon: ({ readyBy, earliest }, format) =>
    `It cannot be ready by ${format.day(readyBy)}: even with a short steep and a week’s rest the earliest day is ${format.day(earliest)}.`,
  yes_or_no: ({ typed }) => `“${typed}” is neither yes nor no: write one of them.`,
  ready_by_unknown: ({ name }) =>
    `I do not know “${name}”, so I cannot plan towards a day with it: leave out ready-by:.`,
} satisfies { readonly [Key in keyof PlanProblems]: (values: PlanProblems[Key], format: Format) => string }
