import type { APIModalInteractionResponseCallbackData } from 'discord.js'
import { findJar } from '../../core/jar/find-jar.ts'
import { storyOf } from '../../core/jar/story.ts'
import type { Store } from '../../store/store.ts'
import type { Invocation } from '../chat/invocation.ts'
import { findShare } from '../commands/share/find-share.ts'
import { parseShareRef } from '../commands/share/share-ref.ts'
import type { MakeFormText, TastingFormText } from '../text/en/registration.ts'
import { jarToTaste, tastingForm } from './form.ts'
import { makeForm, shareToMake } from './make-form.ts'

interface Asked {
  readonly store: Pick<Store, 'read'>
  readonly userId: string
}

interface FormTexts {
  readonly tastingForm: TastingFormText
  readonly makeForm: MakeFormText
}

/**
 * The form that a call needs before it can run, null where it needs none. Throws where the jar or the share is not
 * there, or the store cannot be read.
 */
export async function formFor(
  call: Invocation,
  { store, userId }: Asked,
  { tastingForm: text, makeForm: makeText }: FormTexts,
): Promise<APIModalInteractionResponseCallbackData | null> {
  const shared = shareToMake(call)
  if (shared !== null) {
    const ref = parseShareRef(shared)
    await findShare(ref, store)
    return makeForm({ userId, ref }, makeText)
  }
  const typed = jarToTaste(call)
  if (typed === null) return null
  const jar = findJar(typed, (await store.read(userId)).jars)
  const story = storyOf(jar.entries)
  return story === null ? null : tastingForm({ owner: userId, jarId: jar.id, jarName: story.name }, text)
}
