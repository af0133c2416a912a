import { readFileSync } from 'node:fs'
import { beforeAll, describe, expect, it } from 'vitest'
import { partsAt } from '../../../bot/chat/depth.ts'
import type { Reply } from '../../../bot/chat/reply.ts'
import { explain } from '../../../bot/chat/run/explain.ts'
import { wrapSentence } from '../../../bot/terminal/show/wrap.ts'
import { runs } from '../../runs.ts'
import { speech } from '../test-desk.ts'
import { BANNED, PROVENANCE } from './banned.ts'
import { everyAnswer } from './recorded.ts'
import { MOST_WORDS, sentencesOf, wordsOf } from './sentences.ts'

interface Said {
  /** `notes.plan_assumed`. */
  readonly key: string
  readonly text: string
  readonly line: string
}

interface Refused extends Said {
  readonly at80: number
  readonly at44: number
}

const WIDTHS = [80, 44] as const
const MOST_LINES = { 80: 3, 44: 5 } as const

/** Keys that are gone, and where what they said stands now. */
const LOST: Readonly<Record<string, string>> = {
  jar_bottled_left: 'in the answer itself',
  name_a_country: 'where no zone tells it: here the zone does',
  plan_estimates: 'with how sure the numbers are',
  plan_days_known: 'days that are said are taken',
  plan_nearest: 'with what was assumed',
  plan_pith: 'in the line of the day',
  plan_sugar_alone: 'in the line of the day',
  sweetness_law: 'in /label alone',
}

const first = new Map<string, Said>()
const refusals = new Map<string, Refused>()
const keys = { notes: new Set<string>(), cautions: new Set<string>() }

const onFirst = (reply: Reply, line: string): readonly Said[] => {
  const { kitchen } = reply
  const { words } = speech
  const shown = partsAt(reply, 'first')
  return [
    ...[shown.headline, ...(shown.under ?? [])].map((each) => ({
      key: `headlines.${each.key}`,
      text: words.say<'headlines'>(each, kitchen),
      line,
    })),
    ...shown.notes.map((each) => ({ key: `notes.${each.key}`, text: words.say<'notes'>(each, kitchen), line })),
    ...shown.cautions.map((each) => ({
      key: `cautions.${each.key}`,
      text: words.say<'cautions'>(each, kitchen),
      line,
    })),
    ...shown.table.map(({ cell }) => ({ key: `cells.${cell.key}`, text: words.say<'cells'>(cell, kitchen), line })),
  ]
}

beforeAll(async () => {
  for await (const { line, outcome } of everyAnswer()) {
    if (!outcome.ok) {
      const text = explain(outcome, speech)
      const [at80, at44] = WIDTHS.map((width) => wrapSentence(text, width).length) as [number, number]
      refusals.set(text, { key: `problems.${outcome.error.problem}`, text, line, at80, at44 })
      continue
    }
    const { reply } = outcome
    for (const { key } of reply.notes) keys.notes.add(key)
    for (const { key } of reply.cautions) keys.cautions.add(key)
    for (const said of onFirst(reply, line)) first.set(said.text, said)
  }
}, 120_000)

/** Without the maker's own words, which are given back between quotation marks. */
const unquoted = (sentence: string): string => sentence.replace(/“[^”]*”/g, '')

/** By key, one of each, with the longest named first. */
const byKey = (found: readonly Said[]): readonly string[] =>
  [...new Map(found.map((said) => [said.key, said])).values()].map(({ key, text, line }) => `${key}: ${text} (${line})`)

describe('what is refused or asked back', () => {
  it.each(WIDTHS)('takes no more lines than it may, at %i columns', (width) => {
    const lines = ({ at80, at44 }: Refused) => (width === 80 ? at80 : at44)
    const all = [...refusals.values()].toSorted((one, other) => lines(other) - lines(one))
    expect(all.length).toBeGreaterThan(runs(250, 500))
    const over = all.filter((refused) => lines(refused) > MOST_LINES[width])
    expect(over.map((refused) => `${lines(refused)} lines: ${refused.text} (${refused.line})`)).toEqual([])
  })

  it('is said in plain words', () => {
    const found = [...refusals.values()].filter(({ text }) =>
      sentencesOf(text).some((sentence) => BANNED.some(([phrase]) => phrase.test(unquoted(sentence)))),
    )
    expect(byKey(found)).toEqual([])
  })
})

describe('a first screen', () => {
  it('has no phrase that a cook stumbles over', () => {
    const found = [...first.values()].filter(({ text }) =>
      sentencesOf(text).some((sentence) => BANNED.some(([phrase]) => phrase.test(unquoted(sentence)))),
    )
    expect(byKey(found)).toEqual([])
  })

  it(`has no sentence of more than ${MOST_WORDS} words`, () => {
    const found = [...first.values(), ...refusals.values()].filter(({ text }) =>
      sentencesOf(text).some((sentence) => wordsOf(sentence) > MOST_WORDS),
    )
    expect(byKey(found)).toEqual([])
  })

  it('confesses nothing', () => {
    expect(byKey([...first.values()].filter(({ text }) => PROVENANCE.test(text)))).toEqual([])
  })
})

describe('nothing is lost', () => {
  // Keys of all notes and cautions that the same lines were answered with when replies had one depth.
  const before = JSON.parse(readFileSync(new URL('said-before.json', import.meta.url), 'utf8')) as {
    readonly notes: readonly string[]
    readonly cautions: readonly string[]
  }

  it.each(['notes', 'cautions'] as const)('of the %s: each stands at one depth or the other', (group) => {
    expect(before[group].length).toBeGreaterThan(20)
    const lost = before[group].filter((key) => !keys[group].has(key) && !(key in LOST))
    // The half of the lines that the short run types says most of them; that none at all is lost is left to the long one.
    if (runs(0, 1) === 1) expect(lost).toEqual([])
    expect(lost.length, lost.join(' ')).toBeLessThan(before[group].length / 3)
  })
})
