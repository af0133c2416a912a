import type { Given } from '../../../calls/option.ts'
import type { Message } from '../../../text/words.ts'

/** An option that stands after the note, which takes the rest of the line. */
export function swallowedNotes(
  note: Given<string> | undefined,
  options: readonly string[],
): readonly Message<'notes'>[] {
  const last = /(?:^|\s)([a-z-]+):\s*\S[^:]*$/i.exec(note?.is ?? '')
  if (last === null || last[1] === undefined || !options.includes(last[1].toLowerCase())) return []
  return [{ group: 'notes', key: 'jar_note_swallowed', values: { text: last[0].trim() } }]
}
