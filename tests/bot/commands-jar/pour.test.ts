import { describe, expect, it } from 'vitest'
import { lineOf } from '../../../bot/calls/write-line.ts'
import { batchCardData } from '../../../bot/picture/card/batch-card-data.ts'
import { bottleLabelData } from '../../../bot/picture/label/bottle-label-data.ts'
import { jarTagData } from '../../../bot/picture/tag/jar-tag-data.ts'
import { plantIdsIn, plantsPouredIn } from '../../../core/jar/state/batch-facts.ts'
import { jarDesk, numberIn } from './desk.ts'

/** Two jars that were strained, a lemon of 900 ml and another of 600 ml. */
const twoJars = async (other = 'orange', of = '4 oranges') => {
  const desk = jarDesk('2026-11-01')
  await desk.ask('/jar start lemon of:10 lemons spirit:1 l 95%')
  await desk.ask(`/jar start ${other} of:${of} spirit:700 ml 60%`)
  desk.at('2026-11-20')
  await desk.ask('/jar strain lemon measured:900 ml')
  await desk.ask(`/jar strain ${other} measured:600 ml`)
  return desk
}

const namesIn = async (desk: Awaited<ReturnType<typeof twoJars>>) =>
  ((await desk.ask('/jar list')).data.jars as readonly { readonly name: string }[]).map(({ name }) => name)

describe('/jar split', () => {
  it('makes two jars, each with the story, and one word takes it back in both', async () => {
    const desk = await twoJars()
    await desk.ask('/jar split lemon amount:300 ml into:lemon with chilli')
    expect((await namesIn(desk)).toSorted()).toEqual(['lemon', 'lemon with chilli', 'orange'])
    expect(numberIn(await desk.ask('/jar show lemon'), 'volumeMl')).toBeCloseTo(600, 6)
    expect(numberIn(await desk.ask('/jar show lemon with chilli'), 'volumeMl')).toBeCloseTo(300, 6)
    await desk.ask('/jar undo lemon with chilli')
    expect(await namesIn(desk)).toEqual(['lemon', 'orange'])
    expect(numberIn(await desk.ask('/jar show lemon'), 'volumeMl')).toBeCloseTo(900, 6)
  })

  // What a jar is called is no plant that goes into it: `hedgerow` is not planned, but is a usual name for what is mixed of one.
  it.each([
    ['/jar split lemon amount:300 ml into:hedgerow', 'hedgerow'],
    ['/jar combine lemon with:orange into:hedgerow', 'hedgerow'],
  ])('%s is named as any jar may be', async (line, name) => {
    const desk = await twoJars()
    await desk.ask(line)
    expect(await namesIn(desk)).toContain(name)
    expect((await desk.refused(line.replace('hedgerow', 'foxglove tea'))).code).toBe('refused')
  })

  it('is taken back by its button too', async () => {
    const desk = await twoJars()
    const { actions } = await desk.replyOf('/jar split lemon amount:300 ml into:half')
    const undo = actions.find(({ label }) => label.key === 'jar_undo')
    await desk.ask(lineOf(undo!.call))
    expect(await namesIn(desk)).toEqual(['lemon', 'orange'])
  })

  it('reminds once of what was said already', async () => {
    const desk = await twoJars()
    await desk.ask('/jar split lemon amount:300 ml into:half')
    const { jars } = await desk.person()
    const [lemon, half] = jars
    expect(half!.told).toEqual(lemon!.told)
    expect(half!.cautioned).toEqual(lemon!.cautioned)
    expect(new Set(jars.map(({ id }) => id)).size).toBe(3)
  })

  it.each([
    ['/jar split lemon amount:5 l into:half', 'pour_too_much', 'amount'],
    ['/jar split lemon amount:900 ml into:half', 'split_all', undefined],
    ['/jar split lemon amount:300 ml into:orange', 'jar_name_taken', 'into'],
  ])('refuses %s', async (line, problem, option) => {
    const desk = await twoJars()
    const refused = await desk.problemOf(line)
    expect([refused.problem, refused.option]).toEqual([problem, option])
    expect(await namesIn(desk)).toEqual(['lemon', 'orange'])
  })
})

