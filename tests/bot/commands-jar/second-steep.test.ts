import { describe, expect, it } from 'vitest'
import { strainedSloes } from './begun-jars.ts'
import { jarDesk, numberIn } from './desk.ts'

const BEGIN_TWO = '/jar start two second-of:sloe spirit:350 ml 50%'

describe('/jar start second-of:', () => {
  it('says what is left in the plants, and goes on as any jar does', async () => {
    const desk = await strainedSloes()
    const { under, notes, cautions } = await desk.replyOf('/jar start second-of:sloe spirit:350 ml 50%')
    expect(under?.map(({ key }) => key)).toEqual(['second_left', 'jar_start_days'])
    expect(notes.map(({ key }) => key)).toContain('second_estimated')
    expect(cautions.map(({ key }) => key)).toContain('flame')
    expect(await desk.textOf('/jar show sloe 2')).toContain('500 g sloes')
    expect(numberIn(await desk.ask('/jar show sloe 2'), 'volumeMl')).toBeGreaterThan(400)
    desk.at('2027-02-20')
    await desk.ask('/jar strain sloe 2')
    expect(await desk.textOf('/jar list')).toContain('sloe 2')
    await desk.ask('/jar start third second-of:sloe 2 spirit:200 ml 50%')
  })

  it('says on its first screen what its plants can do, as their first jar did', async () => {
    const desk = await strainedSloes()
    const reply = await desk.replyOf(BEGIN_TWO)
    const grave = reply.cautions.find(({ key }) => key === 'plan_grave')
    expect(grave).toMatchObject({ values: { hazards: ['stone_kernels'], burns: true } })
    expect(grave).not.toHaveProperty('depth')
    expect(await (await strainedSloes()).textOf(BEGIN_TWO)).toContain('Don’t crack the stones')
  })

  it('is corrected by its spirit, and taken back as a whole', async () => {
    const desk = await strainedSloes()
    await desk.ask(BEGIN_TWO)
    const before = numberIn(await desk.ask('/jar show two'), 'volumeMl')
    await desk.ask('/jar correct two spirit:300 ml 50%')
    expect(before - numberIn(await desk.ask('/jar show two'), 'volumeMl')).toBeGreaterThan(40)
    await desk.ask('/jar undo two')
    expect(numberIn(await desk.ask('/jar show two'), 'volumeMl')).toBeCloseTo(before, 6)
    await desk.ask('/jar undo two')
    await desk.ask(BEGIN_TWO)
  })

  it('keeps the sugar that went in where its spirit is corrected, and asks how much honey it was instead', async () => {
    const desk = await strainedSloes()
    await desk.ask('/jar start two second-of:sloe spirit:350 ml 50% sugar:100 g')
    expect((await desk.refused('/jar correct two spirit:300 ml 50% sugar:honey')).option).toBe('sugar')
    await desk.ask('/jar correct two spirit:300 ml 50%')
    const text = await desk.textOf('/jar show two')
    expect(text).toContain('300 ml of 50 %')
    expect(text).toContain('100 g sugar')
    await desk.ask('/jar correct two sugar:100 g honey')
    expect(await desk.textOf('/jar show two')).toContain('100 g honey')
  })

  it('warns of honey that its plants soaked up, and of honey that goes in with them', async () => {
    const desk = jarDesk('2026-11-01')
    await desk.ask('/jar start of:500 g sloe spirit:700 ml 40% sugar:100 g honey name:sloe')
    desk.at('2027-02-10')
    await desk.ask('/jar strain sloe')
    const keys = (await desk.replyOf(BEGIN_TWO)).cautions.map(({ key }) => key)
    expect(keys).toContain('honey_infant')
    const white = await strainedSloes()
    expect((await white.replyOf(BEGIN_TWO)).cautions.map(({ key }) => key)).not.toContain('honey_infant')
    white.at('2027-02-20')
    await white.ask('/jar strain two')
    const { cautions } = await white.replyOf('/jar start three second-of:two spirit:100 ml 50% sugar:50 g honey')
    expect(cautions.map(({ key }) => key)).toContain('honey_infant')
  })

  it.each([
    ['/jar start two second-of:sloe', 'second_spirit', 'spirit'],
    ['/jar start two second-of:sloe of:10 lemons spirit:1 l 40%', 'second_alone', 'of'],
    ['/jar start two second-of:plum spirit:1 l 40%', 'no_such_jar', 'second-of'],
    ['/jar start sloe second-of:sloe spirit:1 l 40%', 'jar_name_taken', 'name'],
  ])('refuses %s', async (line, problem, option) => {
    const desk = await strainedSloes()
    const refused = await desk.problemOf(line)
    expect([refused.problem, refused.option]).toEqual([problem, option])
  })

  it.each(['sugar:200 g on-fruit:yes', 'from-fruit:yes'])(
    'leaves the first jar no %s, until it is undone',
    async (options) => {
      const desk = await strainedSloes()
      await desk.ask(BEGIN_TWO)
      const before = await desk.ask('/jar show sloe')
      expect((await desk.problemOf(`/jar sweeten sloe ${options}`)).problem).toBe('second_begun')
      expect(await desk.textOf(`/jar sweeten sloe ${options}`)).toContain('are in two now')
      expect(await desk.ask('/jar show sloe')).toEqual(before)
      // Dry sugar into the jar itself is none of theirs.
      await desk.ask('/jar sweeten sloe sugar:100 g')
      await desk.ask('/jar undo sloe')
      await desk.ask('/jar undo two')
      await desk.ask('/jar sweeten sloe sugar:200 g on-fruit:yes')
      expect((await desk.problemOf(BEGIN_TWO)).problem).toBe('second_sugared')
      await desk.ask('/jar undo sloe')
      await desk.ask(BEGIN_TWO)
    },
  )

  it('keeps the first jar from taking back what would leave the plants in both', async () => {
    const desk = await strainedSloes()
    await desk.ask('/jar sweeten sloe sugar:200 g on-fruit:yes')
    await desk.ask('/jar sweeten sloe from-fruit:yes')
    await desk.ask(BEGIN_TWO)
    expect((await desk.problemOf('/jar undo sloe')).problem).toBe('second_begun_since')
    await desk.ask('/jar note sloe note:dark')
    await desk.ask('/jar undo sloe')
    await desk.ask('/jar undo two')
    await desk.ask('/jar undo sloe')
    expect((await desk.problemOf(BEGIN_TWO)).problem).toBe('second_sugared')
  })

  it('is not left on plants that are not strained any more', async () => {
    const desk = await strainedSloes()
    await desk.ask(BEGIN_TWO)
    expect(await desk.refused('/jar undo sloe')).toMatchObject({ code: 'wrong_stage' })
    expect(await desk.textOf('/jar undo sloe')).toContain('/jar undo two')
  })

  it('refuses what would ferment, and a share or a repeat of its own', async () => {
    const desk = await strainedSloes()
    expect(await desk.refused('/jar start weak second-of:sloe spirit:1 l 10%')).toMatchObject({ code: 'unreachable' })
    await desk.ask(BEGIN_TWO)
    for (const line of ['/again two', '/share two']) {
      expect(await desk.refused(line)).toMatchObject({ code: 'unreachable' })
    }
  })
})
