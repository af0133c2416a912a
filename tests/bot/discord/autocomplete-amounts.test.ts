import { describe, expect, it } from 'vitest'
import { fake, onStage } from './stage.ts'

onStage()

const LEMON = { name: 'lemon', of: '10 lemons', spirit: '1 l 95%' }

const offers = async (command: string, option: string, typed: string, more: Readonly<Record<string, string>> = {}) =>
  (await fake.autocomplete(command, { ...more, [option]: typed }, option)).choices.map(
    ({ name, value }) => [name, value] as const,
  )

const valuesOf = async (...asked: Parameters<typeof offers>) => (await offers(...asked)).map(([, value]) => value)

describe('sweetness', () => {
  it('is offered by its words, with what each means', async () => {
    expect(await offers('syrup', 'to-sweetness', '')).toEqual([
      ['dry: 120 g/L, less sweet', 'dry'],
      ['everyday: 190 g/L, medium sweet', 'everyday'],
      ['rich: 270 g/L, sweet as a dessert', 'rich'],
    ])
    expect(await valuesOf('plan', 'to-sweetness', 'R')).toEqual(['rich'])
  })

  it('says what a number comes to, and offers nothing for what is none', async () => {
    expect(await offers('syrup', 'to-sweetness', '25 g/100 ml')).toEqual([
      ['25 g/100 ml: 250 g/L, nearest to rich', '25 g/100 ml'],
    ])
    expect(await offers('syrup', 'to-sweetness', 'a lot')).toEqual([])
  })
})

// The fake's clock and the bot's stand at nine on Wednesday, 25 November 2026 (ISO 8601 weekday 3).
describe('days', () => {
  it('that are past are offered with their weekday', async () => {
    const past = await offers('jar shake', 'when', '')
    expect(past.slice(0, 3)).toEqual([
      ['today, Wednesday 25 November 2026', '2026-11-25'],
      ['yesterday, Tuesday 24 November 2026', '2026-11-24'],
      ['2 days ago, Monday 23 November 2026', '2026-11-23'],
    ])
    expect(await offers('jar strain', 'when', 'yest')).toEqual([['yesterday, Tuesday 24 November 2026', '2026-11-24']])
    expect(await offers('jar strain', 'when', '20 November')).toEqual([
      ['20 November: 5 days ago, Friday 20 November 2026', '20 November'],
    ])
    expect(await offers('jar strain', 'when', 'in a while')).toEqual([])
  })

  it('and hours to come are offered for putting off', async () => {
    const ahead = await offers('jar later', 'until', '', { jar: 'all' })
    expect(ahead.slice(0, 2)).toEqual([
      ['later today: 18:00, today', 'later today'],
      ['tomorrow: Thursday 26 November 2026', 'tomorrow'],
    ])
    expect(await offers('jar later', 'until', '3 hours', { jar: 'all' })).toEqual([
      ['3 hours: 12:00, today', '3 hours'],
    ])
    expect(await valuesOf('jar later', 'until', 'yesterday', { jar: 'all' })).toEqual([])
  })

  it('go by the zone of whoever asks', async () => {
    await fake.slash('settings', { zone: 'Pacific/Auckland' })
    expect((await offers('jar later', 'until', '', { jar: 'all' }))[0]![0]).not.toContain('later today: 18:00')
  })
})

describe('entries', () => {
  it('are those of the jar that is named, the newest first', async () => {
    await fake.slash('jar start', LEMON)
    await fake.slash('jar shake', { jar: 'lemon' })
    const all = await offers('jar correct', 'entry', '', { jar: 'lemon' })
    expect(all.map(([, value]) => value)).toEqual(['2', '1'])
    expect(all[0]![0]).toBe('2: shaken, 25 November 2026')
    expect(all[1]![0]).toMatch(/^1: started with .*lemon/i)
    await fake.slash('jar start', { ...LEMON, name: 'many', of: '10 lemons + 5 oranges + 30 g dried ginger' })
    const [many] = await offers('jar correct', 'entry', '', { jar: 'many' })
    expect(many![0]).toMatch(/^1: started with .{70,}…$/)
    expect(await valuesOf('jar correct', 'entry', 'shak', { jar: 'lemon' })).toEqual(['2'])
    expect(await offers('jar correct', 'entry', '', { jar: 'quince' })).toEqual([])
    expect(await offers('jar correct', 'entry', '')).toEqual([])
  })
})

describe('bottles', () => {
  it('are offered by size, and filled up from a count', async () => {
    expect((await offers('plan', 'bottles', ''))[0]).toEqual(['bottles of 500 ml, as many as it fills', '500 ml'])
    expect((await offers('jar bottle', 'bottles', '4', { jar: 'lemon' }))[0]).toEqual([
      '4 bottles of 500 ml: 2 l',
      '4 x 500 ml',
    ])
    expect(await offers('plan', 'bottles', '3 x 500 ml + 1 x 350 ml')).toEqual([
      ['3 bottles of 500 ml + 1 bottle of 350 ml: 1.85 l', '3 x 500 ml + 1 x 350 ml'],
    ])
    expect(await offers('plan', 'bottles', 'a few')).toEqual([])
  })
})

it('takes every value that it offers', async () => {
  await fake.slash('jar start', LEMON)
  await fake.slash('jar shake', { jar: 'lemon' })
  for (const value of await valuesOf('plan', 'to-sweetness', ''))
    expect((await fake.slash('plan', { ...PLAN, 'to-sweetness': String(value) })).text).toMatch(/^\*\*Buy/)
  for (const value of await valuesOf('plan', 'bottles', '4'))
    expect((await fake.slash('plan', { ...PLAN, bottles: String(value) })).text).toMatch(/^\*\*|bottles/)
  for (const value of await valuesOf('jar later', 'until', '', { jar: 'all' }))
    expect((await fake.slash('jar later', { jar: 'lemon', until: String(value) })).text).not.toContain('is no')
  for (const value of await valuesOf('jar correct', 'entry', '', { jar: 'lemon' }))
    expect((await fake.slash('jar correct', { jar: 'lemon', entry: String(value) })).text).not.toContain('no entry')
})

const PLAN = { of: '10 lemons', spirit: '1 l 95%' }
