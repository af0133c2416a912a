import { expect, it } from 'vitest'
import { jarDesk } from '../commands-jar/desk.ts'

it('shows the only jar that can be meant, and asks where there are several', async () => {
  const desk = jarDesk('2026-11-01')
  expect(await desk.textOf('/jar show')).toContain('no jars')
  await desk.ask('/jar start plum of:500 g plums spirit:1 l 40%')
  expect(await desk.textOf('/jar show')).toMatch(/steeping, day 1 of 61, at about 30\s%/)
  await desk.ask('/jar discard plum')
  expect(await desk.textOf('/jar show')).toMatch(/^Plum (?:is|was) thrown away/)
  await desk.ask('/jar start quince of:500 g quinces spirit:1 l 40%')
  expect(await desk.textOf('/jar show')).toContain('quince')
  await desk.ask('/jar start sloe of:500 g sloes spirit:1 l 40%')
  expect(await desk.textOf('/jar show')).toContain('Which jar')
})
