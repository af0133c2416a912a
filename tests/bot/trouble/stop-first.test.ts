import { beforeAll, expect, it, test } from 'vitest'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { diagnose } from '../../../core/trouble/diagnose.ts'
import type { TroubleFacts } from '../../../core/trouble/facts.ts'
import { factsOfJar } from '../../../core/trouble/facts-of-jar.ts'
import { symptomIds } from '../../../core/trouble/symptoms.ts'
import { troubleShelf } from './jars.ts'

/** What each of thirty jars of all kinds tells of itself, by its name. */
let known: readonly { readonly name: string; readonly facts: TroubleFacts }[]

beforeAll(async () => {
  const { asker } = await troubleShelf()
  const { jars } = await asker.store.read(asker.userId)
  known = jars.map(({ entries }) => {
    const story = jarStateOf(entries)!
    return { name: story.name, facts: factsOfJar(story, { today: '2026-11-25', freezerC: -18 }) }
  })
}, 120_000)

/** Somebody ill is looked after, whatever else is so. */
const asked = symptomIds.filter((id) => id !== 'someone_ill')

const everywhere = (signs: TroubleFacts['signs']) =>
  asked.flatMap((symptom) =>
    known.map(({ name, facts }) => ({ at: `${symptom} of ${name}`, ...diagnose(symptom, facts, signs) })),
  )

// The questions that come before every symptom, reviewed for food safety; published guidance and memory, see
// `core/trouble/sources.ts`: what their answer throws away no symptom, however harmless, keeps.
test.each([
  ['the spirit was not sold for drinking', { bought: false }],
  ['not certain of every plant', { sure: false }],
  ['it smells of petrol or thinner', { fuel: true }],
  ['something furry grows', { growth: true }],
  ['glass broke', { glass: true }],
  ['stones were cracked', { stones: true }],
  ['there is milk, cream or egg in it', { dairy: true }],
  ['it stood in bare metal or lead crystal', { metal: true }],
  ['a bottle burst', { burst: true }],
] as const)('thrown away whatever the symptom and the jar: %s', (_, signs) => {
  for (const { at, verdict } of everywhere(signs)) expect(verdict.kind, at).toBe('throw_away')
})

it('looks after somebody ill before any of it', () => {
  for (const { at, verdict } of everywhere({ ill: true, growth: true })) expect(verdict.kind, at).toBe('emergency')
})

it('keeps nothing that fizzes, and throws away what fizzed under 15 % vol', () => {
  for (const { at, verdict, facts } of everywhere({ fizz: true })) {
    expect(['throw_away', 'hold', 'ask'], at).toContain(verdict.kind)
    if (facts.weakestPercent !== null && facts.weakestPercent < 15) expect(verdict.kind, at).toBe('throw_away')
  }
})

it('throws away garlic that was ever under 20 % vol', () => {
  const garlic = known.find(({ name }) => name === 'garlic')!
  for (const symptom of asked) {
    const weak = { ...garlic.facts, weakestPercent: 19 }
    expect(diagnose(symptom, weak, {}).verdict.kind, symptom).toBe('throw_away')
    expect(diagnose(symptom, garlic.facts, { oil: true }).verdict.kind, symptom).toBe('throw_away')
  }
})

it('asks about or tells a danger that is open before it calls anything harmless', () => {
  for (const { at, verdict, causes, question } of everywhere({})) {
    const first = causes.findIndex(({ cause }) => !cause.isDangerous)
    const surelyDangerous = causes.filter(({ cause, finding }) => cause.isDangerous && finding.is === 'yes')
    if (surelyDangerous.length > 0) expect(verdict.kind, at).not.toBe('keep')
    for (const each of surelyDangerous) expect(causes.indexOf(each), at).toBeLessThan(first < 0 ? Infinity : first)
    if (verdict.kind === 'keep') expect(question, at).toBeNull()
  }
})

it('never suggests a warm syrup, undissolved sugar or layers of syrup where nothing sweetens it', () => {
  const plain = known.filter(({ facts }) => facts.isSweetened === false)
  expect(plain.length).toBeGreaterThan(10)
  for (const { name, facts } of plain) {
    for (const symptom of symptomIds) {
      const ids = diagnose(symptom, facts, {}).causes.map(({ id }) => id)
      for (const id of ['hot_syrup', 'unmixed_syrup', 'never_dissolved', 'coarse']) {
        expect(ids, `${symptom} of ${name}`).not.toContain(id)
      }
    }
  }
  const sweet = known.find(({ name }) => name === 'lemon')!
  expect(diagnose('cloudy_on_mixing', sweet.facts, {}).causes.map(({ id }) => id)).toContain('hot_syrup')
})
