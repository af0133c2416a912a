import { describe, expect, it } from 'vitest'
import { lineOf } from '../../bot/calls/write-line.ts'
import { askedInItalian } from '../../bot/talk/handbook/asked-in-italian.ts'
import { handbook } from '../../bot/text/en/handbook/index.ts'
import type { HandbookId } from '../../bot/text/messages/handbook.ts'
import { plainWords } from '../../core/spelling/normalise-name.ts'
import { testDesk } from '../bot/test-desk.ts'
import { OUR_FILES, sentencesOf } from './corpus.ts'

const entries = Object.entries(handbook) as [HandbookId, (typeof handbook)[HandbookId]][]

const sentencesIn = (text: string): readonly string[] => text.split(/(?<=[.!?])\s+/)

describe('an entry of the handbook', () => {
  it('is one of more than 120', () => {
    expect(entries.length).toBeGreaterThanOrEqual(120)
  })

  it.each(entries)('is asked in five to eight ways and answered in two to four sentences: %s', (_, entry) => {
    expect(entry.asked.length).toBeGreaterThanOrEqual(5)
    expect(entry.asked.length).toBeLessThanOrEqual(8)
    expect(entry.asked.filter((way) => way !== way.toLowerCase())).toEqual([])
    expect(sentencesIn(entry.text).length).toBeGreaterThanOrEqual(2)
    expect(sentencesIn(entry.text).length).toBeLessThanOrEqual(4)
    expect(entry.text).toMatch(/[.!?]$/)
    expect(`${entry.title} ${entry.text} ${entry.source}`).not.toMatch(/;|—|undefined|NaN/)
    expect(entry.source).not.toBe('')
  })

  it('is asked as no other is', () => {
    const ways = entries.flatMap(([id, { asked }]) =>
      [...asked, ...askedInItalian[id].split('; ')].map((way) => plainWords(way).join(' ')),
    )
    expect(ways.filter((way, at) => ways.indexOf(way) !== at)).toEqual([])
  })

  it('goes on with a line that runs', async () => {
    const next = entries.flatMap(([, entry]) => (entry.next === null ? [] : [entry.next]))
    expect(next.length).toBeGreaterThan(50)
    for (const invocation of next) {
      const { run } = testDesk({ nowMs: Date.UTC(2026, 8, 1, 12) })
      expect(await run(lineOf(invocation)), lineOf(invocation)).toMatchObject({ ok: true })
    }
  })

  it('is what the corpus asks for by its id', () => {
    const ours = OUR_FILES.flatMap(sentencesOf)
    const asked = ours.flatMap(({ meaning }) => meaning.entry ?? [])
    expect(asked.length).toBeGreaterThan(100)
    expect(asked.filter((id) => !Object.hasOwn(handbook, id))).toEqual([])
  })
})
