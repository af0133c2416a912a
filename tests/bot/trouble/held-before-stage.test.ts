import { describe, expect, test } from 'vitest'
import { newTalkMemory } from '../../../bot/talk/memory/remembered.ts'
import { newAsker } from '../asker.ts'
import { jarDesk } from '../commands-jar/desk.ts'

const deskOf = async (...lines: readonly string[]) => {
  const desk = jarDesk('2026-11-30', { ...newAsker(), talk: newTalkMemory() })
  await desk.ask('/jar start ginger of:500 g ginger spirit:1 l vodka 40%')
  for (const line of lines) await desk.ask(line)
  return desk
}

const MOULD = '/trouble mould jar:ginger yes:growth'
const ANSWER = /^Throw ginger away: something grows in it\b.*So I’ve done nothing\. .*\/jar note ginger was:only pith/s

/** Of a jar that steeps: each is too early, or lacks something. */
const TYPED = [
  'sweetened as planned',
  'bottled it',
  'gave one',
  'filled 4 bottles of the ginger',
  'opened a bottle of the ginger',
  'the ginger is bottled now',
  'put the syrup in the ginger',
  'ho imbottigliato lo zenzero',
  '/jar sweeten ginger',
  '/jar sweeten ginger sugar:200 g',
  '/jar bottle ginger',
  '/bottles ginger given:1',
  '/jar open ginger when:tomorrow',
  '/jar split ginger',
  '/jar combine ginger with:quince',
  '/measure jar:ginger hydrometer:30',
  '/jar taste ginger rating:4',
  'tasted it, 5 stars',
] as const

/** What a jar that is to go is still asked for. */
const ASKED = ['/measure jar:ginger', '/cost jar:ginger', '/shopping jars:ginger', '/bottles ginger'] as const

describe('a jar that is to be thrown away', () => {
  test.each(TYPED)('says so before its stage and before what is lacking: %s', async (line) => {
    const desk = await deskOf(MOULD)
    const before = JSON.stringify(await desk.person())
    expect(await desk.textOf(line)).toMatch(ANSWER)
    expect(JSON.stringify(await desk.person())).toBe(before)
  })

  test.each(ASKED)('says so before what is asked of it: %s', async (line) => {
    expect(await (await deskOf(MOULD)).textOf(line)).toMatch(/^Throw ginger away: something grows in it/)
  })

  test.each(['gave two bottles of the ginger to my neighbour', 'ho regalato una bottiglia di zenzero'])(
    'has whoever was given some told: %s',
    async (line) => {
      const desk = await deskOf(MOULD)
      const before = JSON.stringify(await desk.person())
      const text = await desk.textOf(line)
      expect(text).toMatch(/something grows in it/)
      expect(text).toMatch(/Tell (?:your neighbour|whoever has some) now not to drink it/)
      expect(JSON.stringify(await desk.person())).toBe(before)
    },
  )

  test('says so where it is the other jar that is lacking', async () => {
    const desk = await deskOf(MOULD, '/jar start lemon of:10 lemons spirit:1 l vodka 40%')
    expect(await desk.textOf('/jar combine lemon with:ginger')).toMatch(ANSWER)
  })

  test('says so before the stage where it is only not to be drunk yet', async () => {
    const desk = await deskOf('/trouble lid bulging jar:ginger no:burst')
    expect(await desk.textOf('bottled it')).toMatch(/^Don’t (?:drink|open)/)
  })
})

describe('a verdict that is taken back', () => {
  test('is said to hold the jar back no more', async () => {
    const text = await (await deskOf(MOULD)).textOf('/jar undo ginger')
    expect(text).toContain('I don’t hold it back any more. If it’s still so, don’t drink it, and tell me again.')
  })

  test('is not taken back by a step that is typed behind the question', async () => {
    const desk = await deskOf()
    await desk.textOf('there is mould on the ginger, it’s furry')
    await desk.textOf('undo')
    await desk.textOf('ok and now sweeten it')
    expect(await desk.textOf('/jar show ginger')).toMatch(/^Throw ginger away/)
  })
})

describe('what stands in nobody’s way', () => {
  test.each([
    ['/jar rename ginger', /name/],
    ['/jar correct ginger', /./],
    ['/jar discard ginger when:tomorrow', /hasn’t come yet/],
    ['/jar note ginger when:tomorrow note:smelt', /hasn’t come yet/],
  ])('%s', async (line, answer) => {
    const text = await (await deskOf(MOULD)).textOf(line)
    expect(text).toMatch(answer)
    expect(text).not.toContain('So I’ve done nothing')
  })

  test('is another jar, or one of which only a question is open', async () => {
    expect(await (await deskOf()).textOf('bottled it')).not.toContain('Throw')
    expect(await (await deskOf('/trouble mould jar:ginger')).textOf('/jar bottle ginger')).toContain('still steeping')
  })

  test('is a poison that is named beside it, which is refused as itself', async () => {
    expect(await (await deskOf(MOULD)).textOf('/jar add ginger spirit:100 ml methanol')).toMatch(/methanol/)
  })
})
