import { expect, it } from 'vitest'
import { jarDesk } from './desk.ts'

type Desk = ReturnType<typeof jarDesk>

/** A jar with honey poured into one with none. */
async function poured(): Promise<Desk> {
  const desk = jarDesk('2026-08-01')
  await desk.ask('/jar start plain of:10 lemons spirit:1 l 95%')
  await desk.ask('/jar start bees of:30 g ginger spirit:1 l 60% sugar:300 g honey')
  desk.at('2026-08-20')
  await desk.ask('/jar strain plain measured:900 ml')
  await desk.ask('/jar strain bees measured:1.1 l')
  await desk.ask('/jar combine plain with:bees into:fair')
  return desk
}

const keysOf = async (desk: Desk, line: string) => (await desk.ask(line)).cautions.map(({ key }) => key)

// Honey may carry spores of Clostridium botulinum: never for infants under one year (public health advice, from memory).
it('tells of honey on the jar, its tag and its label, whichever jar it came from', async () => {
  const desk = await poured()
  expect(await keysOf(desk, '/jar show fair')).toContain('honey_infant')
  expect(await keysOf(desk, '/jar bottle fair bottles:2 x 500 ml')).toContain('honey_infant')
  expect(await desk.pictureSaid('/jar label fair')).toMatch(
    /Not for children, and honey is never for a baby under one\..*Spirit, honey/,
  )
  expect(await desk.pictureSaid('/jar tag fair')).toContain('Not for children, honey never for a baby.')
})

it('says it when honey goes in, and of no jar without any', async () => {
  const desk = jarDesk('2026-08-01')
  await desk.ask('/jar start plain of:10 lemons spirit:1 l 95%')
  await desk.ask('/jar start sweet of:10 lemons spirit:1 l 95%')
  desk.at('2026-08-20')
  for (const name of ['plain', 'sweet']) await desk.ask(`/jar strain ${name} measured:900 ml`)
  expect(await keysOf(desk, '/jar sweeten plain water:1.5 l sugar:500 g')).not.toContain('honey_infant')
  expect(await keysOf(desk, '/jar sweeten sweet water:1.5 l sugar:600 g honey')).toContain('honey_infant')
  expect(await keysOf(desk, '/jar show plain')).not.toContain('honey_infant')
  expect(await desk.pictureSaid('/jar label plain')).not.toContain('under one')
})

it('says of what has alcohol that it is for no child of any age, once on a first screen', async () => {
  const desk = jarDesk('2026-08-01')
  const said = 'Not for children, and honey is never for a baby under one.'
  expect(await desk.textOf('/plan of:10 lemons spirit:1 l 95% sugar:honey')).toContain(said)
  expect(await desk.textOf('/jar start sweet of:10 lemons spirit:1 l 95% sugar:300 g honey')).toContain(said)
  const { cautions } = await desk.replyOf('/jar show sweet')
  expect(cautions).toMatchObject([{ key: 'honey_infant', depth: 'more' }])
})
