import { expect, it } from 'vitest'
import { batchCardData } from '../../../bot/picture/card/batch-card-data.ts'
import { bottleLabelData } from '../../../bot/picture/label/bottle-label-data.ts'
import { jarDesk, numberIn } from './desk.ts'

const sweetPlums = async () => {
  const desk = jarDesk('2026-08-01')
  await desk.ask('/jar start plum of:500 g plums spirit:1 l 50% to-strength:25% to-sweetness:200 g/L')
  desk.at('2026-09-20')
  await desk.ask('/jar strain plum measured:1.1 l')
  await desk.ask('/jar sweeten plum water:300 ml sugar:300 g')
  return desk
}

it('/jar filter racked: and fining: say what is left and what guests have to know, and label and card name it', async () => {
  const desk = await sweetPlums()
  const before = numberIn(await desk.ask('/jar show plum'), 'volumeMl')
  const { notes } = await desk.ask('/jar filter plum racked:yes fining:egg white')
  expect(notes.map(({ key }) => key)).toContain('jar_fined')
  expect(numberIn(await desk.ask('/jar show plum'), 'volumeMl')).toBeCloseTo(0.97 * before, 6)
  const view = await desk.viewOf('plum')
  expect(bottleLabelData(view, null).allergens).toContain('egg_fined')
  expect(batchCardData(view, '2026-09-20').allergens).toContain('egg_fined')
})

it('takes the same racking of a day for a slip, and another fining for another', async () => {
  const desk = await sweetPlums()
  await desk.ask('/jar filter plum racked:yes fining:bentonite')
  expect((await desk.headlineOf('/jar filter plum racked:yes fining:bentonite')).key).toBe('jar_same_again')
  expect((await desk.headlineOf('/jar filter plum racked:yes')).key).toBe('jar_recorded')
})

it('asks which fining it was', async () => {
  const desk = await sweetPlums()
  expect(await desk.refused('/jar filter plum fining:glue')).toMatchObject({ code: 'bad_value', option: 'fining' })
})
