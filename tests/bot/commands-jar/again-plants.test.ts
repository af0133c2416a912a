import { expect, it } from 'vitest'
import { flat } from '../flat.ts'
import { jarDesk } from './desk.ts'

async function withJar() {
  const desk = jarDesk('2026-09-05')
  await desk.ask('/jar start ginger of:150 g ginger + 3 lemons spirit:1 l 60%')
  return desk
}

it('plans again with another amount of a plant, the others as before', async () => {
  const desk = await withJar()
  const again = flat(await desk.textOf('/again ginger of:200 g ginger'))
  expect(again).toContain('200 g fresh ginger')
  expect(again).toContain('3 unwaxed lemons')
  expect(again).toContain('Otherwise the same as ginger.')
  await desk.ask(await desk.startLine('/again ginger of:200 g ginger'))
  const shown = flat(await desk.textOf('/jar show "ginger 2"'))
  expect(shown).toContain('200 g ginger')
  expect(shown).toContain('3 lemons')
})

it('puts in one more plant, and says same amounts only of the same amounts', async () => {
  const desk = await withJar()
  const more = flat(await desk.textOf('/again ginger of:1 vanilla pod'))
  expect(more).toContain('150 g fresh ginger')
  expect(more).toContain('1 vanilla pod')
  expect(flat(await desk.textOf('/again ginger'))).toContain('Same amounts as ginger.')
})

it('takes an amount alone for the one plant there is', async () => {
  const desk = jarDesk('2026-09-05')
  await desk.ask('/jar start sloe of:500 g sloes spirit:700 ml gin 40%')
  expect(flat(await desk.textOf('/again sloe of:600 g'))).toContain('600 g sloes')
})

it('refuses a poison there as anywhere', async () => {
  const desk = await withJar()
  expect((await desk.refused('/again ginger of:20 g yew berries')).code).toBe('refused')
})

it.each([
  ['4 strips of orange peel', '4 strips of orange peel', 'Buy 3 g orange peel,'],
  ['2 pieces of ginger', '2 pieces of ginger', 'Buy 25 g ginger,'],
  ['2 sprigs of rosemary', '2 sprigs of rosemary', 'Buy 3 g rosemary,'],
  ['10 basil leaves', '10 basil leaves', 'Buy 5 basil leaves,'],
  ['4 dried chillies', '4 dried chillies', 'Buy 2 dried chillies,'],
])('%s: half of it is told by its piece or its weight, never by a bare number', async (typed, whole, half) => {
  const desk = jarDesk('2026-09-05')
  await desk.ask(`/jar start twist of:${typed} spirit:700 ml 60%`)
  expect(flat(await desk.textOf('/again twist'))).toContain(whole)
  expect(flat(await desk.textOf('/again twist spirit:350 ml 60%'))).toContain(half)
})
