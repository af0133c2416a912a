import { describe, expect, it } from 'vitest'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { recipeOf } from '../../../core/jar/state/recipe-of.ts'
import { encodeBatch } from '../../../core/recipe/code/batch-code.ts'
import { newAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'

/** 20 November 2026, at noon. */
const nowMs = Date.UTC(2026, 10, 20, 12)
const deskOf = () => testDesk({ asker: newAsker(), nowMs, width: 400 })

/** The code of a jar that this line begins. */
const codeAfter = async (line: string): Promise<string> => {
  const { asker, jsonOf } = deskOf()
  expect((await jsonOf(line)).error).toBeUndefined()
  return encodeBatch(recipeOf(jarStateOf((await asker.store.read(asker.userId)).jars.at(-1)!.entries)!))
}

const WISH = 'to-strength:30% to-sweetness:250 g/L'
const keysIn = ({ notes }: { readonly notes: readonly { readonly key: string }[] }) => notes.map(({ key }) => key)

describe('/plan from: with what there is of its plants', () => {
  it('weighs counted fruit as its own plan did, and says no factor that is one', async () => {
    const desk = deskOf()
    const code = await codeAfter(`/jar start lemon of:10 lemons spirit:1 l 95% ${WISH}`)
    const fruit = /no bitter pith: about \d+ g/
    const typed = fruit.exec(await desk.textOf(`/plan of:10 lemons spirit:1 l 95% ${WISH}`))![0]
    for (const more of ['', ' spirit:1 l 96%', ' strength:96%']) {
      expect(fruit.exec(await desk.textOf(`/plan from:${code}${more}`))![0], more).toBe(typed)
    }
    expect(await desk.textOf(`/plan from:${code} spirit:1 l 95.2%`)).toContain(
      'About the same amounts as the shared batch, scaled to your spirit',
    )
    expect((await desk.jsonOf(`/plan from:${code}`)).data).toEqual(
      (await desk.jsonOf(`/plan of:10 lemons spirit:1 l 95.0% ${WISH}`)).data,
    )
  })

  it('takes an amount alone as one of its only plant', async () => {
    const desk = deskOf()
    const code = await codeAfter(`/jar start lemon of:10 lemons spirit:1 l 95% ${WISH}`)
    const named = await desk.jsonOf(`/plan from:${code} of:4 lemons`)
    const alone = await desk.jsonOf(`/plan from:${code} of:4`)
    expect(alone.data).toEqual(named.data)
    expect(keysIn(named)).not.toContain('code_only_plant')
    expect(keysIn(alone)).toContain('code_only_plant')
    expect((await desk.jsonOf(`/plan from:${code} of:42 g`)).data).toEqual(alone.data)
    expect(await desk.textOf(`/plan from:${code} of:4`)).toContain(
      'I’ve read “4” as lemon peel, the only plant in that batch.',
    )
  })

  it.each([
    ['spirit:700 ml 60% of:40 g coffee beans bottles:3', 'The coffee beans fill', 'bottles:3 strength:60%'],
    ['of:40 g coffee beans bottles:3', 'The coffee beans fill', 'bottles:3'],
    ['spirit:300 ml strength:60% bottles:3', 'The spirit fills', 'strength:60% bottles:3'],
  ])('says what %s has too little of, and what fills them', async (more, says, fills) => {
    const desk = deskOf()
    const code = await codeAfter('/jar start coffee of:100 g coffee beans spirit:1 l 60%')
    const text = await desk.textOf(`/plan from:${code} ${more}`)
    expect(text).toContain(`${says} only one of your three bottles.`)
    expect(text).toContain(`Fill all three: /plan from:${code} ${fills}`)
    expect((await desk.jsonOf(`/plan from:${code} ${fills}`)).data.bottles).toEqual([{ count: 3, volumeMl: 500 }])
  })
})
