import { describe, expect, test } from 'vitest'
import { newAsker } from '../asker.ts'
import { flat } from '../flat.ts'
import { startLine } from '../start-line.ts'
import { testDesk } from '../test-desk.ts'

const DAY_MS = 24 * 3_600_000
const NOW_MS = Date.UTC(2026, 10, 1, 12)

const desk = (nowMs = NOW_MS, asker = newAsker()) => testDesk({ asker, nowMs })
const keysOf = (said: readonly { readonly key: string }[]): readonly string[] => said.map(({ key }) => key)
const SYRUP = '/syrup infusion:920 ml strength:82% to-strength:30% to-sweetness:250 g/L'

describe('an amount of something that sweetens', () => {
  test('200 g of honey are 164 g of sugars and 34 g of water in what is mixed', async () => {
    const { data } = await desk().jsonOf('/mix spirit:1 kg strength:40% sugar:200 g honey')
    const { data: plain } = await desk().jsonOf('/mix spirit:1 kg strength:40% water:34.4 g sugar:164.2 g')
    // 1.4 g of what is neither takes the room of as much sugar.
    expect(data.massG).toBeCloseTo(1200, 9)
    expect(data.massG - plain.massG).toBeCloseTo(1.4, 9)
    expect(data.volumeMl - plain.volumeMl).toBeCloseTo(1.4 * 0.62, 1)
    expect((data.sugarGPerL * data.volumeMl) / 1000).toBeCloseTo(164.2, 9)
    expect(data.freezesAtC).toBeLessThan(plain.freezesAtC)
  })

  test('several go in together, and each is said to be counted', async () => {
    const { data, notes } = await desk().jsonOf(
      '/mix spirit:1 l strength:40% sugar:100 g honey + 50 g maple syrup + 100 g',
    )
    expect((data.sugarGPerL * data.volumeMl) / 1000).toBeCloseTo(82.1 + 33 + 100, 9)
    expect(keysOf(notes).filter((key) => key === 'sweetener_counted')).toHaveLength(2)
    expect(keysOf(notes)).toContain('honey_haze')
  })

  test('a syrup whose parts were not said is asked back in lines that run', async () => {
    const { error } = await desk().jsonOf('/mix spirit:1 l strength:95% sugar:300 ml simple syrup')
    expect(error).toMatchObject({ code: 'ambiguous', option: 'sugar' })
    expect(error!.message).toContain('300 ml 1:1 syrup by weight or 300 ml 1:1 syrup by cup')
  })

  test('what is no sugar is refused with what is', async () => {
    const { error } = await desk().jsonOf('/mix spirit:1 l strength:95% sugar:20 g xylitol')
    expect(error).toMatchObject({ code: 'bad_value' })
    expect(error!.message).toMatch(/xylitol.*honey/)
  })
})

describe('an amount that is worked out', () => {
  test('/syrup works out honey that /mix confirms', async () => {
    const { data } = await desk().jsonOf(`${SYRUP} sugar:honey`)
    expect(data).toMatchObject({ sweetener: 'honey' })
    expect(data.sweetenerSugarsG).toBeCloseTo(0.821 * data.sugarG, 9)
    expect(data.sweetenerWaterG).toBeCloseTo(0.172 * data.sugarG, 9)
    const { data: made } = await desk().jsonOf(
      `/mix spirit:920 ml strength:82% water:${data.waterG} g sugar:${data.sugarG} g honey`,
    )
    expect(made.abvPercent).toBeCloseTo(30, 6)
    expect(made.sugarGPerL).toBeCloseTo(250, 6)
    const { data: plain } = await desk().jsonOf(SYRUP)
    expect(plain).toMatchObject({ sweetener: 'white_sugar', sweetenerWaterG: 0 })
    expect(plain.sugarGPerL).toBeCloseTo(data.sugarGPerL, 9)
  })

  test('says what it was counted with, how sweet it is and that honey clouds', async () => {
    const { notes } = await desk().jsonOf(`${SYRUP} sugar:honey`)
    const keys = keysOf(notes)
    expect(keys).toEqual(expect.arrayContaining(['sweetener_counted', 'sweetener_taste', 'honey_haze']))
    const { notes: plain } = await desk().jsonOf(SYRUP)
    expect(keysOf(plain).filter((key) => /sweetener|honey/.test(key))).toEqual([])
    expect(keys).not.toContain('ratio_as_weighed')
    const { notes: byRatio } = await desk().jsonOf(
      '/syrup infusion:920 ml strength:82% to-strength:30% ratio:2:1 sugar:honey',
    )
    expect(keysOf(byRatio)).toContain('ratio_as_weighed')
  })

  test('an amount of it is answered with the line without', async () => {
    const { error } = await desk().jsonOf(`${SYRUP} sugar:300 g honey`)
    expect(error!.message).toContain(`${SYRUP} sugar:honey`)
  })

  test('three ways offer lines with it', async () => {
    const { data } = await desk().jsonOf('/syrup infusion:920 ml strength:82% sugar:agave syrup')
    const styles = data.styles as readonly { line: string; sugarG: number }[]
    for (const { line, sugarG } of styles) {
      expect(line).toContain('sugar:agave syrup')
      expect((await desk().jsonOf(line)).data.sugarG).toBeCloseTo(sugarG, 6)
    }
  })

  test('/adjust adds it', async () => {
    const line = '/adjust liqueur:1.8 l strength:33% sweetness:100 g/L to-strength:30% to-sweetness:150 g/L'
    const { data } = await desk().jsonOf(`${line} spirit-strength:95% sugar:golden syrup`)
    expect(data).toMatchObject({ sweetener: 'golden_syrup', spiritMl: 0 })
    const { data: made } = await desk().jsonOf(
      `/mix spirit:1.8 l 33% 100 g/L water:${data.waterG} g sugar:${data.sugarG} g golden syrup`,
    )
    expect(made.abvPercent).toBeCloseTo(30, 6)
    expect(made.sugarGPerL).toBeCloseTo(150, 6)
  })

  test('/plan buys it, sweetens with it and warns of it', async () => {
    const plan = '/plan of:10 lemons spirit:1 l strength:95%'
    const { data, notes, cautions } = await desk().jsonOf(`${plan} sugar:honey`)
    const { data: plain } = await desk().jsonOf(plan)
    expect(data).toMatchObject({
      sweetener: 'honey',
      abvPercent: expect.closeTo(30, 9),
      sugarGPerL: expect.closeTo(190, 9),
    })
    expect(data.sugarG / plain.sugarG).toBeCloseTo(1 / 0.821, 2)
    expect(keysOf(notes)).toContain('sweetener_counted')
    expect(keysOf(cautions)).toContain('honey_infant')
    expect(flat(await desk().textOf(`${plan} sugar:100 g + honey`))).toMatch(/100 g sugar and \d+ g honey/)
  })
})

