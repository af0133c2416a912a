import { PassThrough } from 'node:stream'
import { expect, it } from 'vitest'
import { enterFrom } from '../../../bot/demo/tour.ts'

it('waits for Enter where somebody sits at a terminal, and not where it is piped', async () => {
  const ended = new AbortController()
  const terminal = () =>
    Object.assign(new PassThrough(), { isTTY: true }) as unknown as NodeJS.ReadStream & NodeJS.WriteStream
  const [input, output] = [terminal(), terminal()]
  let isOver = false
  const waiting = enterFrom(input, output, 'Enter', ended.signal)().then(() => {
    isOver = true
  })
  await new Promise((resolve) => setTimeout(resolve, 20))
  expect(isOver).toBe(false)
  ;(input as unknown as PassThrough).write('\n')
  await waiting
  const piped = Object.assign(new PassThrough(), { isTTY: false }) as unknown as NodeJS.ReadStream
  await enterFrom(piped, output, 'Enter', ended.signal)()
  const stopped = enterFrom(input, output, 'Enter', ended.signal)()
  ended.abort()
  await stopped
})
