import { expect, it } from 'vitest'
import { bottledFair } from '../commands-jar/begun-jars.ts'
import { jarDesk } from '../commands-jar/desk.ts'

it('says the same month on the jar, its label, its tag, its bottles and where it is asked for', async () => {
  // Lemon 12, raspberries 6, strawberries 3 months from 5 September 2026.
  for (const [of, month] of [
    ['8 lemons', 'September 2027'],
    ['300 g raspberries', 'March 2027'],
    ['300 g strawberries', 'December 2026'],
    ['8 lemons + 300 g strawberries', 'December 2026'],
  ] as const) {
    const desk = await bottledFair(of)
    for (const line of ['/keeping jar:fair', '/bottles', '/jar show fair']) {
      const said = (await desk.textOf(line)).match(/\b[A-Z][a-z]+ 202[6-9]\b/g)
      expect(said, `${line} of ${of}`).toEqual([month])
    }
    for (const line of ['/jar label fair', '/jar tag fair'])
      expect(await desk.pictureSaid(line)).toContain(`about ${month}`)
  }
})

it('promises nothing of what may ferment, and less of what is weak', async () => {
  const weak = await bottledFair('8 lemons', { water: '1.35 l' })
  const { abvPercent } = (await weak.ask('/keeping jar:fair')).data
  expect(abvPercent).toBeLessThan(20)
  expect((await weak.ask('/bottles')).data.jars).toMatchObject([{ bestUntil: null }])
})

it('tells the plan’s month, counted from its sweetening', async () => {
  const desk = jarDesk('2026-11-01')
  const text = await desk.textOf('/plan of:500 g raspberries spirit:700 ml 60%')
  // Strained by 1 December at the latest, sweetened the day after, six months.
  expect(text).toMatch(/Best before\s+about June 2027/)
  expect(await desk.textOf('/plan of:30 g ginger spirit:700 ml 60%')).toMatch(/Best before\s+unopened, it won’t spoil/)
})
