import { describe, expect, test } from 'vitest'
import { newTalkMemory } from '../../../bot/talk/memory/remembered.ts'
import { newAsker } from '../asker.ts'
import { jarDesk } from '../commands-jar/desk.ts'

const deskOf = async (...lines: readonly string[]) => {
  const desk = jarDesk('2026-11-30', { ...newAsker(), talk: newTalkMemory() })
  for (const line of lines) await desk.ask(line)
  return desk
}

const PLUM = '/jar start plum of:500 g plums spirit:1 l vodka 40%'

/** Source: core/trouble/sources.ts, `fake_spirit`; that it may be ethyl acetate is from memory. */
describe('bought spirit that smells of nail varnish', () => {
  test.each([
    'the vodka I bought smells of nail varnish',
    'the rum from the supermarket smells of pear drops, is it ok?',
    'my shop-bought gin smells of glue',
    'la vodka che ho comprato puzza di acetone',
    'the gin from the shop has a nail polish remover smell',
  ])('is not to be used and goes back to the shop: %s', async (line) => {
    const text = await (await deskOf()).textOf(line)
    expect(text).toContain('Don’t drink or bottle it: ethyl acetate in the spirit, from careless distilling or a fake.')
    expect(text).toContain('Don’t use it: throw away what it went into, and take the bottle back to the shop.')
    expect(text).toMatch(/from a home still: never/)
    expect(text).toMatch(/If anyone’s had some, call/)
  })

  test.each([
    'I bought vodka at the market from a man, it smells of nail varnish',
    'the vodka from my neighbour smells of glue',
  ])('is thrown away where it is from nobody knows whom: %s', async (line) => {
    expect(await (await deskOf()).textOf(line)).toMatch(/Throw it away: that smell comes from spoiled or fake spirit/)
  })

  test('holds the jar that it went into', async () => {
    const desk = await deskOf(PLUM)
    await desk.textOf('the plum smells of nail varnish')
    await desk.textOf('no')
    expect(await desk.textOf('bottled the plum, 2 x 500 ml')).toMatch(/^Don’t drink or bottle plum yet/)
  })

  test('is strong alcohol where it is that strong, as core/trouble has it', async () => {
    const text = await (await deskOf()).textOf('the 95% alcohol I bought smells of acetone')
    expect(text).not.toContain('ethyl acetate')
    expect(text).toContain('strong alcohol, and nothing else')
  })
})

describe('a note that names a solvent', () => {
  test.each([
    '/jar note plum note:smelled of paint thinner',
    '/jar note plum was:smelled of paint thinner',
    '/jar note plum was:only reeked of white spirit',
    'note: the plum smelt of paraffin',
    'write down that the plum stank of petrol',
    'the plum smelled of paint thinner',
    'the plum stinks of methylated spirits',
    'there’s a strong white spirit smell in the plum',
    'le prugne puzzavano di benzina',
  ])('is kept and answered: %s', async (line) => {
    const desk = await deskOf(PLUM)
    expect(await desk.textOf(line)).toMatch(/Throw (?:plum|it) away: it smells of fuel or thinner/)
    const entries = (await desk.person()).jars[0]!.entries
    expect(entries).toHaveLength(2)
    expect(entries[1]).toMatchObject({ kind: 'noted', trouble: { verdict: 'throw_away', because: 'fuel' } })
    expect(await desk.textOf('bottled it')).toMatch(/^Throw plum away/)
  })

  test('lets nothing off where it says that it smells, and all where it says that it was nothing', async () => {
    const desk = await deskOf(PLUM, '/trouble smells of solvent jar:plum yes:fuel')
    expect(await desk.textOf('/jar note plum was:it did smell of paint thinner')).toMatch(/^Throw plum away/)
    expect(await desk.textOf('/jar note plum was:I put methanol in')).toContain('You’ve noted methanol.')
    expect(await desk.textOf('/jar note plum was:smells of petrol was nothing')).toContain('goes on as before')
  })

  test.each(['doesn’t smell of glue', 'glued the label on', 'no smell of paint thinner'])(
    'holds nothing up where nothing smells: %s',
    async (note) => {
      expect(await (await deskOf(PLUM)).textOf(`/jar note plum note:${note}`)).not.toMatch(/Throw|question/)
    },
  )

  test('of methanol that went in is refused where it goes in', async () => {
    expect(await (await deskOf(PLUM)).textOf('I added 100 ml of paint thinner to the plum')).toMatch(
      /isn’t for drinking/,
    )
  })
})
