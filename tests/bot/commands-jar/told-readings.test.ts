import { expect, it } from 'vitest'
import { jarDesk, LEMON } from './desk.ts'

const STARTED = `${LEMON} when:1 October`

it('at another temperature than 20 °C are told with it', async () => {
  const desk = jarDesk()
  await desk.ask(STARTED)
  await desk.ask('/jar strain lemon measured:900 ml at 28 C strength:88% at 28 C')
  expect(await desk.textOf('/jar show lemon')).toMatch(/strained, 900 ml \(28 °C\) at 88 % vol \(28 °C\)/)
})

it('that lack are named: how much it is, or all', async () => {
  const desk = jarDesk()
  await desk.ask(STARTED)
  expect(await desk.textOf('/jar strain lemon strength:86%')).toContain('amount not measured')
  await desk.ask('/jar undo lemon')
  expect(await desk.textOf('/jar strain lemon')).toContain('not measured')
})

it('takes a strength by itself for what was read of a strained jar, and says what does not fit on the first screen', async () => {
  const desk = jarDesk('2026-11-01')
  await desk.ask('/jar start coffee of:100 g cracked coffee beans spirit:700 ml 60%')
  desk.at('2026-11-10')
  await desk.ask('/jar strain coffee measured:620 ml')
  const { notes } = await desk.ask('/jar correct coffee strength:40%')
  const { started, strained } = await desk.storyOf('coffee')
  expect(started.spirits.map(({ abvPercent }) => abvPercent.value)).toEqual([60])
  expect(strained!.strength?.abvPercent.value).toBe(40)
  expect(notes.find(({ key }) => key === 'jar_reading_surprising')).toMatchObject({ depth: 'first' })
})
