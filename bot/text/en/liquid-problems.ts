import type { LiquidProblems } from '../../../core/liquid/problems.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import type { Format } from '../format.ts'

const between = (low: number, high: number, unit: string, format: Format): string =>
  `${format.plain(low)} to ${format.plain(high)} ${unit}`

export const liquidProblems = {
  temperature_out_of_range: ({ tempC, lowC, highC }, format) =>
    `The formulas do not hold at ${format.temperature(exactly(tempC))}; they take ${between(lowC, highC, '°C', format)}.`,
  strength_out_of_range: ({ abvPercent, lowPercent, highPercent }, format) =>
    `A strength of ${format.plain(abvPercent)} % vol cannot be; it lies from ${between(lowPercent, highPercent, '% vol', format)}.`,
  proof_out_of_range: ({ usProof, highUsProof }, format) =>
    `${format.plain(usProof)} proof cannot be; US proof goes from ${format.plain(0)} to ${format.plain(highUsProof)}.`,
  sweetness_out_of_range: ({ sugarGPerL, highGPerL }, format) =>
    `${format.plain(sugarGPerL)} g/L of sugar cannot be; sugar itself holds ${format.plain(highGPerL, 0)} g/L, and less than ${format.plain(0)} there is not.`,
  negative_volume: ({ volumeMl }, format) =>
    `A volume of ${format.plain(volumeMl)} ml cannot be; give ${format.plain(0)} ml or more.`,
  negative_mass: ({ massG }, format) =>
    `A mass of ${format.plain(massG)} g cannot be; give ${format.plain(0)} g or more.`,
  mass_fraction_out_of_range: ({ massFraction }, format) =>
    `${format.plain(100 * massFraction)} % by mass cannot be; a share lies from ${between(0, 100, '%', format)}.`,
  density_out_of_range: ({ densityKgPerM3, lowKgPerM3, highKgPerM3, tempC }, format) =>
    `No mixture of alcohol and water weighs ${format.plain(densityKgPerM3, 1)} g/L at ${format.temperature(exactly(tempC))}; they weigh ${format.plain(lowKgPerM3, 1)} to ${format.plain(highKgPerM3, 1)} g/L.`,
  reading_out_of_scale: ({ readingPercent, tempC }, format) =>
    `No mixture of alcohol and water makes a hydrometer show ${format.plain(readingPercent)} % vol at ${format.temperature(exactly(tempC))}; the strength has to come out from ${between(0, 100, '% vol', format)}.`,
  no_room_for_water: ({ abvPercent, sugarGPerL }, format) =>
    `${format.plain(abvPercent, 1)} % vol and ${format.plain(sugarGPerL, 0)} g/L do not fit into one litre: pure alcohol and the sugar alone take more room than there is; lower one of them.`,
  no_sign_change: ({ low, high }, format) =>
    `This is a fault of the bot, not yours: a search between ${format.plain(low)} and ${format.plain(high)} has no answer.`,
  no_convergence: ({ low, high }, format) =>
    `This is a fault of the bot, not yours: a search between ${format.plain(low)} and ${format.plain(high)} did not end.`,
} satisfies { [K in keyof LiquidProblems]: (values: LiquidProblems[K], format: Format) => string }
