import { expect, it } from 'vitest'
import { testDesk } from '../test-desk.ts'

const desk = () => testDesk({ nowMs: Date.UTC(2026, 10, 20, 9), width: 100 })

const after = async (...lines: readonly string[]) => {
  const used = desk()
  for (const line of lines) expect((await used.jsonOf(line)).error, line).toBeUndefined()
  return used
}

it('shows a jar in the measures that it was started in', async () => {
  const us = await after('/jar start lemon of:10 lemons spirit:3 cups 95% when:2026-11-01')
  expect(await us.textOf('/jar show lemon')).toMatch(/3 cups .*of 95% spirit/)
  expect(await us.textOf('/jar strain lemon')).toMatch(/Now dissolve \d.* cups \(\d+ oz\) sugar in .* cups/)
  const metric = await after('/jar start lemon of:10 lemons spirit:700 ml 95% when:2026-11-01')
  expect(await metric.textOf('/jar show lemon')).not.toMatch(/cups?\b/)
  expect(await metric.textOf('/jar strain lemon')).not.toMatch(/cups?\b|\boz\b/)
})

it('answers in the measures that are typed now', async () => {
  const us = await after('/jar start lemon of:10 lemons spirit:3 cups 95% when:2026-11-01')
  expect(await us.firstOf('/jar strain lemon measured:680 ml')).toContain('680 ml')
})

it('says of a jar that is late how long was planned, and weighs what was poured in as a scale does', async () => {
  const used = await after(
    '/jar start hot of:6 oranges + 20 g ginger spirit:1 l 60% when:2026-09-01',
    '/jar start lemon of:10 lemons spirit:1 l 95% when:2026-10-20',
    '/jar strain hot when:2026-09-20',
    '/jar strain lemon when:2026-11-10',
    '/jar combine lemon with:hot',
  )
  expect(await used.textOf('/jar show lemon')).not.toMatch(/\d\.\d{2,} g/)
  const late = await after('/jar start basil of:40 g basil spirit:500 ml 95% when:2026-09-01')
  expect(await late.firstOf('/jar show basil')).toMatch(/day 81, due by day \d+/)
})

it('tells what can stand in for cassia', async () => {
  const { error } = await desk().jsonOf('/plan of:1 stick cassia spirit:1 l 40%')
  expect(error.message).toMatch(/One stick of cassia weighs 3 to 5.g\. Ceylon cinnamon has next to none\. Type: /)
})

const US = /[\d⅛¼⅜½⅝¾⅞] (?:cups?|tbsp|lb|oz)\b/

/** Without lines to type, metric in brackets, a trial in a glass, prices, bottles and bags as they are sold. */
const amountsIn = (text: string): string =>
  text
    .replaceAll(/ \/[a-z][^\n]*|\([^)]*\)|^Try it first.*$|at [\d.]+\/k?[gl]\b|for 100 ml/gm, '')
    .replaceAll(
      /\d+ × [\d.]+ k?g|\b[\d.]+ k?g bags?|\d+ × [\d.]+ ml|(?:\w+ )?\d+ (?:ml|l) bottles?|bottles of \d+ ml/g,
      '',
    )

/** A jar in US units, one in imperial ones and one in metric ones, all strained. */
const shelf = () =>
  after(
    '/jar start lemon of:2 lb raspberries spirit:1 quart 95% when:2026-10-20',
    '/jar start basil of:60 g basil spirit:500 ml 95% when:2026-10-20',
    '/jar start quince of:1 lb quinces spirit:1 imp pint 60% when:2026-10-20',
    '/jar strain lemon when:2026-11-10',
    '/jar strain basil when:2026-11-10',
    '/jar strain quince when:2026-11-10',
  )

it('lists each jar in its own measures', async () => {
  const text = await (await shelf()).firstOf('/jar list')
  expect(text).toMatch(/lemon +sweeten: .* cups \(\d+ oz\) sugar in [^\n]*cups/)
  expect(text).toMatch(/quince +sweeten: .*oz sugar in [^\n]*imp (?:pint|fl)/)
  expect(text).toMatch(/basil +sweeten: \d+ g sugar in [\d.]+ m?l water/)
})

it('compares and lists batches, each in its own measures', async () => {
  const used = await shelf()
  expect(await used.textOf('/notebook compare:lemon + basil')).toMatch(/Spirit +4 cups of 95% \| 500 ml of 95%\n/)
  const text = await used.textOf('/notebook')
  expect(text).toMatch(/lemon [\s\S]*1 quart of 95 % spirit/)
  expect(text).toMatch(/quince [\s\S]*imp pint/)
  expect(text).toMatch(/basil [\s\S]*500 ml of 95 % spirit/)
})

it.each([
  '/syrup jar:lemon',
  '/syrup jar:lemon to-strength:25%',
  '/adjust jar:lemon to-strength:40%',
  '/cost lemon prices:sugar 1.20/kg + spirit 95% 18/l',
  '/jar show lemon',
])('answers in the measures of the jar: %s', async (line) => {
  const text = amountsIn(await (await shelf()).firstOf(line))
  expect(text).toMatch(US)
  expect(text).not.toMatch(/\d (?:ml|l|g|kg)\b(?!\/L)/)
})

it('says a spirit as it was typed when it is poured and when it is shown', async () => {
  const used = desk()
  const started = await used.firstOf('/jar start lemon of:10 lemons spirit:70 cl 95%')
  expect(started).toContain('70 cl of 95 % spirit')
  expect(await used.firstOf('/jar show lemon')).toContain('70 cl of 95 % spirit')
  await used.run('/settings units:us')
  expect(await used.firstOf('/jar show lemon')).toMatch(/cups.*of 95% spirit/)
})

it('keeps the measures of what is weighed where only what is poured was typed now', async () => {
  const used = await after('/jar start rasp of:2 lb raspberries spirit:3 cups 95% when:2026-11-01')
  expect(await used.firstOf('/jar strain rasp measured:680 ml')).toMatch(/oz sugar in [\d.]+ m?l water/)
})

it('keeps the measures of the jar where bottles are told in millilitres', async () => {
  const used = await after(
    '/jar start lemon of:10 lemons spirit:3 cups 95% when:2026-11-01',
    '/jar strain lemon when:2026-11-18',
    '/jar sweeten lemon sugar:1 lb water:4 cups when:2026-11-18',
  )
  expect(await used.firstOf('/jar bottle lemon bottles:2 x 500 ml')).toMatch(/cups?[^\n]* left over/)
})

it('buys for a jar in its measures, and a bag as it is sold', async () => {
  expect(await (await shelf()).firstOf('/shopping jars:lemon')).toMatch(/1 × 1 kg +sugar \(it takes .* cups, \d+ oz\)/)
})
