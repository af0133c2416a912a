import type { APIModalInteractionResponseCallbackData } from 'discord.js'
import type { Invocation } from '../../calls/invocation.ts'
import { type ShareRef, shareRef } from '../../calls/share-ref.ts'
import type { MakeFormText } from '../../text/discord-forms-text.ts'
import { encodeCustomId } from '../buttons/custom-id.ts'
import { amountFields, FIELDS, type FilledFields } from './form.ts'

/** What a press of the button of a shared batch names, so that the form has to ask; null for any other call. */
export const shareToMake = ({ path, options }: Invocation): string | null =>
  path === 'share' && Object.keys(options).join() === 'make' ? options.make! : null

/**
 * A form for what there is to make a shared batch from: its fields are called what the options of `/share make:` are, and
 * any may be left out. It is its asker's own, and says nothing of whose batch it is.
 */
export const makeForm = (
  { userId, ref }: { readonly userId: string; readonly ref: ShareRef },
  text: MakeFormText,
  filled: FilledFields = {},
): APIModalInteractionResponseCallbackData => ({
  custom_id: encodeCustomId({ owner: userId, line: `/share make:${shareRef(ref)}`, nudgeId: null })!,
  title: text.title(),
  components: amountFields(FIELDS.share, text, filled),
})
