import { expect, it } from 'vitest'
import { inTime } from '../../../bot/discord/answer/defer-slow-answer.ts'

/** Timers that pass when they are told to. */
const timers = () => {
  const waiting = new Map<() => void, number>()
  return {
    after: (ms: number, act: () => void) => {
      waiting.set(act, ms)
      return () => {
        waiting.delete(act)
      }
    },
    pass: () => {
      for (const act of waiting.keys()) act()
      waiting.clear()
    },
    waiting: () => [...waiting.values()],
  }
}

const never = new Promise<never>(() => undefined)

it('promises nothing where the work is soon done', async () => {
  const { after, waiting } = timers()
  let promises = 0
  const promise = async () => {
    promises += 1
  }
  expect(await inTime(Promise.resolve('done'), promise, { after, slow: never })).toEqual({
    result: 'done',
    promised: null,
  })
  expect([promises, waiting()]).toEqual([0, []])
})

it('promises once, long before three seconds have passed, and waits for both', async () => {
  const { after, pass, waiting } = timers()
  let finish = (_: string): void => undefined
  const work = new Promise<string>((resolve) => {
    finish = resolve
  })
  const answer = inTime(work, async () => 'promised', { after, slow: never })
  expect(waiting()[0]).toBeLessThanOrEqual(1500)
  pass()
  finish('done')
  expect(await answer).toEqual({ result: 'done', promised: 'promised' })
})

it('fails as promising fails, but only when the work is done', async () => {
  const { after, pass } = timers()
  let finish = (): void => undefined
  const work = new Promise<void>((resolve) => {
    finish = resolve
  })
  const answer = inTime(work, () => Promise.reject(new Error('down')), { after, slow: never })
  pass()
  await new Promise((resolve) => setImmediate(resolve))
  finish()
  await expect(answer).rejects.toThrow('down')
})

it('promises at once, and once, where the work says that it takes long', async () => {
  const { after, pass } = timers()
  let finish = (_: string): void => undefined
  const work = new Promise<string>((resolve) => {
    finish = resolve
  })
  const promised: unknown[] = []
  const promise = async (known: string | null) => promised.push(known)
  const answer = inTime(work, promise, { after, slow: Promise.resolve('for all') })
  await new Promise((resolve) => setImmediate(resolve))
  expect(promised).toEqual(['for all'])
  pass()
  finish('done')
  expect(await answer).toEqual({ result: 'done', promised: 1 })
  expect(promised).toEqual(['for all'])
})

it('promises nothing more once the work is done', async () => {
  const { after } = timers()
  const promised: unknown[] = []
  let tell = (): void => undefined
  const slow = new Promise<void>((resolve) => {
    tell = resolve
  })
  const promise = async () => promised.push('promised')
  expect(await inTime(Promise.resolve('done'), promise, { after, slow })).toEqual({ result: 'done', promised: null })
  tell()
  await new Promise((resolve) => setImmediate(resolve))
  expect(promised).toEqual([])
})
