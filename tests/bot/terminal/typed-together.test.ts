import { createInterface } from 'node:readline'
import { PassThrough } from 'node:stream'
import { describe, expect, it } from 'vitest'
import { recipesTyped } from '../../../bot/chat/hear/recipe-typed.ts'
import { type TypedAtOnce, typedTogether } from '../../../bot/terminal/chat/typed-together.ts'

const RECIPE = ['plum brandy', '2 lbs plums', 'a fifth of brandy', '200 g sugar', 'leave it six weeks']

async function typedOf(give: (input: PassThrough) => void | Promise<void>): Promise<readonly TypedAtOnce[]> {
  const input = new PassThrough()
  const typed: TypedAtOnce[] = []
  const reading = (async () => {
    for await (const each of typedTogether(createInterface({ input }), recipesTyped)) typed.push(each)
  })()
  await give(input)
  input.end()
  await reading
  return typed
}

describe('what is typed', () => {
  it('comes line by line, but for a recipe that was pasted', async () => {
    const typed = await typedOf((input) => {
      input.write(`/plan 10 lemons 1 l 95%\n${RECIPE.join('\n')}\n\nshook it\ndouble\n`)
    })
    expect(typed).toEqual([
      { text: '/plan 10 lemons 1 l 95%', line: 1 },
      { text: RECIPE.join('\n'), line: 2 },
      { text: '', line: 7 },
      { text: 'shook it', line: 8 },
      { text: 'double', line: 9 },
    ])
  })

  it('loses no line that came before the first was asked for', async () => {
    const input = new PassThrough()
    const typed = typedTogether(createInterface({ input }), recipesTyped)
    input.end('one\ntwo\n')
    await new Promise((resolve) => setTimeout(resolve, 20))
    const texts: string[] = []
    for await (const { text } of typed) texts.push(text)
    expect(texts).toEqual(['one', 'two'])
  })

  it('is answered line by line where somebody types it so', async () => {
    const typed = await typedOf(async (input) => {
      for (const line of RECIPE) {
        input.write(`${line}\n`)
        await new Promise((resolve) => setTimeout(resolve, 120))
      }
    })
    expect(typed.map(({ text }) => text)).toEqual(RECIPE)
  })
})
