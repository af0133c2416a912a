import { describe, expect, it, test } from 'vitest'
import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import { addDays } from '../../../core/quantity/time/calendar-day.ts'
import { timesOf } from '../../../core/recipe/plan/plan.ts'
import { schedule } from '../../../core/recipe/plan/schedule.ts'
import { jarDesk } from '../commands-jar/desk.ts'

const START = { year: 2026, month: 11, day: 1 } as const
const inDays = (days: number) => addDays(START, days)
const times = (...ids: readonly string[]) => ids.map((id) => timesOf(botanicalById(id)))

// Lemon peel steeps 14 to 30 days, cloves 5 to 10, chilli 1 to 3 (reference/botanicals.json).
describe('all in at once', () => {
  it('begins with everything, and strains when it would have', () => {
    const wanted = { start: START, readyBy: null }
    const plants = times('lemon_peel', 'chilli_dried', 'clove')
    const [late, once] = [schedule(plants, wanted), schedule(plants, { ...wanted, areAllIn: true })]
    expect(late.addOn.map((day) => day.day > 1)).toEqual([false, true, true])
    expect(late.wouldWait).toEqual([false, false, false])
    expect(once.addOn).toEqual([START, START, START])
    expect(once.wouldWait).toEqual([false, true, true])
    expect([once.strainFrom, once.strainBy, once.ready]).toEqual([late.strainFrom, late.strainBy, late.ready])
    expect(once.tasteFrom).toEqual(inDays(1))
  })

  it('is nothing to say of plants that go in together anyway', () => {
    expect(schedule(times('lemon_peel'), { start: START, readyBy: null, areAllIn: true }).wouldWait).toEqual([false])
  })
})

test.each([
  ['1 dried chilli', 'chilli'],
  ['1 clove', 'clove'],
  ['1 Ceylon cinnamon stick', 'cinnamon_ceylon'],
])('one %s goes in with the lemons where that is said, in the plan and in the jar', async (typed, id) => {
  const desk = jarDesk('2026-11-01')
  const line = `of:10 lemons + ${typed} spirit:1 l 95%`
  const planned = await desk.replyOf(`/plan ${line} all-in:yes`)
  expect(planned.notes.map(({ key }) => key)).toContain('plan_all_in')
  const started = planned.actions.find(({ label }) => label.key === 'start_jar')
  expect(started?.call.values['all-in']).toMatchObject({ is: true })
  await desk.ask(`/jar start once ${line} all-in:yes`)
  expect((await desk.storyOf('once')).started.plants.map(({ addOn }) => addOn)).toEqual([null, null])
  expect(await desk.textOf('/jar list')).not.toContain('add the')
  // Without the word it waits, and a button says that it went in all the same.
  const begun = await desk.replyOf(`/jar start later ${line} all-in:no`)
  expect((await desk.storyOf('later')).started.plants.find((plant) => plant.id?.startsWith(id))?.addOn).not.toBeNull()
  const added = begun.actions.find(({ label }) => label.key === 'jar_all_in')
  expect(added?.call.command).toBe('jar add')
})
