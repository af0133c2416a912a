import type {
  APILabelComponent,
  APIModalInteractionResponseCallbackData,
  APISelectMenuOption,
  APIStringSelectComponent,
  APITextInputComponent,
} from 'discord.js'
import { MOST_NOTE_CHARACTERS } from '../../../core/jar/record/bounds.ts'
import type { Invocation } from '../../calls/invocation.ts'
import { lineOf } from '../../calls/write-line.ts'
import type { Callable } from '../../chat/callable.ts'
import { parseLine } from '../../chat/grammar/grammar.ts'
import type { TastingFormText } from '../../text/discord-forms-text.ts'
import { encodeCustomId } from '../buttons/custom-id.ts'
import { isolatedWithin } from '../show/isolate-rtl.ts'

const LABEL = 18
const SELECT = 3
const TEXT = 4
const PARAGRAPH = 2

const MOST_TITLE = 45
export const TASTE = 'jar taste'

/** The options that a form fills in, by its command. A form has at most five fields. */
export const FIELDS = {
  [TASTE]: ['rating', 'note'],
  'jar strain': ['measured', 'strength'],
  'jar sweeten': ['sugar', 'water'],
  'jar bottle': ['bottles'],
  share: ['spirit', 'strength', 'bottles', 'of', 'to-strength'],
} as const

const fieldsOf = (path: string): readonly string[] =>
  (FIELDS as Readonly<Record<string, readonly string[] | undefined>>)[path] ?? []

/** Whether a form asks for an option that was left out. */
export const isAskedFor = (path: string, option: string): boolean => fieldsOf(path).includes(option)

/** What a form is filled in with, by its fields; what is not one of them is passed over. */
export type FilledFields = Readonly<Record<string, string>>

/** Best first, as somebody who liked it looks for it. */
const RATINGS = [5, 4, 3, 2, 1] as const

export interface FormJar {
  /** Who may send the form. */
  readonly owner: string
  readonly jarId: string
  readonly jarName: string
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' })

/** As many whole characters of a title as fit, with `…` where some are left out. */
const fitted = (title: string): string => {
  if (title.length <= MOST_TITLE) return isolatedWithin(title, MOST_TITLE)
  const kept = [...graphemes.segment(title)].findLast(({ index, segment }) => index + segment.length < MOST_TITLE)
  return `${title.slice(0, kept === undefined ? 0 : kept.index + kept.segment.length).trimEnd()}…`
}

const labelled = (text: string, component: APIStringSelectComponent | APITextInputComponent): APILabelComponent => ({
  type: LABEL,
  label: text,
  component,
})

/** What stands in a field already, as far as it fits; nothing where nothing does. */
const standing = (value: string | undefined, most: number): Pick<APITextInputComponent, 'value'> =>
  value === undefined ? {} : { value: value.slice(0, most) }

const SHORT = 1

/** As long as the grammar takes an amount. */
const MOST_AMOUNT = 200

type AmountTexts<Name extends string> = Readonly<Record<Name | `${Name}Placeholder`, () => string>>

/** Fields of a line each, called what options are called; any may be left out. */
export const amountFields = <Name extends string>(
  names: readonly Name[],
  text: AmountTexts<Name>,
  filled: FilledFields,
): APILabelComponent[] =>
  names.map((name) =>
    labelled(text[name](), {
      type: TEXT,
      custom_id: name,
      style: SHORT,
      placeholder: text[`${name}Placeholder`](),
      required: false,
      max_length: MOST_AMOUNT,
      ...standing(filled[name], MOST_AMOUNT),
    }),
  )

/** A form of a command on a jar: who it belongs to, and its title. */
export const headOf = (
  path: string,
  { owner, jarId, jarName }: FormJar,
  { title }: { title(values: { readonly name: string }): string },
) => ({
  custom_id: encodeCustomId({ owner, line: lineOf({ path, options: { jar: `#${jarId}` } }), nudgeId: null })!,
  title: fitted(title({ name: jarName })),
})

/** A form for a tasting note: its fields are called what the options of `/jar taste` are, and either may be left out. */
export const tastingForm = (
  asked: FormJar,
  text: TastingFormText,
  filled: FilledFields = {},
): APIModalInteractionResponseCallbackData => {
  const options = RATINGS.map((rating): APISelectMenuOption => {
    const value = `${rating}`
    return { label: text.ratings[rating], value, ...(value === filled.rating && { default: true }) }
  })
  return {
    ...headOf(TASTE, asked, text),
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
        ...standing(filled.note, MOST_NOTE_CHARACTERS),
      }),
    ],
  }
}

/** The jar of a call that names nothing else, so that a form may have to ask; null for any other call. */
export const jarAlone = ({ options }: Invocation): string | null =>
  Object.keys(options).join() === 'jar' ? options.jar! : null

/** What was sent of a form, as discord.js hands it over: labels with a component each. */
export interface Submitted {
  readonly component?: {
    readonly customId: string
    readonly value?: string
    readonly values?: readonly string[]
  }
}

/** What was filled in, one under the other. */
export const typedInForm = (components: readonly unknown[]): string =>
  (components as readonly Submitted[]).map(({ component }) => component?.value ?? '').join('\n')

/** A form that was sent: its own line, and what was filled in. */
export interface SentForm {
  readonly line: string
  readonly filled: FilledFields
}

/** What was filled in becomes further options of the form's line; what was left empty is left out. */
export const readForm = (line: string, components: readonly unknown[], commands: readonly Callable[]): SentForm => {
  const { path } = parseLine(line, commands)
  const fields = (components as readonly Submitted[]).flatMap(({ component }) => component ?? [])
  const filled = fieldsOf(path).flatMap((name) => {
    const field = fields.find(({ customId }) => customId === name)
    const value = (field?.value ?? field?.values?.[0] ?? '').trim()
    return value === '' ? [] : [[name, value] as const]
  })
  return { line, filled: Object.fromEntries(filled) }
}
