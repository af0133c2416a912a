import { isDescriptor, plantSaid } from '../../../core/botanical/find/plant-said.ts'
import type { Token } from '../../../core/quantity/read/tokens.ts'
import { NONE } from './amount-bits.ts'
import type { Open, RolesAround } from './attach.ts'

const JOINS = /^(?:of|the|di|quello|quella|quelli|quelle|del|della)$/

/** A form of any plant, or what makes one name with that of this. */
function isForm(tokens: readonly Token[], at: number, { from, to }: Open): boolean {
  const form = tokens[at]
  if (form?.kind !== 'word') return false
  const name = tokens.slice(from, to)
  // `Earl grey, 25 g of the tea`: what it is, no form of it.
  if (plantSaid([form], 0, NONE) !== null) return false
  return isDescriptor(form.text) || plantSaid([form, ...name], 0, NONE)?.next === name.length + 1
}

/** `Coconut liqueur, 200 g of the desiccated`: the form that is told behind the amount belongs to the plant before it. */
export function formBehind({ typed: { tokens } }: RolesAround, bits: Open[]): void {
  for (const plant of bits) {
    const amount = plant.kind === 'plant' && plant.with !== undefined ? bits[plant.with] : undefined
    if (amount === undefined || amount.kind !== 'mass' || amount.from < plant.to) continue
    let at = amount.to
    while (JOINS.test(tokens[at]?.text ?? '')) at++
    const form = tokens[at]?.text ?? ''
    const isOther = bits.some(({ from, to }) => from <= at + 1 && at < to)
    if (!isForm(tokens, at, plant) || isOther || plant.text.toLowerCase().includes(form)) continue
    plant.text = `${form} ${plant.text}`
    amount.to = at + 1
  }
}
