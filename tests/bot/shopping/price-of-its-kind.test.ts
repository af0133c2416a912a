import { expect, it } from 'vitest'
import { jarDesk } from '../commands-jar/desk.ts'
import { flat } from '../flat.ts'

/** A jar of each spirit, and prices as their maker typed them. */
async function priced(prices: string) {
  const desk = jarDesk('2026-09-05')
  await desk.ask('/jar start sloe of:500 g sloes spirit:700 ml 40% gin')
  await desk.ask('/jar start plum of:500 g plums spirit:700 ml 40% vodka')
  await desk.ask('/jar start quince of:500 g quinces spirit:700 ml 40%')
  await desk.ask(`/cost prices:${prices}`)
  return desk
}

it('takes the price of gin for gin, and that of spirit for the rest', async () => {
  const desk = await priced('gin 15/l + spirit 40% 21.40/l')
  // By hand: 0.7 l at 15 is 10.50, at 21.40 it is 14.98.
  expect(flat(await desk.textOf('/cost sloe'))).toContain('40 % gin 700 ml at 15/l: 10.50')
  expect(flat(await desk.textOf('/cost plum'))).toContain('40 % vodka 700 ml at 21.40/l: 14.98')
  expect(flat(await desk.textOf('/cost quince'))).toContain('40 % spirit 700 ml at 21.40/l: 14.98')
})

it('keeps the price of gin beside that of vodka', async () => {
  const desk = await priced('gin 15/l + vodka 12/l')
  expect(flat(await desk.textOf('/cost sloe'))).toContain('40 % gin 700 ml at 15/l: 10.50')
  expect(flat(await desk.textOf('/cost plum'))).toContain('40 % vodka 700 ml at 12/l: 8.40')
})

it('asks for the price of vodka where only that of gin is known', async () => {
  const desk = await priced('gin 15/l')
  const cost = flat(await desk.textOf('/cost plum'))
  expect(cost).toContain('vodka 40% ? per l')
  expect(cost).not.toContain('15/l')
  await desk.ask('/cost plum prices:vodka 40% 13/l')
  // By hand: 0.7 l at 13 is 9.10.
  expect(flat(await desk.textOf('/cost plum'))).toContain('40 % vodka 700 ml at 13/l: 9.10')
})

it('tells gin and rum of one strength apart on the bill, though one went in later', async () => {
  const desk = jarDesk('2026-09-05')
  await desk.ask('/jar start sloe of:500 g sloes spirit:700 ml 40% gin')
  await desk.ask('/jar add sloe spirit:100 ml 40% rum')
  const cost = flat(await desk.textOf('/cost sloe prices:gin 15/l + rum 30/l'))
  // By hand: 0.7 l at 15 is 10.50, 0.1 l at 30 is 3.00.
  expect(cost).toContain('40 % gin 700 ml at 15/l: 10.50')
  expect(cost).toContain('40 % rum 100 ml at 30/l: 3.00')
})

it('puts the price of vodka on no neutral spirit, and says that there is none', async () => {
  const desk = jarDesk('2026-09-05')
  await desk.ask('/jar start quince of:500 g quinces spirit:750 ml 75.5%')
  const cost = flat(await desk.textOf('/cost quince prices:vodka 18/l + sugar 2/kg'))
  expect(cost).toContain('There’s no vodka in quince, so I’ve only kept that price for next time.')
  expect(cost).not.toContain('750 ml at 18/l')
  expect(cost).not.toContain('no vodka or sugar')
  expect(flat(await desk.textOf('/cost quince prices:alcohol 20/l'))).toContain('75.5 % spirit 750 ml at 20/l: 15.00')
})
