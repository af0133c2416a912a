import type { JarEntry } from '../../core/jar/entry/entry.ts'
import { jarStateOf } from '../../core/jar/state/jar-state.ts'
import type { Person, PostedIn, SentNudge } from '../../store/person.ts'
import { believed } from '../../store/told-ahead.ts'
import type { Reply } from '../chat/reply.ts'
import type { AskedJar } from './due-jars.ts'
import type { IsOpen } from './nudge-actions.ts'
import { GONE, type SaidAnswer, saidAnswers, sinceIn } from './nudge-answers.ts'
import { type Arrival, replyOf } from './nudge-reply.ts'

/** What is kept of a nudge that arrived, so that it can be shown anew. */
export function sentNudge(
  { jars: all }: Person,
  id: string,
  asked: readonly AskedJar[],
  { isMoved, mayHaveBeenSeen }: Arrival,
  { channelId, messageId }: PostedIn,
  sentMs: number,
): SentNudge {
  const jarIds = [...new Set(asked.map(({ jarId }) => jarId))]
  const jars = jarIds.map((jarId) => {
    const ofJar = asked.filter((each) => each.jarId === jarId)
    return {
      jarId,
      seq: all.find((jar) => jar.id === jarId)?.entries.at(-1)?.seq ?? 0,
      asked: ofJar.map(({ duty: { kind, day, by }, isLast, isAside }) => ({ kind, day, by, isLast, isAside })),
    }
  })
  return { id, postedIn: { channelId, messageId }, sentMs, isMoved, mayHaveBeenSeen, jars }
}

/** What it asked, of its jars as they were then; one that is gone is left out. */
const askedThen = ({ jars }: Person, { jars: asked, sentMs }: SentNudge): readonly AskedJar[] =>
  asked.flatMap(({ jarId, seq, asked: kinds }) => {
    const all = jars.find(({ id }) => id === jarId)?.entries ?? []
    const entries = believed(
      all.filter((entry) => entry.seq <= seq),
      sentMs,
    )
    const story = jarStateOf(entries)
    if (story === null) return []
    return kinds.map(({ isLast, isAside, ...duty }) => ({ jarId, story, entries, duty, isLast, isAside }))
  })

/** A nudge as it is to be shown now: what it asked, with answers to what is open still, and what it was answered with. */
export function nudgeNow(
  person: Person,
  nudge: SentNudge,
  assumedZone: string,
): { readonly reply: Reply; readonly answers: readonly SaidAnswer[] } {
  const since = new Map(
    nudge.jars.map((asked) => {
      const jar = person.jars.find(({ id }) => id === asked.jarId)
      return [asked.jarId, jar === undefined ? GONE : sinceIn(jar, asked)]
    }),
  )
  const isOpen: IsOpen = (jarId, what) => since.get(jarId)?.isOpen(what) ?? false
  const { settings } = person
  const to = { ...nudge, settings, place: { kind: 'private' }, isOpen } as const
  return {
    reply: replyOf(askedThen(person, nudge), to, { nowMs: nudge.sentMs, assumedZone }),
    answers: saidAnswers([...since.values()].flatMap(({ answers }) => answers)),
  }
}

/** The nudges that something made by an attempt answers or takes back. */
export const nudgesAnsweredBy = ({ jars, sentNudges = [] }: Person, attempt: string): readonly SentNudge[] =>
  sentNudges.filter((nudge) =>
    nudge.jars.some((asked) => {
      const jar = jars.find(({ id }) => id === asked.jarId)
      const isOf = (entry: JarEntry): boolean => entry.attempt === attempt
      if (jar === undefined || !jar.entries.some(isOf)) return false
      return sinceIn(jar, asked).answers.some(({ by }) => isOf(by))
    }),
  )
