import { describe, expect, it, test } from 'vitest'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { standingTroubles } from '../../../core/jar/state/standing-troubles.ts'
import { jarDesk } from '../commands-jar/desk.ts'

/** A strong jar that steeps, one that waits for bottles, and one in bottles. */
const shelf = async () => {
  const desk = jarDesk('2026-09-01')
  await desk.ask('/jar start lemon of:10 lemons spirit:1 l vodka 40%')
  await desk.ask('/jar start sloe of:500 g sloes spirit:1 l vodka 40%')
  await desk.ask('/jar start plum of:500 g plums spirit:1 l vodka 40%')
  desk.at('2026-11-01')
  for (const name of ['sloe', 'plum']) {
    await desk.ask(`/jar strain ${name} measured:1 l`)
    await desk.ask(`/jar sweeten ${name} sugar:200 g`)
  }
  await desk.ask('/jar bottle plum bottles:2 x 500 ml')
  desk.at('2026-11-25')
  return desk
}

/**
 * Each sign that has a whole jar thrown away whatever the rest, as stop-first.test.ts has them, reviewed for food safety; and
 * the lines that tell of it.
 */
const THROWN = [
  ['mould', 'yes:growth'],
  ['solvent', 'no:bought'],
  ['solvent', 'yes:fuel'],
  ['wrong spirit', 'no:bought'],
  ['foraged', 'no:sure'],
  ['glass chipped', 'yes:glass'],
  ['stones cracked', 'yes:stones'],
  ['curdled', 'yes:dairy'],
  ['crystal decanter', 'yes:metal'],
  ['fizzing', 'yes:burst'],
  ['pink slime', 'yes:growth'],
  ['insects', 'yes:many'],
] as const

/** What would lead to drinking it, or giving it away; of a jar that is not bottled yet, and of one in bottles. */
const HELD = {
  sloe: [
    '/jar bottle sloe bottles:2 x 500 ml',
    '/jar open sloe',
    '/jar label sloe',
    '/share sloe',
    '/jar combine sloe with:lemon',
    '/jar combine lemon with:sloe into:both',
    '/syrup jar:sloe',
    '/adjust jar:sloe to-strength:25%',
    '/jar start second-of:sloe spirit:500 ml vodka 40%',
  ],
  plum: ['/bottles plum opened:1', '/bottles plum given:1', '/jar open plum', '/jar label plum', '/share plum'],
} as const

/** What goes on, and says it before anything else. */
const SAID = [
  '/jar show sloe',
  '/jar filter sloe',
  '/jar sweeten sloe sugar:20 g',
  '/jar add sloe spirit:100 ml vodka 40%',
  '/jar taste sloe rating:4',
  '/jar note sloe where:cellar',
  '/jar split sloe amount:300 ml into:small',
  '/jar tag sloe',
  '/again sloe',
  '/keeping jar:sloe',
  '/jar correct sloe entry:2 measured:950 ml',
] as const

const FIRST = /^Throw (?:lemon|sloe|small|plum) away: /

describe.each(THROWN)('%s %s', (symptom, sign) => {
  test('is kept, and holds back whatever leads to drinking it', async () => {
    const desk = await shelf()
    for (const name of ['sloe', 'plum'] as const) {
      const told = await desk.textOf(`/trouble ${symptom} jar:${name} ${sign}`)
      expect(told).toMatch(/^Throw it away: /)
      expect(told).toContain(`I’ve noted that on ${name}.`)
      const back = new RegExp(`(?:It was only pith|It was nothing): (/jar note ${name} was:[a-z ]*[a-z])`).exec(
        told,
      )?.[1]
      expect(back, told).toBeDefined()
      for (const line of HELD[name]) {
        const before = JSON.stringify(await desk.person())
        const { code, message } = await desk.refused(line)
        expect([code, message], line).toEqual(['refused', expect.stringContaining(back!)])
        expect(message, line).toMatch(FIRST)
        expect(JSON.stringify(await desk.person()), line).toBe(before)
      }
      await desk.ask(back!)
      expect(await desk.textOf(`/jar show ${name}`)).not.toMatch(FIRST)
      await desk.ask(HELD[name][0])
    }
  })

  test('is said first by every step that goes on', async () => {
    const desk = await shelf()
    await desk.ask(`/trouble ${symptom} jar:sloe ${sign}`)
    await desk.ask(`/trouble ${symptom} jar:lemon ${sign}`)
    for (const line of ['/jar shake lemon', '/jar strain lemon measured:950 ml', ...SAID])
      expect(await desk.textOf(line), line).toMatch(FIRST)
    expect(await desk.textOf('/jar list')).toMatch(/^Look after [a-z, ]+ first[\s\S]*! Throw sloe away: /)
  })
})

