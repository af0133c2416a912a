import { readFileSync } from 'node:fs'
import { expect, it, test } from 'vitest'
import { findOne } from '../../../bot/calls/named-plants.ts'
import { diagnose } from '../../../core/trouble/diagnose.ts'
import { NOTHING_KNOWN } from '../../../core/trouble/facts.ts'
import { factsOfLine } from '../../../core/trouble/facts-of-line.ts'
import { troubleRows } from '../../../core/trouble/rows.ts'
import { isBadSign, type Sign, signs } from '../../../core/trouble/signs.ts'
import { firstStops, STOP_ORDER } from '../../../core/trouble/stops.ts'
import { type SymptomId, symptomIds } from '../../../core/trouble/symptoms.ts'

interface Told {
  readonly strength?: number
  readonly sweetness?: number
  readonly plants?: string
  readonly yes?: string
  readonly no?: string
}

const exactly = (value: number | undefined) => (value === undefined ? null : { value, plusMinus: 0 })

const answersOf = ({ yes = '', no = '' }: Told) =>
  Object.fromEntries([
    ...no.split(' ').map((sign) => [sign, false] as const),
    ...yes.split(' ').map((sign) => [sign, true] as const),
  ])

const diagnosed = (symptom: SymptomId, told: Told) =>
  diagnose(
    symptom,
    factsOfLine({
      abvPercent: exactly(told.strength),
      sugarGPerL: exactly(told.sweetness),
      plants: told.plants === undefined ? null : [findOne(told.plants).botanical],
      days: null,
      freezerC: -18,
    }),
    answersOf(told),
  )

const published = JSON.parse(
  readFileSync(new URL('../../published/trouble-stop-lines.json', import.meta.url), 'utf8'),
) as { rows: readonly (readonly [SymptomId, Told, string, string])[] }

test.each(published.rows)('%s, told %j, “%s”: %s', (symptom, told, _, verdict) => {
  expect(diagnosed(symptom, told).verdict.kind).toBe(verdict)
})

it('holds all of the causes on record, fifty-two symptoms and 188 causes', () => {
  expect(Object.keys(troubleRows).sort()).toEqual([...symptomIds].sort())
  const count = symptomIds.reduce((sum, id) => sum + Object.keys(troubleRows[id].causes).length, 0)
  expect(count).toBe(188)
})

it('ranks the causes of a symptom without a tie, and names a source of each', () => {
  for (const id of symptomIds) {
    const causes = Object.values(troubleRows[id].causes)
    expect(new Set(causes.map(({ rank }) => rank)).size, id).toBe(causes.length)
    for (const { sources, trust } of causes) expect(Math.min(sources.length, trust.length), id).toBeGreaterThan(0)
  }
})

it('asks in one order of every line for which it throws away', () => {
  const ids = new Set([firstStops, ...symptomIds.map((id) => troubleRows[id].stops ?? {})].flatMap(Object.keys))
  expect([...ids].filter((id) => !STOP_ORDER.some((each) => each === id))).toEqual([])
})

it('throws away for a bad answer to what it asks first, of every symptom and nothing else known, or holds it', () => {
  for (const id of symptomIds) {
    const { question } = diagnose(id, NOTHING_KNOWN)
    if (question === null || !signs.includes(question as Sign)) continue
    const answered = diagnose(id, NOTHING_KNOWN, { [question]: isBadSign(question as Sign) })
    expect(['throw_away', 'hold', 'ask'], `${id} ${question}`).toContain(answered.verdict.kind)
    expect(answered.question, id).not.toBe(question)
  }
})

// Growth, fuel, splinters, cracked kernels, a burst bottle: whatever it was asked about.
test.each(['growth', 'fuel', 'glass', 'stones', 'burst', 'metal', 'dairy'] as const)(
  'throws away for %s whatever the symptom and however strong',
  (sign) => {
    for (const id of symptomIds) {
      const { verdict } = diagnosed(id, { strength: 60, yes: sign })
      expect(['throw_away', 'emergency'], id).toContain(verdict.kind)
    }
  },
)

it('keeps nothing while a question is open that decides it', () => {
  for (const id of symptomIds) {
    const { verdict, question } = diagnose(id, NOTHING_KNOWN)
    if (question !== null) expect(verdict.kind, id).not.toBe('keep')
  }
})

it('puts what is dangerous and not ruled out before whatever is harmless', () => {
  for (const id of symptomIds) {
    const kinds = diagnose(id, NOTHING_KNOWN).causes.map(({ cause }) => cause.isDangerous)
    expect(kinds, id).toEqual([...kinds].sort((one, other) => Number(other) - Number(one)))
  }
})

/** What every run of yes and no ends in, where nothing else is told. */
function endsOf(symptom: SymptomId, told: Told, said: Partial<Record<Sign, boolean>>): readonly string[] {
  const { verdict, question, causes } = diagnose(
    symptom,
    factsOfLine({ abvPercent: exactly(told.strength), sugarGPerL: null, plants: null, days: null, freezerC: -18 }),
    said,
  )
  if (question === null || !signs.includes(question as Sign)) {
    // A strength that nobody knows leaves nothing but a danger to tell.
    const isDangerAlone = verdict.kind === 'ask' && causes.length > 0 && causes.every(({ cause }) => cause.isDangerous)
    return [isDangerAlone ? 'throw_away' : verdict.kind]
  }
  return [true, false].flatMap((is) => endsOf(symptom, told, { ...said, [question]: is }))
}

it('asks nothing whose answers all end in throwing it away', () => {
  for (const id of symptomIds) {
    for (const strength of [undefined, 12, 18, 30, 70]) {
      for (const said of [{}, { varnish: true }, { varnish: true, bought: true }]) {
        const ends = new Set(endsOf(id, { ...(strength !== undefined && { strength }) }, said))
        const isAsked = diagnosed(id, {
          ...(strength !== undefined && { strength }),
          yes: Object.keys(said).join(' '),
        }).question
        if (isAsked !== null) expect([...ends], `${id} ${strength}`).not.toEqual(['throw_away'])
      }
    }
  }
})

// Whoever knows its strength may still keep it: the lines of `solvent` in trouble-stop-lines.json.
test.each<[Told, string, string | null]>([
  [{ yes: 'varnish' }, 'throw_away', null],
  [{ yes: 'varnish bought' }, 'throw_away', null],
  [{ yes: 'varnish', strength: 30 }, 'ask', 'bought'],
  [{ yes: 'varnish bought', strength: 30 }, 'hold', 'fizz'],
  [{}, 'ask', 'bought'],
])('of what smells of a solvent, told %j: %s, asking %s', (told, kind, question) => {
  expect(diagnosed('solvent', told)).toMatchObject({ verdict: { kind }, question })
})

it('fits a peel cloud to its fall in strength, and not to plums', () => {
  const strong = { keeping: 'keeps', delleUnits: 150, weakestPercent: 30 } as const
  const lemon = { ...NOTHING_KNOWN, ...strong, steepPercent: 82, abvPercent: { value: 30, plusMinus: 1 } }
  const plants = (name: string) => [
    { botanical: findOne(name).botanical, name, gPerL: 100, pieceShare: null, days: 14 },
  ]
  const causesOf = (name: string) =>
    diagnose('cloudy_on_mixing', { ...lemon, plants: plants(name) }, { bought: true }).causes.map(({ id }) => id)
  expect(causesOf('lemon')[0]).toBe('oil')
  expect(causesOf('plum')).not.toContain('oil')
  expect(causesOf('plum')[0]).toBe('pectin')
})
