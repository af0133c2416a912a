import { describe, expect, it } from 'vitest'
import { jarDesk } from './desk.ts'

const START = 'spirit:1 l strength:60% when:2026-10-20'

/** `oranges`, `midwinter` of lemons, `hedge gin` and `hedge brandy`, of sloes and damsons. */
const shelf = async () => {
  const desk = jarDesk()
  for (const line of [
    `/jar start of:2 oranges ${START}`,
    `/jar start midwinter of:10 lemons ${START}`,
    `/jar start hedge gin of:300 g sloes ${START}`,
    `/jar start hedge brandy of:400 g damsons ${START}`,
  ]) {
    await desk.ask(line)
  }
  return desk
}

describe('a jar that is not called by its name', () => {
  it.each([
    ['orange', 'oranges'],
    ['Oranges', 'oranges'],
    ['orange peel', 'oranges'],
    ['the orange jar', 'oranges'],
    ['lemon', 'midwinter'],
    ['lemons', 'midwinter'],
    ['limone', 'midwinter'],
    ['gin', 'hedge gin'],
    ['my sloe one', 'hedge gin'],
    ['damson', 'hedge brandy'],
  ])('“%s” is %s', async (typed, name) => {
    const desk = await shelf()
    for (const path of ['show', 'tag', 'shake']) {
      expect((await desk.ask(`/jar ${path} ${typed}`)).data).toMatchObject({ name })
    }
    expect((await desk.ask(`/jar strain ${typed} measured:900 ml`)).data).toMatchObject({ name, stage: 'strained' })
  })

  it.each(['hedge', 'the hedge one'])('%s may be two, which is one question', async (typed) => {
    const desk = await shelf()
    expect((await desk.refused(`/jar shake ${typed}`)).message).toBe('Which one: hedge gin or hedge brandy?')
  })

  it('is the one that can be meant where the other is past it', async () => {
    const desk = await shelf()
    await desk.ask(`/jar start sour of:10 lemons ${START} to-strength:28%`)
    expect((await desk.refused('/jar shake lemons')).message).toBe('Which one: midwinter or sour?')
    await desk.ask('/jar strain sour measured:900 ml')
    expect((await desk.ask('/jar shake lemons')).data).toMatchObject({ name: 'midwinter' })
  })

  it.each(['cherry', 'peels and gin', 'xyzzy'])('%s is none, and it is said which there are', async (typed) => {
    const desk = await shelf()
    const { message } = await desk.refused(`/jar show ${typed}`)
    expect(message).toContain('Yours are oranges, midwinter, hedge gin and hedge brandy.')
  })

  it('is never thrown away by a word of it', async () => {
    const desk = await shelf()
    expect((await desk.refused('/jar discard orange')).message).toContain('full name: oranges')
  })
})

describe('a jar that gets its name from what is in it', () => {
  it('is told that name at once', async () => {
    const desk = jarDesk()
    const values = async (line: string) => (await desk.headlineOf(line)).values
    expect(await values(`/jar start of:2 oranges ${START}`)).toMatchObject({ isNamed: false })
    expect(await desk.textOf(`/jar start of:3 oranges ${START}`)).toContain('I’ve named it oranges 2.')
    expect(await desk.textOf(`/jar start brunch of:4 oranges ${START}`)).not.toContain('named')
  })
})

describe('a jar where numbers are to stand', () => {
  const strained = async () => {
    const desk = await shelf()
    await desk.ask('/jar strain lemon measured:930 ml strength:57%')
    return desk
  }

  it('is labelled by what it is planned to be, which is said, and then by what it is', async () => {
    const desk = await strained()
    expect(await desk.textOf('/label lemon')).toMatch(/30 % with 190 g\/L.*isn’t sweetened yet/s)
    await desk.ask('/jar sweeten lemon sugar:100 g water:1 l')
    const { data } = await desk.ask('/label lemon')
    expect(data.sugarAsInvertGPerL).toBeLessThan(80)
    expect(await desk.textOf('/label lemon')).not.toContain('isn’t sweetened')
  })

  it('is put right, thinned and sweetened as the jar', async () => {
    const desk = await strained()
    for (const line of ['/adjust lemon to-strength:40%', '/dilute lemon to-strength:40%']) {
      expect((await desk.ask(line)).data).toMatchObject({ jar: { name: 'midwinter' } })
    }
    expect((await desk.ask('/syrup lemon')).data.infusionMl).toBeCloseTo(930, 0)
    expect((await desk.refused('/adjust lemon')).message).toContain('What should midwinter become?')
    expect(await desk.textOf('/syrup orange')).toContain('once oranges are strained')
  })

  it('gives its amount and strength, and what lacks is asked with them', async () => {
    const desk = await strained()
    expect((await desk.ask('/mix lemon water:500 ml')).data.abvPercent).toBeCloseTo(38, 0)
    expect((await desk.refused('/serving lemon')).message).toMatch(/glass\?.*strength:58%/)
    expect((await desk.ask('/serving lemon pour:40 ml')).data.ethanolG).toBeCloseTo(18.3, 1)
  })

  it('stays a plant where plants are asked for', async () => {
    const desk = await strained()
    expect((await desk.ask('/cautions lemon')).data.ids).toEqual(['lemon_peel'])
    expect((await desk.ask('/cautions hedge gin')).data.ids).toEqual(['sloe'])
    expect((await desk.refused('/label cherry')).message).toContain('how strong')
  })
})
