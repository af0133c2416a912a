import { describe, expect, it, test } from 'vitest'
import { newTalkMemory } from '../../../bot/talk/memory/remembered.ts'
import { newAsker } from '../asker.ts'
import { jarDesk } from '../commands-jar/desk.ts'
import { testDesk } from '../test-desk.ts'

describe('a sentence', () => {
  test.each([
    ['what do i need to buy for lemon and ginger?', '/shopping lemon + ginger'],
    ['what do I still need to buy for the ginger', '/shopping ginger'],
    ['shopping list please', '/shopping'],
    ['cosa devo comprare per lemon e ginger?', '/shopping lemon + ginger'],
    ['lista della spesa', '/shopping'],
  ])('“%s” is %s', async (sentence, line) => {
    const desk = jarDesk('2026-10-01')
    await desk.ask('/jar start lemon of:10 lemons spirit:1 l 95%')
    await desk.ask('/jar start ginger of:200 g ginger spirit:700 ml 40%')
    expect((await desk.textOf(sentence)).split('\n')[0]).toBe(`read as ${line}`)
  })

  it('after a plan is of that plan', async () => {
    const desk = jarDesk('2026-10-01', { ...newAsker(), talk: newTalkMemory() })
    await desk.textOf('10 lemons and a litre of 95%')
    expect(await desk.textOf('and what do i need to buy?')).toMatch(
      /^read as \/shopping plans:[0-9A-Z]+\n\nBuy 6 things/,
    )
  })

  it('about what a beginner needs is no list', async () => {
    expect(await jarDesk().textOf('what do i need to buy to start')).toContain('You need a jar, a peeler')
  })
})

it('is told in the units of the plan that was shown a moment ago, and in proof where it was typed', async () => {
  const desk = testDesk({ nowMs: Date.UTC(2026, 10, 30, 9), asker: { ...newAsker(), talk: newTalkMemory() } })
  await desk.textOf('12 limes and a quart of 151 proof rum')
  const list = await desk.textOf('shopping list for that')
  expect(list).toMatch(/151 proof rum/)
  expect(list).toMatch(/sugar \(it takes [\d ½¼¾⅓⅔]+ cups?, /)
  expect(list).not.toMatch(/\d kg\b|bottles to fill.*\d ml bottles/)
})
