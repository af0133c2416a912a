import { expect, it } from 'vitest'
import { flat } from '../flat.ts'
import { jarDesk } from './desk.ts'

async function strained(start: string) {
  const desk = jarDesk('2026-09-05')
  await desk.ask(start)
  desk.at('2026-10-10')
  await desk.ask('/jar strain plum measured:800 ml')
  return desk
}

it('plans again with the honey that it was sweetened with, though sugar was planned', async () => {
  const desk = await strained('/jar start plum of:500 g plums spirit:700 ml 40% vodka')
  await desk.ask('/jar sweeten plum sugar:150 g honey')
  const again = flat(await desk.textOf('/again plum'))
  expect(again).toMatch(/\d+ g honey/)
  expect(again).not.toMatch(/\d+ g sugar/)
  expect(again).toContain('spirit:700 ml 40% vodka sugar:honey')
  await desk.ask(await desk.startLine('/again plum'))
  expect(flat(await desk.textOf('/jar show "plum 2"'))).toContain('sugar honey')
})

it('plans again with sugar and water where that went in, though honey and juice were planned', async () => {
  const desk = await strained('/jar start plum of:500 g plums spirit:1 l 60% sugar:honey water:apple juice')
  await desk.ask('/jar sweeten plum sugar:150 g water:400 ml')
  const again = flat(await desk.textOf('/again plum'))
  expect(again).not.toMatch(/honey|juice/)
  expect(again).toMatch(/\d+ g sugar/)
})

it('takes what is said now', async () => {
  const desk = await strained('/jar start plum of:500 g plums spirit:700 ml 40% vodka')
  await desk.ask('/jar sweeten plum sugar:150 g honey')
  expect(flat(await desk.textOf('/again plum sugar:maple syrup'))).toMatch(/\d+ g maple syrup/)
})
