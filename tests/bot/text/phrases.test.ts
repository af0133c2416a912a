import { expect, test } from 'vitest'
import { articleOf } from '../../../bot/text/en/phrases.ts'

test.each(['8', '8.5 %', '11', '11.4 % vol', '18', '80', '82 %', '89.9', '800 ml', '8,000', '11,000', '18,500'])(
  'an %s',
  (number) => {
    expect(articleOf(number)).toBe('an')
  },
)

test.each(['1', '1.8', '7', '10', '12', '28', '78 %', '110', '118', '180', '1,100', '1,800', '2:1', '0.8'])(
  'a %s',
  (number) => {
    expect(articleOf(number)).toBe('a')
  },
)
