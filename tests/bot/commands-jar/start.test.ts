import { describe, expect, it } from 'vitest'
import { lineOf } from '../../../bot/calls/write-line.ts'
import { newAsker } from '../asker.ts'
import { linesOf } from '../call-typed.ts'
import { flat } from '../flat.ts'
import { jarDesk, LEMON } from './desk.ts'

describe('/jar start', () => {
  it('says what goes in and what comes next, and keeps what was planned', async () => {
    const desk = jarDesk()
    const text = await desk.textOf(LEMON)
    expect(text).toMatch(/^Lemon is started\. In the jar: peel of 10 lemons.* and 1 l of 95 % spirit\./)
    expect(text).toMatch(/Taste from +8 November 2026/)
    expect(text).toMatch(/Strain +from 15 November to 1 December 2026/)
    expect(text).not.toContain('Syrup expected')
    const { started } = await desk.storyOf('lemon')
    expect(started.targets).toEqual({ abvPercent: 30, sugarGPerL: 250 })
    expect(started.days.strainFrom).toBe('2026-11-15')
    expect(started.typed).toContainEqual(['of', '10 lemons'])
  })

  it('says what goes in later, and when', async () => {
    const batch = 'of:1 vanilla pod + 80 g coffee beans spirit:700 ml 40%'
    const started = flat(await jarDesk().textOf(`/jar start coffee ${batch}`))
    expect(started).toMatch(/^Coffee is started\. In the jar: 1 vanilla pod.* and 700 ml of 40 % spirit\./)
    expect(started).toMatch(/Add the coffee beans on 10 Nov\./)
  })

  it('works out the same batch as /plan', async () => {
    const desk = jarDesk()
    const options = 'of:8 lemons + 30 g ginger spirit:700 ml strength:70% sugar:50 g steep-at:60%'
    const { data } = await desk.ask(`/plan ${options}`)
    await desk.ask(`/jar start mix ${options}`)
    const { started } = await desk.storyOf('mix')
    const dates = data.dates as Record<string, string>
    expect([started.days.tasteFrom, started.days.strainFrom, started.days.strainBy]).toEqual([
      dates.tasteFrom,
      dates.strainFrom,
      dates.strainBy,
    ])
    const botanicals = data.botanicals as readonly { id: string; massG: number }[]
    expect(started.plants.map(({ id, massG }) => [id, massG.value])).toEqual(
      botanicals.map(({ id, massG }) => [id, massG]),
    )
    expect(started.sweetenings).toMatchObject([{ material: 'white_sugar', massG: { value: 50 } }])
  })

  it('says which zone it took, on the first jar of somebody who chose none', async () => {
    const desk = jarDesk()
    const first = await desk.run(LEMON)
    expect(first.ok && first.reply.actions.map(({ call }) => lineOf(call))).toContain('/settings zone:UTC')
    await jarDesk().ask('/settings zone:UTC')
    expect((await desk.ask(LEMON.replace('lemon', 'second'))).notes.map(({ key }) => key)).not.toContain(
      'jar_zone_assumed',
    )
    const chosen = jarDesk()
    await chosen.ask('/settings zone:Europe/Rome')
    expect((await chosen.ask(LEMON)).notes.map(({ key }) => key)).not.toContain('jar_zone_assumed')
  })

  it('takes a late start with its days counted from then, and no day to come', async () => {
    const desk = jarDesk('2026-11-10')
    const { data } = await desk.ask(`${LEMON} when:1 November`)
    expect(data.day).toBe(10)
    expect((await desk.storyOf('lemon')).started.days.strainFrom).toBe('2026-11-15')
    const error = await desk.refused(`/jar start other of:lemon spirit:1 l 95% when:tomorrow`)
    expect(error).toMatchObject({ code: 'bad_value', option: 'when' })
  })

  it('refuses a name that a running jar has, and names a free one', async () => {
    const desk = jarDesk()
    await desk.ask(LEMON)
    const error = await desk.refused(LEMON.replace('lemon', 'LEMON'))
    expect(error).toMatchObject({ code: 'bad_value', option: 'name' })
    expect(error.message).toContain('LEMON 2')
    await desk.ask('/jar discard lemon')
    await desk.ask(LEMON)
    expect((await desk.person()).jars).toHaveLength(2)
  })

  it('refuses what /plan refuses, and keeps nothing of it', async () => {
    const desk = jarDesk()
    expect((await desk.refused('/jar start x of:foxglove spirit:1 l 95%')).code).toBe('refused')
    expect((await desk.refused('/jar start x of:lemon')).code).toBe('missing_option')
    expect((await desk.refused('/jar start all of:lemon spirit:1 l 95%')).option).toBe('name')
    expect((await desk.refused('/jar start x of:jaboticaba spirit:1 l 95%')).option).toBe('of')
    await desk.ask('/jar start x of:20 g jaboticaba spirit:1 l 95% unknown-ok:yes days:10 days')
    expect((await desk.storyOf('x')).started.days).toMatchObject({ strainFrom: '2026-11-11', restDays: null })
    expect((await desk.person()).jars).toHaveLength(1)
  })

  it('keeps at most 100 running jars, done ones not counted', async () => {
    const asker = newAsker()
    const desk = jarDesk('2026-11-01', asker)
    await desk.ask(LEMON)
    await desk.ask('/jar discard lemon')
    await desk.ask(LEMON)
    const named = (index: number) => `jar ${index}`
    await asker.store.update('local', (person) => ({
      ...person,
      jars: [
        ...person.jars,
        ...Array.from({ length: 99 }, (_, index) => {
          const jar = person.jars[1]!
          const entries = jar.entries.map((entry) => ({ ...entry, name: named(index) }))
          return { ...jar, id: `x${1000 + index}`, entries }
        }),
      ],
    }))
    expect((await desk.refused(LEMON.replace('lemon', 'one more'))).code).toBe('limit')
    await desk.ask(`/jar discard ${named(7)}`)
    await desk.ask(LEMON.replace('lemon', 'one more'))
  })

  it('reads 24/12 by the country of the person', async () => {
    const desk = jarDesk('2027-01-05')
    const line = LEMON.replace('lemon', 'a')
    expect((await desk.refused(`${line} when:3/1`)).code).toBe('ambiguous')
    await desk.ask('/settings country:IT')
    await desk.ask(`${line} when:3/1`)
    expect((await desk.storyOf('a')).started.day).toBe('2027-01-03')
    const wished = LEMON.replace('lemon', 'c')
    await desk.ask(`${wished} ready-by:1/3`)
    expect((await desk.storyOf('c')).started.days.strainBy! < '2027-03-01').toBe(true)
    await desk.ask('/settings country:US')
    expect((await desk.refused(`${wished.replace(' c ', ' d ')} ready-by:1/13`)).code).toBe('unreachable')
    await desk.ask(`${line.replace(' a ', ' b ')} when:12/24`)
    expect((await desk.storyOf('b')).started.day).toBe('2026-12-24')
  })
})

