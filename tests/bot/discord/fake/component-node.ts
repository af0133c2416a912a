import { isRecord } from './json.ts'

/** A component as it travels, as far as it is read here. */
export interface ComponentNode {
  readonly type: number
  readonly custom_id?: string
  readonly content?: string
  readonly label?: string
  readonly style?: number
  readonly url?: string
  readonly emoji?: unknown
  readonly sku_id?: string
  readonly disabled?: boolean
  readonly required?: boolean
  readonly value?: string
  readonly min_length?: number
  readonly max_length?: number
  readonly min_values?: number
  readonly max_values?: number
  readonly options?: readonly { readonly label: string; readonly value: string; readonly default?: boolean }[]
  readonly components?: readonly ComponentNode[]
  readonly accessory?: ComponentNode
  readonly component?: ComponentNode
}

/** Types by number, from Discord's component reference. */
export const TYPE = {
  row: 1,
  button: 2,
  select: 3,
  textInput: 4,
  section: 9,
  text: 10,
  thumbnail: 11,
  gallery: 12,
  file: 13,
  separator: 14,
  container: 17,
  label: 18,
} as const

/** A component and all in it, in the order they are shown. */
export const walk = (nodes: readonly ComponentNode[]): readonly ComponentNode[] =>
  nodes.flatMap((node) => [
    node,
    ...walk(node.components ?? []),
    ...walk(node.component ? [node.component] : []),
    ...walk(node.accessory ? [node.accessory] : []),
  ])

/** Every address in a payload that points at a file sent with it, by the file's name. */
export const attachmentNames = (value: unknown): readonly string[] => {
  if (Array.isArray(value)) return value.flatMap(attachmentNames)
  if (!isRecord(value)) return []
  return Object.entries(value).flatMap(([key, inner]) =>
    key === 'url' && typeof inner === 'string' && inner.startsWith('attachment://')
      ? [inner.slice('attachment://'.length)]
      : attachmentNames(inner),
  )
}
