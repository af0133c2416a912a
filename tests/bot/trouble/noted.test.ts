import { expect, it } from 'vitest'
import { jarDesk } from '../commands-jar/desk.ts'

/** That something is to be cleared up, or answered, before it is bottled. */
const CLEARED = /Don’t drink or bottle sloe yet|A question about sloe is still open/

/** A sloe gin that was strained and sweetened, and waits for its bottles. */
const sloe = async () => {
  const desk = jarDesk('2026-11-01')
  await desk.ask('/jar start sloe of:500 g sloes spirit:1 l gin 40%')
  desk.at('2027-01-10')
  await desk.ask('/jar strain sloe measured:1 l')
  await desk.ask('/jar sweeten sloe sugar:200 g')
  return desk
}

it('says on the jar, and before it is bottled, what was written down of it', async () => {
  const desk = await sloe()
  expect(await desk.textOf('/jar show sloe')).not.toMatch(CLEARED)
  expect(await desk.textOf('/jar note sloe note:fizzing')).toMatch(CLEARED)
  expect(await desk.textOf('/jar show sloe')).toMatch(/^Don’t drink or bottle sloe yet: you told me of “fizzing”/)
  expect(await desk.textOf('/jar show sloe')).not.toContain('/jar bottle')
  expect(await desk.refused('/jar bottle sloe bottles:1 x 500 ml')).toMatchObject({
    code: 'refused',
    message: expect.stringMatching(CLEARED),
  })
})

it.each(['/jar note sloe note:stopped fizzing', '/jar note sloe note:fizz is gone', '/jar note sloe was:nothing'])(
  'says it no more after %s',
  async (line) => {
    const desk = await sloe()
    await desk.ask('/jar note sloe note:it is fizzing')
    await desk.ask('/jar note sloe where:cellar')
    expect(await desk.textOf('/jar show sloe')).toMatch(CLEARED)
    await desk.ask(line)
    expect(await desk.textOf('/jar show sloe')).not.toMatch(CLEARED)
  },
)

it.each(['not fizzing', 'lovely colour', 'no mould at all', 'a bit too sweet'])(
  'holds nothing up for “%s”',
  async (note) => {
    const desk = await sloe()
    await desk.ask(`/jar note sloe note:${note}`)
    expect(await desk.textOf('/jar show sloe')).not.toMatch(CLEARED)
  },
)

it.each([
  'gone mouldy on top',
  'not sure, mould on the fruit',
  'no idea why, but it is fizzing',
  'fine white mould on two sloes',
  'non capisco, c’è muffa sopra',
])('is not put off by a word of another matter: %s', async (note) => {
  const desk = await sloe()
  await desk.ask(`/jar note sloe note:${note}`)
  expect(await desk.textOf('/jar show sloe')).toMatch(CLEARED)
})

it.each(['no sign of mould', 'no longer fizzing', 'the mould is gone', 'non frizza più', 'all fine now'])(
  'is cleared up by “%s”',
  async (note) => {
    const desk = await sloe()
    await desk.ask('/jar note sloe note:it is fizzing')
    await desk.ask(`/jar note sloe note:${note}`)
    expect(await desk.textOf('/jar show sloe')).not.toMatch(CLEARED)
  },
)
