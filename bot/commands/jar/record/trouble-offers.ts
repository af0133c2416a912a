import { symptomIn } from '../../../../core/trouble/find-symptom.ts'
import { call } from '../../../calls/call.ts'
import type { Context } from '../../../chat/command.ts'
import type { Action } from '../../../chat/reply.ts'
import { jarRef } from '../known/jar-ref.ts'
import type { Recorded } from '../step/record-step.ts'

/** From so many points on it pleased. */
const PLEASED_RATING = 4
const LOW_RATING = 2

/** What went wrong, where a taste was rated low or its note names a trouble. */
export function troubleOffers({ jar, story, entry }: Recorded, context: Context): readonly Action[] {
  if (entry.kind !== 'tasted' || (entry.rating !== null && entry.rating >= PLEASED_RATING)) return []
  // What is held up is asked about already.
  if (entry.trouble !== undefined) return []
  const symptom = entry.note === null ? null : symptomIn(entry.note)
  if (symptom === null && (entry.rating === null || entry.rating > LOW_RATING)) return []
  return [
    {
      label: { group: 'actions', key: 'trouble_offer', values: { symptom } },
      call: call('trouble', { ...(symptom !== null && { symptom: [symptom] }), jar: jarRef({ jar, story }, context) }),
    },
  ]
}
