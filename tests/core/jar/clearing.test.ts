import { describe, expect, it } from 'vitest'
import { clearingOf } from '../../../core/jar/state/clearing.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { BOTTLED } from './diary.ts'
import { added, plant, started, storyFrom, strained, sweetened } from './jars.ts'

const SUGAR = whiteSugar(exactly(250))
const of = (id: string | null, sweetenings = whiteSugar(exactly(0))) =>
  started({ plants: [plant(id, 50)], sweetenings: sweetenings === SUGAR ? sweetenings : [] })

// Common practice, no source.
describe('how it becomes clear', () => {
  it('is not asked before it is strained, nor once it is in bottles', () => {
    expect(clearingOf(storyFrom(of('lemon_peel')))).toBeNull()
    expect(clearingOf(storyFrom(of('lemon_peel'), strained(), BOTTLED))).toBeNull()
  })

  it('by paper before the syrup, where no sugar steeped with it', () => {
    expect(clearingOf(storyFrom(of('lemon_peel'), strained()))).toBe('filter_before_syrup')
    expect(clearingOf(storyFrom(of('ginger'), strained()))).toBe('filter_before_syrup')
    expect(clearingOf(storyFrom(of(null), strained()))).toBe('filter_before_syrup')
  })

  it('by standing in the cold, where it did', () => {
    expect(clearingOf(storyFrom(of('sloe', SUGAR), strained()))).toBe('stand_then_rack')
  })

  it('after the syrup by resting, but never of the oils of peel and anise', () => {
    const wayAfter = (id: string | null) => clearingOf(storyFrom(of(id), strained(), sweetened(700, 500)))
    expect(wayAfter('ginger')).toBe('rest_then_rack')
    expect(wayAfter(null)).toBe('rest_then_rack')
    expect(wayAfter('lemon_peel')).toBe('leave_cloudy')
    expect(wayAfter('aniseed')).toBe('leave_cloudy')
    const late = storyFrom(of('ginger'), added({ plants: [plant('lemon_peel', 10)] }), strained(), sweetened(1, 1))
    expect(clearingOf(late)).toBe('leave_cloudy')
  })
})
