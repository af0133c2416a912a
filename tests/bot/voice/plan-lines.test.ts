import { expect, it } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { isoDay } from '../../../core/quantity/time/calendar-day.ts'
import { sampled } from '../../runs.ts'
import { testDesk } from '../test-desk.ts'
import { budgets } from './budgets.ts'
import { filled, named, nowMs, tooLong, WIDTHS } from './first-screens.ts'

/** One of every four under `npm test`. */
const plants = sampled(catalogue, 20)

const lines = plants.flatMap((plant) => [
  `/plan of:${named(plant)} spirit:1 l 95%`,
  `/plan of:${named(plant)} spirit:70 cl 40%`,
  `/plan of:${named(plant)} bottles:4 x 500 ml strength:70%`,
])

it('a plan of any plant is one screen', async () => {
  const long = await tooLong(lines, (columns) => budgets.plan[columns])
  expect(long.join('\n\n')).toBe('')
}, 120_000)

it('the rest of a plan is one screen more', async () => {
  const long: string[] = []
  for (const line of sampled(lines, 10)) {
    for (const width of WIDTHS) {
      const { outcome, text } = await testDesk({ nowMs, width }).toldOf(line, 'more')
      const count = filled(text).length
      if (outcome.ok && count > budgets.plan_more[width]) long.push(`${count} lines at ${width}: ${line}\n${text}`)
    }
  }
  expect(long.join('\n\n')).toBe('')
}, 120_000)

it('each further plant takes a little more', async () => {
  const trios = catalogue.map((plant, at) => {
    const [other, third] = [7, 31].map((step) => catalogue[(at + step) % catalogue.length]!)
    return `/plan of:${[plant, other!, third!].map(named).join(' + ')} spirit:1 l 70%`
  })
  const long = await tooLong(
    sampled(trios, 20),
    (columns, line) => budgets.plan[columns] + (line.split(' + ').length - 1) * budgets.plan.more[columns],
  )
  expect(long.join('\n\n')).toBe('')
}, 120_000)

it('what is known of any plant starts in a few lines', async () => {
  const asked = plants.map((plant) => `/botanical of:${named(plant)}`)
  const long = await tooLong(asked, (columns) => budgets.botanical[columns])
  expect(long.join('\n\n')).toBe('')
}, 120_000)

it('goes from day to day', async () => {
  const line = '/plan of:sweet pepper + sea buckthorn berries + papaya spirit:1 l 70%'
  const outcome = await testDesk({ nowMs: Date.UTC(2026, 8, 1) }).run(line)
  const days = outcome.ok
    ? outcome.reply.table.flatMap(({ label }) => (label.key === 'plan_on' ? [isoDay(label.values.day)] : []))
    : []
  expect(days.length).toBeGreaterThan(3)
  expect(days).toEqual(days.toSorted())
})

it('a glass, a label and a measurement are a few lines', async () => {
  const lines = [
    '/serving pour:40 ml strength:30% country:uk',
    '/serving pour:200 ml strength:80%',
    '/label strength:30% sweetness:250 g/L of:hazelnuts + lemon',
    '/label strength:18% sweetness:100 g/L of:dark chocolate + celery + wormwood region:us',
    '/measure',
    '/measure brix:26.5 hydrometer:1.035',
    '/measure before:1.059',
    '/measure before:1.059 after:1.096',
    '/measure hydrometer:1.035 sweetness:180 g/L',
  ]
  const long = await tooLong(
    lines,
    (columns, line) => budgets[line.startsWith('/label') ? 'label' : 'measure'][columns],
  )
  expect(long.join('\n\n')).toBe('')
})
