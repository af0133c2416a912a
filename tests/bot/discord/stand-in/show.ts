import { writeFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import type { Answer } from '../fake/answer.ts'
import { type ComponentNode, TYPE, walk } from '../fake/component-node.ts'
import { buttonsOf, selectsOf, textOf } from '../fake/shown-text.ts'
import type { FakeMessage } from '../fake/world.ts'
import type { Scene } from './scene.ts'

const COMPONENTS_V2 = 1 << 15

type Length = 'short' | 'medium' | 'long' | 'full'

/** How Discord writes an instant of each style: https://discord.com/developers/docs/reference#message-formatting. */
const STYLES: Readonly<Record<string, { readonly dateStyle?: Length; readonly timeStyle?: Length }>> = {
  t: { timeStyle: 'short' },
  T: { timeStyle: 'medium' },
  d: { dateStyle: 'short' },
  D: { dateStyle: 'long' },
  f: { dateStyle: 'long', timeStyle: 'short' },
  F: { dateStyle: 'full', timeStyle: 'short' },
}

export interface Showing {
  readonly scene: Scene
  readonly zone: string
  /** Where pictures and other files are written. */
  readonly files: string
}

export const shownMoment = (ms: number, zone: string, style = 'f'): string =>
  new Intl.DateTimeFormat('en-GB', { timeZone: zone, ...(STYLES[style] ?? STYLES.f) }).format(ms)

/** The text as people see it, but for its marks of bold and small. */
const shownText = (text: string, { scene, zone }: Showing): string =>
  text
    .replace(/<t:(-?\d+)(?::(\w))?>/g, (_, seconds, style) => shownMoment(Number(seconds) * 1000, zone, style))
    .replace(/<#(\d+)>/g, (mark, id) => `#${scene.nameOfRoom(id) ?? mark}`)
    .replace(/<@(\d+)>/g, (mark, id) => `@${scene.nameOfPerson(id) ?? mark}`)

const shownFiles = (message: FakeMessage, { scene, files }: Showing): readonly string[] => {
  const { attachments, components, flags = 0 } = message.json
  const components2 = JSON.stringify(components ?? [])
  return message.files.flatMap((file, index) => {
    const { url = '', description } = attachments[index] ?? {}
    if (flags & COMPONENTS_V2 && !components2.includes(url)) return []
    const path = join(files, `${scene.numberOf(message)}-${basename(file.name)}`)
    writeFileSync(path, file.bytes)
    return `  ${file.mime.startsWith('image/') ? 'picture' : 'file'}: ${path}${description ? ` (${description})` : ''}`
  })
}

const shownButtons = ({ json }: FakeMessage): readonly string[] => {
  const buttons = buttonsOf(json).map(
    ({ label, url, isDisabled }) => `[${label}]${url ? ` opens ${url}` : ''}${isDisabled ? ' (disabled)' : ''}`,
  )
  return buttons.length === 0 ? [] : [`  buttons: ${buttons.join(' ')}`]
}

type Choosable = ComponentNode & { readonly placeholder?: string }

const shownChoices = ({ json }: FakeMessage): readonly string[] =>
  (selectsOf(json) as readonly Choosable[]).map(
    ({ placeholder = '', options = [] }) =>
      `  choose (${placeholder}): ${options.map((option) => `${option.label}${option.default ? ' (chosen)' : ''}`).join(' | ')}`,
  )

const whoSees = ({ onlyFor, channel }: FakeMessage): string => {
  if (onlyFor) return `only ${onlyFor.name} sees it`
  return channel.guild ? `everybody in #${channel.name} sees it` : `direct message to ${channel.name}`
}

/** A message as people see it, under its number. */
export const showMessage = (message: FakeMessage, showing: Showing): string => {
  const { scene } = showing
  const head = `── ${scene.numberOf(message)} · ${whoSees(message)}`
  const isEdited = scene.hasChanged(message)
  scene.markShown(message)
  if (message.isDeleted) return `${head} · deleted`
  const lines = [
    shownText(textOf(message.json), showing),
    ...shownFiles(message, showing),
    ...shownButtons(message),
    ...shownChoices(message),
  ]
  return [`${head}${isEdited ? ' · edited' : ''}`, ...lines].join('\n')
}

type Field = Choosable & { readonly description?: string }

const shownField = (label: ComponentNode): readonly string[] => {
  if (label.type === TYPE.text) return [`  ${label.content}`]
  const field = (label.component ?? label) as Field
  if (field.custom_id === undefined) return []
  const { custom_id: id, value, placeholder, required = true, options = [] } = field
  const hints = [
    ...((label as Field).description ? [(label as Field).description] : []),
    ...(required ? [] : ['may be left empty']),
    ...(placeholder ? [`“${placeholder}”`] : []),
    ...(value ? [`now: ${value}`] : []),
  ]
  return [
    `  ${id}= ${label.label ?? ''}${hints.length > 0 ? ` (${hints.join(', ')})` : ''}`,
    ...options.map((option) => `    ${option.value}: ${option.label}${option.default ? ' (chosen)' : ''}`),
  ]
}

/** Nodes that are shown by themselves: a label brings its field along. */
const fieldsOf = (nodes: readonly ComponentNode[]): readonly ComponentNode[] =>
  nodes.flatMap((node) => (node.type === TYPE.label ? [node] : node.components ? walk(node.components) : [node]))

export const showForm = ({ modal, interaction }: Answer): string => {
  const fields = fieldsOf((modal?.components ?? []) as readonly ComponentNode[])
  return [
    `── a form opens for ${interaction.user.name}: ${String(modal?.title)}`,
    ...fields.flatMap(shownField),
    '  (fill field=value; field=value sends it)',
  ].join('\n')
}

export const showOffers = ({ choices }: Answer): string =>
  choices.length === 0
    ? 'Nothing is offered.'
    : choices
        .map(({ name, value }) => `  offered: ${name}${String(value) === name ? '' : ` (sends ${value})`}`)
        .join('\n')
