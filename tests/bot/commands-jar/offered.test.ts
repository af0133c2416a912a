import { describe, expect, it } from 'vitest'
import { lineOf } from '../../../bot/calls/write-line.ts'
import { newAsker } from '../asker.ts'
import { linesOf } from '../call-typed.ts'
import { jarDesk, LEMON, numberIn } from './desk.ts'

/** Where lines are kept and pressed. */
const pressed = async () => {
  const desk = jarDesk('2026-11-01', { ...newAsker(), place: { kind: 'private' } })
  await desk.ask(LEMON)
  desk.at('2026-11-25')
  const offeredBy = async (line: string) => {
    const outcome = await desk.run(line)
    return outcome.ok ? linesOf(outcome.reply.actions) : []
  }
  return { desk, offeredBy }
}

describe('a sweetening that was offered', () => {
  it('does nothing once the reading is another, and offers the right one', async () => {
    const { desk, offeredBy } = await pressed()
    const [old] = await offeredBy('/jar strain lemon measured:900 ml strength:85%')
    expect(old).toMatch(/ after:2$/)
    const [right] = await offeredBy('/jar correct lemon measured:700 ml')
    expect(right).toMatch(/ after:3$/)
    const before = await desk.person()
    expect(await desk.headlineOf(old!)).toMatchObject({ key: 'jar_moved_on', values: { name: 'lemon' } })
    expect(await offeredBy(old!)).toEqual([right])
    expect(await desk.person()).toEqual(before)
    const { notes } = await desk.ask(right!)
    expect(notes.map(({ key }) => key)).not.toContain('jar_sweetened_again')
    expect((await desk.storyOf('lemon')).sweetened!.typed.map(([option]) => option)).toEqual(['water', 'sugar'])
    expect(await offeredBy(old!)).toEqual([])
    expect(await offeredBy(right!)).toEqual([])
    expect((await desk.storyOf('lemon')).happened.filter(({ kind }) => kind === 'sweetened')).toHaveLength(1)
  })

  it('stands where the jar was only tasted since, or all since was taken back', async () => {
    const { desk, offeredBy } = await pressed()
    const [line] = await offeredBy('/jar strain lemon measured:900 ml')
    await desk.ask('/jar taste lemon rating:4')
    await desk.ask('/jar rename lemon to:sunny')
    await desk.ask('/jar correct sunny measured:880 ml')
    await desk.ask('/jar undo sunny')
    expect((await desk.ask(line!)).data.stage).toBe('sweetened')
  })

  it('says nothing of entries where lines are typed', async () => {
    const desk = jarDesk()
    await desk.ask(LEMON)
    desk.at('2026-11-25')
    const outcome = await desk.run('/jar strain lemon measured:900 ml')
    expect(outcome.ok && lineOf(outcome.reply.actions[0]!.call)).not.toContain('after:')
  })
})

describe('the same amounts typed twice', () => {
  it('are asked about on the same day, and count where they are meant', async () => {
    const { desk, offeredBy } = await pressed()
    await desk.ask('/jar strain lemon measured:900 ml')
    const line = '/jar sweeten lemon water:700 ml sugar:200 g'
    const { data } = await desk.ask(line)
    expect(await desk.headlineOf(line)).toMatchObject({ key: 'jar_same_again', values: { name: 'lemon', day: null } })
    const [meant] = await offeredBy(line)
    expect(meant).toMatch(/^\/jar sweeten #\w{5} water:700 ml sugar:200 g again:yes$/)
    const twice = await desk.ask(meant!)
    expect(numberIn(twice, 'volumeMl')).toBeGreaterThan(numberIn({ ...twice, data }, 'volumeMl') + 700)
    desk.at('2026-11-26')
    expect((await desk.ask(line)).notes.map(({ key }) => key)).toContain('jar_sweetened_again')
  })
})

describe('plants of a later day that were offered', () => {
  it('go in once', async () => {
    const { desk, offeredBy } = await pressed()
    await desk.ask('/jar start nero of:400 g damson + 60 g coffee beans spirit:1 l 95%')
    const plants = (await desk.storyOf('nero')).started.plants
    const { addOn } = plants.find((plant) => plant.addOn !== null)!
    desk.at(addOn!)
    const line = (await offeredBy('/jar list')).find((each) => each.startsWith('/jar add'))!
    expect(line).toMatch(/ after:1$/)
    await desk.ask(line)
    expect(await desk.textOf(line)).toContain('Nero has moved on')
    expect((await desk.storyOf('nero')).happened.filter(({ kind }) => kind === 'added')).toHaveLength(1)
  })
})

describe('bottles', () => {
  const sweetened = async () => {
    const { desk } = await pressed()
    await desk.ask('/jar strain lemon measured:900 ml')
    await desk.ask('/jar sweeten lemon water:1.4 l sugar:543 g')
    return desk
  }

  it('are as many as what is left fills', async () => {
    const desk = await sweetened()
    await desk.ask('/jar bottle lemon bottles:3 x 500 ml')
    await desk.ask('/jar bottle lemon bottles:500 ml')
    const bottled = (await desk.storyOf('lemon')).happened.filter(({ kind }) => kind === 'bottled')
    expect(bottled).toMatchObject([{ bottles: [{ count: 3 }] }, { bottles: [{ count: 2, volumeMl: 500 }] }])
    const before = await desk.person()
    const { option, message } = await desk.refused('/jar bottle lemon bottles:500 ml')
    expect([option, message]).toEqual([
      'bottles',
      expect.stringMatching(/^There’s only about \d+ ml of lemon left\. .*How many did you fill\?$/),
    ])
    expect(await desk.person()).toEqual(before)
  })

  it('are refused where a whole one more is said to be full than there is, and not where the last is half empty', async () => {
    const desk = await sweetened()
    expect((await desk.refused('/jar bottle lemon bottles:7 x 500 ml')).message).toMatch(
      /^That’s 3\.5 l, but only about 2\.5\d? l of lemon is left\. Nothing was recorded\./,
    )
    const { notes } = await desk.ask('/jar bottle lemon bottles:6 x 500 ml')
    expect(notes.map(({ key }) => key)).toContain('jar_bottled_more')
    expect((await desk.refused('/jar bottle lemon bottles:6 x 500 ml')).option).toBe('bottles')
    expect((await desk.refused('/jar correct lemon bottles:9 x 500 ml')).option).toBe('bottles')
    await desk.ask('/jar correct lemon bottles:5 x 500 ml')
  })

  it('of a jar that cannot be bottled are not counted', async () => {
    const { desk } = await pressed()
    expect((await desk.refused('/jar bottle lemon bottles:90 x 500 ml')).code).toBe('wrong_stage')
  })
})
