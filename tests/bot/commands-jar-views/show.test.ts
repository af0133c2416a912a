import stringWidth from 'string-width'
import { describe, expect, it } from 'vitest'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { jarDesk } from '../commands-jar/desk.ts'
import { deskWith, jarOf, startedAs } from './jars.ts'

const TYPED = [
  ['name', 'lemon'],
  ['of', '80 g lemon peel'],
  ['spirit', '1 l 95%'],
  ['to-strength', '30%'],
] as const

const READ = {
  kind: 'strained',
  measured: { amount: { value: 930, plusMinus: 5 }, by: 'volume', atC: 20 },
  strength: { abvPercent: { value: 85, plusMinus: 0.5 }, abvAtC: 20, readsProof: false },
  rinseWaterG: exactly(0),
} as const

const lemon = jarOf('aaaa1', [
  { ...startedAs('lemon'), on: '2026-10-01', typed: TYPED },
  ...['02', '03', '04', '05'].map((day) => ({ kind: 'shaken', on: `2026-10-${day}` }) as const),
  { kind: 'tasted', rating: 3, note: 'thin, “green”', on: '2026-10-10' },
  { kind: 'shaken', on: '2026-10-10' },
  { kind: 'undone', of: 7, on: '2026-10-10' },
  { ...READ, measured: { ...READ.measured, amount: { value: 390, plusMinus: 5 } }, on: '2026-11-01' },
  { kind: 'corrected', of: 9, by: READ, on: '2026-11-02', typed: [['measured', '930 ml']] },
  { kind: 'tasted', rating: 4, note: null, on: '2026-11-12' },
])

/** Its lines, the columns two spaces apart. */
const storyIn = (text: string): readonly string[] =>
  text
    .split('\n')
    .filter((line) => /^ {2}(?:\d+( · |–)|Undone)/.test(line))
    .map((line) => line.trim().replace(/ {2,}/, '  '))

