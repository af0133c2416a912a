import { expect, it } from 'vitest'
import { testDesk } from '../test-desk.ts'

const straining = async (line: string) => {
  const desk = testDesk({ nowMs: Date.UTC(2026, 10, 29, 12) })
  await desk.run('/jar start berries of:400 g raspberries spirit:700 ml vodka 40% when:30 days ago')
  await desk.run('/jar start lemon of:10 lemons spirit:1 l 95% when:20 days ago')
  return desk.firstOf(line)
}

it('says at once that another strength is taken than a hydrometer showed', async () => {
  const text = (await straining('/jar strain berries measured:860 ml strength:23%')).replace(/\s+/g, ' ')
  expect(text).toMatch(/Sugar hides strength: it’s about (?:2[6-9]|3[0-4]) % vol/)
})

it('says nothing of it where hardly anything is dissolved', async () => {
  expect(await straining('/jar strain lemon measured:930 ml strength:87%')).not.toMatch(/hides strength/)
})
