import { expect, it } from 'vitest'
import { jarDesk, LEMON } from './desk.ts'

it('asks what was wrong with a line that runs, whatever was done last', async () => {
  const desk = jarDesk('2026-11-01')
  await desk.ask(LEMON)
  await desk.ask('/jar shake lemon')
  const [, line = ''] = /For example: (.+)$/.exec((await desk.refused('/jar correct lemon')).message) ?? []
  expect(line).toMatch(/^\/jar correct lemon /)
  await desk.ask(line)
})
