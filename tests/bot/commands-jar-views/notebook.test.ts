import stringWidth from 'string-width'
import { describe, expect, it } from 'vitest'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { deskWith, jarOf, startedAs } from './jars.ts'

interface Batch {
  readonly on?: string
  readonly peelG?: number
  readonly spiritMl?: number
  readonly strainedOn?: string
  readonly sugarG?: number
  readonly rating?: number | null
  readonly note?: string | null
}

/** Strained, sweetened, tasted and emptied. */
const batch = (id: string, name: string, told: Batch = {}) => {
  const { on = '2026-01-01', peelG = 80, spiritMl = 1000, strainedOn = '2026-01-26' } = told
  const { sugarG = 600, rating = 4, note = null } = told
  const [spirit] = startedAs(name).spirits
  const [plant] = startedAs(name).plants
  const started = startedAs(name, {
    spirits: [{ ...spirit!, amount: { value: spiritMl, plusMinus: spiritMl * 0.02 } }],
    plants: [{ ...plant!, massG: { value: peelG, plusMinus: 1 } }],
  })
  const measured = { amount: { value: 0.93 * spiritMl, plusMinus: 5 }, by: 'volume', atC: 20 } as const
  return jarOf(id, [
    { ...started, on },
    { kind: 'strained', measured, strength: null, rinseWaterG: exactly(0), on: strainedOn },
    {
      kind: 'sweetened',
      waterG: { value: 1.2 * spiritMl, plusMinus: 5 },
      sweetenings: whiteSugar({ value: sugarG, plusMinus: 3 }),
      on: strainedOn,
    },
    { kind: 'opened', on: '2026-03-01' },
    { kind: 'tasted', rating, note, on: '2026-03-01' },
    { kind: 'emptied', on: '2026-06-01' },
  ])
}

describe('/notebook', () => {
  it('tells of each batch what went in, how long, what came out, notes and rating, the newest first', async () => {
    const jars = [
      batch('aaaa1', 'lemon', { note: 'sharp, fine' }),
      jarOf('aaaa2', [{ ...startedAs('walnut'), on: '2026-11-01' }]),
    ]
    const desk = await deskWith({ jars }, { width: 300 })
    const lines = (await desk.textOf('/notebook')).split('\n')
    expect(lines[0]).toBe('Your batches, the newest first: 1 running, 1 finished.')
    expect(lines[2]).toMatch(/^ {2}walnut {2}Nov 2026, steeping\. 1 l of 95 % spirit \+ 80 g lemon peel\. /)
    expect(lines[3]).toMatch(
      /^ {2}lemon {3}Jan 2026, steeped 25 days\. 1 l of 95 % spirit \+ 80 g lemon peel\. 2\.\d+ l at 3\d %, 2\d\d g\/L\. Rated 4 of 5\. “sharp, fine”$/,
    )
    expect(lines.join('\n')).toContain('/notebook walnut + lemon')
  })

  it.each([40, 80])('stays readable with many batches at %i columns: a line or two each', async (width) => {
    const jars = Array.from({ length: 40 }, (_, index) =>
      batch(`a${String(index).padStart(4, '0')}`, index % 2 === 0 ? `柠檬 ${index}` : `lemon ${index}`),
    )
    const desk = await deskWith({ jars }, { width })
    const lines = (await desk.textOf('/notebook')).split('\n')
    for (const line of lines) expect(stringWidth(line)).toBeLessThanOrEqual(width)
    expect(lines.length).toBeLessThan(width === 80 ? 50 : 140)
    expect((await desk.jsonOf('/notebook')).data.batches).toHaveLength(40)
  })

  it('gives everything it says as data, complete', async () => {
    const desk = await deskWith({ jars: [batch('aaaa1', 'lemon', { note: 'sharp “fine”' })] })
    const [data] = (await desk.jsonOf('/notebook')).data.batches
    expect(data).toMatchObject({
      id: 'aaaa1',
      name: 'lemon',
      stage: 'emptied',
      startedOn: '2026-01-01',
      endedOn: '2026-06-01',
      steepedDays: 25,
      restedDays: 34,
      rating: 4,
      notes: ['sharp “fine”'],
      botanicals: [{ id: 'lemon_peel', massG: 80, massGPlusMinus: 1, count: null }],
      spirits: [{ volumeMl: 1000, volumeMlPlusMinus: 20, abvPercent: 95, abvPercentPlusMinus: 0.3 }],
    })
    for (const value of Object.values(data)) expect(value).not.toBeUndefined()
  })
})

