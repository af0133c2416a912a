import { type BottleFill, fillsOf } from '../../../../core/jar/state/fill-weight.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import type { Data } from '../../../chat/reply.ts'
import type { Message } from '../../../text/words.ts'
import { measuredData } from '../../reply/outcome-reply.ts'

/** What a bottle's fill weighs; nothing before there is something to fill. */
export function fillNotes(story: JarState): readonly Message<'notes'>[] {
  const fills = fillsOf(story)
  return fills.length === 0 ? [] : [{ group: 'notes', key: 'jar_fill_weight', values: { fills } }]
}

export const fillsData = (story: JarState): readonly Data[] =>
  fillsOf(story).map(({ volumeMl, weightG }: BottleFill) => ({ volumeMl, ...measuredData({ weightG }) }))
