import { expect, it } from 'vitest'
import { jarDesk } from './desk.ts'

const jobsOf = async (sugar: string) => {
  const desk = jarDesk('2026-07-01')
  await desk.ask(`/jar start sloe of:500 g sloes spirit:700 ml 40% sugar:${sugar}`)
  desk.at('2026-10-01')
  await desk.ask('/jar strain sloe measured:830 ml')
  desk.at('2026-10-10')
  return desk.textOf('/jar list')
}

it('asks to bottle, not to sweeten, what all its sugar went into at the start', async () => {
  const enough = await jobsOf('250 g')
  expect(enough).toContain('/jar bottle sloe')
  expect(enough).not.toMatch(/sweeten/)
  expect(await jobsOf('100 g')).toMatch(/sweeten/)
})

/** Sloes that come out at 38 g/L, which 20 ml of gin more or less cannot tell from what is wished. */
const nearly = async () => {
  const desk = jarDesk('2026-08-01')
  await desk.ask('/jar start sloe of:1 kg sloes spirit:1 l gin 40% to-strength:25.3% to-sweetness:40 g/L')
  desk.at('2026-11-20')
  return desk
}

it('lists no sugar, water or syrup where there is nothing to add, and buys none', async () => {
  const desk = await nearly()
  const reply = await desk.replyOf('/jar strain sloe measured:900 ml')
  expect(reply.under?.[0]).toMatchObject({ key: 'jar_stir_in', values: { sugarG: 0, waterMl: 0 } })
  expect(reply.under?.[1]).toMatchObject({ key: 'jar_makes', values: { volumeMl: { value: expect.closeTo(900, 6) } } })
  const keys = [...reply.table.map(({ label }) => label.key), ...reply.cautions.map(({ key }) => key)]
  for (const key of ['sugar', 'water', 'syrup', 'syrup_too_thick', 'sugar_alone']) expect(keys).not.toContain(key)
  expect(await desk.textOf('/shopping')).not.toMatch(/k?g +sugar \(it takes|^ .*kg +sugar/m)
})

it('takes a sweetening without a trace of water as planned', async () => {
  const desk = jarDesk('2026-08-01')
  await desk.ask('/jar start sloe of:1 kg sloes spirit:1 l gin 40% to-sweetness:190 g/L')
  desk.at('2026-11-20')
  const { table, actions } = await desk.replyOf('/jar strain sloe measured:900 ml')
  expect(table.map(({ label }) => label.key)).not.toContain('water')
  expect(actions.length).toBeGreaterThan(0)
  const said = await desk.replyOf('/jar sweeten sloe sugar:160 g')
  expect(said.notes.map(({ key }) => key)).not.toContain('jar_sweetened_otherwise')
})

it('still says of a sweetening with other amounts what the plan was', async () => {
  const desk = jarDesk('2026-08-01')
  await desk.ask('/jar start sloe of:1 kg sloes spirit:1 l gin 40% to-sweetness:190 g/L')
  desk.at('2026-11-20')
  await desk.ask('/jar strain sloe measured:900 ml')
  expect(await desk.textOf('/jar sweeten sloe sugar:160 g water:200 ml')).toContain(
    'a long way from the plan (160 g sugar, no water)',
  )
})
