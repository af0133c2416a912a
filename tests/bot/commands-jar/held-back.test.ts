import { describe, expect, it } from 'vitest'
import { lineOf } from '../../../bot/calls/write-line.ts'
import { jarDesk, LEMON } from './desk.ts'

const strained = async () => {
  const desk = jarDesk()
  await desk.ask(LEMON)
  desk.at('2026-11-20')
  await desk.ask('/jar strain lemon measured:920 ml strength:86%')
  return desk
}

type Desk = ReturnType<typeof jarDesk>

const actionsOf = async (desk: Desk, line: string): Promise<readonly string[]> => {
  const outcome = await desk.run(line)
  return outcome.ok ? outcome.reply.actions.flatMap((action) => (action.isButtonOnly ? [] : [lineOf(action.call)])) : []
}

const entriesOf = async (desk: Desk) => (await desk.person()).jars[0]!.entries

describe('a step that makes no sense', () => {
  it('is not shaking what is strained', async () => {
    const desk = await strained()
    const before = await entriesOf(desk)
    const { code, message } = await desk.refused('/jar shake lemon')
    expect([code, message]).toEqual([
      'wrong_stage',
      'No more shaking: lemon was strained on 20 November 2026. Nothing was recorded.',
    ])
    expect(await entriesOf(desk)).toEqual(before)
    expect((await desk.ask('/jar shake lemon when:10 November')).data.events).toHaveLength(3)
  })

  it('is said to be open once, with the day', async () => {
    const desk = await strained()
    await desk.ask('/jar open lemon')
    const before = await entriesOf(desk)
    expect(await desk.headlineOf('/jar open lemon')).toMatchObject({ key: 'jar_open_since', values: { day: null } })
    desk.at('2026-12-05')
    expect(await desk.textOf('/jar open lemon')).toContain('since 20 November 2026')
    expect(await entriesOf(desk)).toEqual(before)
  })

  it('is asked about where it was filtered twice in a day with the same to show for it', async () => {
    const desk = await strained()
    await desk.ask('/jar filter lemon')
    const before = await entriesOf(desk)
    expect(await actionsOf(desk, '/jar filter lemon')).toEqual(['/jar filter lemon again:yes'])
    expect(await entriesOf(desk)).toEqual(before)
    expect((await desk.ask('/jar filter lemon measured:880 ml')).data.events).toHaveLength(4)
    expect((await desk.ask('/jar filter lemon again:yes')).data.events).toHaveLength(5)
  })

  it.each(['sweeten lemon sugar:500 g', 'filter lemon', 'bottle lemon bottles:1', 'open lemon', 'empty lemon'])(
    '/jar %s on a day before it was strained says which day that was',
    async (line) => {
      const { code, message } = await (await strained()).refused(`/jar ${line} when:10 November`)
      expect(code).toBe('wrong_stage')
      expect(message).toContain('Lemon was strained on 20 November 2026, so this came later.')
    },
  )

  it('is straining stronger than the spirit was', async () => {
    const desk = jarDesk()
    await desk.ask(LEMON)
    expect((await desk.refused('/jar strain lemon measured:920 ml strength:97%')).message).toContain(
      '97 % is stronger than what went into lemon: 95 % at most.',
    )
  })
})

describe('amounts of a syrup', () => {
  it('far from what was worked out are asked about, and put right at a press', async () => {
    const desk = await strained()
    const { notes, cautions } = await desk.ask('/jar sweeten lemon sugar:3000 g water:100 ml')
    expect(notes.map(({ text }) => text).join()).toMatch(/plan \(\d+\sg sugar and 1\.\d+\sl water\)/)
    // As /mix refuses it.
    expect(cautions[0]!.text).toMatch(/^1.03\d g\/L of sugar .* % vol\. About 5\d0 g\/L/)
    await desk.ask('/jar undo lemon')
    const [line] = await actionsOf(desk, '/jar sweeten lemon sugar:3000 g water:100 ml')
    expect(line).toMatch(/^\/jar correct lemon entry:5 sugar:\d{3} g water:1\.\d+ l$/)
    const right = await desk.ask(line!)
    expect(right.cautions).toEqual([])
    expect(right.data.sugarGPerL).toBeCloseTo(250, -1)
  })

  it('are given as the example where none were said, and none for a jar that is planned to have none', async () => {
    const desk = await strained()
    const { code, message } = await desk.refused('/jar sweeten lemon')
    expect(code).toBe('missing_option')
    const [, line] = /: (\/jar sweeten lemon sugar:\d+ g water:[\d.]+ l)$/.exec(message)!
    const { notes } = await desk.ask(line!)
    expect(notes.map(({ key }) => key)).toEqual(['jar_clearing'])
    expect((await desk.refused('/jar sweeten lemon')).message).toContain('How much sugar went in? For example')
  })
})

describe('what is taken back', () => {
  it.each([
    ['/jar taste lemon rating:3 note:thin: more', '/jar taste lemon when:2026-11-15 rating:3 note:"thin: more"'],
    ['/jar strain lemon measured:920 ml', '/jar strain lemon when:2026-11-15 measured:920 ml'],
  ])('%s is offered once more as it was', async (line, again) => {
    const desk = jarDesk()
    await desk.ask(LEMON)
    desk.at('2026-11-15')
    await desk.ask(line)
    const stood = (await entriesOf(desk)).at(-1)!
    desk.at('2026-11-16')
    const [offered] = await actionsOf(desk, '/jar undo lemon')
    expect(offered).toBe(again)
    await desk.ask(offered!)
    const { kind, day } = (await entriesOf(desk)).at(-1)!
    expect([kind, day]).toEqual([stood.kind, stood.day])
  })

  it('offers the syrup beside another that was entered', async () => {
    const desk = await strained()
    await desk.ask('/jar sweeten lemon sugar:600 g water:900 ml')
    const offered = await actionsOf(desk, '/jar undo lemon')
    expect(offered).toEqual([
      expect.stringMatching(/^\/jar sweeten lemon sugar:\d{3} g water:1\.\d+ l$/),
      '/jar sweeten lemon water:900 ml sugar:600 g',
    ])
  })

  it('is not what is shared of it, which is said and withdrawn by its last name', async () => {
    const desk = jarDesk()
    await desk.ask(LEMON)
    const { share } = (await desk.ask('/share lemon')).data
    const { notes } = await desk.ask('/jar undo lemon')
    expect(notes.map(({ text }) => text).join()).toContain(share)
    expect((await desk.ask('/share withdraw:Lemon')).data).toMatchObject({ share, withdrawn: true })
  })
})

it('bottles without a number are asked for as such', async () => {
  const desk = await strained()
  expect((await desk.refused('/jar bottle lemon bottles:six')).message).toBe(
    '“six”: how many bottles, and what size? For example: /jar bottle lemon bottles:1 x 500 ml',
  )
})

it('what is begun again is shown as a cook weighs it, without its code', async () => {
  const desk = await strained()
  await desk.ask(await desk.startLine('/again lemon spirit:730 ml 40%'))
  const text = await desk.textOf('/jar show lemon 2')
  expect(text).toMatch(/started: \d\d g lemon peel \(zest\), spirit 730 ml 40%/)
  expect(text).not.toContain('from ')
})
