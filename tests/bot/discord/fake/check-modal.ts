import { checkCustomIds } from './check-components.ts'
import { type ComponentNode, TYPE, walk } from './component-node.ts'
import type { Json } from './json.ts'
import { type Problem, problem } from './problem.ts'

const MOST_TOP = 5

const at = (message: string): Problem => problem(['data', 'components'], message)

const checkInput = (input: ComponentNode, isInLabel: boolean): readonly Problem[] => {
  const { min_length: min = 0, max_length: max = 4000, value, label } = input
  return [
    ...(min > max ? [at('min_length is above max_length')] : []),
    ...(value && value.length > max ? [at('the value is longer than max_length')] : []),
    ...(isInLabel && label ? [at('a text input in a label has no label of its own')] : []),
    ...(isInLabel || label ? [] : [at('a text input needs a label')]),
  ]
}

/** What the published description does not say about a form: Discord's documentation allows 1 to 5 components at the top. */
export const checkModal = (data: Json): readonly Problem[] => {
  const top = data.components as readonly ComponentNode[]
  const all = walk(top)
  const inLabels = top.flatMap(({ component }) => component ?? [])
  return [
    ...(top.length > MOST_TOP ? [at(`${top.length} components; 5 are allowed`)] : []),
    ...checkCustomIds(all),
    ...all
      .filter(({ type }) => type === TYPE.textInput)
      .flatMap((input) => checkInput(input, inLabels.includes(input))),
  ]
}
