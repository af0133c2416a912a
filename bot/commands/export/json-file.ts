import type { Person } from '../../../store/person.ts'
import type { ReplyFile } from '../../chat/reply.ts'
import { MOST_BYTES, NOTEBOOK_MARK, NOTEBOOK_VERSION } from './notebook-file.ts'

/** Kept free in every file for what stands around the jars. */
const AROUND_BYTES = 2000

const encoder = new TextEncoder()

const notebookText = (jarTexts: readonly string[], { settings }: Person, nowMs: number): string => {
  const head = {
    larderbell: NOTEBOOK_MARK,
    version: NOTEBOOK_VERSION,
    exportedAt: new Date(nowMs).toISOString(),
    settings,
  }
  const jars = jarTexts.length === 0 ? '' : `\n${jarTexts.join(',\n')}\n`
  return `${JSON.stringify(head).slice(0, -1)},"jars":[${jars}]}\n`
}

/** The jars, a line each, dealt out so that each file can be taken in again. */
export function notebookTexts(person: Person, nowMs: number): readonly string[] {
  const parts: string[][] = [[]]
  let room = MOST_BYTES - AROUND_BYTES
  for (const jar of person.jars) {
    const text = JSON.stringify(jar)
    const bytes = encoder.encode(text).length + 2
    if (bytes > room && parts.at(-1)!.length > 0) {
      parts.push([])
      room = MOST_BYTES - AROUND_BYTES
    }
    parts.at(-1)!.push(text)
    room -= bytes
  }
  return parts.map((jarTexts) => notebookText(jarTexts, person, nowMs))
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
