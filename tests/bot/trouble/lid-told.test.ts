import { describe, expect, test } from 'vitest'
import { newTalkMemory } from '../../../bot/talk/memory/remembered.ts'
import { newAsker } from '../asker.ts'
import { jarDesk } from '../commands-jar/desk.ts'

const deskOf = async (...lines: readonly string[]) => {
  const desk = jarDesk('2026-11-01', { ...newAsker(), talk: newTalkMemory() })
  for (const line of lines) await desk.ask(line)
  return desk
}

const PLUM = '/jar start plum of:500 g plums spirit:1 l vodka 40%'
const BURST = /has a bottle of this batch burst/i

describe('a lid that bulges', () => {
  test.each([
    'the lid of the plum is bulging',
    "the plum's lid has domed up",
    'the lid bulges',
    'il coperchio delle prugne è gonfio',
  ])('is right for a strong jar that steeps: %s', async (line) => {
    const desk = await deskOf(PLUM)
    desk.at('2026-11-20')
    const text = await desk.textOf(line)
    expect(text).toContain('Don’t drink or bottle it yet: first see whether the lid pushes up again.')
    expect(text).toContain('does it push up or hiss again?')
    expect(text).toContain('Most likely: warmth, frost or overfilling.')
    expect(text).not.toMatch(/botulism|still be fermenting|batch burst|Harmless/)
    expect(await desk.textOf('bottled it')).toMatch(/^Don’t drink or bottle plum yet/)
  })

  test('of a sweet one that keeps says what to rule out before it is let out', async () => {
    const text = await (await deskOf()).textOf('/trouble lid bulging strength:18% sweetness:320 g/L')
    expect(text).toMatch(
      /Rule this out first: a weak jar with garlic or vegetables: botulism\..*Cool it, let the air out/s,
    )
  })

  test('is let off by the one answer that was asked for, and held by the other', async () => {
    for (const [answer, after] of [
      ['no', /it goes on as before/],
      ['yes', /Don’t drink or bottle it yet: .*shouldn’t\. Measure it/s],
    ] as const) {
      const desk = await deskOf(PLUM)
      desk.at('2026-11-20')
      await desk.textOf('the lid bulges')
      expect(await desk.textOf(answer)).toMatch(after)
      const shown = await desk.textOf('/jar show plum')
      expect(/Don’t drink or bottle plum yet/.test(shown), shown).toBe(answer === 'yes')
    }
  })

  test('asks about burst bottles only where there are any', async () => {
    const weak = [PLUM, '/jar strain plum measured:1 l', '/jar sweeten plum sugar:50 g water:700 ml']
    const desk = await deskOf(...weak)
    desk.at('2026-11-20')
    const jar = await desk.textOf('/trouble lid bulging jar:plum what-if:yes')
    expect(jar).toMatch(/^Don’t drink or bottle it yet: yeast/)
    expect(jar).not.toMatch(BURST)
    await desk.ask('/jar bottle plum bottles:3 x 500 ml already:yes')
    expect(await desk.textOf('/trouble lid bulging jar:plum what-if:yes')).toMatch(BURST)
  })
})
