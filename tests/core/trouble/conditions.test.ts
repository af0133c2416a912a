import { expect, it } from 'vitest'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { drier, stronger, sweeter, weaker } from '../../../core/trouble/conditions.ts'
import { NOTHING_KNOWN } from '../../../core/trouble/facts.ts'

// By the words: "under 20 %" and "over 20 %" are both untrue of 20 %.
it.each([
  [19.9, false, true],
  [20, false, false],
  [20.1, true, false],
])('%d is over 20: %s, and under it: %s', (value, isOver, isUnder) => {
  const facts = { ...NOTHING_KNOWN, abvPercent: exactly(value), sugarGPerL: exactly(value) }
  const found = (condition: ReturnType<typeof weaker>): boolean => condition(facts).is === 'yes'
  expect([stronger(20), sweeter(20)].map(found)).toEqual([isOver, isOver])
  expect([weaker(20), drier(20)].map(found)).toEqual([isUnder, isUnder])
})
