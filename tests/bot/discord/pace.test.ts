import { expect, it } from 'vitest'
import { APART_MS, newPace } from '../../../bot/discord/rest/send-pace.ts'

it('spaces requests evenly, so that no second of any clock holds more than 41', async () => {
  const waits: number[] = []
  const pace = newPace(APART_MS, (ms, act) => {
    waits.push(ms)
    act()
    return () => undefined
  })
  const fromMs = performance.now()
  await Promise.all(Array.from({ length: 100 }, () => pace()))
  const tookMs = performance.now() - fromMs
  expect(waits.length).toBeGreaterThanOrEqual(99 - tookMs / APART_MS)
  for (const [index, ms] of waits.toReversed().entries()) {
    const wanted = APART_MS * (99 - index)
    expect(ms).toBeLessThanOrEqual(wanted + 1e-6)
    expect(ms).toBeGreaterThanOrEqual(wanted - tookMs - 1e-6)
  }
  // Discord's documentation, "Rate Limits": 50 requests a second for a bot.
  expect(1000 / APART_MS + 1).toBeLessThanOrEqual(50 - 9)
})
