import type { APIModalInteractionResponseCallbackData } from 'discord.js'
import { findJar } from '../../core/jar/find-jar.ts'
import { momentOf } from '../../core/jar/moment.ts'
import { record } from '../../core/jar/record.ts'
import { storyOf } from '../../core/jar/story.ts'
import { exactly } from '../../core/quantity/measured.ts'
import type { Jar } from '../../store/person.ts'
import type { Asker } from '../chat/command.ts'
import type { Invocation } from '../chat/invocation.ts'
import { findShare } from '../commands/share/find-share.ts'
import { parseShareRef } from '../commands/share/share-ref.ts'
import type { MakeFormText, StrainingFormText, TastingFormText } from '../text/en/registration.ts'
import { type Filled, jarToTaste, tastingForm } from './form.ts'
import { makeForm, shareToMake } from './make-form.ts'
import { jarToStrain, strainingForm } from './strain-form.ts'

type Form = APIModalInteractionResponseCallbackData

interface Asking extends Pick<Asker, 'userId' | 'assumedZone'> {
  readonly store: Pick<Asker['store'], 'read'>
  readonly nowMs: number
}

interface FormTexts {
  readonly tastingForm: TastingFormText
  readonly strainingForm: StrainingFormText
  readonly makeForm: MakeFormText
}

/** Throws where the jar cannot be strained, so that nobody measures in vain. */
function expectStrainable({ entries }: Jar, { nowMs, assumedZone: zone }: Asking): void {
  const strained = { kind: 'strained', measured: null, strength: null, rinseWaterG: exactly(0) } as const
  record(entries, strained, momentOf(null, { nowMs, zone, entries }), { enteredMs: nowMs, typed: [] })
}

/**
 * The form that a call needs before it can run, null where it needs none. Throws where the jar or the share is not
 * there or not that far, or the store cannot be read.
 *
 * @param filled - what stands in its fields already
 */
export async function formFor(call: Invocation, asking: Asking, text: FormTexts, filled: Filled): Promise<Form | null> {
  const { store, userId } = asking
  const shared = shareToMake(call)
  if (shared !== null) {
    const ref = parseShareRef(shared)
    await findShare(ref, store)
    return makeForm({ userId, ref }, text.makeForm, filled)
  }
  const toStrain = jarToStrain(call)
  const typed = toStrain ?? jarToTaste(call)
  if (typed === null) return null
  const jar = findJar(typed, (await store.read(userId)).jars)
  const story = storyOf(jar.entries)
  if (story === null) return null
  const asked = { owner: userId, jarId: jar.id, jarName: story.name }
  if (toStrain === null) return tastingForm(asked, text.tastingForm, filled)
  expectStrainable(jar, asking)
  return strainingForm(asked, text.strainingForm, filled)
}
