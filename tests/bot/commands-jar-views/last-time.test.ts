import { describe, expect, it } from 'vitest'
import { lineOf } from '../../../bot/calls/write-line.ts'
import { newAsker } from '../asker.ts'
import { startLine } from '../start-line.ts'
import { testDesk } from '../test-desk.ts'
import { NOW_MS } from './jars.ts'

// Lemon peel steeps two to four weeks: the catalogue's own days.
const LEMON = '/jar start lemon of:10 lemons spirit:1 l 95% to-strength:30% to-sweetness:250 g/L when:2026-09-01'
const AFTER_SIX_DAYS = '/jar strain lemon measured:950 ml strength:87% when:2026-09-07'
const IN_TIME = '/jar strain lemon measured:950 ml strength:87% when:2026-09-20'

async function deskAfter(...lines: readonly string[]) {
  const desk = testDesk({ asker: newAsker(), nowMs: NOW_MS, width: 200 })
  for (const line of lines) expect((await desk.jsonOf(line)).error, line).toBeUndefined()
  return desk
}

type Desk = Awaited<ReturnType<typeof deskAfter>>

async function plannedAgain(desk: Desk, line = '/again lemon') {
  const outcome = await desk.run(line)
  if (!outcome.ok) throw new Error(`${line}: ${outcome.error.problem}`)
  const { notes, actions } = outcome.reply
  const first = notes.filter(({ depth }) => depth !== 'more').map(({ key }) => key)
  return {
    first,
    dates: (await desk.jsonOf(line)).data.dates,
    sugarGPerL: (await desk.jsonOf(line)).data.sugarGPerL,
    abvPercent: (await desk.jsonOf(line)).data.abvPercent,
    lineBy: (key: string) => {
      const found = actions.find(({ label }) => label.key === key)
      return found === undefined ? null : lineOf(found.call)
    },
  }
}

describe('what went otherwise than planned', () => {
  it('is asked about: by the plan, with the other way as a line that runs', async () => {
    const desk = await deskAfter(LEMON, AFTER_SIX_DAYS)
    const again = await plannedAgain(desk)
    expect(again.first).toContain('again_strained')
    // 20 November and the fourteen days of the plan.
    expect(again.dates.strainFrom).toBe('2026-12-04')
    const six = again.lineBy('again_days')!
    expect(six).toBe('/again lemon days:6 days')
    const shorter = await plannedAgain(desk, six)
    expect(shorter.dates).toMatchObject({ strainFrom: '2026-11-26', strainBy: '2026-11-26' })
    expect(shorter.first).not.toContain('again_strained')
    const start = await startLine(desk, six)
    expect(start).toContain('days:6')
    expect((await desk.jsonOf(start)).error).toBeUndefined()
    expect((await desk.jsonOf('/jar show "lemon 2"')).data.next.dueAt).toBeDefined()
    const { jars } = await desk.asker.store.read('local')
    expect(jars.at(-1)!.entries[0]).toMatchObject({ days: { strainFrom: '2026-11-26', strainBy: '2026-11-26' } })
  })

  it('is done again where it was liked, with the plan as the other way', async () => {
    const desk = await deskAfter(LEMON, AFTER_SIX_DAYS, '/jar taste lemon rating:5 when:2026-10-10')
    const again = await plannedAgain(desk)
    expect(again.first).toContain('again_strained')
    expect(again.dates.strainBy).toBe('2026-11-26')
    const planned = again.lineBy('again_days')!
    expect((await plannedAgain(desk, planned)).dates.strainBy).toBe('2026-12-04')
  })

  it('is none where it was strained in its days: those are kept', async () => {
    const desk = await deskAfter(LEMON, IN_TIME)
    const again = await plannedAgain(desk)
    expect(again.first).not.toContain('again_strained')
    expect(again.lineBy('again_days')).toBeNull()
    expect(again.dates.strainBy).toBe('2026-12-09')
  })

  it('is a sweetness of before: by the plan, or as it came out', async () => {
    const wrong = '/jar sweeten lemon sugar:350 g water:1.5 l when:2026-09-21'
    const desk = await deskAfter(LEMON, IN_TIME, wrong)
    const made = (await desk.jsonOf('/jar show lemon')).data.sugarGPerL
    expect(made).toBeLessThan(200)
    const again = await plannedAgain(desk)
    expect(again.first).toContain('again_came_out')
    expect(again.sugarGPerL).toBeCloseTo(250, 0)
    const asBefore = await plannedAgain(desk, again.lineBy('again_targets')!)
    expect(Math.abs(asBefore.sugarGPerL - made)).toBeLessThan(1)
    expect(asBefore.first).not.toContain('again_came_out')
    await desk.jsonOf('/jar taste lemon rating:4 when:2026-10-10')
    const liked = await plannedAgain(desk)
    expect(Math.abs(liked.sugarGPerL - made)).toBeLessThan(1)
    expect((await plannedAgain(desk, liked.lineBy('again_targets')!)).sugarGPerL).toBeCloseTo(250, 0)
  })

  it('is none where it came out as planned', async () => {
    const desk = await deskAfter(LEMON)
    const outcome = await desk.run(IN_TIME)
    const done = outcome.ok ? outcome.reply.actions.find(({ call }) => call.command === 'jar sweeten') : undefined
    expect((await desk.jsonOf(lineOf(done!.call))).error).toBeUndefined()
    expect((await plannedAgain(desk)).first).toEqual(['again_as'])
  })
})