const standingOf = async (desk: Awaited<ReturnType<typeof shelf>>, name: string) =>
  (await desk.person()).jars
    .map(({ entries }) => jarStateOf(entries)!)
    .filter((story) => story.name === name)
    .flatMap(standingTroubles)

test.each([
  ['/jar undo sloe', 0],
  ['/jar note sloe was:only pith', 0],
  ['/jar note sloe note:false alarm, it was only pith', 0],
  ['/trouble mould jar:sloe no:growth', 0],
  // It is gone, or asked again: what was there all the same.
  ['/jar note sloe note:the mould is gone now', 1],
  ['/jar note sloe note:no sign of mould any more', 1],
  ['/jar taste sloe rating:5', 1],
  ['/trouble mould jar:sloe', 1],
  ['/trouble cloudy jar:sloe', 1],
] as const)('%s leaves %i standing', async (line, count) => {
  const desk = await shelf()
  await desk.ask('/trouble mould jar:sloe yes:growth')
  await desk.ask(line)
  expect(await standingOf(desk, 'sloe')).toHaveLength(count)
})

it('keeps no harmless trouble, nothing that is supposed, of no jar, or of one that has ended', async () => {
  const desk = await shelf()
  const before = JSON.stringify(await desk.person())
  for (const line of [
    '/trouble cloudy jar:lemon',
    '/trouble cloudy in the freezer jar:lemon',
    '/trouble too sweet jar:sloe',
    '/trouble crystals jar:sloe',
    '/trouble mould jar:sloe yes:growth what-if:yes',
    '/trouble mould yes:growth',
  ])
    await desk.ask(line)
  expect(JSON.stringify(await desk.person())).toBe(before)
  await desk.ask('/jar discard lemon')
  await desk.ask('/trouble mould jar:lemon yes:growth')
  expect(await standingOf(desk, 'lemon')).toEqual([])
})

it('asks which jar it is, where there are several', async () => {
  const desk = await shelf()
  expect(await desk.textOf('/trouble mould yes:growth')).toContain('Which jar is it? I’ll note it there.')
})

it('says with every step that a question stands open, and goes on', async () => {
  const desk = await shelf()
  await desk.ask('/trouble mould jar:lemon')
  expect(await desk.textOf('/jar show lemon')).toContain('A question about lemon is still open')
  const strained = await desk.textOf('/jar strain lemon measured:1 l')
  expect(strained).toMatch(/^lemon is strained[\s\S]*! A question about lemon is still open/)
  expect(strained).toContain('/jar sweeten lemon')
  const answers = [...strained.matchAll(/(?:Yes|No): (\/trouble .*?)(?= {2,}|\n)/g)].map(([, line]) => line!)
  expect(answers).toHaveLength(2)
  await desk.ask(answers[0]!)
  expect((await desk.refused('/jar bottle lemon bottles:1 x 500 ml')).message).toMatch(FIRST)
  await desk.ask(answers[1]!)
  expect(await desk.textOf('/jar bottle lemon bottles:1 x 500 ml')).toMatch(/^lemon is bottled/)
  expect(await desk.textOf('/jar show lemon')).not.toContain('still open')
})

it('is over once the jar is thrown away, whose story tells it', async () => {
  const desk = await shelf()
  await desk.ask('/trouble mould jar:sloe yes:growth')
  await desk.ask('/jar discard sloe')
  const shown = await desk.textOf('/jar show sloe')
  expect(shown).not.toMatch(FIRST)
  expect(shown).toContain('noted, “mould”, to be thrown away')
})

it('records the same once, and what is worse in its place', async () => {
  const desk = await shelf()
  await desk.ask('/trouble mould jar:sloe')
  await desk.ask('/trouble mould jar:sloe')
  expect(await standingOf(desk, 'sloe')).toMatchObject([{ verdict: 'ask', question: 'growth' }])
  await desk.ask('/trouble mould jar:sloe yes:growth')
  await desk.ask('/trouble mould jar:sloe yes:growth')
  expect(await standingOf(desk, 'sloe')).toMatchObject([
    { verdict: 'throw_away', because: 'growth', day: '2026-11-25' },
  ])
  const { entries } = (await desk.person()).jars.find(({ entries }) => jarStateOf(entries)!.name === 'sloe')!
  expect(entries.filter(({ kind }) => kind === 'noted')).toHaveLength(2)
})
