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
  expect(text).toMatch(/With its sugar, 23 % means about (?:2[6-9]|3[0-4]) % vol/)
})

it('says nothing of it where hardly anything is dissolved', async () => {
  expect(await straining('/jar strain lemon measured:930 ml strength:87%')).not.toMatch(/With its sugar/)
})

// A kilo of plums brings so much sugar that 26 % through it would be more alcohol than a litre at 40 % has.
it('refuses what was read by what was typed, and offers to work it out without', async () => {
  const desk = testDesk({ nowMs: Date.UTC(2026, 10, 29, 12) })
  await desk.run('/jar start plum of:1 kg plums spirit:1 l 40% when:30 days ago')
  const text = (await desk.firstOf('/jar strain plum measured:1.2 l strength:26%')).replace(/\s+/g, ' ')
  expect(text).toMatch(
    /^1\.2 l at 26 % has more alcohol than went into plum\. Read through its sugar, that means \d\d %/,
  )
  const line = /work it out: (\/jar strain .+)$/.exec(text)![1]!
  expect(await desk.firstOf(line)).toMatch(/^Plum is strained: 1\.2/)
})
