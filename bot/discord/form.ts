import type {
  APILabelComponent,
  APIModalInteractionResponseCallbackData,
  APISelectMenuOption,
  APIStringSelectComponent,
  APITextInputComponent,
} from 'discord.js'
import { MOST_NOTE_CHARACTERS } from '../../core/jar/record.ts'
import type { Callable } from '../chat/callable.ts'
import { parseLine } from '../chat/grammar.ts'
import type { Invocation } from '../chat/invocation.ts'
import { writeLine } from '../chat/write-line.ts'
import type { TastingFormText } from '../text/en/registration.ts'
import { encodeCustomId } from './custom-id.ts'

const LABEL = 18
const SELECT = 3
const TEXT = 4
const PARAGRAPH = 2

const MOST_TITLE = 45
const PATH = 'jar taste'

/** The options that a form fills in, by its command. */
const FIELDS: Readonly<Record<string, readonly string[]>> = {
  [PATH]: ['rating', 'note'],
  share: ['of', 'spirit', 'strength', 'bottles'],
}

/** Best first, as somebody who liked it looks for it. */
const RATINGS = [5, 4, 3, 2, 1] as const

export interface Tasted {
  /** Who may send the form. */
  readonly owner: string
  readonly jarId: string
  readonly jarName: string
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' })

/** As many whole characters as fit, with `…` where some are left out. */
const fitted = (title: string): string => {
  if (title.length <= MOST_TITLE) return title
  const kept = [...graphemes.segment(title)].findLast(({ index, segment }) => index + segment.length < MOST_TITLE)
  return `${title.slice(0, kept === undefined ? 0 : kept.index + kept.segment.length).trimEnd()}…`
}

export const labelled = (
  text: string,
  component: APIStringSelectComponent | APITextInputComponent,
): APILabelComponent => ({
  type: LABEL,
  label: text,
  component,
})

/** A form for a tasting note: its fields are called what the options of `/jar taste` are, and either may be left out. */
export const tastingForm = (
  { owner, jarId, jarName }: Tasted,
  text: TastingFormText,
): APIModalInteractionResponseCallbackData => {
  const options = RATINGS.map((rating): APISelectMenuOption => ({ label: text.ratings[rating], value: `${rating}` }))
  return {
    custom_id: encodeCustomId({ owner, line: writeLine(PATH, `#${jarId}`), nudgeId: null })!,
    title: fitted(text.title({ name: jarName })),
    components: [
      labelled(text.rating(), {
        type: SELECT,
        custom_id: 'rating',
        placeholder: text.unrated(),
        required: false,
        min_values: 0,
        max_values: 1,
        options,
      }),
      labelled(text.note(), {
        type: TEXT,
        custom_id: 'note',
        style: PARAGRAPH,
        placeholder: text.notePlaceholder(),
        required: false,
        max_length: MOST_NOTE_CHARACTERS,
      }),
    ],
  }
}

/** The jar of a call that says nothing of how it tasted yet, so that the form has to ask; null for any other call. */
export const jarToTaste = ({ path, options }: Invocation): string | null =>
  path === PATH && Object.keys(options).join() === 'jar' ? options.jar! : null

/** What was sent of a form, as discord.js hands it over: labels with a component each. */
export interface Submitted {
  readonly component?: {
    readonly customId: string
    readonly value?: string
    readonly values?: readonly string[]
  }
}

/** The call that a form makes: its line with what was filled in as further options; what was left empty is left out. */
export const readForm = (line: string, components: readonly unknown[], commands: readonly Callable[]): Invocation => {
  const { path, options } = parseLine(line, commands)
  const fields = (components as readonly Submitted[]).flatMap(({ component }) => component ?? [])
  const filled = (FIELDS[path] ?? []).flatMap((name) => {
    const field = fields.find(({ customId }) => customId === name)
    const value = (field?.value ?? field?.values?.[0] ?? '').trim()
    return value === '' ? [] : [[name, value] as const]
  })
  return { path, options: { ...options, ...Object.fromEntries(filled) } }
}
