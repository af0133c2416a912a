import { describe, expect, it } from 'vitest'
import { days, diary, PEEL } from './diary.ts'
import { added, plant, started } from './jars.ts'

describe('add', () => {
  const plants = [
    plant('lemon_peel', 100),
    plant('basil', 20, { addOn: '2026-11-15' }),
    plant('mint', 20, { addOn: '2026-11-15' }),
    plant(null, 5, { addOn: '2026-11-18' }),
  ]
  const START_LATER = ['2026-11-01 10:00', started({ plants, plan: PEEL })] as const

  it('comes once a day on which something goes in', () => {
    expect(days(diary([START_LATER]), 'add')).toEqual(['2026-11-15', '2026-11-18'])
  })

  it('does not come for what went in before', () => {
    const one = diary([START_LATER, ['2026-11-14 18:00', added({ plants: [plant('basil', 20)] })]])
    expect(days(one, 'add')).toEqual(['2026-11-15', '2026-11-18'])
    const both = added({ plants: [plant('basil', 20), plant('mint', 20)] })
    expect(days(diary([START_LATER, ['2026-11-14 18:00', both]]), 'add')).toEqual(['2026-11-18'])
    const unknown = added({ plants: [plant(null, 5)] })
    expect(days(diary([START_LATER, ['2026-11-14 18:00', unknown]]), 'add')).toEqual(['2026-11-15'])
  })

  it('moves nothing else where a plant goes in on its day, however late that is entered', () => {
    const tastes = (entered = '2026-11-15 18:00') => {
      const basil = ['2026-11-15 18:00', added({ plants: [plant('basil', 20)] }), entered] as const
      return days(diary([START_LATER, basil]), 'taste')
    }
    const usual = days(diary([START_LATER]), 'taste')
    expect(usual[0]! < '2026-11-15').toBe(true)
    expect(tastes()).toEqual(usual)
    expect(tastes('2026-11-20 18:00')).toEqual(usual)
  })

  it('comes the next morning, and once, where the jar is entered when its day has come', () => {
    const [begun, what] = START_LATER
    expect(days(diary([[begun, what, '2026-11-15 07:00']]), 'add')).toEqual(['2026-11-16', '2026-11-18'])
    expect(days(diary([[begun, what, '2026-11-20 07:00']]), 'add')).toEqual(['2026-11-21'])
  })
})
