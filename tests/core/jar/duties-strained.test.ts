import { describe, expect, it } from 'vitest'
import { BOTTLED, diary, FILTERED, keys, type Line, peel } from './diary.ts'
import { strained, strength, sweetened } from './jars.ts'

const STEEPED: readonly Line[] = [
  ['2026-11-01 10:00', peel()],
  ['2026-11-25 18:00', strained()],
]
const SWEETENED: readonly Line[] = [...STEEPED, ['2026-11-26 18:00', sweetened(800, 400)]]

describe('sweeten', () => {
  it('comes the day after straining, then weekly, three in all, and nothing of the steep any more', () => {
    expect(keys(diary(STEEPED))).toEqual(['sweeten.2026-11-26', 'sweeten.2026-12-03', 'sweeten.2026-12-10'])
  })

  it('comes once where no target is known, and nothing more until there is syrup', () => {
    const entries = diary([['2026-11-01 10:00', peel({ targets: null })], STEEPED[1]!])
    expect(keys(entries)).toEqual(['sweeten.2026-11-26'])
  })

  it('does not come where the plan adds neither water nor sugar; then bottling counts from straining', () => {
    const dry = peel({ targets: { abvPercent: 95, sugarGPerL: 0 } })
    expect(keys(diary([['2026-11-01 10:00', dry], STEEPED[1]!]))).toEqual(['bottle.2026-11-28'])
  })

  it('goes by the strength that was read where one was', () => {
    const dry = peel({ targets: { abvPercent: 80, sugarGPerL: 0 } })
    const read = (percent: number) => strained({ strength: strength(percent) })
    const ask = (percent: number) =>
      keys(
        diary([
          ['2026-11-01 10:00', dry],
          ['2026-11-25 18:00', read(percent)],
        ]),
      )
    expect(ask(80)[0]).toBe('bottle.2026-11-28')
    expect(ask(84)[0]).toBe('sweeten.2026-11-26')
  })
})

describe('after the syrup', () => {
  it('asks to bottle and says when it is ready, once each; nobody owes filtering', () => {
    expect(keys(diary(SWEETENED))).toEqual(['bottle.2026-11-29', 'ready.2026-12-26'])
  })

  it('counts from the last syrup', () => {
    const again = diary([...SWEETENED, ['2026-11-30 18:00', sweetened(0, 50)]])
    expect(keys(again)).toEqual(['bottle.2026-12-03', 'ready.2026-12-30'])
  })

  it('does not ask for what was done', () => {
    expect(keys(diary([...SWEETENED, ['2026-11-27 18:00', FILTERED]]))).toEqual([
      'bottle.2026-11-29',
      'ready.2026-12-26',
    ])
    expect(keys(diary([...SWEETENED, ['2026-11-27 18:00', BOTTLED]]))).toEqual(['ready.2026-12-26', 'drink.2027-10-30'])
  })

  it('is ready a rest after straining where it was bottled without syrup', () => {
    expect(keys(diary([...STEEPED, ['2026-11-27 18:00', BOTTLED]]))).toEqual(['ready.2026-12-25', 'drink.2027-10-30'])
  })

  it('says nothing once a bottle was opened, but of those that are left', () => {
    const opened = diary([...SWEETENED, ['2026-11-27 18:00', BOTTLED], ['2026-12-05 18:00', { kind: 'opened' }]])
    expect(keys(opened)).toEqual(['drink.2027-10-30'])
  })
})

describe('an end', () => {
  const ENDS = [{ kind: 'emptied' }, { kind: 'discarded' }] as const

  it.each(ENDS)('stops everything: $kind; and undoing it brings all back', (end) => {
    const before = keys(diary(SWEETENED))
    const ended: readonly Line[] = [...SWEETENED, ['2026-11-27 18:00', end]]
    expect(keys(diary(ended))).toEqual([])
    expect(keys(diary([...ended, ['2026-11-27 19:00', { kind: 'undone', of: 4 }]]))).toEqual(before)
  })

  it('is the start undone', () => {
    expect(keys(diary([...STEEPED, ['2026-11-27 19:00', { kind: 'undone', of: 1 }]]))).toEqual([])
  })
})
