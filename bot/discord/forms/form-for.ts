import type { APIModalInteractionResponseCallbackData } from 'discord.js'
import type { Happening } from '../../../core/jar/entry/entry.ts'
import { momentOf } from '../../../core/jar/record/entry-time.ts'
import { record } from '../../../core/jar/record/record.ts'
import { findJar } from '../../../core/jar/state/find-jar.ts'
import { type JarState, jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import type { Jar } from '../../../store/person.ts'
import { call } from '../../calls/call.ts'
import type { Invocation } from '../../calls/invocation.ts'
import { parseShareRef, type ShareRef } from '../../calls/share-ref.ts'
import { lineOf } from '../../calls/write-line.ts'
import type { Asker } from '../../chat/command.ts'
import type { JarAsker } from '../../commands/jar/known/jar-kitchen.ts'
import { expectNothingTold } from '../../commands/jar/known/told-trouble.ts'
import { findShare } from '../../commands/share/find-share.ts'
import type {
  BottlingFormText,
  MakeFormText,
  StrainingFormText,
  SweeteningFormText,
  TastingFormText,
} from '../../text/discord-forms-text.ts'
import { encodeCustomId } from '../buttons/custom-id.ts'
import {
  BOTTLE,
  bottlingForm,
  bottlingPlanned,
  STRAIN,
  SWEETEN,
  strainingForm,
  sweeteningForm,
  sweeteningPlanned,
} from './amounts-form.ts'
import { amountFields, FIELDS, type FilledFields, type FormJar, jarAlone, TASTE, tastingForm } from './form.ts'

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
  custom_id: encodeCustomId({ owner: userId, line: lineOf(call('share', { make: ref })), nudgeId: null })!,
  title: text.title(),
  components: amountFields(FIELDS.share, text, filled),
})

type Form = APIModalInteractionResponseCallbackData

interface Asking extends Pick<Asker, 'userId' | 'assumedZone'> {
  readonly store: Pick<Asker['store'], 'read'>
  readonly nowMs: number
}

interface FormTexts {
  readonly tastingForm: TastingFormText
  readonly strainingForm: StrainingFormText
  readonly sweeteningForm: SweeteningFormText
  readonly bottlingForm: BottlingFormText
  readonly makeForm: MakeFormText
}

/** The form of a command on a jar. */
interface JarForm {
  /** As much as nothing of what it asks for: throws where that cannot follow, so that nobody measures in vain. */
  readonly trial: Happening | null
  /** What stands in it before anybody has filled it in. */
  readonly planned: (story: JarState, settings: JarAsker['settings']) => FilledFields
  readonly form: (asked: FormJar, text: FormTexts, filled: FilledFields) => Form
}

const none = exactly(0)

const JAR_FORMS: Readonly<Record<string, JarForm>> = {
  [TASTE]: {
    trial: null,
    planned: () => ({}),
    form: (asked, text, filled) => tastingForm(asked, text.tastingForm, filled),
  },
  [STRAIN]: {
    trial: { kind: 'strained', measured: null, strength: null, rinseWaterG: none },
    planned: () => ({}),
    form: (asked, text, filled) => strainingForm(asked, text.strainingForm, filled),
  },
  [SWEETEN]: {
    trial: { kind: 'sweetened', waterG: exactly(1), sweetenings: [] },
    planned: sweeteningPlanned,
    form: (asked, text, filled) => sweeteningForm(asked, text.sweeteningForm, filled),
  },
  [BOTTLE]: {
    trial: { kind: 'bottled', bottles: [{ count: 1, volumeMl: 1 }] },
    planned: bottlingPlanned,
    form: (asked, text, filled) => bottlingForm(asked, text.bottlingForm, filled),
  },
}

function expectFollows({ entries }: Jar, trial: Happening, { nowMs, assumedZone: zone }: Asking): void {
  record(entries, trial, momentOf(null, { nowMs, zone, entries }), { enteredMs: nowMs, typed: [] })
}

/**
 * The form that a call needs before it can run, null where it needs none. Throws where the jar or the share is not
 * there or not that far, or the store cannot be read.
 *
 * @param filled - what stands in its fields already; null: what was planned
 */
export async function formFor(
  call: Invocation,
  asking: Asking,
  text: FormTexts,
  filled: FilledFields | null,
): Promise<Form | null> {
  const { store, userId } = asking
  const shared = shareToMake(call)
  if (shared !== null) {
    const ref = parseShareRef(shared)
    await findShare(ref, store)
    return makeForm({ userId, ref }, text.makeForm, filled ?? {})
  }
  const jarForm = JAR_FORMS[call.path]
  const typed = jarAlone(call)
  if (jarForm === undefined || typed === null) return null
  const { jars, settings } = await store.read(userId)
  const jar = findJar(typed, jars)
  const story = jarStateOf(jar.entries)
  if (story === null) return null
  // Nobody is asked how it tastes, or how many bottles it filled, of what has to be thrown away.
  expectNothingTold(story)
  if (jarForm.trial !== null) expectFollows(jar, jarForm.trial, asking)
  const asked = { owner: userId, jarId: jar.id, jarName: story.name }
  return jarForm.form(asked, text, filled ?? jarForm.planned(story, settings))
}
