import { expect, it, test } from 'vitest'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { standingTroubles } from '../../../core/jar/state/standing-troubles.ts'
import { FIRST, shelf } from './told-shelf.ts'

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
  ['/jar taste sloe rating:5 note:lovely', 1],
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
  expect(strained).toMatch(/^Lemon is strained[\s\S]*! A question about lemon is still open/)
  expect(strained).toContain('/jar sweeten lemon')
  const answers = [...strained.matchAll(/(?:Yes|No): (\/trouble .*?)(?= {2,}|\n)/g)].map(([, line]) => line!)
  expect(answers).toHaveLength(2)
  await desk.ask(answers[0]!)
  expect((await desk.refused('/jar bottle lemon bottles:1 x 500 ml')).message).toMatch(FIRST)
  await desk.ask(answers[1]!)
  expect(await desk.textOf('/jar bottle lemon bottles:1 x 500 ml')).toMatch(/^Lemon is bottled/)
  expect(await desk.textOf('/jar show lemon')).not.toContain('still open')
})

it('is kept of a taste that is put right, and stays when its words are', async () => {
  const desk = await shelf()
  await desk.ask('/jar taste lemon rating:2 note:odd')
  await desk.ask('/jar correct lemon note:smells of petrol')
  expect(await standingOf(desk, 'lemon')).toMatchObject([
    { symptom: 'solvent', verdict: 'throw_away', because: 'fuel' },
  ])
  await desk.ask('/jar correct lemon note:odd after all')
  expect(await standingOf(desk, 'lemon')).toHaveLength(1)
})

it('lets no open question be lost in another jar', async () => {
  const desk = await shelf()
  await desk.ask('/trouble mould jar:sloe')
  for (const line of ['/jar combine lemon with:sloe into:both', '/jar start second-of:sloe spirit:500 ml vodka 40%'])
    expect((await desk.refused(line)).message, line).toMatch(/^Don’t drink or bottle sloe yet: you told me of “mould”/)
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
