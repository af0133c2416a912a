import { expect, it } from 'vitest'
import { askAny, textOf } from './desk.ts'

it('says one strength in one way where the usual is out of reach, and offers a whole line where a wish is', async () => {
  for (const of of ['sloes', 'mangoes', 'basil leaves', 'carrots']) {
    const text = await textOf(`/plan of:${of} spirit:1 l 37.5%`)
    const [, made] = / at ([\d.]+) %/.exec(text)!
    expect(text, of).toContain(`I’ve gone for ${made} %`)
  }
  const { error } = await askAny('/plan of:500 g sloes spirit:700 ml 40% to-strength:38%')
  const [, line] = /At most [\d.]+ %: (\/plan .+)$/.exec(error!.message)!
  expect((await askAny(line!)).error).toBeUndefined()
})
