import { expect, test } from 'vitest'
import { newAsker } from '../asker.ts'
import { flat } from '../flat.ts'
import { testDesk } from '../test-desk.ts'

const DAY_MS = 24 * 3_600_000
const NOW_MS = Date.UTC(2026, 10, 1, 12)

/** The code of a jar that was begun with honey in it and sweetened with maple syrup. */
async function shared(): Promise<string> {
  const asker = newAsker()
  const desk = (days: number) => testDesk({ asker, nowMs: NOW_MS + days * DAY_MS })
  const lines: readonly (readonly [number, string])[] = [
    [0, '/jar start lemon of:10 lemons spirit:1 l 95% sugar:100 g honey'],
    [1, '/jar add lemon sugar:50 g honey + 30 g'],
    [20, '/jar strain lemon measured:1 l'],
    [21, '/jar sweeten lemon water:1.2 l sugar:600 g maple syrup'],
  ]
  for (const [days, line] of lines) expect((await desk(days).jsonOf(line)).error, line).toBeUndefined()
  return (await desk(22).jsonOf('/share lemon')).data.code
}

test('a code tells what sweetened it, and whoever makes it is told to take that', async () => {
  const code = await shared()
  expect(code[0]).toBe('2')
  const friend = testDesk({ nowMs: NOW_MS })
  const { data } = await friend.jsonOf(`/plan from:${code}`)
  expect(data).toMatchObject({ sweetener: 'maple_syrup' })
  const told = flat(await friend.textOf(`/plan from:${code}`))
  expect(told).toMatch(/150 g honey/)
  expect(told).toMatch(/30 g sugar/)
  expect(told).toMatch(/\d+ g maple syrup/)
  const half = flat(await friend.textOf(`/plan from:${code} spirit:500 ml 95%`))
  expect(half).toMatch(/75 g honey/)
})

test('of a code another sweetener may be named, and amounts are its own', async () => {
  const code = await shared()
  const friend = testDesk({ nowMs: NOW_MS })
  expect((await friend.jsonOf(`/plan from:${code} sugar:honey`)).data).toMatchObject({ sweetener: 'honey' })
  const refused = await friend.jsonOf(`/plan from:${code} sugar:100 g honey`)
  expect(refused.error).toMatchObject({ code: 'too_many_options', option: 'sugar' })
  const begun = await friend.jsonOf(`/jar start from:${code} sugar:honey`)
  expect(begun.error).toBeUndefined()
})

test('a code of white sugar is as it always was', async () => {
  const { data } = await testDesk({ nowMs: NOW_MS }).jsonOf('/plan from:11NCHSTJ8P501JQH0JNHC00VV9SW4H50HFEB52FV6N')
  expect(data).toMatchObject({ sweetener: 'white_sugar' })
})
