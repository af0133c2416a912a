import { describe, expect, test } from 'vitest'
import { newTalkMemory } from '../../../bot/talk/memory/remembered.ts'
import { newAsker } from '../../bot/asker.ts'
import { jarDesk } from '../../bot/commands-jar/desk.ts'

const deskOf = async () => {
  const desk = jarDesk('2026-11-30', { ...newAsker(), talk: newTalkMemory() })
  await desk.ask('/jar start ginger of:100 g ginger spirit:1 l vodka 40%')
  await desk.ask('/jar start plum of:500 g plums spirit:1 l vodka 40%')
  return desk
}

const jarsOf = async (desk: Awaited<ReturnType<typeof deskOf>>) => JSON.stringify((await desk.person()).jars)

/** No mark stands behind them. */
const ASKED = [
  'does ginger keep in the pantry',
  'would plum stay on the shelf',
  'has my ginger moved to the cellar',
  'did the plums get strained',
  'was ginger bottled in two bottles',
  'so is plum sweetened with 150 g sugar',
  'have I shaken the ginger',
] as const

const KEPT = [
  ['does ginger keep in the pantry', 'ginger'],
  ['would the plums keep in the garage', 'plum'],
  ['lo zenzero si conserva in dispensa', 'ginger'],
] as const

const TOLD = [
  'ginger is in the pantry',
  'the plum sits in the cellar',
  'shook the ginger',
  'have shaken the plum',
] as const

describe('a question by the order of its words', () => {
  test.each(ASKED)('writes nothing down: %s', async (line) => {
    const desk = await deskOf()
    const before = await jarsOf(desk)
    await desk.textOf(line)
    expect(await jarsOf(desk)).toBe(before)
  })

  test.each(KEPT)('is answered by whether it keeps: %s', async (line, jar) => {
    expect(await (await deskOf()).textOf(line)).toContain(`read as /keeping ${jar}`)
  })

  test.each(TOLD)('is none where it is told: %s', async (line) => {
    const desk = await deskOf()
    const before = await jarsOf(desk)
    await desk.textOf(line)
    expect(await jarsOf(desk)).not.toBe(before)
  })

  test('answers no question that is open', async () => {
    const desk = await deskOf()
    await desk.textOf('has the ginger moved to the cellar')
    const before = await jarsOf(desk)
    await desk.textOf('where does ginger go')
    expect(await jarsOf(desk)).toBe(before)
  })
})

describe('a note behind the name of its jar', () => {
  test.each([
    [
      '/jar note plum smelled of white spirit',
      'Throw plum away: it smells of fuel or thinner',
      'smelled of white spirit',
    ],
    ['/jar note ginger from the plot by the gate', 'Noted for ginger', 'from the plot by the gate'],
    ['/jar note ginger stirred by Nina at noon', 'Noted for ginger', 'stirred by Nina at noon'],
  ] as const)('is written down whole: %s', async (line, said, note) => {
    const desk = await deskOf()
    const text = await desk.textOf(line)
    expect(text).toContain(said)
    expect(text).toContain(`“${note}”`)
  })

  test('says where it stands where that is all it says', async () => {
    expect(await (await deskOf()).textOf('/jar note plum in the cellar')).toContain(
      'read as /jar note plum where:cellar',
    )
  })

  test('is none of a jar that is not there', async () => {
    expect(await (await deskOf()).textOf('/jar note quince smelled of petrol')).toMatch(/^You have no jar/)
  })

  test('tells of a trouble in Italian, of the jar of such a plant', async () => {
    expect(await (await deskOf()).textOf('le prugne puzzavano di benzina')).toMatch(/I’ve noted that on plum/)
  })
})
