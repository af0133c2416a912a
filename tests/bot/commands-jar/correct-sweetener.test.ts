import { expect, it } from 'vitest'
import { flat } from '../flat.ts'
import { jarDesk } from './desk.ts'

it('asks how much honey went in where so much sugar is on record, with a line that runs', async () => {
  const desk = jarDesk('2026-09-05')
  await desk.ask('/jar start quince of:500 g quinces spirit:700 ml 40% sugar:200 g')
  const asked = await desk.refused('/jar correct quince sugar:honey')
  expect(flat(asked.message)).toContain('How much honey went in?')
  const line = '/jar correct quince sugar:200 g honey'
  expect(flat(asked.message)).toContain(line)
  expect(flat(await desk.textOf('/jar show quince'))).toContain('+ 200 g sugar')
  expect(flat(await desk.textOf(line))).toContain('200 g honey (was 200 g sugar)')
  expect(flat(await desk.textOf('/jar show quince'))).toContain('+ 200 g honey')
})

it('still puts right what is planned, by its name alone', async () => {
  const desk = jarDesk('2026-09-05')
  await desk.ask('/jar start lemon of:10 lemons spirit:1 l 95%')
  expect(flat(await desk.textOf('/jar correct lemon sugar:honey'))).toContain('Noted for the start of lemon: honey.')
  await desk.ask('/jar start plum of:500 g plums spirit:700 ml 40% sugar:100 g + honey')
  expect(flat(await desk.textOf('/jar correct plum sugar:maple syrup'))).toContain('maple syrup (was 100 g + honey)')
})
