import { TYPE } from './component-node.ts'
import { isRecord, type Json } from './json.ts'

/** What Discord fills in of what was left out, by type, from its published description of answers. */
const FILLED: Readonly<Record<number, Json>> = {
  [TYPE.select]: { min_values: 1, max_values: 1 },
  [TYPE.thumbnail]: { description: null, spoiler: false },
  [TYPE.file]: { name: null, size: null, spoiler: false },
  [TYPE.separator]: { spacing: 1, divider: true },
  [TYPE.container]: { accent_color: null, spoiler: false },
}

/** Components as Discord gives them back: numbered, what was left out filled in, files by the address they have now. */
export const shownComponents = (components: readonly unknown[], attachments: readonly Json[]): readonly Json[] => {
  let last = 0
  const media = (sent: Json): Json => {
    const name = String(sent.url).replace('attachment://', '')
    const file = attachments.find(({ filename }) => filename === name)
    const url = file?.url ?? sent.url
    return {
      id: '1',
      url,
      proxy_url: url,
      content_type: file?.content_type ?? null,
      ...(file && { attachment_id: file.id }),
    }
  }
  const show = (value: unknown, key: string): unknown => {
    if (Array.isArray(value)) return value.map((item) => show(item, key))
    if (!isRecord(value)) return value
    if (key === 'media' || key === 'file') return media(value)
    const isNumbered = typeof value.type === 'number'
    if (isNumbered) last += 1
    const id = isNumbered ? { id: typeof value.id === 'number' ? value.id : last } : {}
    const filled = isNumbered ? FILLED[value.type as number] : key === 'items' ? FILLED[TYPE.thumbnail] : {}
    const inner = Object.entries(value).map(([name, item]) => [name, show(item, name)])
    return { ...filled, ...Object.fromEntries(inner), ...id }
  }
  return components.map((component) => show(component, 'components') as Json)
}
