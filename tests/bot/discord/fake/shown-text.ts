import type { APIMessage } from 'discord.js'
import { type ComponentNode, TYPE, walk } from './component-node.ts'
import { isRecord } from './json.ts'

/** A button as a person sees it. */
export interface ShownButton {
  readonly label: string
  readonly customId: string | undefined
  readonly url: string | undefined
  readonly isDisabled: boolean
}

type Shown = Pick<APIMessage, 'content' | 'embeds' | 'components'>

const nodes = ({ components }: Shown): readonly ComponentNode[] => walk((components ?? []) as readonly ComponentNode[])

/** All text of a message outside its buttons, line by line. */
export const textOf = (message: Shown): string => {
  const embeds = message.embeds.flatMap(({ title, description, fields = [], footer }) => [
    title,
    description,
    ...fields.flatMap(({ name, value }) => [name, value]),
    footer?.text,
  ])
  const texts = nodes(message).map(({ type, content }) => (type === TYPE.text ? content : undefined))
  return [message.content, ...embeds, ...texts].filter(Boolean).join('\n')
}

export const buttonsOf = (message: Shown): readonly ShownButton[] =>
  nodes(message)
    .filter(({ type }) => type === TYPE.button)
    .map(({ label, emoji, custom_id, url, disabled = false }) => ({
      label: label ?? (isRecord(emoji) ? String(emoji.name) : ''),
      customId: custom_id,
      url,
      isDisabled: disabled,
    }))

/** The custom_ids of all that can be chosen from. */
export const selectsOf = (message: Shown): readonly ComponentNode[] =>
  nodes(message).filter(({ type }) => type === TYPE.select)
