import { describe, expect, it } from 'vitest'
import { lineOf } from '../../../bot/calls/write-line.ts'
import { eventsIn, jarDesk, LEMON, numberIn } from './desk.ts'

const HERB = '/jar start herb of:10 g rosemary spirit:1 l 95% to-strength:30% to-sweetness:250 g/L'

/** A jar of rosemary, which brings hardly any sugar, strained at 78 % vol. */
const strained = async () => {
  const desk = jarDesk()
  await desk.ask(HERB)
  desk.at('2026-11-20')
  const json = await desk.ask('/jar strain herb measured:920±2 ml strength:78%')
  return { desk, json }
}

describe('a batch from jar to glass', () => {
  it('is answered with the syrup for what it was planned to become', async () => {
    const { json } = await strained()
    const syrup = json.data.syrup as Record<string, number>
    // % vol is defined by the volume of alcohol at 20 °C: 920 ml of 78 % hold what 2392 ml of 30 % do.
    expect(syrup.volumeMl! / ((920 * 78) / 30)).toBeCloseTo(1, 2)
    expect(syrup.sugarG! / syrup.volumeMl!).toBeCloseTo(0.25, 3)
  })

  it('is what /syrup makes of the same liquid', async () => {
    const { desk, json } = await strained()
    const volumeMl = numberIn(json, 'volumeMl')
    const abvPercent = numberIn(json, 'abvPercent')
    const sugarGPerL = numberIn(json, 'sugarGPerL')
    const { data } = await desk.ask(
      `/adjust liqueur:${volumeMl} ml strength:${abvPercent}% sweetness:${sugarGPerL} g/L to-strength:30% to-sweetness:250 g/L`,
    )
    const syrup = json.data.syrup as Record<string, number>
    // What a few herbs give off beside sugar is known of the jar alone.
    expect(syrup.waterMl).toBeCloseTo(data.waterMl as number, 1)
    expect(syrup.sugarG).toBeCloseTo(data.sugarG as number, 1)
  })

  it('becomes it when the amounts that were offered go in', async () => {
    const { desk } = await strained()
    const again = await desk.run('/syrup jar:herb')
    expect(again.ok).toBe(true)
    await desk.ask('/jar undo herb')
    const outcome = await desk.run('/jar strain herb measured:920 ml strength:78%')
    const line = outcome.ok ? lineOf(outcome.reply.actions[0]!.call) : ''
    expect(line).toMatch(/^\/jar sweeten herb sugar:\d+ g water:[\d.]+ l$/)
    desk.at('2026-11-21')
    const json = await desk.ask(line)
    expect(numberIn(json, 'abvPercent')).toBeCloseTo(30, 0)
    expect(numberIn(json, 'sugarGPerL') / 250).toBeCloseTo(1, 2)
    expect(json.data.stage).toBe('sweetened')
    // Rosemary rests 30 days at least: common practice, no source.
    expect(await desk.headlineOf('/jar undo herb')).toMatchObject({ values: { happening: { kind: 'sweetened' } } })
  })

  it('goes through every stage', async () => {
    const { desk } = await strained()
    desk.at('2026-11-21')
    await desk.ask('/jar sweeten herb water:1.15 l sugar:598 g')
    desk.at('2026-11-23')
    await desk.ask('/jar filter herb measured:2.35 l')
    const bottled = await desk.ask('/jar bottle herb bottles:4 x 500 ml + 1 x 250 ml')
    expect(bottled.data.stage).toBe('resting')
    desk.at('2027-01-20')
    expect((await desk.ask('/jar open herb')).data.stage).toBe('ready')
    await desk.ask('/jar taste herb rating:★★★★★ note:worth the wait')
    const done = await desk.ask('/jar empty herb')
    expect(done.data.stage).toBe('emptied')
    expect(done.data.next).toBeNull()
    expect(eventsIn(done).map((event) => event.slice(11))).toEqual(
      'started strained sweetened filtered bottled opened tasted emptied'.split(' '),
    )
  })

  it('takes bottles by their size alone: as many as it fills', async () => {
    const { desk } = await strained()
    await desk.ask('/jar sweeten herb water:1.15 l sugar:598 g')
    await desk.ask('/jar bottle herb bottles:500 ml')
    expect((await desk.storyOf('herb')).bottled?.bottles).toEqual([{ count: 4, volumeMl: 500 }])
  })

  it('wonders at more bottles than there was', async () => {
    const { desk } = await strained()
    await desk.ask('/jar sweeten herb water:1.15 l sugar:598 g')
    const keys = ({ notes }: { readonly notes: readonly { readonly key: string }[] }) => notes.map(({ key }) => key)
    expect(keys(await desk.ask('/jar bottle herb bottles:4 x 500 ml'))).not.toContain('jar_bottled_more')
    expect(keys(await desk.ask('/jar bottle herb bottles:1 x 750 ml'))).toContain('jar_bottled_more')
  })

  it('warns of no more in bottles where both figures read the same in its kitchen', async () => {
    const filled = async (bottles: string) => {
      const desk = jarDesk()
      await desk.ask('/jar start plum of:1 lb plums spirit:1 quart 80 proof vodka')
      await desk.ask('/jar strain plum measured:3 3/4 cups')
      return (await desk.ask(`/jar bottle plum bottles:${bottles}`)).notes.map(({ key }) => key)
    }
    // 3 3/4 cups are 887 ml, read as 910 are and not as 1100 are.
    expect(await filled('2 x 455 ml')).not.toContain('jar_bottled_more')
    expect(await filled('2 x 550 ml')).toContain('jar_bottled_more')
  })

  it('without a measurement reckons with what is expected, and says so', async () => {
    const desk = jarDesk()
    await desk.ask(HERB)
    const json = await desk.ask('/jar strain herb')
    expect(json.notes.map(({ key }) => key)).toContain('jar_not_measured')
    expect(numberIn(json, 'abvPercentPlusMinus')).toBeGreaterThan(0)
    expect(await desk.textOf('/jar correct herb measured:900 ml')).toContain('Noted for the straining of herb: 900 ml.')
    // What was said before is told beside what holds now, what was not is told alone.
    const corrected = await desk.textOf('/jar correct herb measured:880 ml strength:40%')
    expect(corrected).toContain('Corrected the straining of herb: 880 ml (was 900 ml), 40%.')
  })

  it('says when water and sugar cannot make what was planned, and records all the same', async () => {
    const desk = jarDesk()
    await desk.ask('/jar start weak of:10 g rosemary spirit:1 l 40% to-strength:30% to-sweetness:250 g/L')
    const json = await desk.ask('/jar strain weak measured:900 ml strength:30%')
    expect(json.data.stage).toBe('strained')
    expect(json.data.syrup).toBeNull()
    expect(json.notes.map(({ key }) => key)).toContain('jar_targets_unreached')
  })
})

