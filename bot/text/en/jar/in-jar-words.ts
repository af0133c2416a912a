import { botanicalById } from '../../../../core/botanical/catalogue/catalogue.ts'
import type { Ingredients, PlantIn } from '../../../../core/jar/entry/entry.ts'
import { dayFromIso } from '../../../../core/quantity/time/calendar-day.ts'
import type { Format } from '../../format.ts'
import { listed } from '../phrases.ts'
import { plantText, spiritText } from '../plan/plan-words.ts'

export type InJar = Ingredients

/** A plant as it went in; counted fruit are taken for their zest where the catalogue knows it. */
export const plantInText = ({ id, name, massG, count }: PlantIn, format: Format): string => {
  const said =
    id === null ? { id, name, massG } : { id, massG, count, ofZest: botanicalById(id).zestGPerFruit !== null }
  return plantText(said, format)
}

/** `later: 80 g coffee beans, whole on 14 December 2026`, a part for each day. */
const laterTexts = (plants: readonly PlantIn[], format: Format): readonly string[] => {
  const days = [...new Set(plants.flatMap(({ addOn }) => addOn ?? []))].sort()
  return days.map((day) => {
    const texts = plants.filter(({ addOn }) => addOn === day).map((plant) => plantInText(plant, format))
    return `later: ${listed(texts)} on ${format.day(dayFromIso(day))}`
  })
}

/** `1 l of 95 % vol spirit + 80 g lemon peel + 100 g sugar`. */
export const inJarText = ({ plants, spirits, waterG, sugarG }: InJar, format: Format): string => {
  const now = [
    ...spirits.map((spirit) => spiritText(spirit, format)),
    ...plants.filter(({ addOn }) => addOn === null).map((plant) => plantInText(plant, format)),
    ...(waterG.value > 0 ? [`${format.mass(waterG)} water`] : []),
    ...(sugarG.value > 0 ? [`${format.mass(sugarG)} sugar`] : []),
  ].join(' + ')
  return [now, ...laterTexts(plants, format)].join('; ')
}
