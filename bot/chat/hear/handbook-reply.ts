import { callOfTexts } from '../../calls/call.ts'
import type { Invocation } from '../../calls/invocation.ts'
import type { Path } from '../../calls/signatures.ts'
import type { Handbook, HandbookId } from '../../text/messages/handbook.ts'
import type { Action, Reply } from '../reply.ts'

function nextActions({ path, options }: Invocation): readonly Action[] {
  const command = path as Path
  const call = callOfTexts(command, Object.entries(options))
  return call === null ? [] : [{ label: { group: 'actions', key: 'handbook_next', values: { command } }, call }]
}

/** An entry of the handbook: its answer, where it comes from one question deeper, and a line that goes on from there. */
export function handbookReply(entry: string, more: readonly string[], handbook: Handbook): Reply {
  const id = entry as HandbookId
  const { next } = handbook[id]
  const actions = next === null ? [] : nextActions(next)
  return {
    headline: { group: 'headlines', key: 'handbook_entry', values: { entry: id } },
    table: [],
    sure: [{ group: 'sure', key: 'handbook_source', values: { entry: id } }],
    notes:
      more.length === 0
        ? []
        : [{ group: 'notes', key: 'handbook_more', values: { entries: more as readonly HandbookId[] }, depth: 'more' }],
    cautions: [],
    actions,
    data: { entry: id, more },
    kitchen: 'metric',
  }
}
