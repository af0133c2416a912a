import { expect, it } from 'vitest'
import { textOf } from './desk.ts'

it('gives no advice by the day for what is strained within hours', async () => {
  const inOneLine = async (line: string) => (await textOf(line)).replace(/\s+/g, ' ')
  expect(await inOneLine('/plan of:100 g coffee beans spirit:1 l 40% days:3 hours')).toContain('Shake it now and then.')
  expect(await inOneLine('/plan of:100 g coffee beans spirit:1 l 40%')).toContain('Shake every day or two.')
})
