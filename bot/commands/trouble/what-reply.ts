import type { JarView } from '../../../core/jar/tasks/jar-view.ts'
import type { SymptomId } from '../../../core/trouble/symptoms.ts'
import { call } from '../../calls/call.ts'
import type { Context } from '../../chat/command.ts'
import type { Reply } from '../../chat/reply.ts'
import { dangerCautions } from '../jar/known/jar-dangers.ts'
import { jarBrief } from '../jar/known/jar-data.ts'
import { kitchenOfJar } from '../jar/known/jar-kitchen.ts'
import { jarRef } from '../jar/known/jar-ref.ts'
import type { TroubleInput } from './known-facts.ts'

/** What makers ask about most; the first are on the first screen. From what makers typed. */
const USUAL: readonly SymptomId[] = [
  'too_sweet',
  'harsh_hot',
  'bitter',
  'weak_taste',
  'cloudy_on_mixing',
  'too_weak',
  'fermenting',
  'mould',
]
const MOST_FIRST = 4

/** Where nobody has said what is wrong: one question, and what most would answer. */
export function whatReply(input: TroubleInput, held: JarView | null, context: Context): Reply {
  const jar = held === null ? {} : { jar: jarRef(held, context) }
  const { symptom: _, ...told } = input
  return {
    headline: { group: 'headlines', key: 'trouble_what', values: { name: held?.story.name ?? null } },
    table: [],
    sure: [],
    notes: [],
    cautions: held === null ? [] : dangerCautions([held.story]),
    actions: USUAL.map((symptom, at) => ({
      label: { group: 'actions', key: 'trouble_usual', values: { symptom } },
      call: call('trouble', { symptom: [symptom], ...told, ...jar }),
      ...(at >= MOST_FIRST && { depth: 'more' as const }),
    })),
    data: { ...(held === null ? {} : { jar: jarBrief(held) }), symptom: null, also: [], causes: [], discard: null },
    kitchen: kitchenOfJar(input, held?.story ?? null),
  }
}
