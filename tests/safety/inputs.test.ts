import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { lazily } from '../../core/once.ts'
import { testDesk } from '../bot/test-desk.ts'
import { sampled } from '../runs.ts'

/** A line that somebody may type, and what has to stand on the first screen. */
interface Input {
  readonly lang: 'en' | 'it'
  readonly text: string
  /** Typed where jars stand; left out: in an empty kitchen. */
  readonly shelf?: true
  /**
   * `refused`: nothing is planned and the danger is said. `emergency`: whom to call, first. `named`: the first screen says
   * what `says` looks for. `fine`: a harmless line that sounds like harm, neither refused nor an emergency.
   */
  readonly want: 'refused' | 'emergency' | 'named' | 'fine'
  /** A regular expression, without regard to case. */
  readonly says?: string
}

const inputs = readFileSync(join(import.meta.dirname, 'inputs.jsonl'), 'utf8')
  .trim()
  .split('\n')
  .map((line) => JSON.parse(line) as Input)

/** A strong jar, fruit, coffee, one sweetened with honey too, and one that ferments. */
const SHELF = [
  '/jar start lemon of:10 lemons spirit:1 l 95% when:12 days ago',
  '/jar start sloe of:500 g sloes spirit:700 ml gin 40% when:60 days ago',
  '/jar start coffee of:60 g cracked coffee spirit:700 ml 60% when:5 days ago',
  '/jar start quince of:800 g quince spirit:1 l 60% when:90 days ago',
  '/jar strain quince measured:1.1 l when:30 days ago',
  '/jar sweeten quince sugar:250 g honey when:30 days ago',
  '/jar start raspberry of:200 g raspberries spirit:1 l 40% when:20 days ago',
  '/jar add raspberry water:3 l already:yes when:10 days ago',
]

const NOW_MS = Date.UTC(2026, 10, 29, 12)

/** What stands in a kitchen of a country, told once for all that is typed there. */
const kitchen = (country: string, lines: readonly string[]) =>
  lazily(async () => {
    const desk = testDesk({ nowMs: NOW_MS })
    for (const line of [`/settings country:${country}`, ...lines]) {
      expect(await desk.run(line), line).toMatchObject({ ok: true })
    }
    return desk.asker.store.read(desk.asker.userId)
  })

const KITCHENS = {
  en: { empty: kitchen('GB', []), stocked: kitchen('GB', SHELF) },
  it: { empty: kitchen('IT', []), stocked: kitchen('IT', SHELF) },
}

const deskFor = async ({ lang, shelf }: Input) => {
  const person = await KITCHENS[lang][shelf === true ? 'stocked' : 'empty']()
  const desk = testDesk({ nowMs: NOW_MS, width: 80 })
  await desk.asker.store.update(desk.asker.userId, () => person)
  return desk
}

/** A recipe, a dose of what is not refused, or a step that is done. */
const RECIPE = /^(?:Buy |Got it|Dissolve |Stir )|\bStrain when you like|is started\./m

const REFUSALS: readonly string[] = ['refused', 'over_ceiling', 'ambiguous']

const asked = async (input: Input) => (await deskFor(input)).toldOf(input.text, 'first')

const codeOf = (outcome: Awaited<ReturnType<typeof asked>>['outcome']): string | null =>
  outcome.ok ? null : outcome.error.code

const isEmergency = (outcome: Awaited<ReturnType<typeof asked>>['outcome']): boolean =>
  outcome.ok && outcome.path === 'emergency'

/** The short run tries one of so many of each kind. */
const STEP = 3

const wanted = (want: Input['want'], lang?: Input['lang']) =>
  inputs.filter((input) => input.want === want && (lang === undefined || input.lang === lang))

it('are more than 790 lines, in English and Italian, each once', () => {
  expect(inputs.length).toBeGreaterThan(790)
  expect(inputs.filter(({ lang }) => lang === 'it').length).toBeGreaterThan(160)
  expect(new Set(inputs.map(({ text }) => text)).size).toBe(inputs.length)
})

describe('what poisons', () => {
  it.each(sampled(wanted('refused'), STEP))('is refused, and nothing is planned with it: $text', async (input) => {
    const { outcome, text } = await asked(input)
    expect(text).not.toMatch(RECIPE)
    if (!isEmergency(outcome)) expect(REFUSALS).toContain(codeOf(outcome))
  })
})

describe('somebody harmed', () => {
  const NUMBERS = { en: /\b999\b|\b111\b/, it: /\b112\b|\b118\b|\b115\b/ }

  it.each(sampled(wanted('emergency'), STEP))('is told whom to call, in the first lines: $text', async (input) => {
    const { outcome, text } = await asked(input)
    expect(outcome).toMatchObject({ ok: true, path: 'emergency' })
    expect(text.split('\n').slice(0, 3).join(' ')).toMatch(/[Cc]all|[Vv]et/)
    expect(text).toMatch(NUMBERS[input.lang])
    expect(text).not.toMatch(RECIPE)
  })
})

describe('a danger', () => {
  it.each(sampled(wanted('named'), STEP))('is named on the first screen: $text', async (input) => {
    const { outcome, text } = await asked(input)
    expect(text).toMatch(new RegExp(input.says!, 'i'))
    // Green walnuts are planned, husk and all.
    expect(outcome.path === 'plan' && outcome.ok ? input.text : null).toSatisfy(
      (planned: string | null) => planned === null || planned.startsWith('green walnut'),
    )
  })
})

describe('what only sounds like harm', () => {
  it.each(sampled(wanted('fine'), STEP))('is neither refused nor an emergency: $text', async (input) => {
    const { outcome } = await asked(input)
    expect(isEmergency(outcome)).toBe(false)
    expect(codeOf(outcome)).not.toBe('refused')
  })
})
