import { expect, it, test } from 'vitest'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { standingTroubles } from '../../../core/jar/state/standing-troubles.ts'
import { shelf } from './told-shelf.ts'

type Desk = Awaited<ReturnType<typeof shelf>>

const standing = async (desk: Desk) =>
  (await desk.person()).jars
    .map(({ entries }) => jarStateOf(entries)!)
    .filter(({ name }) => name === 'sloe')
    .flatMap((story) => standingTroubles(story).map(({ symptom }) => symptom))

const both = async (): Promise<Desk> => {
  const desk = await shelf()
  await desk.ask('/trouble smells of nail varnish jar:sloe no:bought spirit')
  await desk.ask('/trouble mould jar:sloe yes:growth')
  return desk
}

// What may be taken for what: common sense, no source.
test.each([
  ['/jar note sloe was:only pith', ['solvent']],
  ['/jar note sloe note:it was only pith', ['solvent']],
  ['/jar note sloe note:it isn’t mould', ['solvent']],
  ['/jar note sloe was:nothing', ['solvent']],
  ['/jar note sloe note:false alarm', ['solvent']],
  ['/jar note sloe was:smells of glue was nothing', ['mould']],
])('an answer lets off only what it is about: %s', async (line, left) => {
  const desk = await both()
  await desk.ask(line)
  expect(await standing(desk)).toEqual(left)
})

it('takes no pith for an answer to what smells of a spirit that nobody sold', async () => {
  const desk = await both()
  await desk.ask('/jar note sloe was:only pith')
  expect((await desk.refused('/jar note sloe was:only pith')).message).toMatch(/^Throw sloe away: spirit nobody sold/)
  await desk.ask('/jar note sloe note:it was only peel')
  expect(await standing(desk)).toEqual(['solvent'])
})

it('offers for each of several a line that lets off that one', async () => {
  const desk = await shelf()
  await desk.ask('/trouble mould jar:sloe yes:growth')
  await desk.ask('/trouble smells of nail varnish jar:sloe no:bought spirit')
  const shown = await desk.textOf('/jar show sloe')
  await desk.ask(/(\/jar note sloe was:.*?)(?= {2,}|\n|$)/.exec(shown)![1]!)
  expect(await standing(desk)).toEqual(['mould'])
})

it('does not let a jar go on of which nobody can tell what is wrong', async () => {
  const desk = await shelf()
  await desk.ask('/trouble smells of solvent jar:sloe')
  const told = await desk.textOf('/trouble smells of solvent jar:sloe no:fuel + varnish')
  expect(told).toMatch(/^I can’t tell what that is/)
  expect(told).not.toContain('goes on as before')
  expect(told).toContain('/jar note sloe was:nothing')
  expect((await desk.refused('/jar bottle sloe bottles:1 x 500 ml')).message).toMatch(/^Don’t drink or bottle sloe yet/)
  await desk.ask('/jar note sloe was:nothing')
  expect(await standing(desk)).toEqual([])
})
