import type { Botanical } from '../botanical.ts'
import { botanicalById } from '../catalogue/catalogue.ts'
import { isFormAsked } from './in-form.ts'

/** By which it is found again, with its state where that is not understood. */
export function typedName({ id, names, form }: Botanical): string {
  const noun = names.en[0] ?? names.title
  const isSaid = isFormAsked(botanicalById(id)) || form.state !== botanicalById(id).form.state
  return isSaid && !noun.startsWith(form.state) ? `${form.state} ${noun}` : noun
}
