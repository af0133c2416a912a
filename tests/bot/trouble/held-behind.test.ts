import { describe, expect, test } from 'vitest'
import { newTalkMemory } from '../../../bot/talk/memory/remembered.ts'
import { newAsker } from '../asker.ts'
import { jarDesk } from '../commands-jar/desk.ts'

const deskOf = async (...lines: readonly string[]) => {
  const desk = jarDesk('2026-11-30', { ...newAsker(), talk: newTalkMemory() })
  await desk.ask('/jar start ginger of:100 g ginger spirit:1 l vodka 40%')
  await desk.ask('/jar start plum of:500 g plums spirit:1 l vodka 40%')
  for (const line of lines) await desk.ask(line)
  return desk
}

const MOULD = '/trouble mould jar:plum yes:growth'

/** Worked out of amounts, or of no jar, if the verdict did not stand. */
const BEHIND = [
  'mixed the plum with 150 ml rum',
  'blended the plum and 250 ml brandy',
  'what strength has the plum with 300 ml vodka?',
  'stirred the plum into the ginger',
  'ho unito la prugna a 100 ml di grappa',
  'poured it into bottles anyway',
  'ladled it into bottles',
  'siphoned everything into the bottles',
  'put it in bottles',
  'ho versato tutto nelle bottiglie',
  'tipped it all in bottles regardless',
] as const

describe('behind a jar that is to be thrown away', () => {
  test.each(BEHIND)('it is said first, and nothing is worked out or written down: %s', async (line) => {
    const desk = await deskOf(MOULD)
    const before = JSON.stringify((await desk.person()).jars)
    const text = await desk.textOf(line)
    expect(text).toMatch(/Throw (?:it|plum) away: something grows in it/)
    expect(text).not.toMatch(/Makes|froze|Harmless|Which jar/)
    expect(JSON.stringify((await desk.person()).jars)).toBe(before)
  })

  test('a new batch of such a plant is planned all the same', async () => {
    expect(await (await deskOf(MOULD)).textOf('600 g plums in 1 l vodka 40%')).toContain('Buy 600 g plums')
  })

  test('a jar of which nothing is told is asked about as before', async () => {
    expect(await (await deskOf(MOULD)).textOf('mixed the ginger with 150 ml rum')).not.toContain('Throw')
  })

  test('once it is taken back, what was poured into bottles is asked about', async () => {
    const desk = await deskOf(MOULD, '/jar undo plum')
    expect(await desk.textOf('poured it into bottles anyway')).toMatch(
      /^Which jar is it: ginger or plum\?.*\/jar bottle/s,
    )
  })
})

test.each(['is it gonna explode, kid is in the kitchen', 'will it burst?', 'sta per esplodere?'])(
  'a jar that hisses is spoken of again where it may burst: %s',
  async (line) => {
    const desk = await deskOf('lid on the plum is hissing', "oven's on next to it is that ok")
    expect(await desk.textOf(line)).toMatch(/let the air out once with your face away/)
  },
)

test('a lit oven beside it is answered before what stands of it', async () => {
  const desk = await deskOf('lid on the plum is hissing')
  expect(await desk.textOf("oven's on next to it is that ok")).toMatch(/flame/)
})
