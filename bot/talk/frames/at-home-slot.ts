import type { Bit, Sentence } from '../bits/bit.ts'
import type { SlotFilled } from './plant-slots.ts'

/** What sweetens, and how much of it is there already: `I have 2 lbs of sugar`, `ho 1 kg di miele`. */
export function atHome({ bits, has }: Sentence, _command: string): SlotFilled | null {
  if (!has('have')) return null
  const sugars = bits.filter(({ kind }) => kind === 'sugar')
  const told = sugars.flatMap((sugar) => {
    const amount = bits.findLast(({ kind, to }: Bit) => kind === 'mass' && to <= sugar.from && sugar.from - to <= 2)
    return amount === undefined ? [] : [{ amount, sugar }]
  })
  if (told.length === 0 || told.length < sugars.length) return null
  return {
    text: told.map(({ amount, sugar }) => `${amount.text} ${sugar.text.toLowerCase()}`).join(' + '),
    bits: told.flatMap(({ amount, sugar }) => [amount, sugar]),
  }
}
