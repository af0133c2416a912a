import { expect, it } from 'vitest'
import { bottledFair, strainedSloes } from './begun-jars.ts'
import { numberIn } from './desk.ts'

const ALL = { bottles: '2 x 500 ml' }

it('asks before it sweetens what is all in bottles, and goes on at its maker’s word', async () => {
  const desk = await bottledFair('500 g sloes', ALL)
  const before = numberIn(await desk.ask('/jar show fair'), 'sugarGPerL')
  const error = await desk.refused('/jar sweeten fair water:100 ml sugar:50 g')
  expect(error).toMatchObject({ code: 'ambiguous', option: 'again' })
  expect(error.message).toContain('all in bottles')
  expect(numberIn(await desk.ask('/jar show fair'), 'sugarGPerL')).toBe(before)
  const line = /\/jar sweeten .*$/m.exec(error.message)![0]
  expect(line).toBe('/jar sweeten fair water:100 ml sugar:50 g again:yes')
  const { notes } = await desk.replyOf(line)
  const said = notes.find(({ key }) => key === 'jar_changed_after_bottling')
  expect(said).not.toHaveProperty('depth')
  expect(numberIn(await desk.ask('/jar show fair'), 'sugarGPerL')).not.toBe(before)
})

it('asks nothing where some is left, where nothing is in bottles, or of a day before', async () => {
  const part = await bottledFair('500 g sloes', { bottles: '1 x 500 ml' })
  await part.ask('/jar sweeten fair water:100 ml sugar:50 g')
  const none = await strainedSloes()
  await none.ask('/jar sweeten sloe water:100 ml sugar:100 g')
  const late = await bottledFair('500 g sloes', ALL)
  await late.ask('/jar sweeten fair water:100 ml sugar:50 g when:2026-09-01')
})
