import { expect, it } from 'vitest'
import { flat } from '../flat.ts'
import { jarDesk } from './desk.ts'

const PLUM = '/jar start plum of:500 g plums spirit:1 l 40%'

/** Everything that sweetens, g: what goes in with the plants and what is stirred in. */
const sweetenedG = (text: string): number => Number(/and (\d+) g sugar/.exec(text)?.[1])

// 200 g of 240 g as planned is 180 g of 216 g, told in tens.
it.each([
  [180, 240, 210],
  [220, 240, 270],
])('sweetens all of it as %i g of sugar are to 200 g', async (sugarG, beforeG, nowG) => {
  const desk = jarDesk()
  await desk.ask(`${PLUM} sugar:200 g`)
  expect(sweetenedG(flat(await desk.textOf('/again plum')))).toBe(beforeG)
  const again = flat(await desk.textOf(`/again plum sugar:${sugarG} g`))
  expect(sweetenedG(again)).toBe(nowG)
  expect(again).toContain('Otherwise the same as plum.')
})

it('stirs in a little where less sugar in the jar is nearly as sweet as what was planned', async () => {
  const desk = jarDesk()
  await desk.ask(`${PLUM} sugar:250 g`)
  await desk.ask('/again plum sugar:220 g')
})

it('leaves a sweetness that is asked for as it is', async () => {
  const desk = jarDesk()
  await desk.ask(`${PLUM} sugar:200 g`)
  expect(await desk.startLine('/again plum sugar:180 g to-sweetness:200 g/L')).toContain('to-sweetness:200 g/L')
})

it.each(['/again plum to-sweetness:dry', '/plan of:500 g plums spirit:1 l 40% sugar:250 g to-sweetness:dry'])(
  'offers a line with less sugar for what nobody has made yet: %s',
  async (line) => {
    const desk = jarDesk()
    await desk.ask(`${PLUM} sugar:250 g`)
    const { message } = await desk.refused(line)
    const offered = /With less: (\/.+)$/.exec(flat(message))?.[1]
    expect(offered).toMatch(/to-sweetness:dry sugar:1\d0 g$/)
    await desk.ask(offered!)
  },
)