describe('/notebook compare:', () => {
  const jars = [
    batch('aaaa1', 'lemon', { rating: 3, note: 'thin' }),
    batch('aaaa2', 'lemon + lime', { peelG: 120, strainedOn: '2026-01-31', sugarG: 400, rating: 5, note: 'round' }),
    batch('aaaa3', 'twin', { rating: 3, note: 'thin' }),
    batch('aaaa4', 'unrated', { rating: null }),
    batch('aaaa5', 'lemon', { on: '2025-01-01', strainedOn: '2025-01-26', rating: 3, note: 'thin' }),
    batch('aaaa6', 'small', { spiritMl: 500, peelG: 40, sugarG: 300, rating: 3, note: 'thin' }),
  ]

  it('says which was liked better and only what differed', async () => {
    const desk = await deskWith({ jars }, { width: 120 })
    const text = await desk.textOf('/notebook compare:lemon + lemon + lime')
    const [headline, table] = text.split('\n\n')
    expect(headline).toBe('You liked lemon + lime better than lemon: 5 to 3. What differed, lemon | lemon + lime:')
    expect(table?.split('\n').map((line) => line.trim().replace(/ {2,}/, ': '))).toEqual([
      'Lemon peel: 80 g | 120 g a litre of spirit',
      'Steeped: 25 days | 30 days',
      expect.stringMatching(/^Strength: 3\d % \| 3\d %( \(too close to tell\))?$/),
      expect.stringMatching(/^Sweetness: 2\d\d g\/L \| 1\d\d g\/L$/),
      'Rested: 34 days | 29 days',
      'Rating: 3 | 5 of 5',
      'Notes: “thin” | “round”',
    ])
  })

  it('finds nothing between twins, and says when it cannot tell which was liked', async () => {
    const desk = await deskWith({ jars }, { width: 120 })
    expect(await desk.textOf('/notebook compare:lemon + twin')).toBe(
      'You liked lemon and twin alike: 3 of 5. I know of no difference.',
    )
    expect(await desk.textOf('/notebook compare:unrated + twin')).toMatch(/^Only twin is rated: 3 of 5\./)
  })

  it('sees what they were planned for, when they were begun and what else went in', async () => {
    const planned = (id: string, name: string, on: string, abvPercent: number, waterG: number) =>
      jarOf(id, [{ ...startedAs(name, { waterG: exactly(waterG) }, { targets: { abvPercent, sugarGPerL: 250 } }), on }])
    const desk = await deskWith(
      { jars: [planned('aaaa1', 'strong', '2026-10-20', 40, 0), planned('aaaa2', 'mild', '2026-11-17', 30, 200)] },
      { width: 120 },
    )
    const [headline, table] = (await desk.textOf('/notebook compare:strong + mild')).split('\n\n')
    expect(headline).toContain('What differed, strong | mild:')
    expect(table?.split('\n').map((line) => line.trim().replace(/ {2,}/, ': '))).toEqual([
      'Water in the jar: 0 g | 200 g a litre of spirit',
      'Started: 20 October 2026 | 17 November 2026',
      'Planned for: 40 % vol with 250 g/L | 30 % vol with 250 g/L',
      expect.stringMatching(/^Strength: 9\d % \| 7\d %$/),
    ])
  })

  it('sees the same recipe in half the amount', async () => {
    const desk = await deskWith({ jars }, { width: 120 })
    const text = await desk.textOf('/notebook compare:lemon + small')
    expect(text).toMatch(/Spirit +1 l of 95 % \| 500 ml of 95 %/)
    expect(text).not.toContain('Lemon peel')
  })

  it('tells batches of one name apart by their month', async () => {
    const desk = await deskWith({ jars }, { width: 120 })
    expect(await desk.textOf('/notebook compare:#aaaa1 + #aaaa5')).toMatch(
      /^You liked lemon \(Jan 2026\) and lemon \(Jan 2025\) alike/,
    )
  })

  it.each([
    ['lemon', 'bad_value', 'Join them with a +'],
    ['lemon + lemon', 'bad_value', 'Join them with a +'],
    ['lemon +', 'bad_value', 'Join them with a +'],
    ['lemon + quince', 'not_found', 'no jar “quince”'],
  ])('refuses %s with a sentence', async (typed, code, says) => {
    const desk = await deskWith({ jars })
    const { error } = await desk.jsonOf(`/notebook compare:${typed}`)
    expect(error.code).toBe(code)
    expect(error.message).toContain(says)
  })
})

it('offers to compare the last two in a line that can be typed', async () => {
  const named = (one: string, other: string) =>
    deskWith({ jars: [batch('aaaa1', one), batch('aaaa2', other)] }, { width: 200 })
  for (const [one, other] of [
    ['a: b', 'c'],
    ['lemon', 'LEMON'],
    ['1 + 1', '2'],
    ['"x"', 'compare me'],
  ] as const) {
    const desk = await named(one, other)
    const line = /What differed between the last two: (.+)$/m.exec(await desk.textOf('/notebook'))![1]!
    const { data } = await desk.jsonOf(line)
    expect(data?.batches.map(({ id }: { id: string }) => id).toSorted(), line).toEqual(['aaaa1', 'aaaa2'])
  }
})
