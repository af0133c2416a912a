import { expect, it, test } from 'vitest'
import { jarDesk } from '../commands-jar/desk.ts'

// What a distillery engineer wrote on 19 September 2020; citrus: common practice, no source.
test.each([
  ['strawberry', 3, 'published'],
  ['raspberries', 6, 'published'],
  ['sloes', 6, 'published'],
  ['lemon', 12, 'common_practice'],
  ['green walnuts', 36, 'published'],
  ['basil', 36, 'published'],
  ['lemon + strawberry', 3, 'published'],
] as const)('a liqueur of %s is at its best for %i months: %s', async (of, months, trust) => {
  const { data } = await jarDesk().ask(`/keeping of:${of} strength:30% sweetness:200 g/L`)
  expect(data).toMatchObject({ keeping: 'keeps', bestMonths: months, trust })
  // Open it lasts no longer than shut.
  expect(data.openedMonths).toEqual([Math.min(6, months), Math.min(12, months)])
})

it('says so where nobody has measured it', async () => {
  const { data } = await jarDesk().ask('/keeping of:coffee beans, whole strength:30%')
  expect(data).toMatchObject({ bestMonths: null, trust: 'not_found' })
  expect(await jarDesk().textOf('/keeping of:coffee beans, whole strength:30%')).toMatch(/nobody has measured/i)
})

// The lines of the published range, 75 to 85 Delle units, and the 15 % vol below which sugar is not relied on.
test.each([
  ['13%', '250 g/L', 'ferments'],
  ['16%', '80 g/L', 'undecided'],
  ['20%', '0 g/L', 'keeps'],
] as const)('judges %s with %s: %s', async (strength, sweetness, keeping) => {
  const desk = jarDesk()
  const { data } = await desk.ask(`/keeping of:plum strength:${strength}±0.1 sweetness:${sweetness}`)
  expect(data.keeping).toBe(keeping)
  const text = await desk.textOf(`/keeping of:plum strength:${strength}±0.1 sweetness:${sweetness}`)
  if (keeping === 'keeps') expect(text).toContain('at its best')
  else expect(text).toMatch(/fridge/i)
})

it('counts a jar’s months from its bottling', async () => {
  const desk = jarDesk('2026-10-01')
  await desk.ask('/jar start lemon of:10 lemons spirit:1 l 95%')
  desk.at('2026-10-20')
  await desk.ask('/jar strain lemon measured:930 ml')
  await desk.ask('/jar sweeten lemon water:1.5 l sugar:500 g')
  desk.at('2026-11-01')
  await desk.ask('/jar bottle lemon bottles:5 x 500 ml')
  expect((await desk.ask('/keeping jar:lemon')).data).toMatchObject({ bestMonths: 12, bestUntil: '2027-11-01' })
  expect(await desk.textOf('/keeping jar:lemon')).toContain('until about November 2027')
})

it('warns of vegetables, and never gives egg or cream a time to wait', async () => {
  const desk = jarDesk()
  expect((await desk.ask('/keeping of:garlic strength:40%')).cautions.map(({ key }) => key)).toContain(
    'keeping_low_acid',
  )
  const text = await desk.textOf('/keeping of:lemon strength:30%')
  expect(text).toContain('use it within two days')
  expect(text).toContain('no amount of waiting makes raw egg safe')
  expect((await desk.refused('/keeping')).message).toMatch(/ \/keeping of:lemon strength:28%$/)
})
