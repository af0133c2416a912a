import { describe, expect, it } from 'vitest'
import { strainedSloes } from './begun-jars.ts'
import { jarDesk, numberIn } from './desk.ts'

describe('/jar sweeten on-fruit: and from-fruit:', () => {
  it('says what to do and what will come, and offers the line that pours it back', async () => {
    const desk = await strainedSloes()
    const { under, actions } = await desk.replyOf('/jar sweeten sloe sugar:150 g on-fruit:yes')
    expect(under?.map(({ key }) => key)).toEqual(['fruit_gives'])
    expect(actions.map(({ call, label }) => [label.key, call.command])).toContainEqual([
      'jar_from_fruit',
      'jar sweeten',
    ])
    expect(numberIn(await desk.ask('/jar show sloe'), 'volumeMl')).toBeCloseTo(620, 6)
    desk.at('2026-12-04')
    expect(await desk.textOf('/jar list')).toContain('/jar sweeten sloe from-fruit:yes')
    await desk.ask('/jar sweeten sloe from-fruit:yes')
    expect(numberIn(await desk.ask('/jar show sloe'), 'volumeMl')).toBeGreaterThan(720)
    expect(numberIn(await desk.ask('/jar show sloe'), 'sugarGPerL')).toBeGreaterThan(100)
  })

  it('is taken back, and the fruit still has its sugar', async () => {
    const desk = await strainedSloes()
    await desk.ask('/jar sweeten sloe sugar:150 g on-fruit:yes')
    await desk.ask('/jar sweeten sloe from-fruit:200 ml')
    expect(numberIn(await desk.ask('/jar show sloe'), 'volumeMl')).toBeGreaterThan(800)
    await desk.ask('/jar undo sloe')
    expect(numberIn(await desk.ask('/jar show sloe'), 'volumeMl')).toBeCloseTo(620, 6)
    await desk.ask('/jar sweeten sloe from-fruit:yes')
  })

  it('goes along in a notebook', async () => {
    const desk = await strainedSloes()
    await desk.ask('/jar sweeten sloe sugar:150 g on-fruit:yes')
    const events = (await desk.ask('/jar sweeten sloe from-fruit:200 ml')).data.events as readonly {
      readonly kind: string
    }[]
    expect(events.map(({ kind }) => kind)).toEqual(['started', 'strained', 'fruit_sugared', 'sweetened'])
  })

  it.each([
    ['/jar sweeten sloe on-fruit:yes', 'fruit_dry_sugar', 'sugar'],
    ['/jar sweeten sloe on-fruit:yes sugar:honey', 'fruit_dry_sugar', 'sugar'],
    ['/jar sweeten sloe on-fruit:yes sugar:100 g water:50 ml', 'fruit_dry_sugar', 'water'],
    ['/jar sweeten sloe from-fruit:yes', 'fruit_not_sugared', undefined],
    ['/jar sweeten sloe from-fruit:no', 'yes_or_no', 'from-fruit'],
  ])('refuses %s', async (line, problem, option) => {
    const desk = await strainedSloes()
    const refused = await desk.problemOf(line)
    expect([refused.problem, refused.option]).toEqual([problem, option])
  })

  it.each([
    ['on-fruit:yes sugar:100 g', 'one_at_a_time'],
    ['sugar:honey', 'missing_option'],
  ])('drops no word in silence: from-fruit:yes %s', async (more, problem) => {
    const desk = await strainedSloes()
    await desk.ask('/jar sweeten sloe sugar:150 g on-fruit:yes')
    const outcome = await desk.run(`/jar sweeten sloe from-fruit:yes ${more}`)
    expect(outcome.ok ? null : outcome.error.problem).toBe(problem)
  })

  it('asks how much of what was named is poured in with it, as a line that runs', async () => {
    const desk = await strainedSloes()
    await desk.ask('/jar sweeten sloe sugar:150 g on-fruit:yes')
    const line = '/jar sweeten sloe from-fruit:yes sugar:100 g honey'
    expect(await desk.textOf('/jar sweeten sloe from-fruit:yes sugar:honey')).toContain(line)
    expect((await desk.run(line)).ok).toBe(true)
  })

  it('warns where there is too little spirit on the fruit', async () => {
    const desk = jarDesk('2026-10-01')
    await desk.ask('/jar start raspberry of:700 g raspberries spirit:700 ml 40%')
    desk.at('2026-10-25')
    await desk.ask('/jar strain raspberry')
    const { cautions } = await desk.ask('/jar sweeten raspberry sugar:100 g on-fruit:yes')
    expect(cautions.map(({ key }) => key)).toContain('fruit_may_ferment')
  })
})
