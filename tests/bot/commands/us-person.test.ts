import { describe, expect, it, test } from 'vitest'
import { newAsker } from '../asker.ts'
import { flat } from '../flat.ts'
import { testDesk } from '../test-desk.ts'

const nowMs = Date.UTC(2026, 8, 1, 9)

/** First screens, one after the other, of one person. */
async function told(lines: readonly string[], { assumedZone = 'UTC' } = {}): Promise<readonly string[]> {
  const desk = testDesk({ nowMs, asker: { ...newAsker(), assumedZone } })
  const screens: string[] = []
  for (const line of lines) screens.push(flat(await desk.firstOf(line)))
  return screens
}

const last = async (lines: readonly string[], setting = {}): Promise<string> => (await told(lines, setting)).at(-1)!

const BEGUN = '/jar start lemon of:10 lemons spirit:1 quart 151 proof'

describe('whoever pours in cups', () => {
  it('is shown examples in them: by what stands in the line, by the last jar, by what was chosen', async () => {
    expect(await last(['/plan of:1 lb cherries'])).toContain('spirit:1 quart')
    expect(await last([BEGUN, '/plan of:lemon'])).toContain('spirit:1 quart')
    expect(await last(['/settings units:us', '/plan of:lemon'])).toContain('spirit:1 quart')
    expect(await last([BEGUN, '/jar start ml of:5 lemons spirit:700 ml 40%', '/plan of:lemon'])).toContain('spirit:1 l')
    expect(await last([BEGUN, '/nonsense'])).toContain('1 quart 95%')
    expect(await last([BEGUN, '/help'])).toContain('spirit:1 quart 95%')
  })

  it('is told proof where proof was typed, and percent where it was not', async () => {
    expect(await last(['/dilute spirit:1 quart 190 proof to-strength:80 proof'])).toContain('at 80 proof')
    expect(await last(['/dilute spirit:1 quart 95% to-strength:40%'])).toContain('at 40%')
    expect(await last(['/settings units:us', '/dilute spirit:1 l 190 proof to-strength:80 proof'])).toContain(
      '80 proof',
    )
    expect(await last(['/dilute spirit:1 l 190 proof to-strength:40%'])).toContain('at 40 %')
    // Infusion at a strength that was read: 151 is not rounded to 152.
    expect(await last(['/syrup infusion:1 quart strength:151 proof'])).toContain('1 quart at 151 proof')
  })

  it('is told a bottle of the trade as it was typed, and the rest in cups', async () => {
    const plan = await last(['/plan of:1 lb cherries spirit:750 ml vodka 40%'])
    expect(plan).toContain('750 ml of 40% vodka')
    expect(plan).toMatch(/about 3 ⅓ cups|about 3 ¼ cups/)
    expect(await last(['/plan of:500 g cherries spirit:750 ml vodka 40%'])).not.toContain('cups')
  })

  it('is never offered more of a plant than is safe by a rounder measure', async () => {
    expect(await last(['/plan of:20 lb nutmeg spirit:1 quart 80 proof'])).toMatch(/of:0\.\d+ g nutmeg/)
  })

  it('is told what to try in a glass in spoons and a part of a cup', async () => {
    const lines = [BEGUN, '/jar strain lemon measured:3 1/2 cups', '/jar sweeten lemon sugar:1 lb water:3 cups']
    const screen = await last([...lines, '/adjust jar:lemon to-strength:50 proof'])
    expect(screen).toMatch(/Try it first: [^.]+(?:tsp|tbsp|cup) water in (?:[¼½] cup|1 cup) of it/)
  })

  it('is told a sweetness in a word, and in what was typed where that was grams', async () => {
    expect(await last(['/plan of:10 lemons spirit:1 quart 151 proof'])).toContain('medium sweet.')
    expect(
      await last(['/syrup infusion:1 quart strength:151 proof to-strength:60 proof to-sweetness:250 g/L']),
    ).toContain('250 g/L')
  })
})

test.each([
  ['UTC', ['/settings'], 'zone:Rome', 'country:Italy'],
  ['UTC', ['/settings units:us'], 'zone:America/New_York', 'country:US'],
  ['UTC', ['/settings units:imperial'], 'zone:London', 'country:UK'],
  ['America/Denver', ['/settings'], 'zone:Denver', 'country:US'],
  ['Europe/London', ['/settings'], 'zone:London', 'country:UK'],
])('places to type in %s after %j are %s and %s', async (assumedZone, lines, zone, country) => {
  const screen = await last(lines, { assumedZone })
  expect(screen).toContain(`/settings ${zone}`)
  expect(screen).toContain(`/settings ${country}`)
})

test('the zone of a country that was chosen is the one to type', async () => {
  expect(await last(['/settings country:Japan', '/settings'])).toContain('/settings zone:Asia/Tokyo')
})

test('a jar says when it will be ready, and a pet name is no name of a drink', async () => {
  const screens = await told(['/jar start plum of:500 g sloes spirit:700 ml voddy 40%', '/jar show plum', '/jar list'])
  expect(screens[0]).toContain('700 ml of 40 % vodka')
  expect(screens[1]).toMatch(/Ready about \d+ \w+/)
  expect(screens[2]).toMatch(/Ready: plum about \d+ \w+/)
  for (const screen of screens.slice(0, 1)) expect(screen).not.toContain('voddy')
})
