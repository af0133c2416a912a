import type { Sentence } from '../bits/bit.ts'
import { isNoSugar, noSugarWords } from '../bits/no-sugar.ts'
import type { Concept } from '../lexicon/lexicon.ts'
import { onlyBit } from './amount-slots.ts'
import type { Fill } from './plant-slots.ts'

const STYLES = [
  ['wish_dry', 'dry'],
  ['wish_medium', 'everyday'],
  ['wish_rich', 'rich'],
] as const

/** How sweet it is wished, as a number or in a word. */
export const wishedSweetness: Fill = (sentence, command) => {
  const { bits, has } = sentence
  const number = bits.find(({ kind, role }) => kind === 'sweetness' && role === 'want')
  if (number !== undefined) return onlyBit(number)
  if (command === 'plan' && isNoSugar(sentence))
    return { text: '0 g/L', bits: [...bits.filter(isSugarNamed), ...noSugarWords(sentence.typed)] }
  const style = STYLES.find(([concept]) => isOfSweetness(sentence, concept))
  if (style !== undefined) return { text: style[1], bits: [] }
  // `Go easy on the sugar`: of a plan that nothing was said of before.
  return command === 'plan' && has('drier') ? { text: 'dry', bits: bits.filter(isSugarNamed) } : null
}

/** `London dry` is a gin, and `rich` of a rum how it is called. */
const isOfSweetness = ({ bits, spans }: Sentence, concept: Concept): boolean =>
  spans.some(
    ({ concept: said, from, to }) =>
      said === concept && !bits.some((each) => each.kind === 'spirit' && each.from <= from && to <= each.to),
  )

const isSugarNamed = ({ kind, with: place }: Sentence['bits'][number]): boolean =>
  kind === 'sugar' && place === undefined
