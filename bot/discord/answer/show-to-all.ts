import type { APIMessageTopLevelComponent } from 'discord.js'
import { fetchFile } from '../rest/fetch-file.ts'
import { COMPONENTS_V2, type MessageFile, type MessagePayload } from '../show/message-payload.ts'
import { SMALL } from '../show/reply-blocks.ts'
import { MOST_BYTES } from '../show/with-files.ts'
import { hasZoneChoice } from '../suggest/zone-choice.ts'
import type { Answered, InteractionResponses } from './interaction-responses.ts'

/** What Discord adds to components when it gives them back, and does not take when they are sent again. */
const ADDED = new Set(['id'])

/** Of a picture or a file only its address can be sent. */
const ADDRESSED = new Set(['media', 'file'])

type Plain = { readonly [name: string]: unknown }

const isPlain = (value: unknown): value is Plain => typeof value === 'object' && value !== null

/** Components of a message as they can be sent in another one. */
export function resendable<Value>(value: Value): Value {
  if (Array.isArray(value)) return value.map(resendable) as Value
  if (!isPlain(value)) return value
  const kept = Object.entries(value).flatMap(([name, inner]): [string, unknown][] => {
    if (ADDED.has(name) || inner === null || inner === undefined) return []
    return [[name, ADDRESSED.has(name) && isPlain(inner) ? { url: inner.url } : resendable(inner)]]
  })
  return Object.fromEntries(kept) as Value
}

const [ROW, TEXT, GALLERY, FILE, CONTAINER] = [1, 10, 12, 13, 17] as const

interface Item {
  readonly media: { readonly url: string }
  readonly description?: string
}

interface Node {
  readonly type: number
  readonly content?: string
  readonly custom_id?: string
  readonly components?: readonly Node[]
  readonly items?: readonly Item[]
}

/** A picture of the answer; without bytes where it cannot be had any more. */
interface Picture extends Item {
  readonly name: string
  readonly bytes: Uint8Array | null
}

/** Of our own pictures the last part of their address is their name. */
const NAME = /\/([a-z0-9-]+\.(?:png|jpg|webp))(?:[?#]|$)/

const nameOf = (url: string, index: number): string => NAME.exec(url)?.[1] ?? `picture-${index + 1}.png`

const mimeOf = (name: string): string => `image/${name.split('.').at(-1)?.replace('jpg', 'jpeg')}`

/** Without the small print at the end of the text, which is of its asker's zone where that is to be chosen. */
const withoutZone = (node: Node): Node => {
  const last = node.components?.at(-1)
  const isNote = node.type === CONTAINER && last?.type === TEXT && last.content?.startsWith(SMALL)
  return isNote ? { ...node, components: node.components!.slice(0, -1) } : node
}

/** What an answer shows, without buttons, which only its owner could press, and without its files. */
const shownIn = (components: readonly APIMessageTopLevelComponent[]): readonly Node[] => {
  const nodes = components as readonly Node[]
  const shown = nodes.filter(({ type }) => type !== ROW && type !== FILE)
  return hasZoneChoice(nodes) ? shown.map(withoutZone) : shown
}

/** For everybody to see, with those of its pictures that are there. */
function payloadOf(shown: readonly Node[], pictures: readonly Picture[], picturesGone: string): MessagePayload {
  const there = pictures.flatMap(({ bytes, ...picture }) => (bytes === null ? [] : [{ ...picture, bytes }]))
  const itemsOf = (items: readonly Item[]): readonly Item[] =>
    items.flatMap(({ media: { url }, description }) => {
      const picture = there.find((each) => each.media.url === url)
      return picture === undefined
        ? []
        : [{ media: { url: `attachment://${picture.name}` }, ...(description !== undefined && { description }) }]
    })
  const components = shown.flatMap((node): Node[] => {
    if (node.type !== GALLERY) return [node]
    const items = itemsOf(node.items ?? [])
    return items.length === 0 ? [] : [{ ...node, items }]
  })
  const gone = there.length === pictures.length ? [] : [{ type: TEXT, content: picturesGone }]
  const files = there.map(({ name, bytes }): MessageFile => ({ name, mime: mimeOf(name), bytes }))
  return {
    flags: COMPONENTS_V2,
    components: [...components, ...gone] as unknown as APIMessageTopLevelComponent[],
    allowed_mentions: { parse: [] },
    ...(there.length > 0 && {
      attachments: there.map(({ name, description = '' }, id) => ({ id: String(id), filename: name, description })),
      files,
    }),
  }
}

interface Showing {
  readonly wire: InteractionResponses
  /** Base address of Discord's REST, or null: Discord's own. */
  readonly api: string | null
  /** In the place of what cannot be had any more. */
  readonly picturesGone: string
}

/**
 * Shows everybody what an answer to one shows. Its pictures are sent anew: the address of one that belongs to an answer
 * in private ends with it.
 */
export async function showToAll(
  components: readonly APIMessageTopLevelComponent[],
  { wire, api, picturesGone }: Showing,
): Promise<Answered> {
  const shown = shownIn(components.map(resendable))
  const items = shown.flatMap(({ type, items = [] }) => (type === GALLERY ? items : []))
  if (items.length === 0) return wire.message(payloadOf(shown, [], picturesGone))
  if ((await wire.promise(true)) === 'too_late') return 'too_late'
  const pictures = await Promise.all(
    items.map(async (item, index): Promise<Picture> => {
      const bytes = await fetchFile(item.media.url, MOST_BYTES, api)
      return { ...item, name: nameOf(item.media.url, index), bytes: typeof bytes === 'string' ? null : bytes }
    }),
  )
  const without = pictures.map((picture) => ({ ...picture, bytes: null }))
  const withoutFiles = { ...payloadOf(shown, without, picturesGone), attachments: [] }
  await wire.fulfil({ ...payloadOf(shown, pictures, picturesGone), withoutFiles })
  return 'answered'
}