describe('what was not liked', () => {
  it.each([
    ['too sweet', 30, 200],
    ['not sweet enough', 30, 315],
    ['too weak', 35, 250],
    ['burns the throat', 25, 250],
  ])('%s: it is a step from what it was, with that as the other way', async (note, abvPercent, sugarGPerL) => {
    const desk = await deskAfter(LEMON, IN_TIME, `/jar taste lemon rating:2 when:2026-10-10 note:${note}`)
    const again = await plannedAgain(desk)
    expect(again.first).toContain('again_mended')
    expect(again).toMatchObject({
      abvPercent: expect.closeTo(abvPercent, 6),
      sugarGPerL: expect.closeTo(sugarGPerL, 6),
    })
    const asBefore = await plannedAgain(desk, again.lineBy('again_targets')!)
    expect(asBefore).toMatchObject({ abvPercent: expect.closeTo(30, 6), sugarGPerL: expect.closeTo(250, 6) })
    expect(asBefore.first).not.toContain('again_mended')
    for (const said of ['to-sweetness:220 g/L', 'sugar:100 g'])
      expect((await plannedAgain(desk, `/again lemon ${said}`)).first).not.toContain('again_mended')
  })

  it('is a step from what it came out at, with the plan as the other way', async () => {
    const wrong = '/jar sweeten lemon sugar:900 g water:1.3 l when:2026-09-21'
    const desk = await deskAfter(LEMON, IN_TIME, wrong, '/jar taste lemon rating:3 when:2026-10-10 note:too sweet')
    const made = (await desk.jsonOf('/jar show lemon')).data.sugarGPerL
    expect(made).toBeGreaterThan(300)
    const again = await plannedAgain(desk)
    expect(again.first).toEqual(['again_as', 'again_mended'])
    expect(again.sugarGPerL / made).toBeCloseTo(0.8, 1)
    expect((await plannedAgain(desk, again.lineBy('again_targets')!)).sugarGPerL).toBeCloseTo(250, 0)
  })

  it('is less of the sugar in the jar where that alone is too much, and of no strength that cannot be had', async () => {
    const plum = '/jar start plum of:500 g plums spirit:1 l 40% sugar:300 g when:2026-09-01'
    const strained = '/jar strain plum measured:1.1 l when:2026-10-15'
    const bottled = '/jar bottle plum bottles:2 x 500 ml when:2026-10-16'
    const sweet = await deskAfter(plum, strained, bottled, '/jar taste plum rating:2 when:2026-11-10 note:too sweet')
    const made = (await sweet.jsonOf('/jar show plum')).data.sugarGPerL
    const again = await plannedAgain(sweet, '/again plum')
    expect(again.first).toContain('again_mended')
    expect(again.sugarGPerL).toBeLessThan(0.9 * made)
    expect(await startLine(sweet, '/again plum')).toContain('sugar:240 g')
    const weak = await deskAfter(plum, strained, bottled, '/jar taste plum rating:2 when:2026-11-10 note:too weak')
    expect((await plannedAgain(weak, '/again plum')).first).toContain('again_liked_less')
  })

  it('bitter is told, with what is looked into', async () => {
    const desk = await deskAfter(LEMON, IN_TIME, '/jar taste lemon rating:2 when:2026-10-10 note:bitter')
    const again = await plannedAgain(desk)
    expect(again.first).toContain('again_liked_less')
    expect(again.lineBy('trouble_offer')).toBe('/trouble bitter jar:lemon')
    expect((await desk.jsonOf(again.lineBy('trouble_offer')!)).error).toBeUndefined()
  })

  it('is nothing where it was liked at last', async () => {
    const low = '/jar taste lemon rating:2 when:2026-10-10 note:too sweet'
    const desk = await deskAfter(LEMON, IN_TIME, low, '/jar taste lemon rating:4 when:2026-11-10')
    expect((await plannedAgain(desk)).first).toEqual(['again_as'])
  })
})

describe('jars that were parted or poured together', () => {
  it('plans its own batch of a jar that another was poured into, and says so', async () => {
    const desk = await deskAfter(
      LEMON,
      IN_TIME,
      '/jar start orange of:6 oranges spirit:1 l 60% when:2026-09-01',
      '/jar strain orange measured:900 ml when:2026-09-20',
      '/jar combine lemon with:orange',
    )
    const start = await startLine(desk, '/again lemon')
    expect(start).toContain('of:10 lemons spirit:1 l 95%')
    expect(await desk.firstOf('/again lemon')).toContain('without the orange you poured in')
    const scaled = await desk.firstOf('/again lemon spirit:500 ml 95%')
    expect(scaled).toContain('Scaled to your spirit: half of lemon, without the orange you poured in.')
  })

  it('plans the whole batch of a jar that was split, and what was added to a half of it twice', async () => {
    const desk = await deskAfter(
      '/jar start lemon of:80 g lemon peel spirit:1 l 95% when:2026-09-01',
      '/jar split lemon amount:500 ml into:hot when:2026-09-10',
      '/jar add hot of:2 g dried chilli when:2026-09-10',
    )
    const { data } = await desk.jsonOf('/again hot')
    const massOf = (id: string) => data.botanicals.find((plant: { id: string }) => plant.id === id).massG
    expect(massOf('lemon_peel')).toBeCloseTo(80, 6)
    // Half of what stood in the jar, whose plants take room of their own.
    expect(massOf('chilli_dried')).toBeGreaterThan(3.5)
    expect(massOf('chilli_dried')).toBeLessThan(4.6)
  })
})
