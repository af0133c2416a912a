import { describe, expect, it } from 'vitest'
import { talker } from '../talk/reader/told.ts'

// What is refused and why: core/botanical, `refused.ts` and `spirit/undrinkable.ts`, with their sources. Sentences: common sense, no source.
const POISONS = [
  'rubbing alcohol and lemons',
  'methylated spirit and the lemons',
  'methilated spirits and lemons',
  'ispropyl alcohol and lemons',
  'antifreeze and plums',
  'lily of the valley and vodka',
  'lilly of the valley and gin',
  'foxglove and covered it with gin',
]

describe('a jar that is told to be filled', () => {
  it.each(POISONS)('with %s: is refused, and its size is not asked', async (what) => {
    for (const line of [
      `I filled the jar with ${what}`,
      `I filled a litre jar with ${what}`,
      `a jar full of ${what}`,
    ]) {
      const one = talker()
      const { code, read, recorded } = await one.say(line)
      expect({ line, code, recorded }).toEqual({
        line,
        code: expect.stringMatching(/^(?:refused|ambiguous)$/),
        recorded: 0,
      })
      expect(read, line).toBeNull()
      for (const next of ['a 3 litre jar', 'it’s 90%', 'start it', 'yes'])
        expect((await one.say(next)).recorded, `${line}, ${next}`).toBe(0)
    }
  })
})
