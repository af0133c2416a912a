import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { BATCHES, readmeRows, ruleCompared } from './rule-of-three.ts'

const readme = join(import.meta.dirname, '..', '..', '..', 'core', 'README.md')

// Common practice, no source: the rule forgets that spirit and water shrink, and the room that sugar takes.
describe.each(BATCHES)('the rule of three for $infusionMl ml of $abvPercent % vol', (wish) => {
  test('without room for the sugar it pours too much water: weak and too much', () => {
    const { offPercent, offMl, rule, rightWaterMl } = ruleCompared(wish, 0)
    expect(offPercent).toBeLessThan(-0.5)
    expect(offMl).toBeGreaterThan(20)
    expect(rule.waterMl).toBeGreaterThan(rightWaterMl)
  })

  test('with 0.6 ml/g for the sugar it forgets that they shrink: strong, and less than it promised', () => {
    const { offPercent, offPromisedMl } = ruleCompared(wish, 0.6)
    expect(offPercent).toBeGreaterThan(0)
    expect(offPromisedMl).toBeLessThan(0)
  })
})

const text = existsSync(readme) ? readFileSync(readme, 'utf8').replaceAll('\u00a0', ' ').replaceAll(/ +/g, ' ') : ''

test.skipIf(!text.includes('920 ml of 90 %'))(
  'its table shows how far the rule of three is off, with these numbers',
  () => {
    for (const row of readmeRows()) expect(text.split('\n')).toContain(row)
  },
)