describe('a jar that is sweetened with honey', () => {
  const start = async () => {
    const asker = newAsker()
    expect(
      (await desk(NOW_MS, asker).jsonOf('/jar start lemon of:10 lemons spirit:1 l 95% sugar:honey')).error,
    ).toBeUndefined()
    return asker
  }
  const later = NOW_MS + 20 * DAY_MS

  test('asks for it when it is strained, and takes it', async () => {
    const asker = await start()
    const strained = desk(later, asker)
    const { data } = await strained.jsonOf('/jar strain lemon measured:930 ml strength:87%')
    const syrup = data.syrup as { sweetener: string; sugarG: number; waterMl: number }
    expect(syrup.sweetener).toBe('honey')
    const told = await desk(later, asker).jsonOf('/jar sweeten lemon')
    expect(told.error!.message).toMatch(/\/jar sweeten lemon sugar:\d+ g honey water:[\d.]+ (?:ml|l)$/)
    const other = await desk(later, asker).jsonOf('/jar sweeten lemon sugar:maple syrup')
    expect(other.error!.message).toMatch(/\/jar sweeten lemon sugar:\d+ g maple syrup water:[\d.]+ (?:ml|l)$/)
    const line = told.error!.message.slice(told.error!.message.indexOf('/jar sweeten'))
    const sweetened = await desk(later, asker).jsonOf(line)
    expect(sweetened.data.abvPercent).toBeCloseTo(30, 0)
    expect(sweetened.data.sugarGPerL).toBeCloseTo(190, -1)
    expect(keysOf(sweetened.notes)).not.toContain('jar_sweetened_otherwise')
  })

  test('reminds of honey, not of sugar', async () => {
    const asker = await start()
    await desk(later, asker).jsonOf('/jar strain lemon measured:930 ml strength:87%')
    expect(flat(await desk(later, asker).textOf('/jar show lemon'))).not.toMatch(/\d g sugar/)
    expect(flat(await desk(later, asker).textOf('/syrup jar:lemon'))).toMatch(/\d+ g honey/)
  })

  test('is made again of honey, or of what is named instead', async () => {
    const asker = await start()
    await desk(later, asker).jsonOf('/jar strain lemon measured:930 ml strength:87%')
    await desk(later, asker).jsonOf('/jar sweeten lemon water:1.4 l sugar:620 g honey')
    const again = async (line: string, name: string) => {
      const begun = desk(later, asker)
      expect((await begun.jsonOf(await startLine(begun, line))).error).toBeUndefined()
      await desk(later + 20 * DAY_MS, asker).jsonOf(`/jar strain ${name} measured:930 ml strength:87%`)
      return flat(await desk(later + 20 * DAY_MS, asker).textOf(`/syrup jar:${name}`))
    }
    expect(await again('/again lemon', 'lemon 2')).toMatch(/\d+ g honey/)
    expect(await again('/again lemon sugar:date syrup', 'lemon 3')).toMatch(/\d+ g date syrup/)
  })
})
