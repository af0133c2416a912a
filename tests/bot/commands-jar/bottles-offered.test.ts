import { expect, it } from 'vitest'
import { jarDesk } from './desk.ts'

const offered = async (bottles: string, measured: string) => {
  const desk = jarDesk('2026-08-01')
  await desk.ask(
    `/jar start sloe of:500 g sloes spirit:1 l gin 40% to-strength:25% to-sweetness:200 g/L bottles:${bottles}`,
  )
  desk.at('2026-11-20')
  await desk.ask(`/jar strain sloe measured:${measured}`)
  const text = await desk.textOf('/jar sweeten sloe sugar:100 g water:100 ml')
  const line = /\/jar bottle sloe bottles:.*?(?= {2}|$)/m.exec(text)![0]
  desk.at('2026-11-28')
  const { notes } = await desk.replyOf(line)
  return { line, notes: notes.map(({ key }) => key) }
}

it.each([
  ['3 x 500 ml', '940 ml', '/jar bottle sloe bottles:2 x 500 ml'],
  ['2 x 700 ml + 4 x 250 ml', '940 ml', '/jar bottle sloe bottles:1 x 700 ml + 1 x 250 ml'],
  ['2 x 500 ml', '940 ml', '/jar bottle sloe bottles:2 x 500 ml'],
  ['1 x 500 ml', '940 ml', '/jar bottle sloe bottles:1 x 500 ml'],
  ['2 x 3 l', '940 ml', '/jar bottle sloe bottles:1 x 3000 ml'],
])('offers no more of %s than are filled by %s and its syrup', async (bottles, measured, line) => {
  const said = await offered(bottles, measured)
  expect(said.line).toBe(line)
  expect(said.notes.includes('jar_bottled_more')).toBe(bottles === '2 x 3 l')
})
