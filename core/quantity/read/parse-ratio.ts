import type { Ratio } from '../quantities.ts'
import { accepted, isWithin } from './accepted-ranges.ts'
import { chooseReading, expectNumber } from './measure-at.ts'
import type { Reading } from './read-number.ts'
import { expectEnd, readText } from './tokens.ts'

const over = (sugar: Reading, water: Reading): Reading => ({
  value: sugar.value / water.value,
  halfDigit: 0,
  text: `${sugar.text}:${water.text}`,
  assumed: sugar.assumed ?? water.assumed,
})

/** Sugar to water by mass, 0.01 to 20: `1:1`, `2:1`, `1.5`, `3/2`, `2 to 1`. */
export const parseRatio = (text: string): Ratio => {
  const typed = readText(text, 'ratio')
  const sugar = expectNumber(typed, 0)
  const hasWater = [':', '/', 'to', 'a'].includes(typed.tokens[sugar.next]?.text ?? '')
  const water = hasWater ? expectNumber(typed, sugar.next + 1) : null
  expectEnd(typed, water?.next ?? sugar.next)
  const readings = water
    ? sugar.readings.flatMap((each) => water.readings.map((other) => over(each, other)))
    : sugar.readings
  const { value, assumed } = chooseReading(
    typed,
    readings,
    (each) => isWithin(accepted.ratio, each),
    (choice) => choice,
  )
  return { kind: 'ratio', sugarGPerWaterG: value, assumed: assumed === null ? [] : [assumed] }
}
