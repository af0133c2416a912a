import { expect, it } from 'vitest'
import { jarDesk } from '../commands-jar/desk.ts'

// Nothing lives in strong spirit: core/liquid/keeping.ts with its sources. Air of the fruit: common practice, no source.
it('says of foam on a fresh strong jar that it is to stop, and not that it may ferment', async () => {
  const desk = jarDesk('2026-11-01')
  await desk.ask('/jar start lemon of:10 lemons spirit:1 l 95%')
  const text = await desk.textOf('/trouble fizzing jar:lemon')
  expect(text).toMatch(/^Don’t drink or bottle it yet: first see whether it stops by itself\./)
  expect(text).toContain('Most likely: air leaving the fruit')
  expect(await desk.textOf('/jar show lemon')).toMatch(/^Don’t drink or bottle lemon yet/)
})

it('says that it may ferment where it goes on, or is weak', async () => {
  const desk = jarDesk('2026-11-01')
  await desk.ask('/jar start lemon of:10 lemons spirit:1 l 95%')
  desk.at('2026-11-20')
  expect(await desk.textOf('/trouble fizzing jar:lemon')).toContain('it may still be fermenting')
  expect(await desk.textOf('/trouble fizzing of:plum strength:13%')).not.toContain('stops by itself')
})
