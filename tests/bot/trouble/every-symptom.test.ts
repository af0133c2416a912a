import { beforeAll, expect, it } from 'vitest'
import { withoutKeeping } from '../../../bot/chat/run/without-keeping.ts'
import { type SymptomId, symptomIds, symptoms } from '../../../core/trouble/symptoms.ts'
import { sampled } from '../../runs.ts'
import { testDesk } from '../test-desk.ts'
import { budgets } from '../voice/budgets.ts'
import { filled, WIDTHS } from '../voice/first-screens.ts'
import { troubleJars, troubleShelf } from './jars.ts'

interface TroubleJson {
  readonly data: {
    readonly symptom: SymptomId
    readonly causes: readonly { readonly id: string; readonly dangerous: boolean; readonly fits: string }[]
    readonly discard: { readonly verdict: string; readonly question: string | null }
    readonly jar: { readonly dangers: readonly string[] }
  }
  readonly error?: { readonly message: string }
}

const NOW_MS = Date.parse('2026-11-25T12:00:00Z')

/** Somebody harmed is answered before any symptom is looked at. */
const HARMED: readonly SymptomId[] = ['someone_ill', 'spilled_or_burnt']

/** Few enough for every day, other ones of each symptom; all of them in the long tests. */
const STEP = 30
const asked = symptomIds
  .filter((id) => !HARMED.includes(id))
  .flatMap((id, at) => sampled(troubleJars, STEP, at).map(({ name }) => ({ id, name })))

const lineOf = (id: SymptomId, name: string) => `/trouble ${symptoms[id].en[0]} jar:${name}`

let shelf: Awaited<ReturnType<typeof troubleShelf>>
beforeAll(async () => {
  shelf = await troubleShelf()
}, 120_000)

/** What a jar is told of is forgotten with its desk, so that each line is asked for the first time. */
const deskOf = () =>
  testDesk({
    nowMs: NOW_MS,
    asker: { ...shelf.asker, store: withoutKeeping(shelf.asker.store) },
    width: 80,
  })

it('answers every symptom of jars of all kinds: a cause, or an honest “I can’t tell”', async () => {
  for (const { id, name } of asked) {
    const desk = deskOf()
    const { data, error } = (await desk.jsonOf(lineOf(id, name))) as TroubleJson
    expect(error, lineOf(id, name)).toBeUndefined()
    expect(data.symptom).toBe(id)
    const { verdict, question } = data.discard
    if (data.causes.length === 0)
      expect(['cannot_tell', 'ask', 'hold', 'throw_away'], lineOf(id, name)).toContain(verdict)
    // Never fine where a question that decides it is open, where a danger is there, or where the jar does not keep.
    const isDangerThere = data.causes.some(({ dangerous, fits }) => dangerous && fits === 'yes')
    const isHeld = data.jar.dangers.some((danger) => danger !== 'undecided' && danger !== 'in_question')
    if (question !== null || isDangerThere || isHeld) expect(verdict, lineOf(id, name)).not.toBe('keep')
    expect(desk.faults()).toEqual([])
  }
}, 120_000)

it('fits the first screen', async () => {
  const long: string[] = []
  for (const { id, name } of asked) {
    const line = lineOf(id, name)
    for (const { width, text } of await deskOf().firstAt(line, WIDTHS)) {
      const { length } = filled(text)
      if (length > budgets.measure[width]) long.push(`${line} at ${width}: ${length} lines`)
    }
  }
  expect(long).toEqual([])
}, 120_000)

it('offers only lines that run, and amounts that do what they say', async () => {
  const typed = new Set<string>()
  for (const { id, name } of asked) {
    const told = lineOf(id, name)
    for (const line of offeredIn(await deskOf().textOf(told))) {
      if (typed.has(line)) continue
      typed.add(line)
      const desk = deskOf()
      await desk.textOf(told)
      const { error } = (await desk.jsonOf(line)) as TroubleJson
      expect(error, line).toBeUndefined()
    }
  }
  expect(typed.size).toBeGreaterThan(50)
}, 120_000)

/** The lines to type of a reply; two that are short stand in one row. */
const offeredIn = (text: string): readonly string[] =>
  text
    .split('\n')
    .flatMap((row) => row.split(/ {3,}/))
    .flatMap((part) => /(?:^\s*|: )(\/(?:trouble|jar|adjust|measure)\b.*)$/.exec(part)?.[1] ?? [])
