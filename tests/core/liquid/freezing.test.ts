import { expect, test } from 'vitest'
import { abvFromDensity, abvFromMassFraction, massFractionFromDensity } from '../../../core/liquid/ethanol-water.ts'
import { inFreezer, leastAbvIceFree } from '../../../core/liquid/freezer.ts'
import { depressionK, freezesAtC, freezingPlusMinusC, sugarDepressionK } from '../../../core/liquid/freezing.ts'
import { liquidFrom, mix, NOTHING, spirit, sugar, water } from '../../../core/liquid/liquid.ts'
import { compare, misprintsOf, readTable } from '../../published/table.ts'

const ofMass = (massPercent: number) => spirit({ volumeMl: 1000, abvPercent: abvFromMassFraction(massPercent / 100) })
const sweet = (abvPercent: number, sugarGPerL: number) => liquidFrom({ volumeMl: 1000, abvPercent, sugarGPerL })

test.each(['freezing-melinder', 'freezing-crc-ethanol'])('first ice of ethanol by mass: %s', (name) => {
  const table = readTable(name)
  expect(compare(table, 1, ([mass]) => freezesAtC(ofMass(mass!))).off).toEqual(misprintsOf(table, 1))
})

test('Melinder at 16 % is within the 0.4 K by which it is known to differ from CRC', () => {
  expect(Math.abs(freezesAtC(ofMass(16)) - -7.659)).toBeLessThanOrEqual(0.4)
})

const lange = readTable('freezing-lange')
test(`first ice, strength and gravity (${lange.source})`, () => {
  const density = ([gravity]: readonly number[]): number => gravity! * 999.972
  expect(compare(lange, 3, ([, mass]) => freezesAtC(ofMass(mass!))).off).toEqual([])
  expect(compare(lange, 2, ([, mass]) => abvFromMassFraction(mass! / 100), { tolerance: () => 0.15 }).off).toEqual([])
  const { max } = compare({ ...lange, tolerance: [0, 0.06, 0.15, 0] }, 1, (row) => {
    return 100 * massFractionFromDensity(density(row), 20)
  })
  expect(max).toBeLessThanOrEqual(0.1)
  expect(abvFromDensity(density([0.95914]), 20)).toBeCloseTo(32.4, 0)
})

const toolbox = readTable('freezing-toolbox')
test(`first ice of ethanol by volume (${toolbox.source})`, () => {
  const within = ([percent]: readonly number[]): number => (percent! === 60 || percent! === 70 ? 2.3 : 1)
  const { off, compared } = compare(
    toolbox,
    1,
    ([abvPercent]) => freezesAtC(spirit({ volumeMl: 1000, abvPercent: abvPercent! })),
    { tolerance: within },
  )
  expect(off).toEqual([])
  expect(compared).toBe(11)
})

const leighton = readTable('freezing-leighton')
test(`depression by sucrose (${leighton.source})`, () => {
  expect(compare(leighton, 1, ([sugarG]) => sugarDepressionK(sugarG!)).off).toEqual([])
  expect(compare(leighton, 1, ([sugarG]) => depressionK(mix(sugar(sugarG!), water(100)))).off).toEqual([])
})

const crc = readTable('freezing-crc-sucrose')
test(`first ice of sucrose by mass (${crc.source})`, () => {
  expect(compare(crc, 1, ([mass]) => freezesAtC(mix(sugar(mass!), water(100 - mass!)))).off).toEqual([])
})

const model = readTable('freezing-model')
test(`first ice of both together (${model.source})`, () => {
  expect(compare(model, 2, ([percent, gPerL]) => freezesAtC(sweet(percent!, gPerL!))).off).toEqual([])
})

const least = readTable('least-strength')
test(`least strength free of ice (${least.source})`, () => {
  expect(compare(least, 2, ([freezerC, gPerL]) => leastAbvIceFree(gPerL!, freezerC!)).off).toEqual([])
})

const ice = readTable('ice-fraction')
test(`share of the water that is ice (${ice.source})`, () => {
  const at = (freezerC: number) => (row: readonly number[]) =>
    100 * inFreezer(sweet(row[0]!, row[1]!), freezerC).iceFraction
  expect(compare(ice, 2, at(-18)).off).toEqual([])
  expect(compare(ice, 3, at(-22)).off).toEqual([])
})

test.each([
  [20, 200, 1.5],
  [10, 0, 0.4],
  [40, 0, 0.4],
  [25, 200, 2.25],
  [20, 250, 2.25],
  [35, 300, 3],
  [30, 100, 1.5],
  [20, 100, 0.75],
])('first ice at %d %% vol and %d g/L is known to ±%d K', (abvPercent, sugarGPerL, plusMinusK) => {
  expect(freezingPlusMinusC(sweet(abvPercent, sugarGPerL))).toBeCloseTo(plusMinusK, 6)
})

test.each([
  ['pure water', water(100), 'solid'],
  ['a punch of 10 % vol', sweet(10, 100), 'solid'],
  ['a liqueur of 20 % vol and 250 g/L', sweet(20, 250), 'slush'],
  ['a liqueur on the line', sweet(leastAbvIceFree(200) + 0.3, 200), 'should_pour'],
  ['a liqueur a little under it', sweet(leastAbvIceFree(200) - 0.3, 200), 'slush'],
  ['vodka a little above it', sweet(leastAbvIceFree(0) + 0.6, 0), 'pours'],
  ['a liqueur of 30 % vol and 250 g/L', sweet(30, 250), 'pours'],
  ['pure alcohol', sweet(100, 0), 'pours'],
  ['nothing', NOTHING, 'pours'],
  ['dry sugar', sugar(100), 'pours'],
] as const)('%s in a home freezer: %s', (_name, liquid, state) => {
  expect(inFreezer(liquid).state).toBe(state)
})

test('ice leaves a rest that freezes at the freezer’s temperature', () => {
  const liquid = sweet(20, 150)
  const { iceFraction } = inFreezer(liquid, -18)
  expect(freezesAtC({ ...liquid, waterG: liquid.waterG * (1 - iceFraction) })).toBeCloseTo(-18, 6)
})

test('a warm freezer needs no alcohol, a temperature off the table is refused', () => {
  expect(leastAbvIceFree(0, 5)).toBe(0)
  expect(leastAbvIceFree(0, 0)).toBe(0)
  expect(() => leastAbvIceFree(0, -120)).toThrow('temperature_out_of_range')
  expect(() => inFreezer(NOTHING, Number.NaN)).toThrow('temperature_out_of_range')
})
