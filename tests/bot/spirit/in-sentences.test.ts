import { expect, test } from 'vitest'
import { sampled } from '../../runs.ts'
import { testDesk } from '../test-desk.ts'
import { goodSpirits, undrinkableSpirits } from '../test-lines.ts'

const codeOf = async (line: string): Promise<string> => (await testDesk().jsonOf(line)).error?.code ?? 'answered'

/** Which of some sentences are answered, each with a spirit. */
const answered = async (spirits: readonly string[]): Promise<readonly string[]> => {
  const found: string[] = []
  for (const spirit of spirits) if ((await codeOf(`10 lemons and ${spirit}`)) === 'answered') found.push(spirit)
  return found
}

test('of spirits not for drinking none is planned in a sentence', async () => {
  expect(await answered(sampled(undrinkableSpirits, 8))).toEqual([])
})

test('of spirits that people pour none is refused in a sentence', async () => {
  const refused: string[] = []
  for (const spirit of sampled(goodSpirits, 8)) {
    if ((await codeOf(`10 lemons and ${spirit}`)) === 'refused') refused.push(spirit)
  }
  expect(refused).toEqual([])
})

test.each(['a litre of vodka mate', '700 ml of gin dad!', 'un litro di vodka zio'])(
  'whoever is spoken to tells nothing of it: %s',
  async (spirit) => {
    expect(await codeOf(`10 lemons and ${spirit}`)).toBe('answered')
  },
)

test.each(['a litre of vodka from a mate', 'a litre of vodka of my uncle', 'a litre of my dad vodka'])(
  'whose it is stays refused: %s',
  async (spirit) => {
    expect(await codeOf(`10 lemons and ${spirit}`)).toBe('refused')
  },
)
