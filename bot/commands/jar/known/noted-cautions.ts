import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { dayFromIso } from '../../../../core/quantity/time/calendar-day.ts'
import { notedTrouble } from '../../../../core/trouble/noted-trouble.ts'
import type { Message } from '../../../text/words.ts'
import { toldIn } from './told-trouble.ts'

/** What its maker saw and wrote down, until it is cleared up: said on the jar's own views, and before it is bottled. */
export function notedCautions(story: JarState): readonly Message<'cautions'>[] {
  const found = story.ended === null && toldIn(story) === null ? notedTrouble(story) : null
  if (found === null) return []
  const { note, symptom, day } = found
  return [
    { group: 'cautions', key: 'jar_noted_trouble', values: { name: story.name, note, symptom, day: dayFromIso(day) } },
  ]
}
