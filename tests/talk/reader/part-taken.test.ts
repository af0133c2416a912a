import { expect, it } from 'vitest'
import { testDesk } from '../../bot/test-desk.ts'

const LINES = [
  '/jar start sloe of:500 g sloes spirit:700 ml gin 40% when:60 days ago',
  '/jar start mix of:500 g raspberries + 2 vanilla pods spirit:1 l 40% when:3 days ago',
]

const deskWith = async () => {
  const desk = testDesk({ nowMs: Date.UTC(2026, 10, 29, 12) })
  for (const line of LINES) expect(await desk.run(line), line).toMatchObject({ ok: true })
  return desk
}

// As makers say it; what stays in is common sense, no source.
it.each([
  'took half the sloes out of the sloe',
  'ho tolto metà delle prugnole dallo sloe',
  '/jar take-out sloe of:200 g sloes',
  '/jar take-out mix of:half the raspberries',
  'took one vanilla pod out of mix',
  'took a vanilla pod out of the mix',
  'ho tolto una bacca di vaniglia dal mix',
  'took 200 g raspberries out of the mix',
  '/jar take-out mix of:1 vanilla pod',
  '/jar take-out mix of:a vanilla pod',
  '/jar take-out mix of:0.2 kg raspberries',
])('part of a plant is not noted as all of it, nor as straining: %s', async (line) => {
  const desk = await deskWith()
  const { outcome, text } = await desk.toldOf(line)
  expect(outcome).toMatchObject({ ok: false, error: { problem: 'part_lifted' } })
  const offered = /\/jar take-out .*/.exec(text.replaceAll('\n', ' '))![0].trim()
  expect(await desk.run(offered), offered).toMatchObject({ ok: true, path: 'jar take-out' })
})

it.each([
  '/jar take-out sloe of:500 g sloes',
  '/jar take-out sloe of:sloes',
  '/jar take-out mix of:2 vanilla pods',
  '/jar take-out mix of:the vanilla pods and the raspberries',
  'took 2 vanilla pods out of mix',
  'took 500 g raspberries out of the mix',
  'took both vanilla pods out of the mix',
])('all of it is: %s', async (line) => {
  expect((await (await deskWith()).toldOf(line)).outcome).toMatchObject({ ok: true, path: 'jar take-out' })
})
