import type { PlantState } from '../../../../core/botanical/botanical.ts'
import { botanicalById } from '../../../../core/botanical/catalogue/catalogue.ts'

/** A name of a person or a place keeps its capital: `Earl Grey tea`. */
const PROPER = /^\p{Lu}\p{Ll}+ \p{Lu}/u

/** As a cook calls it, which can be typed: `dried chilli`, `Ceylon cinnamon`, `star anise`. */
export function cookName(id: string, state?: PlantState): string {
  const { names, form } = botanicalById(id)
  const [noun = '', ...kinds] = names.title.replace(/ \(.*?\)/, '').split(', ')
  const name = [...kinds, PROPER.test(noun) ? noun : noun.charAt(0).toLowerCase() + noun.slice(1)].join(' ')
  return state === undefined || state === form.state ? name : `${state} ${name}`
}
