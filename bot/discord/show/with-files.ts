import type { APIMessageTopLevelComponent } from 'discord.js'
import type { DrawnFile } from '../../chat/draw-files.ts'
import { shortened } from './cut-text.ts'
import type { DiscordLanguage } from './language-for-discord.ts'
import { type MessageFile, type MessagePayload, MOST_COMPONENTS } from './message-payload.ts'
import { plainText } from './plain-text.ts'

const [TEXT, GALLERY, FILE] = [10, 12, 13] as const

/** Discord's limits: files of a message, bytes of one, characters that say what a file shows. */
const MOST_FILES = 10
export const MOST_BYTES = 10 * 1024 * 1024
const ALT_CHARACTERS = 1024

interface Nested {
  readonly components?: readonly Nested[]
}

const countOf = (nodes: readonly Nested[]): number =>
  nodes.reduce((sum, { components = [] }) => sum + 1 + countOf(components), 0)

type Sent = MessageFile & { readonly alt: string }

/** A picture is shown, anything else offered. */
const shownAs = ({ name, mime, alt }: Sent): APIMessageTopLevelComponent => {
  const media = { url: `attachment://${name}` }
  return mime.startsWith('image/')
    ? { type: GALLERY, items: [{ media, description: alt }] }
    : { type: FILE, file: media }
}

type Why = Parameters<DiscordLanguage['discord']['fileFailed']>[0]['why']

/** The messages with `shown` in the first of them, or in one more where that is full. */
const withShown = (
  [first, ...others]: readonly [MessagePayload, ...MessagePayload[]],
  shown: readonly APIMessageTopLevelComponent[],
  attached: Partial<MessagePayload>,
): readonly MessagePayload[] => {
  const [text, ...rows] = first.components
  const isFull = countOf(first.components as readonly Nested[]) + shown.length > MOST_COMPONENTS
  return isFull || text === undefined
    ? [first, ...others, { ...first, components: [...shown], ...attached }]
    : [{ ...first, components: [text, ...shown, ...rows], ...attached }, ...others]
}

/**
 * The messages of an answer with its files: in the first of them under its text, or in one more where that is full. What
 * could not be made or is too big for Discord is told, and so is what then does not get through.
 */
export function withFiles(
  messages: readonly MessagePayload[],
  drawn: readonly DrawnFile[],
  { discord }: DiscordLanguage,
): readonly MessagePayload[] {
  const [first, ...others] = messages
  if (first === undefined || drawn.length === 0) return messages
  const sent: Sent[] = drawn
    .flatMap(({ bytes, alt, ...file }) =>
      bytes === null ? [] : [{ ...file, bytes, alt: shortened(plainText(alt), ALT_CHARACTERS) }],
    )
    .filter(({ bytes }) => bytes.length <= MOST_BYTES)
    .slice(0, MOST_FILES)
  const told = (name: string, why: Why): APIMessageTopLevelComponent => ({
    type: TEXT,
    content: discord.fileFailed({ name, why }),
  })
  const failed = drawn
    .filter(({ name }) => !sent.some((each) => each.name === name))
    .map(({ name, bytes }) => told(name, bytes === null ? 'not_made' : 'too_big'))
  if (sent.length === 0) return withShown([first, ...others], failed, {})
  const without = [...sent.map(({ name }) => told(name, 'not_sent')), ...failed]
  const textAlone = withShown([first, ...others], without, { attachments: [] })
  const attached = {
    attachments: sent.map(({ name, alt }, id) => ({ id: String(id), filename: name, description: alt })),
    files: sent.map(({ name, mime, bytes }) => ({ name, mime, bytes })),
  }
  return withShown([first, ...others], [...sent.map(shownAs), ...failed], attached).map((message, index) => {
    const withoutFiles = textAlone[index]
    return message.files === undefined || withoutFiles === undefined ? message : { ...message, withoutFiles }
  })
}
