import { describe, expect, it } from 'vitest'
import { linesOf } from '../call-typed.ts'
import { jarDesk, LEMON, numberIn } from './desk.ts'

const strained = async () => {
  const desk = jarDesk()
  await desk.ask('/jar start herb of:10 g rosemary spirit:1 l 95% to-strength:30% to-sweetness:250 g/L')
  await desk.ask('/jar strain herb measured:920 ml strength:78%')
  return desk
}

describe('/syrup jar:', () => {
  it('takes the wishes that were planned, where none are named', async () => {
    const desk = await strained()
    const planned = await desk.ask('/syrup jar:herb')
    expect(numberIn(planned, 'abvPercent')).toBeCloseTo(30, 6)
    expect(numberIn(planned, 'sugarGPerL')).toBeCloseTo(250, 6)
    const sweeter = await desk.ask('/syrup jar:herb to-sweetness:300 g/L')
    expect(numberIn(sweeter, 'abvPercent')).toBeCloseTo(30, 6)
    expect(numberIn(sweeter, 'sugarGPerL')).toBeCloseTo(300, 6)
    const byRatio = await desk.ask('/syrup jar:herb ratio:1:1')
    expect(numberIn(byRatio, 'sugarG')).toBeCloseTo(numberIn(byRatio, 'waterG'), 6)
    expect(numberIn(byRatio, 'abvPercent')).toBeCloseTo(30, 6)
    const sweetByRatio = await desk.ask('/syrup jar:herb ratio:1:1 to-sweetness:250 g/L')
    expect(numberIn(sweetByRatio, 'sugarGPerL')).toBeCloseTo(250, 6)
  })

  it('says which liquid it took, and changes nothing', async () => {
    const desk = await strained()
    const before = await desk.person()
    const { notes } = await desk.ask('/syrup jar:herb')
    expect(notes.find(({ key }) => key === 'jar_held')!.text).toMatch(/herb jar: 920\sml/)
    expect(await desk.person()).toBe(before)
  })

  it('offers the line that writes down the very syrup it worked out, as long as none is in bottles', async () => {
    const desk = await strained()
    const lineIn = async (line: string) => /\/jar sweeten .*$/m.exec(await desk.textOf(line))?.[0]
    const planned = await lineIn('/syrup jar:herb')
    const sweeter = await lineIn('/syrup jar:herb to-sweetness:300 g/L')
    expect(planned).toMatch(/^\/jar sweeten herb sugar:\d+ g water:/)
    expect(sweeter).toMatch(/^\/jar sweeten herb sugar:\d+ g water:/)
    expect(sweeter).not.toBe(planned)
    await desk.ask(sweeter!.replace(/ {2}.*/, ''))
    await desk.ask('/jar bottle herb bottles:1 x 500 ml')
    expect(await lineIn('/syrup jar:herb to-sweetness:320 g/L')).toBeUndefined()
  })

  it('offers lines for the same jar, each of which runs', async () => {
    const desk = jarDesk()
    await desk.ask('/jar start x of:20 g jaboticaba spirit:1 l 95% unknown-ok:yes')
    await desk.ask('/jar strain x measured:900 ml strength:80%')
    const outcome = await desk.run('/syrup jar:x')
    const lines = outcome.ok ? linesOf(outcome.reply.actions) : []
    expect(lines.length).toBeGreaterThan(0)
    for (const line of lines) {
      expect(line).toMatch(/^\/(?:syrup jar:x|jar sweeten x) /)
      await desk.ask(line)
    }
  })

  it('says of a jar that steeps what its plan expects, with other wishes too, and measures nothing', async () => {
    const desk = jarDesk()
    await desk.ask(LEMON)
    const expectedOf = async (line: string) => (await desk.ask(line)).data.expected as Record<string, number>
    const { sugarG, waterMl } = await expectedOf('/syrup jar:lemon')
    const { data } = await desk.ask('/plan of:10 lemons spirit:1 l 95% to-strength:30% to-sweetness:250 g/L')
    // As the plan of the same batch has it.
    expect(sugarG).toBeCloseTo(data.sugarG as number, 6)
    expect(waterMl).toBeCloseTo(data.waterMl as number, 6)
    const drier = await expectedOf('/syrup jar:lemon to-sweetness:120 g/L')
    expect(drier.sugarG).toBeLessThan(0.6 * sugarG!)
    expect(await desk.textOf('/syrup jar:lemon')).toMatch(/^About .* sugar in .* water, once lemon is strained\./)
  })

  it('refuses a jar that steeps beside what is measured, one that is done, and a jar beside an infusion', async () => {
    const desk = await strained()
    await desk.ask(LEMON)
    expect((await desk.refused('/syrup jar:lemon at-most:2 l')).code).toBe('wrong_stage')
    expect((await desk.refused('/syrup jar:herb infusion:1 l')).code).toBe('too_many_options')
    expect((await desk.refused('/syrup jar:herb strength:78%')).code).toBe('too_many_options')
    expect((await desk.refused('/syrup jar:plum')).code).toBe('not_found')
    expect((await desk.refused('/syrup strength:78%')).option).toBe('infusion')
    await desk.ask('/jar empty herb')
    expect((await desk.refused('/syrup jar:herb')).code).toBe('wrong_stage')
  })
})
