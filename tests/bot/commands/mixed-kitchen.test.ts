import { describe, expect, it, test } from 'vitest'
import { signatures } from '../../../bot/calls/signatures.ts'
import { kitchenOf } from '../../../bot/commands/options/input-units.ts'
import { textOf } from './desk.ts'

// Units of the two systems, as they are typed. The pound is 453.592 g, the cup 236.588 ml (NIST Handbook 44, Appendix C).
const US_LIQUID = /[\d⅛¼⅜½⅝¾⅞] (?:cups?|tbsp|tsp|fl oz)\b/
const METRIC_LIQUID = /\d (?:ml|cl|l)\b/
const US_MASS = /[\d⅛¼⅜½⅝¾⅞] (?:lb|oz)\b/
const METRIC_MASS = /\d k?g\b/

/** What a plan says first, without what was typed and without bottles, which are sold in millilitres. */
const workedOut = async (line: string): Promise<string> => {
  const [head = ''] = (await textOf(line)).split('\n\n• ')
  const days = head.slice(head.indexOf('\n\n'), head.indexOf('Steeping'))
  return days.replaceAll(/closed [\d.]+ (?:ml|l) jar/g, '')
}

describe('a plan in mixed units', () => {
  it.each([
    ['/plan of:2 lb raspberries spirit:70 cl 95%', METRIC_LIQUID, US_LIQUID, US_MASS, METRIC_MASS],
    ['/plan of:500 g raspberries spirit:3 cups 95%', US_LIQUID, METRIC_LIQUID, METRIC_MASS, US_MASS],
    ['/plan of:2 lb raspberries spirit:3 cups 95%', US_LIQUID, METRIC_LIQUID, US_MASS, METRIC_MASS],
    ['/plan of:500 g raspberries spirit:70 cl 95%', METRIC_LIQUID, US_LIQUID, METRIC_MASS, US_MASS],
    ['/plan of:2 lb raspberries spirit:1 imp pint 95%', /imp (?:pint|fl)/, METRIC_LIQUID, US_MASS, METRIC_MASS],
  ])('%s', async (line, liquid, otherLiquid, mass, otherMass) => {
    const text = await workedOut(line)
    expect(text).toMatch(liquid)
    expect(text).not.toMatch(otherLiquid)
    expect(text).toMatch(mass)
    expect(text).not.toMatch(otherMass)
  })

  it('says each amount as it was typed', async () => {
    const text = await textOf('/plan of:1 lb sloes spirit:70 cl 60% sugar:2 cups')
    expect(text).toMatch(/^Buy 1 lb sloes, 70 cl of 60 % spirit and 2 cups sugar\./)
    expect(await textOf('/plan of:10 lemons spirit:70 cl 40% sugar:8 oz honey')).toContain('8 oz honey')
  })

  it('sums what was typed with what is worked out, in one unit', async () => {
    expect(await textOf('/plan of:10 lemons spirit:70 cl 95% sugar:1 cup')).toMatch(/^Buy .* and \d+ g sugar\./)
  })

  it('keeps °F and proof for who pours in cups', async () => {
    expect(await textOf('/plan of:2 lb raspberries spirit:70 cl 95%')).not.toMatch(/°F|proof/)
    expect(await textOf('/plan of:2 lb raspberries spirit:3 cups 95%')).toMatch(/°F/)
  })
})

const kitchenIn = (options: Readonly<Record<string, string>>) => kitchenOf(signatures.plan.parse(options))

test.each([
  [
    { of: '2 lb plums', spirit: '700 ml 40%' },
    { volume: 'metric', mass: 'us' },
  ],
  [
    { of: '500 g plums', spirit: '2 cups 40%' },
    { volume: 'us', mass: 'metric' },
  ],
  [{ of: '2 lb plums', spirit: '2 cups 40%' }, 'us'],
  [{ of: '10 lemons', spirit: '700 ml 40%', sugar: '2 cups' }, 'metric'],
  // Sugar that was weighed speaks for the sugar that is worked out.
  [{ of: '2 lb plums', spirit: '700 ml 40%', sugar: '200 g' }, 'metric'],
  [
    { of: '500 g plums', spirit: '700 ml 40%', sugar: '8 oz' },
    { volume: 'metric', mass: 'us' },
  ],
  // The first that was poured.
  [{ of: '10 lemons', spirit: '2 cups 40% + 100 ml 95%' }, 'us'],
  [{ of: '10 lemons', spirit: '100 ml 95% + 2 cups 40%' }, 'metric'],
  // Bottles are sold in millilitres.
  [{ of: '10 lemons', spirit: '2 cups 40%', bottles: '2 x 500 ml' }, 'us'],
  [{ of: '10 lemons', strength: '40%', bottles: '2 x 500 ml' }, 'metric'],
  [
    { of: '2 lb plums', strength: '40%', bottles: '2 x 500 ml' },
    { volume: 'metric', mass: 'us' },
  ],
  [{ of: '10 lemons', spirit: '1 imp pint 40%' }, 'imperial'],
])('%j', (options, kitchen) => {
  expect(kitchenIn(options)).toEqual(kitchen)
})
