import type { APIButtonComponentWithCustomId, APIMessageTopLevelComponent } from 'discord.js'
import type { Page } from './pages.ts'

/** A message as Discord's REST takes it. */
export interface MessagePayload {
  readonly flags: number
  readonly components: APIMessageTopLevelComponent[]
  /** Nobody is pinged but those named here. */
  readonly allowed_mentions: { readonly parse: never[]; readonly users?: string[] }
  /** One for each of `files`, by its place among them. */
  readonly attachments?: { readonly id: string; readonly filename: string; readonly description: string }[]
  /** Sent beside the message, no part of it. */
  readonly files?: readonly MessageFile[]
  /** Said in its place where the files do not arrive; no part of it. */
  readonly withoutFiles?: MessagePayload
}

export interface MessageFile {
  readonly name: string
  readonly mime: string
  readonly bytes: Uint8Array
}

/** Discord's numbers, so that nothing of discord.js has to be loaded here. */
export const EPHEMERAL = 1 << 6
export const COMPONENTS_V2 = 1 << 15
const [ROW, BUTTON, TEXT, CONTAINER] = [1, 2, 10, 17] as const
const [PRIMARY, SECONDARY] = [1, 2] as const

/** Discord's limits: buttons in a row, characters on one, characters of all text. */
const ROW_BUTTONS = 5
export const LABEL_CHARACTERS = 80
export const TEXT_CHARACTERS = 4000
/** Components of a message, those within others counted too. */
export const MOST_COMPONENTS = 40
/** In 5 rows, with a container and its texts, under the 40 components that a message may have. */
export const MOST_BUTTONS = 25

export interface Button {
  readonly label: string
  readonly customId: string
  readonly isMain: boolean
}

const rowsOf = (buttons: readonly Button[]): APIMessageTopLevelComponent[] =>
  Array.from({ length: Math.ceil(buttons.length / ROW_BUTTONS) }, (_, row) => ({
    type: ROW,
    components: buttons.slice(row * ROW_BUTTONS, (row + 1) * ROW_BUTTONS).map(
      ({ label, customId, isMain }): APIButtonComponentWithCustomId => ({
        type: BUTTON,
        style: isMain ? PRIMARY : SECONDARY,
        label,
        custom_id: customId,
      }),
    ),
  }))

interface Showing {
  readonly isPrivate: boolean
  /** Whom the text may ping. */
  readonly pinged: string | null
}

/** One message: texts in a container, buttons under it. */
export const messageOf = (texts: Page, buttons: readonly Button[], { isPrivate, pinged }: Showing): MessagePayload => ({
  flags: isPrivate ? COMPONENTS_V2 | EPHEMERAL : COMPONENTS_V2,
  components: [{ type: CONTAINER, components: texts.map((content) => ({ type: TEXT, content })) }, ...rowsOf(buttons)],
  allowed_mentions: pinged === null ? { parse: [] } : { parse: [], users: [pinged] },
})
