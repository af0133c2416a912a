import { describe, expect, it, test } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import { wordsOf } from '../../../bot/text/words-of.ts'
import { DomainError } from '../../../core/domain-error.ts'
import type { Happening } from '../../../core/jar/entry/entry.ts'
import { correct, record } from '../../../core/jar/record/record.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { added, entriesOf, META, ml, on, plant, started, strained, strength, sweetened } from '../../core/jar/jars.ts'
import { spirit } from '../../core/recipe-plan/wishes.ts'

const words = wordsOf(en)

const said = (call: () => unknown): string => {
  try {
    call()
  } catch (error) {
    if (error instanceof DomainError)
      return words.problem(error.problem, error.values as never, 'metric').replaceAll('\u00a0', ' ')
    throw error
  }
  return 'taken'
}

const next = (before: readonly Happening[], each: Happening): string =>
  said(() => record(entriesOf(...before), each, on(before.length), META))

const bottled: Happening = { kind: 'bottled', bottles: [{ count: 2, volumeMl: 500 }] }
const end: Happening = { kind: 'emptied' }

describe('what cannot follow', () => {
  test.each<readonly [readonly Happening[], Happening, string]>([
    [[started()], bottled, 'The lemon jar is still steeping: strain it first.'],
    [[started()], end, 'The lemon jar is still steeping: strain it first, or throw it away with /jar discard lemon.'],
    [[started()], started(), 'The lemon jar was started on 1 November 2026 already; give a new one another name.'],
    [
      [started(), strained()],
      strained(),
      'The lemon jar was strained on 2 November 2026 already: /jar correct lemon puts a wrong measurement right, /jar filter lemon takes another.',
    ],
    [
      [started(), strained()],
      added({ plants: [plant('basil', 10)] }),
      'The lemon jar was strained on 2 November 2026: no plants go in after that. Start a new jar with them; spirit, water and sugar may still be added.',
    ],
    [
      [started(), strained(), end],
      { kind: 'shaken' },
      'The lemon jar was emptied on 3 November 2026: it can only be tasted or renamed. If it is not gone, /jar undo lemon takes that back, once it is the last entry.',
    ],
  ])('%#', (before, each, sentence) => {
    expect(next(before, each)).toBe(sentence)
  })

  it('names the entry in the way', () => {
    const entries = entriesOf(started(), { kind: 'shaken' }, added({ plants: [plant('basil', 10)] }))
    expect(said(() => record(entries, strained(), on(1, 30), META))).toBe(
      'The lemon jar cannot have been strained on 2 November 2026: it was added to on 3 November 2026 (entry 3). Put that entry right first, or give another day.',
    )
  })

  it('reads well in every stage, for every step', () => {
    const stages = [
      [],
      [started()],
      [started(), strained()],
      [started(), strained(), sweetened(500, 300)],
      [started(), strained(), sweetened(500, 300), bottled],
      [started(), strained(), end],
      [started(), { kind: 'discarded' as const }],
    ]
    const steps: readonly Happening[] = [
      started(),
      { kind: 'shaken' },
      added({ plants: [plant('basil', 10)] }),
      strained(),
      { kind: 'filtered', measured: null },
      sweetened(500, 300),
      bottled,
      { kind: 'opened' },
      end,
      { kind: 'discarded' },
      { kind: 'put_off', untilDay: '2026-12-24', untilMs: null },
    ]
    const sentences = stages
      .flatMap((stage) => steps.map((step) => next(stage, step)))
      .filter((each) => each !== 'taken')
    expect(sentences.length).toBeGreaterThan(25)
    for (const sentence of sentences) {
      expect(sentence).toMatch(/^(The lemon jar|You have no jar) .+\.$/)
      expect(sentence).not.toMatch(/undefined|null|NaN|_/)
    }
  })
})

describe('what was measured wrong', () => {
  it('says how much there can be', () => {
    expect(next([started()], strained({ measured: ml(1300) }))).toMatch(
      /^1\.30 l is more than can have been in the lemon jar, 1\.\d\d l at most; measure again, or put right/,
    )
    const half = started({ spirits: [spirit(1000, 50)], plants: [plant('lemon_peel', 300)] })
    expect(next([half], strained({ measured: ml(1100), strength: strength(50) }))).toMatch(
      /^1\.10 l at 50 % vol holds more alcohol than went into the lemon jar: at most 45\.5 % vol in that much\./,
    )
    expect(next([half], strained({ strength: strength(55) }))).toMatch(
      /^55 % vol is more than can have been in the lemon jar: all that went in makes 50 % vol, and plants only weaken that\./,
    )
  })

  it('says why a hydrometer does not help', () => {
    const sweet = started({ spirits: [spirit(1000, 50)], sweetenings: whiteSugar(exactly(200)) })
    expect(next([sweet], strained({ strength: strength(40) }))).toMatch(
      /^Sugar spoils a hydrometer’s reading: this holds about 1[67]\d(\.\d)? g\/L, and only up to 15 g\/L can I put the reading right\. Leave strength: out and I estimate it\.$/,
    )
  })

  it('says what a correction may not do', () => {
    const entries = entriesOf(started(), { kind: 'shaken' })
    expect(said(() => correct(entries, 2, { kind: 'opened' }, null, META))).toBe(
      'Entry 2 of the lemon jar says that it was shaken, and cannot say that it was opened; take it back with /jar undo lemon.',
    )
  })
})
