import { type ComponentNode, TYPE, walk } from './component-node.ts'
import { type Problem, problem, repeated } from './problem.ts'

const MOST_COMPONENTS = 40
const MOST_TEXT = 4000
const MOST_ROWS = 5
const LINK_STYLE = 5
const SKU_STYLE = 6
const SELECTS: readonly number[] = [3, 5, 6, 7, 8]

const at = (message: string): Problem => problem(['components'], message)

const checkButton = (button: ComponentNode): readonly Problem[] => {
  const { style, custom_id: id, url, label, emoji } = button
  const hasOnly =
    style === LINK_STYLE ? url && !id : style === SKU_STYLE ? button.sku_id && !id && !url && !label : id && !url
  return [
    ...(hasOnly ? [] : [at(`a button of style ${style} has not exactly what that style needs`)]),
    ...(label || emoji || style === SKU_STYLE ? [] : [at('a button needs a label or an emoji')]),
  ]
}

const checkRow = ({ components = [] }: ComponentNode): readonly Problem[] => {
  const selects = components.filter(({ type }) => SELECTS.includes(type)).length
  return selects > 0 && components.length > 1 ? [at('a row holds up to 5 buttons or one select')] : []
}

const checkSelect = ({ options, min_values: min = 1, max_values: max = 1 }: ComponentNode): readonly Problem[] => {
  const values = options?.map(({ value }) => value)
  return [
    ...(min > max ? [at('min_values is above max_values')] : []),
    ...(values && max > values.length ? [at('max_values is above the number of options')] : []),
    ...repeated(values ?? []).map((value) => at(`the option value "${value}" occurs twice`)),
  ]
}

/** custom_ids that occur more than once. */
export const checkCustomIds = (all: readonly ComponentNode[]): readonly Problem[] =>
  repeated(all.flatMap(({ custom_id: id }) => id ?? [])).map((id) => at(`the custom_id "${id}" occurs twice`))

/** What the published description does not say about the components of a message. */
export const checkComponents = (top: readonly ComponentNode[], isV2: boolean): readonly Problem[] => {
  const all = walk(top)
  const textLength = all.reduce((sum, { type, content }) => sum + (type === TYPE.text ? (content?.length ?? 0) : 0), 0)
  const arrangement = isV2
    ? [
        ...(all.length > MOST_COMPONENTS ? [at(`${all.length} components, nested ones counted; 40 are allowed`)] : []),
        ...(textLength > MOST_TEXT ? [at(`${textLength} characters of text in all; 4000 are allowed`)] : []),
      ]
    : [
        ...(top.some(({ type }) => type !== TYPE.row) ? [at('needs the flag IS_COMPONENTS_V2')] : []),
        ...(top.length > MOST_ROWS ? [at('more than 5 rows')] : []),
      ]
  return [
    ...arrangement,
    ...checkCustomIds(all),
    ...all.flatMap((node) => {
      if (node.type === TYPE.button) return checkButton(node)
      if (node.type === TYPE.row) return checkRow(node)
      return SELECTS.includes(node.type) ? checkSelect(node) : []
    }),
  ]
}
