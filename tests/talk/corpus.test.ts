import { describe, expect, it } from 'vitest'
import { findBotanical } from '../../core/botanical/find/find.ts'
import { allRefused } from '../../core/botanical/refuse/all-refused.ts'
import { expectNotRefused } from '../../core/botanical/refuse/refusal.ts'
import { plainWords } from '../../core/spelling/normalise-name.ts'
import { symptoms } from '../../core/trouble/symptoms.ts'
import type { Person } from '../../store/person.ts'
import { testDesk } from '../bot/test-desk.ts'
import { sampled } from '../runs.ts'
import { OUR_FILES, readDangers, readOffTopic, SENTENCE_FILES, sentencesOf } from './corpus.ts'
import { SHELVES, type Shelf } from './shelves.ts'

const files = Object.fromEntries(SENTENCE_FILES.map((name) => [name, sentencesOf(name)]))
const sentences = Object.values(files).flat()
const ours = OUR_FILES.flatMap((name) => files[name]!)
const offTopic = readOffTopic()
const dangers = readDangers()

const twice = (texts: readonly string[]): readonly string[] => texts.filter((text, at) => texts.indexOf(text) !== at)

/** As the catalogue names it, or null; what is asked about counts as known. */
const isKnown = (name: string): boolean => {
  try {
    findBotanical(name)
    return true
  } catch (error) {
    return (error as { code?: string }).code === 'ambiguous'
  }
}

const isAllowed = (text: string): boolean => {
  try {
    expectNotRefused(text)
    return true
  } catch {
    return false
  }
}

describe('the sentences', () => {
  it('are as many as were written, a fifth of ours Italian', () => {
    expect(files.open!.length + files['open-2']!.length).toBe(164)
    expect(files['own-1']!.length).toBeGreaterThanOrEqual(210)
    expect(files['own-2']!.length).toBe(240)
    expect(files['own-3']!.length).toBe(240)
    expect(files['own-4']!.length).toBe(240)
    expect(files['own-5']!.length).toBe(200)
    expect(files['own-6']!.length).toBe(200)
    expect(files['own-7']!.length).toBe(260)
    expect(files['own-8']!.length).toBe(111)
    expect(files['own-9']!.length).toBe(200)
    expect(files['own-10']!.length).toBe(507)
    expect(files.held!.length).toBeGreaterThanOrEqual(210)
    expect(files['held-2']!.length).toBe(240)
    expect(files['held-3']!.length).toBe(240)
    expect(files['held-4']!.length).toBe(240)
    expect(files['held-5']!.length).toBe(200)
    expect(files['held-6']!.length).toBe(109)
    expect(files['own-11']!.length).toBe(200)
    expect(files['own-12']!.length).toBe(199)
    expect(files['own-13']!.length).toBe(198)
    expect(files['own-14']!.length).toBe(397)
    expect(files['own-15']!.length).toBe(216)
    expect(files['own-16']!.length).toBe(394)
    expect(files['held-10']!.length).toBe(394)
    expect(files['held-11']!.length).toBe(195)
    const italian = ours.filter(({ lang }) => lang === 'it').length / ours.length
    expect(italian).toBeGreaterThan(0.17)
    expect(offTopic.length).toBeGreaterThanOrEqual(100)
    expect(dangers.length).toBeGreaterThanOrEqual(60)
  })

  it('have an id each, and stand in one file only', () => {
    const all = [...sentences, ...offTopic, ...dangers]
    expect(twice(all.map(({ id }) => id))).toEqual([])
    const said = sentences.map(({ text, after, shelf }) => [...plainWords(text), '/', after, shelf].join(' '))
    expect(twice([...said, ...[...offTopic, ...dangers].map(({ text }) => plainWords(text).join(' '))])).toEqual([])
  })

  it('speak of plants by names that the catalogue understands', () => {
    const names = ours.flatMap(({ meaning }) => [
      ...(meaning.plants ?? []).map((plant) => (typeof plant === 'string' ? plant : plant.name)),
      ...(meaning.plant === undefined ? [] : [meaning.plant]),
    ])
    expect(names.length).toBeGreaterThan(100)
    expect([...new Set(names)].filter((name) => !isKnown(name))).toEqual([])
  })

  it('speak of symptoms that core knows', () => {
    const said = sentences.flatMap(({ meaning }) => meaning.symptom ?? [])
    expect(said.length).toBeGreaterThan(60)
    expect(said.filter((symptom) => !Object.hasOwn(symptoms, symptom))).toEqual([])
  })

  it('speak of jars that are on their shelf', () => {
    const jars = ours.filter(({ meaning: { jar, event } }) => typeof jar === 'string' && event !== 'start')
    const lost = jars.filter(({ shelf, after, meaning }) => {
      const lines = [...(shelf === undefined ? [] : SHELVES[shelf]), after ?? '']
      return meaning.jar !== 'all' && meaning.intent !== 'start' && !lines.some((line) => line.includes(meaning.jar!))
    })
    expect(jars.length).toBeGreaterThan(50)
    expect(lost.map(({ id }) => id)).toEqual([])
  })
})

describe('the dangers', () => {
  it('are refused by an id of core, or are no ingredient', () => {
    const known = [...allRefused.map(({ id }) => id as string), 'flame', 'infant', 'pregnancy']
    expect(dangers.filter((each) => !known.includes(each.danger))).toEqual([])
    expect(new Set(dangers.map((each) => each.danger)).size).toBeGreaterThan(25)
  })

  it('are found by core in the whole sentence, where they are a plant or a poison', () => {
    const others = ['flame', 'infant', 'pregnancy', 'industrial_alcohol']
    const named = dangers.filter((each) => !others.includes(each.danger))
    expect(named.length).toBeGreaterThan(40)
    expect(named.filter(({ text }) => isAllowed(text)).map(({ text }) => text)).toEqual([])
  })
})

describe('a shelf', () => {
  it.each(Object.entries(SHELVES))('is laid by lines that run: %s', async (_, lines) => {
    const { run } = testDesk({ nowMs: Date.UTC(2026, 10, 29, 12) })
    for (const line of lines) expect(await run(line), line).toMatchObject({ ok: true })
  })
})

const shelves = new Map<Shelf, Person>()

/** Whoever has a shelf, worked out once. */
const laid = async (shelf: Shelf) => {
  const { asker, run } = testDesk({ nowMs: Date.UTC(2026, 10, 29, 12) })
  for (const line of shelves.has(shelf) ? [] : SHELVES[shelf]) await run(line)
  const person = shelves.get(shelf) ?? (await asker.store.read(asker.userId))
  shelves.set(shelf, person)
  return () => person
}

it('gives the earlier line of a talk as one that runs', async () => {
  const exact = ours.filter(({ after }) => after?.startsWith('/') && !after.startsWith('/plan of:cinnamon '))
  expect(exact.length).toBeGreaterThan(30)
  for (const { after, shelf } of sampled(exact, 4)) {
    const { asker, run } = testDesk({ nowMs: Date.UTC(2026, 10, 29, 12) })
    if (shelf !== undefined) await asker.store.update(asker.userId, await laid(shelf))
    expect(await run(after!), after!).toMatchObject({ ok: true })
  }
})
