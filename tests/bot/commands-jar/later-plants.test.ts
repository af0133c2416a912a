import { describe, expect, it } from 'vitest'
import { lineOf } from '../../../bot/calls/write-line.ts'
import { batchAgain } from '../../../bot/commands/jar/amend/again-batch.ts'
import { batchOptions } from '../../../bot/commands/plan/batch-options.ts'
import { ingredientsOf } from '../../../core/jar/state/batch-facts.ts'
import { plantsToAdd } from '../../../core/jar/state/later-plants.ts'
import { jarDesk, type StepJson } from './desk.ts'

/** Coffee is over in days and damsons take weeks, so that it goes in later. */
const begun = async () => {
  const desk = jarDesk()
  await desk.ask(
    '/jar start mine of:400 g damson + 60 g coffee beans spirit:1 l 95% to-strength:30% to-sweetness:250 g/L',
  )
  const story = () => desk.storyOf('mine')
  const coffee = (await story()).started.plants.find(({ id }) => id === 'coffee_whole')!
  expect(coffee.addOn).not.toBeNull()
  const grams = async () =>
    ingredientsOf(await story())
      .plants.filter(({ id }) => id === coffee.id)
      .map(({ massG, addOn }) => [massG.value, addOn])
  const again = async () => ({ of: batchOptions(batchAgain(await story(), null), undefined).of.typed })
  return { ...desk, story, coffee, addOn: coffee.addOn!, grams, again }
}

const noteOf = ({ notes }: StepJson, key: string) => notes.find((note) => note.key === key)?.text

describe('a plant that the plan puts in later', () => {
  it('is said to come later until it is in', async () => {
    const { textOf, grams, addOn, again } = await begun()
    expect(await textOf('/jar show mine')).toMatch(/, later: 60 g coffee beans on \d+ November 2026/)
    expect(await grams()).toEqual([[60, addOn]])
    expect((await again()).of).toContain('60 g coffee')
  })

  it('went in at once where its maker says so, by a line that the start offers', async () => {
    const desk = jarDesk()
    const outcome = await desk.run('/jar start mine of:10 lemons + 4 cloves spirit:1 l 95%')
    const allIn = outcome.ok ? outcome.reply.actions.find(({ label }) => label.key === 'jar_all_in') : undefined
    expect(plantsToAdd(await desk.storyOf('mine'))).toHaveLength(1)
    await desk.ask(lineOf(allIn!.call))
    expect(plantsToAdd(await desk.storyOf('mine'))).toEqual([])
  })

  it('is there once, with the amount that went in', async () => {
    const { at, ask, textOf, grams, addOn, again } = await begun()
    at(addOn)
    await ask('/jar add mine of:50 g coffee beans')
    expect(await grams()).toEqual([[50, null]])
    expect(await textOf('/jar show mine')).not.toContain('later:')
    const { of } = await again()
    expect(of).toContain('50 g coffee')
    expect(of).not.toContain('60 g')
    at('2026-12-20')
    expect(noteOf(await ask('/jar strain mine measured:900 ml'), 'jar_later_counted')).toBeUndefined()
    expect(await grams()).toEqual([[50, null]])
  })

  it('goes in as planned where no amount is said', async () => {
    const { at, ask, grams, addOn } = await begun()
    at(addOn)
    await ask('/jar add mine of:coffee beans')
    expect(await grams()).toEqual([[60, null]])
  })

  it('is offered by the list on its day', async () => {
    const { at, textOf, addOn, ask, grams } = await begun()
    const line = async () => /\/jar add mine .*$/m.exec(await textOf('/jar list'))?.[0].replaceAll('\u00a0', ' ')
    expect(await line()).toBeUndefined()
    at(addOn)
    const offered = (await line())!
    expect(offered).toMatch(/^\/jar add mine of:60 g [Cc]offee/)
    await ask(offered)
    expect(await grams()).toEqual([[60, null]])
    expect(await line()).toBeUndefined()
  })

  it('counts as in when it is strained after its day, which is said', async () => {
    const { at, ask, grams } = await begun()
    at('2026-12-20')
    const reply = await ask('/jar strain mine measured:900 ml')
    expect(noteOf(reply, 'jar_later_counted')).toMatch(/coffee.*as planned.* \/jar correct mine /)
    expect(await grams()).toEqual([[60, null]])
  })

  it('never went in where it was strained before its day', async () => {
    const { at, ask, grams } = await begun()
    at('2026-11-03')
    const reply = await ask('/jar strain mine measured:900 ml')
    expect(noteOf(reply, 'jar_later_counted')).toBeUndefined()
    expect(noteOf(reply, 'jar_later_left_out')).toMatch(/coffee/)
    expect(await grams()).toEqual([])
  })
})

describe('/jar later', () => {
  it('says where the days for straining are over by then', async () => {
    const { ask, story } = await begun()
    const { strainBy } = (await story()).started.days
    expect(noteOf(await ask(`/jar later mine until:${strainBy}`), 'jar_later_past')).toBeUndefined()
    const late = /mine, \d+ \w+ 2026\.$/
    expect(noteOf(await ask('/jar later mine until:2027-01-20'), 'jar_later_past')).toMatch(late)
    expect(noteOf(await ask('/jar later all until:2027-01-21'), 'jar_later_past')).toMatch(late)
  })
})

it('tells nobody of a last day to strain that is over already, and when it asks again', async () => {
  const desk = jarDesk('2026-07-01')
  await desk.ask('/jar start damson of:1 kg damsons spirit:1 l gin 40%')
  desk.at('2026-11-29')
  const text = await desk.textOf('/jar later damson until:2026-12-05')
  expect(text).not.toContain('after the last day')
  expect(text).toContain('strain and shake it on 5 December')
})
