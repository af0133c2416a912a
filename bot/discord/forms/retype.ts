import type { APIModalInteractionResponseCallbackData } from 'discord.js'
import type { RetypeFormText } from '../../text/discord-forms-text.ts'
import { encodeCustomId } from '../buttons/custom-id.ts'
import { type LineOfCommand, marked, markedId } from '../buttons/marked-lines.ts'
import type { Submitted } from './form.ts'

const RETYPE = '!line '

/** What the form with a line carries. */
export const TYPED_LINE = '!line'

const [LABEL, TEXT, PARAGRAPH] = [18, 4, 2] as const
const FIELD = 'line'

/** Discord's limit of a text field. */
const MOST_FIELD = 4000

/** The id of the button that opens a line to be changed; see `markedId`. */
export const retypeId = (typed: LineOfCommand, keeping: Parameters<typeof markedId>[2]): Promise<string | null> =>
  markedId(RETYPE, typed, keeping)

/** The line that such a button opens, or a kept one's name; null for any other button. */
export const retyped = (line: string): string | null => marked(RETYPE, line)

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
