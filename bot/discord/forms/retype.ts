import type { APIModalInteractionResponseCallbackData } from 'discord.js'
import type { Store } from '../../../store/store.ts'
import type { RetypeFormText } from '../../text/discord-forms-text.ts'
import { encodeCustomId } from '../buttons/custom-id.ts'
import { keepIn, keptReference, LONGEST_KEPT } from '../buttons/long-button-lines.ts'
import type { Submitted } from './form.ts'

/** A line that somebody typed, and the command that it runs or meant to. */
export interface TypedLine {
  readonly line: string
  readonly path: string
}

/** Begins what a button carries that opens a line to be changed; the line follows, or a kept one's name. */
const RETYPE = '!line '

/** What the form with a line carries. */
export const TYPED_LINE = '!line'

const [LABEL, TEXT, PARAGRAPH] = [18, 4, 2] as const
const FIELD = 'line'

/** Discord's limit of a text field. */
const MOST_FIELD = 4000

/**
 * The id of the button that opens a line to be changed. One that is too long for it is kept in its owner's file, which is
 * written only then; a `StorageError` comes out. Null where it is too long for that.
 */
export async function retypeId(
  { line, path }: TypedLine,
  { userId: owner, store }: { readonly userId: string; readonly store: Pick<Store, 'update'> },
): Promise<string | null> {
  const short = encodeCustomId({ owner, line: RETYPE + line, nudgeId: null })
  if (short !== null || line.length > LONGEST_KEPT) return short
  return encodeCustomId({ owner, line: RETYPE + keptReference(await keepIn(store, owner, line), path), nudgeId: null })
}

/** The line that such a button opens, or a kept one's name; null for any other button. */
export const retyped = (line: string): string | null => (line.startsWith(RETYPE) ? line.slice(RETYPE.length) : null)

/** A form whose one field holds a whole line. */
export const retypeForm = (
  line: string,
  owner: string,
  text: RetypeFormText,
): APIModalInteractionResponseCallbackData => ({
  custom_id: encodeCustomId({ owner, line: TYPED_LINE, nudgeId: null })!,
  title: text.title(),
  components: [
    {
      type: LABEL,
      label: text.line(),
      component: {
        type: TEXT,
        custom_id: FIELD,
        style: PARAGRAPH,
        required: true,
        min_length: 1,
        max_length: MOST_FIELD,
        value: line.slice(0, MOST_FIELD),
      },
    },
  ],
})

/** The line that such a form was sent with; a field of several lines is one. */
export const readTypedLine = (components: readonly unknown[]): string =>
  (components as readonly Submitted[])
    .flatMap(({ component }) => (component?.customId === FIELD ? (component.value ?? '') : []))
    .join(' ')
    .replace(/\s*[\r\n]+\s*/g, ' ')
    .trim()
