import { expect, it } from 'vitest'
import { lineOf } from '../../../bot/calls/write-line.ts'
import { newAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'

const START_MS = Date.UTC(2026, 8, 1, 9)
const DAY_MS = 86_400_000

const METRIC = /(?<![\d.])[\d.]+ ?(?:ml|cl|l|g|kg)\b(?!\/)/
const US = /cups?\b|tbsp|\blb\b|\boz\b|quarts?|pints?/

/** The lines that a reply offers after each line of a season, by day. */
async function offeredIn(season: readonly (readonly [day: number, line: string])[]) {
  const asker = newAsker()
  const offered: string[] = []
  for (const [day, line] of season) {
    const outcome = await testDesk({ nowMs: START_MS + day * DAY_MS, asker }).run(line)
    expect(outcome, line).toMatchObject({ ok: true })
    if (!outcome.ok || !('reply' in outcome)) continue
    const { actions, table } = outcome.reply
    const calls = [...actions, ...table].flatMap((each) => each.call ?? [])
    offered.push(...calls.map((each) => lineOf(each)))
  }
  return offered
}

const seasonOf = (start: string, strained: string, sweetened: string) =>
  [
    [0, start],
    [30, '/jar list'],
    [40, `/jar strain jar measured:${strained}`],
    [40, '/jar list'],
    [40, '/jar show jar'],
    [40, '/syrup jar:jar'],
    [41, `/jar sweeten jar ${sweetened}`],
    [41, '/jar show jar'],
    [42, '/adjust jar:jar to-strength:35% to-sweetness:150 g/L spirit-strength:95%'],
    [70, '/jar list'],
    [70, '/jar show jar'],
    [71, '/again jar'],
  ] as const

const AMOUNTS = /(?:water|sugar|spirit|bottles|of):/

it('offers a jar in US units in those', async () => {
  const offered = await offeredIn(
    seasonOf(
      '/jar start jar of:2 lb raspberries spirit:1 quart 95% bottles:4 x 1 pint',
      '3 cups',
      'water:2 cups sugar:5 oz',
    ),
  )
  const withAmounts = offered.filter((line) => AMOUNTS.test(line))
  expect(withAmounts.length).toBeGreaterThan(5)
  expect(withAmounts.filter((line) => METRIC.test(line))).toEqual([])
  expect(withAmounts.filter((line) => !US.test(line))).toEqual([])
})

it('offers a jar in metric units in those, with no odd digit', async () => {
  const offered = await offeredIn(
    seasonOf('/jar start jar of:1 kg raspberries spirit:1 l 95%', '930 ml', 'water:500 ml sugar:150 g'),
  )
  expect(offered.filter((line) => METRIC.test(line)).length).toBeGreaterThan(3)
  expect(offered.filter((line) => US.test(line))).toEqual([])
  expect(offered.filter((line) => /\d{2}[1-9] (?:ml|g)\b/.test(line))).toEqual([])
})

it('keeps each kind of amount of a mixed kitchen in its own', async () => {
  const offered = await offeredIn(
    seasonOf('/jar start jar of:2 lb raspberries spirit:1 l 95%', '930 ml', 'water:500 ml sugar:5 oz'),
  )
  const sweetened = offered.filter((line) => line.startsWith('/jar sweeten'))
  expect(sweetened.length).toBeGreaterThan(2)
  for (const line of sweetened)
    expect(line).toMatch(/water:[\d.]+ m?l sugar:[^:]*(?:lb|oz)|sugar:[^:]*(?:lb|oz).* water:[\d.]+ m?l/)
})

it('offers in the units that somebody chose for everything', async () => {
  const offered = await offeredIn([
    [0, '/settings units:metric'],
    ...seasonOf('/jar start jar of:2 lb raspberries spirit:1 quart 95%', '3 cups', 'water:2 cups sugar:5 oz'),
  ])
  const sweetened = offered.filter((line) => line.startsWith('/jar sweeten'))
  expect(sweetened.filter((line) => US.test(line))).toEqual([])
})

it('takes the sweetening that it offers for the one that was planned', async () => {
  for (const start of ['of:2 lb raspberries spirit:1 quart 95%', 'of:8 oz ginger spirit:1 imp pint 60%']) {
    const asker = newAsker()
    const at = (day: number) => testDesk({ nowMs: START_MS + day * DAY_MS, asker })
    await at(0).run(`/jar start jar ${start}`)
    const strained = await at(30).run('/jar strain jar')
    const sweeten = strained.ok && 'reply' in strained ? strained.reply.actions[0]!.call : null
    const { outcome, text } = await at(31).toldOf(lineOf(sweeten!))
    expect(outcome, text).toMatchObject({ ok: true })
    expect(text).not.toContain('plan (')
  }
})

it('never rounds down the spirit that makes a jar keep', async () => {
  const mended: string[] = []
  for (const water of ['1 1/2 cups', '2 cups', '2 1/4 cups', '2 1/2 cups', '3 cups']) {
    const asker = newAsker()
    const desk = testDesk({ nowMs: START_MS, asker })
    await desk.run('/jar start jar of:2 lb plums spirit:1 quart 100 proof sugar:1 cup')
    await desk.run('/jar strain jar measured:3 cups')
    await desk.run(`/jar sweeten jar water:${water}`)
    const shown = await desk.run('/jar show jar')
    const actions = shown.ok && 'reply' in shown ? shown.reply.actions : []
    for (const { label, call } of actions.filter((each) => each.label.key === 'jar_add_spirit')) {
      const line = lineOf(call)
      expect(line, label.key).toMatch(/spirit:[^:]*(?:cup|tbsp|tsp)/)
      const { outcome, text } = await desk.toldOf(line)
      expect(outcome, text).toMatchObject({ ok: true, reply: { data: { dangers: [] } } })
      mended.push(line)
    }
  }
  expect(mended.length).toBeGreaterThan(2)
})

it('calls a bottle by the pint where it was told so', async () => {
  const asker = newAsker()
  const at = (day: number) => testDesk({ nowMs: START_MS + day * DAY_MS, asker })
  await at(0).run('/jar start jar of:8 oz ginger spirit:1 quart 60% bottles:4 x 1 pint')
  await at(30).run('/jar strain jar')
  await at(31).run('/jar sweeten jar sugar:8 oz water:1 cup')
  await at(31).run('/jar bottle jar bottles:2 x 1 pint')
  for (const line of [
    '/bottles',
    '/jar show jar',
    '/plan of:8 oz ginger spirit:1 quart 60% bottles:4 x 1 pint',
    '/again jar',
  ]) {
    const text = await at(40).textOf(line)
    expect(text, line).toMatch(/1 pint/)
    expect(text, line).not.toMatch(/473/)
  }
  expect(await at(40).textOf('/plan of:200 g ginger spirit:1 l 60% bottles:4 x 330 ml')).toMatch(/330 ml bottles/)
})