describe('/jar combine', () => {
  it('pours all of one into the other, which keeps or takes a name', async () => {
    const desk = await twoJars()
    await desk.ask('/jar combine lemon with:orange into:citrus')
    expect(await namesIn(desk)).toEqual(['citrus'])
    expect(numberIn(await desk.ask('/jar show citrus'), 'volumeMl')).toBeGreaterThan(1450)
    await desk.ask('/jar undo citrus')
    expect(await namesIn(desk)).toEqual(['lemon', 'orange'])
  })

  it('makes a third jar of some of each, and takes that back in all three', async () => {
    const desk = await twoJars()
    expect((await desk.refused('/jar combine lemon with:orange amount:300 ml')).code).toBe('bad_value')
    await desk.ask('/jar combine lemon with:orange amount:300 ml with-amount:200 ml into:citrus')
    expect((await namesIn(desk)).toSorted()).toEqual(['citrus', 'lemon', 'orange'])
    expect(numberIn(await desk.ask('/jar show orange'), 'volumeMl')).toBeCloseTo(400, 6)
    await desk.ask('/jar undo citrus')
    expect((await namesIn(desk)).toSorted()).toEqual(['lemon', 'orange'])
    expect(numberIn(await desk.ask('/jar show lemon'), 'volumeMl')).toBeCloseTo(900, 6)
    expect(numberIn(await desk.ask('/jar show orange'), 'volumeMl')).toBeCloseTo(600, 6)
  })

  it('is not taken back in one while the other has moved on', async () => {
    const desk = await twoJars()
    await desk.ask('/jar combine lemon with:orange with-amount:200 ml')
    desk.at('2026-11-21')
    await desk.ask('/jar filter orange')
    expect((await desk.problemOf('/jar undo lemon')).problem).toBe('undo_other_first')
    await desk.ask('/jar undo orange')
    await desk.ask('/jar undo lemon')
    expect(numberIn(await desk.ask('/jar show orange'), 'volumeMl')).toBeCloseTo(600, 6)
  })

  it('brings the plants of both, whose cautions go with them', async () => {
    const desk = await twoJars('almond', '200 g almonds')
    const plants = async () => plantIdsIn(await desk.storyOf('lemon'))
    expect(await plants()).toEqual(['lemon_peel'])
    await desk.ask('/jar combine lemon with:almond')
    expect(await plants()).toContain('almond_sweet')
    expect(plantsPouredIn(await desk.storyOf('lemon')).map(({ id }) => id)).toEqual(['almond_sweet'])
  })

  it('tells the plants of both on every view, and shares no batch of the two', async () => {
    const desk = await twoJars('almond', '200 g almonds')
    await desk.ask('/jar combine lemon with:almond')
    for (const line of ['/jar show lemon', '/notebook']) expect(await desk.textOf(line), line).toMatch(/almond/i)
    const view = await desk.viewOf('lemon')
    for (const { plants } of [
      jarTagData(view).inJar,
      batchCardData(view, '2026-11-20').inJar,
      bottleLabelData(view, 500),
    ]) {
      expect(plants.map(({ id }) => id)).toContain('almond_sweet')
    }
    expect((await desk.problemOf('/share lemon')).problem).toBe('two_batches')
  })

  it.each(['/jar combine lemon', '/jar split lemon'])('offers a line that runs for %s', async (typed) => {
    const desk = await twoJars()
    const example = (await desk.textOf(typed))
      .replaceAll('\n', ' ')
      .match(/\/jar .*/)![0]
      .trim()
    expect(example.startsWith(typed)).toBe(true)
    expect(example.length).toBeGreaterThan(typed.length)
    expect((await desk.run(example)).ok).toBe(true)
  })

  it('undoes by the name that it got', async () => {
    const desk = await twoJars()
    await desk.ask('/jar combine lemon with:orange into:citrus')
    const { data } = await desk.ask('/jar undo citrus')
    expect(JSON.stringify(data)).toMatch(/citrus/)
  })

  it('refuses a jar with itself, one that steeps, and one in bottles', async () => {
    const desk = await twoJars()
    await desk.ask('/jar start plum of:500 g plums spirit:1 l 60%')
    const problemOf = async (line: string) => (await desk.problemOf(line)).problem
    expect(await problemOf('/jar combine lemon with:lemon')).toBe('pour_same_jar')
    expect(await problemOf('/jar combine plum with:lemon')).toBe('cannot_follow')
    await desk.ask('/jar bottle orange bottles:1 x 500 ml')
    expect(await problemOf('/jar combine orange with:lemon')).toBe('cannot_follow')
  })
})

describe('/jar take-out and /jar note', () => {
  it('lift out a plant that is in, by its name', async () => {
    const desk = jarDesk('2026-11-01')
    await desk.ask('/jar start ginger of:200 g ginger spirit:1 l 60%')
    await desk.ask('/jar add ginger of:1 dried chilli')
    await desk.ask('/jar take-out ginger of:chilli')
    const again = await desk.problemOf('/jar take-out ginger of:chilli')
    expect([again.problem, again.option]).toEqual(['not_in_jar', 'of'])
    expect(await desk.textOf('/jar show ginger')).toMatch(/lifted out the .*chilli/)
  })

  it('write down what was said, and ask where nothing was', async () => {
    const desk = await twoJars()
    await desk.ask('/jar note lemon where:cellar vessel:2 l jar note:smells of marzipan')
    expect(await desk.textOf('/jar show lemon')).toContain('“smells of marzipan”, place: cellar, vessel: 2 l jar')
    expect((await desk.refused('/jar note lemon')).code).toBe('missing_option')
  })
})

it('says into which jar all of it went, where a step of it is told', async () => {
  const desk = jarDesk('2026-10-01')
  for (const name of ['plum', 'sloe']) {
    await desk.ask(`/jar start ${name} of:500 g plums spirit:1 l 40% when:2026-08-01`)
    await desk.ask(`/jar strain ${name} measured:900 ml`)
  }
  await desk.ask('/jar combine plum with:sloe into:duff')
  const { code, message } = await desk.refused('/jar sweeten sloe sugar:100 g')
  expect(code).toBe('wrong_stage')
  expect(message).toMatch(/^Sloe was all poured into (?:duff|plum) /)
})
