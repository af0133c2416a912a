import type { Person, Share } from '../../../store/person.ts'
import type { ReplyFile } from '../../chat/reply.ts'
import { withoutAttempts } from './attempts.ts'
import { MOST_SHARED_BYTES, NOTEBOOK_MARK, NOTEBOOK_VERSION } from './notebook-file.ts'

/** Kept free in every file for what stands around the jars. */
const AROUND_BYTES = 2000

const encoder = new TextEncoder()

const notebookText = (
  jarTexts: readonly string[],
  shares: readonly Share[],
  { settings }: Person,
  nowMs: number,
): string => {
  const head = {
    larderbell: NOTEBOOK_MARK,
    version: NOTEBOOK_VERSION,
    exportedAt: new Date(nowMs).toISOString(),
    settings,
    shares,
  }
  const jars = jarTexts.length === 0 ? '' : `\n${jarTexts.join(',\n')}\n`
  return `${JSON.stringify(head).slice(0, -1)},"jars":[${jars}]}\n`
}

/** The jars, a line each, with what is shared of them, dealt out so that each file can be taken in again. */
export function notebookTexts(person: Person, nowMs: number): readonly string[] {
  const jarIds = new Set(person.jars.map(({ id }) => id))
  // What is shared of a jar that is gone goes along with the first.
  const ofNone = person.shares.filter(({ jarId }) => !jarIds.has(jarId))
  const parts = [{ jarTexts: [] as string[], shares: [...ofNone] }]
  const roomFor = (shares: readonly Share[]): number => MOST_SHARED_BYTES - AROUND_BYTES - JSON.stringify(shares).length
  let room = roomFor(ofNone)
  for (const jar of person.jars) {
    const text = JSON.stringify(withoutAttempts(jar))
    const shares = person.shares.filter(({ jarId }) => jarId === jar.id)
    const bytes = encoder.encode(text).length + JSON.stringify(shares).length + 2
    if (bytes > room && parts.at(-1)!.jarTexts.length > 0) {
      parts.push({ jarTexts: [], shares: [] })
      room = roomFor([])
    }
    parts.at(-1)!.jarTexts.push(text)
    parts.at(-1)!.shares.push(...shares)
    room -= bytes
  }
  return parts.map(({ jarTexts, shares }) => notebookText(jarTexts, shares, person, nowMs))
}

/** Everything of a person's in files that can be taken in again, one unless there is very much of it. */
export const jsonFiles = (person: Person, nowMs: number): readonly ReplyFile[] => {
  const texts = notebookTexts(person, nowMs)
  return texts.map((text, index) => ({
    name: texts.length === 1 ? 'larderbell.json' : `larderbell-${index + 1}-of-${texts.length}.json`,
    mime: 'application/json',
    alt: { group: 'files', key: 'notebook_json', values: { part: index + 1, parts: texts.length } },
    draw: async () => encoder.encode(text),
  }))
}
