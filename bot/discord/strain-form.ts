import type { APIModalInteractionResponseCallbackData } from 'discord.js'
import type { Invocation } from '../chat/invocation.ts'
import { writeLine } from '../chat/write-line.ts'
import type { StrainingFormText } from '../text/en/registration.ts'
import { encodeCustomId } from './custom-id.ts'
import { type Asked, type Filled, fitted, jarAlone, labelled, standing } from './form.ts'

const TEXT = 4
const SHORT = 1

export const STRAIN = 'jar strain'

const FIELDS = ['measured', 'strength'] as const

/** As long as the grammar takes an amount. */
const MOST_CHARACTERS = 200

export const jarToStrain = (call: Invocation): string | null => jarAlone(STRAIN, call)

/** A form for what came out: its fields are called what the options of `/jar strain` are, and either may be left out. */
export const strainingForm = (
  { owner, jarId, jarName }: Asked,
  text: StrainingFormText,
  filled: Filled = {},
): APIModalInteractionResponseCallbackData => ({
  custom_id: encodeCustomId({ owner, line: writeLine(STRAIN, `#${jarId}`), nudgeId: null })!,
  title: fitted(text.title({ name: jarName })),
  components: FIELDS.map((name) =>
    labelled(text[name](), {
      type: TEXT,
      custom_id: name,
      style: SHORT,
      placeholder: text[`${name}Placeholder`](),
      required: false,
      max_length: MOST_CHARACTERS,
      ...standing(filled[name], MOST_CHARACTERS),
    }),
  ),
})
