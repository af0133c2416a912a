import type { Jar } from '../../../../store/person.ts'
import { call } from '../../../calls/call.ts'
import type { Action } from '../../../chat/reply.ts'

/** Takes back the last entry of jars, as long as no other was made since. */
export function undoActions(jars: readonly Pick<Jar, 'id' | 'entries'>[]): readonly Action[] {
  if (jars.length === 0) return []
  const last = jars.map(({ entries }) => entries.at(-1)!.seq)
  const undo = call('jar undo', { jar: jars.map(({ id }) => `#${id}`).join(' '), after: last })
  return [{ label: { group: 'actions', key: 'jar_undo', values: undefined }, call: undo, isButtonOnly: true }]
}
