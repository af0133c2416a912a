import type { APIModalInteractionResponseCallbackData } from 'discord.js'
import { writeLine } from '../chat/write-line.ts'
import type { StrainingFormText } from '../text/en/registration.ts'
import { encodeCustomId } from './custom-id.ts'
import { type Asked, amountFields, type Filled, fitted } from './form.ts'

export const STRAIN = 'jar strain'

const FIELDS = ['measured', 'strength'] as const

/** A form for what came out: its fields are called what the options of `/jar strain` are, and either may be left out. */
export const strainingForm = (
  { owner, jarId, jarName }: Asked,
  text: StrainingFormText,
  filled: Filled = {},
): APIModalInteractionResponseCallbackData => ({
  custom_id: encodeCustomId({ owner, line: writeLine(STRAIN, `#${jarId}`), nudgeId: null })!,
  title: fitted(text.title({ name: jarName })),
  components: amountFields(FIELDS, text, filled),
})
