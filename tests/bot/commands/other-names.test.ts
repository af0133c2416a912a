import { expect, it, test } from 'vitest'
import { testDesk } from '../test-desk.ts'

const messageOf = async (line: string): Promise<string> =>
  ((await testDesk().jsonOf(line)).error.message as string).replaceAll('\u00a0', ' ')

// What makers also call it; from memory.
test.each([
  ['/jar blend lemon + orange', '/jar combine'],
  ['/jar remove mix chilli', '/jar take-out'],
  ['/jar freeze lemon', '/jar note'],
  ['/jar rack lemon', '/jar filter'],
])('%s was meant as %s', async (line, meant) => {
  expect(await messageOf(line)).toContain(`Did you mean ${meant}?`)
})

it('takes a hydrometer for a strength where there is one, and a density for a hydrometer', async () => {
  expect(await messageOf('/syrup infusion:920 ml hydrometer:82% to-strength:30%')).toContain('strength:82%')
  expect(await messageOf('/measure brix:26.5 density:1.035')).toContain('/measure brix:26.5 hydrometer:1.035')
})

// Judgement: over 50 % vol with 30 g/L of sugar and more is rather a slip.
it('doubts two readings that make what hardly any liqueur is', async () => {
  const keysOf = async (line: string) =>
    ((await testDesk().jsonOf(line)).notes as readonly { readonly key: string }[]).map(({ key }) => key)
  expect(await keysOf('/measure brix:26.5 hydrometer:0.935')).toContain('measure_doubtful')
  expect(await keysOf('/measure brix:26.5 hydrometer:1.035')).not.toContain('measure_doubtful')
})