describe('/jar show', () => {
  it('tells the stage, what is in it with its ±, the story and what comes next', async () => {
    const desk = await deskWith({ jars: [lemon] }, { width: 200 })
    const text = await desk.textOf('/jar show lemon')
    expect(text).toMatch(/^Next for lemon: sweeten it now\.\nIt’s strained, day 51: /)
    expect(text).toMatch(/Volume +930 ml ± \d ml, measured/)
    expect(text).toMatch(/Strength +85\.?\d? % vol ± 0\.\d % vol, measured/)
    expect(text).toMatch(/Planned +30 % vol, 250 g\/L/)
    expect(text).toMatch(/Rating +3, then 4 of 5/)
    expect(storyIn(text)).toEqual([
      '1 · 1 Oct  started: 80 g lemon peel, spirit 1 l 95%, to strength 30%',
      '2–5  shaken on 2, 3, 4 and 5 Oct',
      '6 · 10 Oct  tasted, 3 of 5: “thin, "green"”',
      '9 · 1 Nov  strained, 930 ml at 85 % vol. Corrected: measured 930 ml',
      '11 · 12 Nov  tasted, 4 of 5',
      'Undone  1 entry',
    ])
  })

  it('says in its first line what to do, when, and when it will be ready', async () => {
    const desk = jarDesk('2026-11-02')
    const firstLine = async (): Promise<string> => (await desk.textOf('/jar show sloe')).split('\n')[0]!
    await desk.ask('/jar start sloe of:500 g sloes spirit:700 ml gin 40%')
    expect(await firstLine()).toMatch(/^Next for sloe: taste it on 17 December\. Ready about 1 June 2027\.$/)
    desk.at('2027-01-20')
    expect(await firstLine()).toMatch(
      /^Next for sloe: strain it by 2 March, taste and shake it today\. Ready about 1 June/,
    )
    await desk.ask('/jar strain sloe measured:800 ml')
    await desk.ask('/jar sweeten sloe sugar:150 g')
    await desk.ask('/jar bottle sloe bottles:1 x 700 ml')
    expect(await firstLine()).toMatch(/^Sloe is ready to drink from \d/)
    desk.at('2027-12-01')
    expect(await firstLine()).toBe('Sloe is ready to drink.')
    await desk.ask('/jar empty sloe')
    expect(await firstLine()).toBe('Sloe is empty.')
  })

  it('tells a corrected entry as it stands now, its day and its amounts, and what it was', async () => {
    const desk = jarDesk('2026-01-10')
    await desk.ask('/jar start ginger of:150 g ginger spirit:700 ml 60%')
    desk.at('2026-01-15')
    await desk.ask('/jar correct ginger spirit:750 ml 60%')
    await desk.ask('/jar correct ginger spirit:800 ml 60%')
    await desk.ask('/jar correct ginger entry:1 when:14 January')
    await desk.ask('/jar correct ginger entry:1 when:13 January')
    await desk.ask('/jar undo ginger')
    expect(storyIn(await desk.textOf('/jar show ginger'))).toEqual([
      '1 · 14 Jan  started: 150 g ginger, spirit 800 ml 60%. Corrected: spirit 800 ml 60% (was 700 ml 60%), day 14 Jan (was 10 Jan)',
      'Undone  1 entry',
    ])
    const { data } = await desk.ask('/jar show ginger')
    expect(data.events).toHaveLength(6)
  })

  it('leaves out what was put off and is over, and counts what was taken back', async () => {
    const desk = jarDesk('2026-01-10')
    await desk.ask('/jar start ginger of:150 g ginger spirit:700 ml 60%')
    await desk.ask('/jar later ginger until:in 2 days')
    await desk.ask('/jar later ginger until:18:00')
    const storyAt = async (moment: string) => {
      desk.at(moment)
      return storyIn(await desk.textOf('/jar show ginger')).map((line) => line.replace(/,? .*/, ''))
    }
    expect(await storyAt('2026-01-10T17:59:00Z')).toEqual(['1', '3'])
    expect(await storyAt('2026-01-10T18:00:00Z')).toEqual(['1'])
    await desk.ask('/jar later ginger until:in 2 days')
    expect(await storyAt('2026-01-11')).toEqual(['1', '4'])
    expect(await storyAt('2026-01-12')).toEqual(['1'])
    await desk.ask('/jar shake ginger')
    for (const line of ['/jar undo ginger', '/jar undo ginger']) await desk.ask(line)
    const shown = await desk.textOf('/jar show ginger')
    expect(shown).toMatch(/Undone +2 entries/)
    expect(shown).not.toMatch(/shaken|put off/)
    const { data } = await desk.ask('/jar show ginger')
    expect(data.events).toHaveLength(7)
  })

  it('says of a jar that nobody has measured that it is estimated', async () => {
    const desk = await deskWith({ jars: [jarOf('aaaa1', [{ ...startedAs('basil'), on: '2026-11-08' }])] })
    const text = await desk.textOf('/jar show basil')
    expect(text).toMatch(/Volume +1\.05 l ± 0\.0\d l, estimated/)
    expect(text).toMatch(/Strength +9\d.* estimated/)
    expect(text).not.toContain('measured')
  })

  it.each([40, 80])('fits %i columns', async (width) => {
    const long = jarOf('aaaa1', [
      { ...startedAs('葉'.repeat(40)), on: '2026-10-01', typed: TYPED },
      { kind: 'tasted', rating: 2, note: 'très bon 苦い '.repeat(70), on: '2026-10-10' },
    ])
    const desk = await deskWith({ jars: [long, lemon] }, { width })
    for (const line of [`/jar show #aaaa1`, '/jar show 葉', '/jar show lem']) {
      const shown = (await desk.textOf(line)).split('\n').filter((each) => !/^ *\//.test(each))
      for (const each of shown) expect(stringWidth(each)).toBeLessThanOrEqual(width)
    }
    expect(desk.faults()).toEqual([])
  })

  it('gives every entry in its data, as typed', async () => {
    const desk = await deskWith({ jars: [lemon] })
    const { data } = await desk.jsonOf('/jar show lemon')
    expect(Object.keys(data)).toEqual([
      'id',
      'name',
      'stage',
      'day',
      'ofDays',
      'next',
      'dangers',
      'volumeMl',
      'volumeMlPlusMinus',
      'abvPercent',
      'abvPercentPlusMinus',
      'sugarGPerL',
      'sugarGPerLPlusMinus',
      'events',
      'fills',
      'steeping',
      'freezer',
    ])
    expect(data.volumeMl).toBeCloseTo(930, 6)
    expect(data.events).toHaveLength(11)
    expect(data.events[0]).toEqual({
      entry: 1,
      kind: 'started',
      day: '2026-10-01',
      at: '2026-10-01T12:00:00.000Z',
      amends: null,
      undone: false,
      typed: { name: 'lemon', of: '80 g lemon peel', spirit: '1 l 95%', 'to-strength': '30%' },
    })
    expect(data.events[6]).toMatchObject({ entry: 7, undone: true })
    expect(data.events[9]).toMatchObject({ entry: 10, kind: 'corrected', amends: 9, typed: { measured: '930 ml' } })
  })

  it('knows no jar whose start was taken back, and none that is not there', async () => {
    const gone = jarOf('aaaa2', [
      { ...startedAs('gone'), on: '2026-11-08' },
      { kind: 'undone', of: 1, on: '2026-11-08' },
    ])
    const desk = await deskWith({ jars: [lemon, gone] })
    for (const line of ['/jar show gone', '/jar show #aaaa2']) {
      expect((await desk.jsonOf(line)).error).toMatchObject({ code: 'not_found' })
    }
    expect(await desk.jsonOf('/jar show lemno')).toMatchObject({ read: '/jar show lemon', data: { name: 'lemon' } })
  })

  it('names all that begin so, five at most', async () => {
    const jars = ['lemon', 'lemon peel', 'lime', 'loquat', 'lychee', 'lovage'].map((name, index) =>
      jarOf(`bbbb${index}`, [{ ...startedAs(name), on: '2026-11-01' }]),
    )
    const two = await deskWith({ jars: jars.slice(0, 2) })
    expect((await two.jsonOf('/jar show l')).error.message).toBe('Which one: lemon or lemon peel?')
    const many = await deskWith({ jars })
    expect((await many.jsonOf('/jar show l')).error.message).toBe(
      'Which one: lemon, lemon peel, lime, loquat, lychee or 1 more?',
    )
    expect((await many.jsonOf('/jar show lim')).data.name).toBe('lime')
  })
})
