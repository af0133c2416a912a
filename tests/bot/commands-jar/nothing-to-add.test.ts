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
