import { describe, expect, it } from 'vitest'
import { unitsIn } from '../../../bot/text/messages/kitchen.ts'
import { talkerFor } from './told.ts'

/** In whose measures the last line is answered. */
async function pouredIn(...lines: readonly string[]) {
  const one = await talkerFor({ after: null })
  for (const line of lines.slice(0, -1)) await one.say(line)
  const { outcome } = await one.hear(lines.at(-1)!)
  return outcome.ok && 'reply' in outcome ? unitsIn(outcome.reply.kitchen).volume : null
}

describe('a batch that was wished in other measures is told in them once it is changed', () => {
  it.each([
    ['12 limes and a litre of 95%', 'in US cups', 'drier'],
    ['12 limes and a litre of 95% in US cups', 'a bit stronger please'],
    ['12 lime e un litro di alcol 95', 'in tazze per favore', 'più dolce'],
    ['12 limes and a litre of 95%', 'in US cups', 'drier', 'make it 35%'],
  ])('%s, %s', async (...lines) => {
    expect(await pouredIn(...lines)).toBe('us')
  })

  it.each([
    ['12 limes and a litre of 95%', 'in US cups', 'in metric please', 'drier'],
    ['12 limes and a litre of 95%', 'in US cups', '500 g plums and 700 ml of vodka'],
    ['12 limes and a litre of 95%', 'drier'],
  ])('%s, %s: is metric', async (...lines) => {
    expect(await pouredIn(...lines)).toBe('metric')
  })
})