describe('a plan offers its jar', () => {
  const actionsOf = async (line: string) => {
    const outcome = await jarDesk().run(line)
    return outcome.ok ? linesOf(outcome.reply.actions) : []
  }

  it('with what was typed, and it can be typed back', async () => {
    const [line] = await actionsOf('/plan of:8 lemons + 30 g ginger spirit:0.7 l strength:95% to-strength:30%')
    expect(line).toBe('/jar start of:8 lemons + 30 g ginger spirit:0.7 l strength:95% to-strength:30%')
    const desk = jarDesk()
    await desk.ask(line!)
    expect((await desk.storyOf('lemon')).started.plants).toHaveLength(2)
  })

  it('late where it began in the past, today where it is to begin', async () => {
    expect((await actionsOf('/plan of:lemon spirit:1 l 95% start:yesterday'))[0]).toBe(
      '/jar start of:lemon spirit:1 l 95% when:2026-10-31',
    )
    expect((await actionsOf('/plan of:lemon spirit:1 l 95% start:tomorrow'))[0]).toBe(
      '/jar start of:lemon spirit:1 l 95%',
    )
  })

  it.each([
    ['1 kg green walnuts', 'green walnuts'],
    ['1 stick ceylon cinnamon', 'cinnamon'],
    ['30 g raspberries', 'raspberries'],
    ['80 g peppermint leaves', 'peppermint'],
    ['1 kg cherries', 'cherries'],
    ['20 g coriander leaves', 'coriander leaves'],
  ])('%s as %s', async (of, name) => {
    const [line] = await actionsOf(`/plan of:${of} spirit:1 l 60%`)
    expect(line).toBe(`/jar start of:${of} spirit:1 l 60%`)
    expect((await jarDesk().ask(line!)).data.name).toBe(name)
  })

  it('under the next free number, and once only from one line', async () => {
    const desk = jarDesk()
    const [line] = await actionsOf('/plan of:90 g lemon peel spirit:1 l 95%')
    await desk.ask('/jar start lemon of:80 g lemon peel spirit:1 l 95%')
    const text = await desk.textOf(line!)
    expect(text).toContain('Started. I’ve named it lemon 2.')
    expect(text).toContain('/jar rename lemon 2')
    desk.at('2026-11-02')
    const again = await desk.run(line!)
    expect((await desk.person()).jars).toHaveLength(2)
    expect(await desk.headlineOf(line!)).toMatchObject({
      key: 'jar_begun_again',
      values: { name: 'lemon 2', day: '2026-11-01' },
    })
    const another = again.ok ? lineOf(again.reply.actions[0]!.call) : ''
    expect(another).toBe('/jar start lemon 3 of:90 g lemon peel spirit:1 l 95%')
    expect((await desk.ask(another)).data.name).toBe('lemon 3')
    expect((await desk.refused('/jar start lemon of:80 g lemon peel spirit:1 l 95%')).option).toBe('name')
  })

  it('for bottles to fill as well', async () => {
    const [line] = await actionsOf('/plan of:fennel seed bottles:4 x 500 ml strength:95%')
    expect(line).toBe('/jar start of:fennel seed strength:95% bottles:4 x 500 ml')
    await jarDesk().ask(line!)
  })
})
