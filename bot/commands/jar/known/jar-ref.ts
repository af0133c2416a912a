import type { JarEntry } from '../../../../core/jar/entry/entry.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import type { Jar, Place } from '../../../../store/person.ts'
import type { Context } from '../../../chat/command.ts'

/** A jar as its entries stand, and what they tell. */
export interface Referred {
  readonly jar: Pick<Jar, 'id' | 'entries'>
  readonly story: Pick<JarState, 'name'>
}

/** How a call names a jar: as its maker does, or by its id where the call is kept and pressed later. */
export const jarRef = ({ jar, story }: Referred, { place }: Pick<Context, 'place'>): string =>
  place.kind === 'console' ? story.name : `#${jar.id}`

/** What ties a call that is kept and pressed later to the jar as it is now. */
export const afterNow = (entries: readonly Pick<JarEntry, 'seq'>[], { kind }: Place): { readonly after?: number } =>
  kind === 'console' ? {} : { after: entries.at(-1)!.seq }
