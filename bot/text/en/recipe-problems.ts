import type { RecipeProblems } from '../../../core/recipe/problems.ts'
import type { Format } from '../format.ts'
import { articleOf } from './phrases.ts'

const percent = (value: number, format: Format) => `${format.plain(value, 1)} %`
/** Rounded to the side on which it still works. */
const atMost = (value: number, step: number) => Math.floor(value / step + 1e-9) * step

const ratio = (value: number, format: Format) => `${format.plain(value, 2)}:1`

/** `an 82 %`, `a 2:1`. */
const one = (number: string) => `${articleOf(number)} ${number}`
const capital = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

/** Why a recipe cannot be, and the nearest that can. */
export const recipeProblems = {
  sugar_crystallises: ({ sugarGPerL, abvPercent, largestGPerL }, format) =>
    `${format.number(sugarGPerL, 0)} g/L of sugar does not stay dissolved at ${percent(abvPercent, format)} vol;` +
    ` about ${format.number(largestGPerL, 0)} g/L does (known to about 10 %). Take less sugar or more water.`,
  water_only_lowers: ({ abvPercent, toAbvPercent }, format) =>
    `Water only lowers strength: ${percent(abvPercent, format)} vol cannot become ${percent(toAbvPercent, format)} vol; ask for less.`,
  infusion_too_weak: (values, format) => {
    const { infusionAbvPercent: own, toAbvPercent, toSugarGPerL, strongestAbvPercent, sweetestGPerL } = values
    const isSweet = values.isSweetnessNamed && toSugarGPerL > 0
    const what = isSweet ? 'water and sugar' : 'water'
    const wish =
      `${capital(one(percent(own, format)))} infusion cannot become ${percent(toAbvPercent, format)} vol` +
      `${isSweet ? ` with ${format.number(toSugarGPerL, 0)} g/L` : ''} by adding ${what}`
    const sweet = isSweet ? `with ${format.number(toSugarGPerL, 0)} g/L ` : ''
    const can = [
      ...(strongestAbvPercent === null
        ? []
        : [`${sweet}it reaches at most ${percent(atMost(strongestAbvPercent, 0.1), format)} vol`]),
      ...(sweetestGPerL === null || sweetestGPerL < 10
        ? []
        : [`at ${percent(toAbvPercent, format)} vol at most ${format.number(atMost(sweetestGPerL, 5), 0)} g/L`]),
    ]
    return can.length === 0 ? `${wish}; ask for less of both.` : `${wish}; ${can.join(', ')}.`
  },
  already_sweeter: ({ sugarGPerL, toSugarGPerL, toAbvPercent }, format) =>
    `At ${percent(toAbvPercent, format)} vol it holds more sugar than ${format.number(toSugarGPerL, 0)} g/L already` +
    ` (${format.number(sugarGPerL, 0)} g/L now); water and sugar cannot take any away.`,
  syrup_not_sweet_enough: ({ toSugarGPerL, sugarPerWater, syrupGPerL }, format) =>
    `${capital(one(ratio(sugarPerWater, format)))} syrup holds ${format.number(syrupGPerL, 0)} g/L itself, so no amount of it makes` +
    ` ${format.number(toSugarGPerL, 0)} g/L; ask for less or take more sugar to the water.`,
  targets_clash: ({ toAbvPercent, toSugarGPerL, sugarPerWater, neededSugarPerWater }, format) =>
    `The ratio clashes: ${percent(toAbvPercent, format)} vol with ${format.number(toSugarGPerL, 0)} g/L takes ` +
    `${neededSugarPerWater === null ? 'sugar alone, no water' : neededSugarPerWater === 0 ? 'water alone, no sugar' : `${one(ratio(neededSugarPerWater, format))} syrup`}, not` +
    ` ${ratio(sugarPerWater, format)}. Leave one of the three out.`,
  adjust_needs_spirit: (values, format) => {
    const { leastSugarGPerL, mostSugarGPerL } = values
    const reach =
      leastSugarGPerL === null || mostSugarGPerL === null || mostSugarGPerL - leastSugarGPerL < 1
        ? ''
        : ` At ${percent(values.toAbvPercent, format)} vol they reach ${format.number(leastSugarGPerL, 0)} to ${format.number(mostSugarGPerL, 0)} g/L.`
    return `Water and sugar alone cannot make that of it.${reach} Say what spirit you have, as in spirit-strength:95%.`
  },
  adjust_spirit_too_weak: ({ toSugarGPerL, spiritAbvPercent, strongestAbvPercent, toAbvPercent }, format) =>
    `${percent(spiritAbvPercent, format)} spirit cannot bring it to ${percent(toAbvPercent, format)} vol with ${format.number(toSugarGPerL, 0)} g/L:` +
    ` however much you add, it stays under ${percent(strongestAbvPercent, format)} vol at that sweetness.`,
  adjust_keeps_sugar: ({ sugarGPerL }, format) =>
    `It holds ${format.number(sugarGPerL, 0)} g/L of sugar, and nothing takes sugar out; ask for more than 0 g/L.`,
} satisfies { readonly [Key in keyof RecipeProblems]: (values: RecipeProblems[Key], format: Format) => string }
