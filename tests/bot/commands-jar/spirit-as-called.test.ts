import { expect, it } from 'vitest'
import { lineOf } from '../../../bot/calls/write-line.ts'
import { flat } from '../flat.ts'
import { jarDesk } from './desk.ts'

const SLOES = 'of:500 g sloes spirit:700 ml 40% gin'

it('says gin where gin was typed, from the plan to the tag', async () => {
  const desk = jarDesk('2026-09-05')
  const plan = flat(await desk.textOf(`/plan ${SLOES}`))
  expect(plan).toContain('Buy 500 g sloes, 700 ml of 40 % gin and')
  expect(plan).toContain('Put the sloes and gin in a closed')
  expect(plan).not.toMatch(/40 % spirit/)
  expect(flat(await desk.textOf(`/jar start sloe ${SLOES}`))).toContain(
    'In the jar: 500 g sloes and 700 ml of 40 % gin.',
  )
  expect(flat(await desk.textOf('/jar add sloe spirit:100 ml 40% rum'))).toContain('100 ml of 40 % rum')
  const shown = flat(await desk.textOf('/jar show sloe'))
  expect(shown).toContain('40 % gin + 100 ml of 40 % rum + 500 g sloes')
  expect(shown).not.toMatch(/40 % spirit/)
  expect(flat(await desk.pictureSaid('/jar tag sloe'))).toContain('700 ml of 40 % gin')
})

it('keeps saying spirit where that was all that was typed, and liqueur of what is sweet', async () => {
  const desk = jarDesk('2026-09-05')
  const plan = flat(await desk.textOf('/plan of:10 lemons spirit:1 l 95% + 300 ml orange liqueur 28% 250 g/L'))
  expect(plan).toContain('1 l of 95 % spirit')
  expect(plan).toContain('28 % liqueur (250 g/L of sugar)')
  expect(flat(await desk.textOf('/plan of:10 lemons spirit:1 l 95% alcohol'))).toContain('1 l of 95 % spirit')
})

it('plans again with what was typed, after a top-up too', async () => {
  const desk = jarDesk('2026-09-05')
  await desk.ask(`/jar start sloe ${SLOES}`)
  await desk.ask('/jar add sloe spirit:100 ml 40% rum')
  const again = flat(await desk.textOf('/again sloe'))
  expect(again).toContain('spirit:700 ml 40% gin + 100 ml 40% rum')
  await desk.ask(await desk.startLine('/again sloe'))
  expect(flat(await desk.textOf('/jar show "sloe 2"'))).toContain('700 ml of 40 % gin + 100 ml of 40 % rum')
})

it('still knows the spirit whose strength was put right', async () => {
  const desk = jarDesk('2026-09-05')
  await desk.ask(`/jar start sloe ${SLOES}`)
  await desk.ask('/jar correct sloe strength:43%')
  expect(flat(await desk.textOf('/jar show sloe'))).toContain('700 ml of 43 % gin')
})

it('buys gin for a plan, and tells friends that it was gin', async () => {
  const desk = jarDesk('2026-09-05')
  const list = (await desk.replyOf(`/plan ${SLOES}`)).actions.find(({ call }) => call.command === 'shopping')!
  expect(flat(await desk.textOf(lineOf(list.call)))).toContain('40 % gin')
  await desk.ask(`/jar start sloe ${SLOES}`)
  const shared = (await desk.ask('/share sloe')).data.code as string
  expect(flat(await desk.textOf(`/plan from:${shared}`))).toContain('700 ml of 40 % gin')
  await desk.ask(`/jar start friend from:${shared}`)
  expect(flat(await desk.textOf('/jar show friend'))).toContain('700 ml of 40 % gin')
})
