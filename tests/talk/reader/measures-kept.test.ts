import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

async function kitchenOf(...lines: readonly string[]) {
  const one = await talkerFor({ after: null })
  for (const line of lines.slice(0, -1)) await one.say(line)
  const { outcome } = await one.hear(lines.at(-1)!)
  return outcome.ok && 'reply' in outcome ? outcome.reply.kitchen : null
}

describe('a batch that was wished in other measures is told in them once it is changed', () => {
  it.each([
    ['12 limes and a litre of 95%', 'in US cups', 'drier'],
    ['12 limes and a litre of 95% in US cups', 'a bit stronger please'],
    ['12 lime e un litro di alcol 95', 'in tazze per favore', 'più dolce'],
  ])('%s, %s', async (...lines) => {
    const plain = await kitchenOf(lines[0]!.replace(' in US cups', ''))
    expect(await kitchenOf(...lines)).not.toEqual(plain)
  })

  it('is metric again where that is wished, and where another batch is planned', async () => {
    const again = await kitchenOf('12 limes and a litre of 95%', 'in US cups', 'in metric please', 'drier')
    expect(again).toMatchObject({ volume: 'metric' })
    const other = await kitchenOf('12 limes and a litre of 95%', 'in US cups', '500 g plums and 700 ml of vodka')
    expect(other).toMatchObject({ volume: 'metric' })
  })
})
