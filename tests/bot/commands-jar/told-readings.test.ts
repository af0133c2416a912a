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
