import { describe, expect, it } from 'vitest'
import { jarDesk, LEMON } from './desk.ts'

const keysOf = ({ cautions }: { readonly cautions: readonly { readonly key: string }[] }) =>
  cautions.map(({ key }) => key)

describe('cautions of a jar', () => {
  it('are full the first time and a short line afterwards', async () => {
    const desk = jarDesk()
    expect(keysOf(await desk.ask(LEMON))).toContain('flame')
    const strained = await desk.ask('/jar strain lemon measured:900 ml')
    expect(keysOf(strained)).toEqual(['cool_first', 'caution_again'])
    expect(strained.cautions.at(-1)!.text).toContain('no flame or heat near it')
    await desk.ask('/jar undo lemon')
    const again = await desk.ask('/jar strain lemon measured:900 ml')
    expect(keysOf(again)).toEqual(['caution_again'])
    expect(again.cautions[0]!.text).toMatch(/no flame or heat near it and let the syrup cool first/)
  })

  it('are full again for another jar', async () => {
    const desk = jarDesk()
    await desk.ask(LEMON)
    expect(keysOf(await desk.ask(LEMON.replace('lemon', 'second')))).toContain('flame')
  })

  it('of allergens and poison are full every time', async () => {
    const desk = jarDesk()
    const nuts = '/jar start nuts of:100 g almonds spirit:1 l 60% to-strength:30% to-sweetness:200 g/L'
    const full = (await desk.ask(nuts)).cautions.find(({ text }) => text.includes('allergen'))!
    const added = await desk.ask('/jar add nuts of:20 g almonds')
    expect(added.cautions).toContainEqual(full)
    expect(added.cautions.filter(({ text }) => text.includes('cyanide'))).toHaveLength(1)
    await desk.ask('/jar strain nuts measured:900 ml')
    await desk.ask('/jar sweeten nuts sugar:200 g')
    expect((await desk.ask('/jar bottle nuts bottles:2')).cautions).toContainEqual(full)
    expect((await desk.ask('/jar open nuts')).cautions).toContainEqual(full)
  })

  it('of a mild allergen too, while what only stains the hands is shortened', async () => {
    const desk = jarDesk()
    const start = '/jar start x of:100 g raisins + 2 g dried chilli spirit:1 l 60% to-strength:30% to-sweetness:200 g/L'
    const first = await desk.ask(start)
    const again = await desk.ask('/jar add x of:20 g raisins + 0.5 g dried chilli')
    const about = ({ cautions }: typeof first, word: string) =>
      cautions.filter(({ text }) => text.includes(word)).length
    expect([about(first, 'sulphites'), about(again, 'sulphites')]).toEqual([1, 1])
    expect([about(first, 'burns eyes'), about(again, 'burns eyes')]).toEqual([1, 0])
    expect(again.cautions.at(-1)!.text).toContain('/cautions')
  })

  it('that were not said are not remembered', async () => {
    const desk = jarDesk()
    await desk.ask(LEMON)
    const before = (await desk.person()).jars[0]!.cautioned
    await desk.ask('/jar shake lemon')
    const shaken = await desk.person()
    await desk.ask('/jar shake lemon')
    expect(await desk.person()).toBe(shaken)
    expect((await desk.person()).jars[0]!.cautioned).toEqual(before)
    await desk.refused('/jar sweeten lemon sugar:1 g')
    expect((await desk.person()).jars[0]!.cautioned).toEqual(before)
  })
})