describe('/jar add', () => {
  it('counts spirit, water and sugar', async () => {
    const desk = jarDesk()
    const before = await desk.ask(HERB)
    const water = await desk.ask('/jar add herb water:200 ml')
    // Strong spirit and a fifth of water shrink by some twenty millilitres: common practice, no source.
    expect(numberIn(water, 'volumeMl') - numberIn(before, 'volumeMl')).toBeGreaterThan(170)
    expect(numberIn(water, 'volumeMl') - numberIn(before, 'volumeMl')).toBeLessThan(195)
    const spirit = await desk.ask('/jar add herb spirit:200 ml strength:95%')
    expect(numberIn(spirit, 'abvPercent')).toBeGreaterThan(numberIn(water, 'abvPercent'))
    const sugar = await desk.ask('/jar add herb sugar:100 g')
    expect((numberIn(sugar, 'sugarGPerL') * numberIn(sugar, 'volumeMl')) / 1000).toBeCloseTo(100, -1)
  })

  it('takes a plant that is only named at its usual amount, and refuses what is too much in the whole jar', async () => {
    const desk = jarDesk()
    await desk.ask(HERB)
    await desk.ask('/jar add herb of:nutmeg')
    const { happened } = await desk.storyOf('herb')
    const added = happened.find(({ kind }) => kind === 'added')
    expect(added?.kind === 'added' && added.plants[0]!.massG.value).toBeGreaterThan(0)
    expect(await desk.refused('/jar add herb of:300 g nutmeg')).toMatchObject({ code: 'over_ceiling', option: 'of' })
    expect((await desk.refused('/jar add herb of:foxglove')).code).toBe('refused')
    expect((await desk.refused('/jar add herb of:5 g jaboticaba')).option).toBe('of')
    const unknown = await desk.ask('/jar add herb of:5 g jaboticaba unknown-ok:yes')
    expect(unknown.cautions[0]!.key).toBe('plan_unknown')
    expect((await desk.refused('/jar add herb')).code).toBe('missing_option')
  })

  it('takes half a limit twice, and no more', async () => {
    const desk = jarDesk()
    await desk.ask(
      '/jar start worm of:1 g wormwood + 10 g rosemary spirit:1 l 95% to-strength:30% to-sweetness:250 g/L',
    )
    const refusal = await desk.refused('/jar add worm of:50 g wormwood')
    const most = Number(/at most ([0-9.]+) g/.exec(refusal.message.replaceAll('\u00a0', ' '))![1])
    await desk.ask(`/jar add worm of:${(most - 1) * 0.9} g wormwood`)
    expect((await desk.refused(`/jar add worm of:${most * 0.3} g wormwood`)).code).toBe('over_ceiling')
  })
})

describe('what cannot follow is refused with what can', () => {
  it.each([
    '/jar bottle herb bottles:4',
    '/jar sweeten herb sugar:100 g',
    '/jar filter herb',
    '/jar open herb',
    '/jar empty herb',
  ])('%s while it steeps', async (line) => {
    const desk = jarDesk()
    await desk.ask(HERB)
    const error = await desk.refused(line)
    expect(error.code).toBe('wrong_stage')
    expect(error.message).toMatch(/Strain it first/)
  })

  it('after the end', async () => {
    const desk = jarDesk()
    await desk.ask(HERB)
    await desk.ask('/jar discard herb')
    expect((await desk.refused('/jar shake herb')).code).toBe('wrong_stage')
    expect((await desk.refused('/jar shake all')).code).toBe('wrong_stage')
  })

  it('an unknown jar, with the nearest name', async () => {
    const desk = jarDesk()
    expect((await desk.refused('/jar shake lemon')).code).toBe('not_found')
    await desk.ask(LEMON)
    const error = await desk.refused('/jar shake lemno')
    expect(error.code).toBe('not_found')
    expect(error.message).toContain('lemon')
  })
})
