import type { Sentence } from '../bits/bit.ts'
import { onlyBit } from './amount-slots.ts'
import type { Fill } from './plant-slots.ts'

const STYLES = [
  ['wish_dry', 'dry'],
  ['wish_medium', 'everyday'],
  ['wish_rich', 'rich'],
] as const

/** How sweet it is wished, as a number or in a word. */
export const wishedSweetness: Fill = ({ bits, has }, command) => {
  const number = bits.find(({ kind, role }) => kind === 'sweetness' && role === 'want')
  if (number !== undefined) return onlyBit(number)
  const style = STYLES.find(([concept]) => has(concept))
  if (style !== undefined) return { text: style[1], bits: [] }
  // `Go easy on the sugar`: of a plan that nothing was said of before.
  return command === 'plan' && has('drier') ? { text: 'dry', bits: bits.filter(isSugarNamed) } : null
}

const isSugarNamed = ({ kind, with: place }: Sentence['bits'][number]): boolean =>
  kind === 'sugar' && place === undefined
