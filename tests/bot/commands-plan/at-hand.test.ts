import { describe, expect, it } from 'vitest'
import { testDesk } from '../test-desk.ts'

const { firstOf, jsonOf, run } = testDesk({ nowMs: Date.UTC(2026, 8, 5, 12) })

const headline = async (line: string): Promise<string> =>
  (await firstOf(line)).replaceAll('\n', ' ').split(' Makes')[0]!

const LEMONS = '/plan of:10 lemons spirit:1 l 95%'

describe('what a plan takes and is at hand', () => {
  it.each([
    ['10 lemons', 'You have 10 lemons (scrub off any wax). Buy 1 l of 95 % spirit and 540 g sugar.'],
    ['1 l 95%', 'You have 1 l of 95 % spirit. Buy 10 unwaxed lemons and 540 g sugar.'],
    ['2 l 95% + sugar', 'You have 1 l of 95 % spirit and 540 g sugar. Buy 10 unwaxed lemons.'],
    // Some of it: what there is as it was typed, and the rest of it.
    ['4 lemons', 'You have 4 lemons. Buy 1 l of 95 % spirit, 540 g sugar and another 6 unwaxed lemons.'],
    ['250 ml 95%', 'You have 250 ml 95%. Buy 10 unwaxed lemons, 540 g sugar and another 750 ml of 95 % spirit.'],
    ['300 g sugar', 'You have 300 g sugar. Buy 10 unwaxed lemons, 1 l of 95 % spirit and another 240 g sugar.'],
    [
      '12 lemons + 1 l 95% + 1 kg sugar',
      'You have all you need: 10 lemons (scrub off any wax), 1 l of 95 % spirit and 540 g sugar.',
    ],
    // What it does not take.
    ['1 l 40% + 200 g ginger', 'Buy 10 unwaxed lemons, 1 l of 95 % spirit and 540 g sugar.'],
  ])('%s', async (have, said) => {
    expect(await headline(`${LEMONS} have:${have}`)).toBe(said)
  })

  it('changes nothing of the plan, and is handed on to the list, not to the jar', async () => {
    const [plain, had] = [await jsonOf(LEMONS), await jsonOf(`${LEMONS} have:4 lemons`)]
    expect(had.data).toEqual(plain.data)
    const outcome = await run(`${LEMONS} have:4 lemons`)
    const actions = outcome.ok ? outcome.reply.actions : []
    const taking = (path: string) => actions.find(({ call }) => call.command === path)?.call.values
    expect(taking('shopping')).toHaveProperty('have')
    expect(taking('jar start')).not.toHaveProperty('have')
  })

  it('is not taken of what must not be drunk', async () => {
    expect((await jsonOf(`${LEMONS} have:1 l methanol 95%`)).error.code).toBe('refused')
  })
})
