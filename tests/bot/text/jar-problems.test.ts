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
    [[started()], bottled, 'Lemon is still steeping. Strain it first: /jar strain lemon'],
    [[started()], end, 'Lemon is still steeping. Strain it first, or throw it away: /jar discard lemon'],
    [[started()], started(), 'You already started lemon on 1 November 2026. What else could this one be called?'],
    [
      [started(), strained()],
      strained(),
      'You strained lemon on 2 November 2026. Is there something to fix? See /jar show lemon',
    ],
    [
      [started(), strained()],
      added({ plants: [plant('basil', 10)] }),
      'Lemon was strained on 2 November 2026, so it takes no more plants. Spirit, water and sugar can still go in.',
    ],
    [
      [started(), strained(), end],
      { kind: 'shaken' },
      'You finished lemon on 3 November 2026. Still got some? To undo that: /jar undo lemon',
    ],
  ])('%#', (before, each, sentence) => {
    expect(next(before, each)).toBe(sentence)
  })

  it('names the entry in the way', () => {
    const entries = entriesOf(started(), { kind: 'shaken' }, added({ plants: [plant('basil', 10)] }))
    expect(said(() => record(entries, strained(), on(1, 30), META))).toBe(
      'Lemon was added to on 3 November 2026 (entry 3). Is that day wrong? See /jar show lemon',
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
      expect(sentence).toMatch(/^(?:Lemon |You |No more shaking: lemon |Nothing).+(?:[.?]| \/jar .+)$/)
      expect(sentence).not.toMatch(/undefined|null|NaN|_/)
    }
  })
})

describe('what was measured wrong', () => {
  it('says how much there can be', () => {
    expect(next([started()], strained({ measured: ml(1300) }))).toMatch(
      /^1\.3 l is more than went into lemon \(1\.\d\d? l at most\)\./,
    )
    const half = started({ spirits: [spirit(1000, 50)], plants: [plant('lemon_peel', 300)] })
    expect(next([half], strained({ measured: ml(1100), strength: strength(50) }))).toMatch(
      /^1\.1 l at 50 % has more alcohol than went into lemon\. It can be 45\.5 % at most\./,
    )
    expect(next([half], strained({ strength: strength(55) }))).toMatch(
      /^55 % is stronger than what went into lemon: 50 % at most\./,
    )
  })

  it('says why a hydrometer does not help', () => {
    const sweet = started({ spirits: [spirit(1000, 50)], sweetenings: whiteSugar(exactly(200)) })
    expect(next([sweet], strained({ strength: strength(40) }))).toMatch(
      /^So much is dissolved in it that a hydrometer can’t show 40 %\. If a lab says so, say “really 40 %”\. If not, leave it out and I’ll work it out\.$/,
    )
  })

  it('says what a correction may not do', () => {
    const entries = entriesOf(started(), { kind: 'shaken' })
    expect(said(() => correct(entries, 2, { kind: 'opened' }, null, META))).toBe(
      'Entry 2 says lemon was shaken, not opened. To undo the last entry: /jar undo lemon',
    )
  })
})
