import { expect, test } from 'vitest'
import { ask, askAny, textOf } from '../commands/desk.ts'

// That these are poisonous is from memory; of a misspelt one it is asked whether the poison is meant.
test.each([
  ['ivy', 'refused'],
  ['erba morella', 'refused'],
  ['morella', 'refused'],
  ['pokeweed', 'refused'],
  ['lilly of the vally', 'ambiguous'],
  ['wolfsbain', 'ambiguous'],
  ['nocciolli di albicoca', 'ambiguous'],
])('%s does not pass unknown-ok: %s', async (name, code) => {
  expect((await askAny(`/plan of:20 g ${name} spirit:1 l 95% unknown-ok:yes days:10`)).error?.code).toBe(code)
})

test('what goes in later is not listed for the first day', async () => {
  const text = await textOf('/plan of:8 lemons + 5 g fresh chilli spirit:0.7 l 95%')
  const [, inJar = ''] = /(Peel the lemons[\s\S]*?)\n {2}\d/.exec(text) ?? []
  expect(inJar).toContain('lemon')
  expect(inJar).not.toContain('chilli')
  expect(text).toMatch(/Add the fresh chilli\./)
})

test('of a jar with sugar in it no hydrometer is asked for', async () => {
  const keys = async (more: string) =>
    (await ask(`/plan of:1 kg green walnuts spirit:1 l 95%${more}`)).notes.map(({ key }) => key)
  expect(await keys(' sugar:500 g')).toContain('plan_adjust')
  expect(await keys(' sugar:500 g')).not.toContain('plan_measure')
  expect(await keys('')).toContain('plan_measure')
})

test.each([
  ['/plan of:300 g raspberries', '/plan of:300 g raspberries spirit:1 l strength:95%'],
  ['/plan of:1 kg green walnuts strength:60%', '/plan of:1 kg green walnuts spirit:1 l strength:60%'],
  [
    '/plan of:2 sticks cinnamon, ceylon to-sweetness:dry',
    '/plan of:2 sticks cinnamon, ceylon spirit:1 l strength:95% to-sweetness:dry',
  ],
])('%s: what is asked for is asked with what is there', async (line, offered) => {
  const { error } = await askAny(line)
  expect(error?.message).toContain(offered)
  expect((await askAny(offered)).error).toBeUndefined()
})
