import { expect, it } from 'vitest'
import { jarDesk, LEMON } from './desk.ts'

it('means the entry that said it before a later one that did not', async () => {
  const desk = jarDesk('2026-11-01')
  await desk.ask(LEMON)
  desk.at('2026-11-20')
  await desk.ask('/jar strain lemon measured:920 ml strength:78%')
  await desk.ask('/jar sweeten lemon water:1 l sugar:500 g')
  await desk.ask('/jar filter lemon')
  expect(await desk.textOf('/jar correct lemon measured:930 ml')).toMatch(/ straining .*: 930 ml \(was 920 ml\)/)
  await desk.ask('/jar filter lemon measured:1.9 l')
  expect(await desk.textOf('/jar correct lemon measured:1.95 l')).toMatch(/ filtering .*: 1.95 l \(was 1.9 l\)/)
})
