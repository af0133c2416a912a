import { describe, expect, it } from 'vitest'
import { testDesk } from '../../bot/test-desk.ts'
import { talker } from './told.ts'

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

const withPod = async (...others: readonly string[]) => {
  const one = talker()
  await one.say('/jar start raspberry of:200 g raspberries + 1 vanilla pod spirit:700 ml 40% when:3 days ago')
  for (const line of others) await one.say(line)
  one.wait(40)
  return one
}

const LEMONS = '/jar start lemon of:10 lemons spirit:1 l 95% when:3 days ago'
const PLUMS = '/jar start plum of:500 g plums + 1 vanilla pod spirit:700 ml 40% when:3 days ago'

describe('a piece is of the plant that is named by it, among all that steeps', () => {
  it.each(['took the pod out', 'fished the pod out', 'the lemon is fine. took out the pod'])('%s', async (text) => {
    const { read, also } = await (await withPod(LEMONS)).say(text)
    expect([read, ...also.map((each) => each.read)]).toContain('/jar take-out raspberry of:vanilla')
  })

  it('asks which, where several have it, and takes the one that is named', async () => {
    const asked = await (await withPod(PLUMS)).say('took the pod out')
    expect(asked).toMatchObject({ code: 'question', recorded: 0 })
    expect(asked.choices).toEqual(['/jar take-out raspberry of:vanilla', '/jar take-out plum of:vanilla'])
    const named = await (await withPod(PLUMS)).say('took the pod out of the plum')
    expect(named).toMatchObject({ read: '/jar take-out plum of:vanilla', recorded: 1 })
  })

  it.each(['fished the stick out', 'took out the stick'])('strains nothing that has none: %s', async (text) => {
    const one = talker()
    await one.say(LEMONS)
    expect(await one.say(text)).toMatchObject({ recorded: 0 })
  })
})
