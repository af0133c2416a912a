import type { StandingTrouble } from '../../../core/jar/state/standing-troubles.ts'
import type { Reply } from '../../chat/reply.ts'

/** What is harmless by itself lets nothing off that stands of the jar: it is not told to be kept, nor to go on as before. */
export const besideOther = (reply: Reply, other: StandingTrouble | null): Reply =>
  other !== null && reply.headline.key === 'trouble_keep'
    ? {
        ...reply,
        headline: { group: 'headlines', key: 'trouble_alone_harmless', values: undefined },
        notes: reply.notes.filter(({ key }) => key !== 'trouble_settled'),
      }
    : reply
