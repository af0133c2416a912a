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
  expect(await us.textOf('/jar show lemon')).toMatch(/3 cups .*of 95 % spirit/)
  expect(await us.textOf('/jar strain lemon')).toMatch(/Now dissolve \d.* oz sugar in .* cups/)
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
  expect(await late.firstOf('/jar show basil')).toMatch(/day 81, \d+ planned/)
})

it('tells what can stand in for cassia', async () => {
  const { error } = await desk().jsonOf('/plan of:1 stick cassia spirit:1 l 40%')
  expect(error.message).toMatch(/One stick of cassia weighs 3 to 5.g\. Ceylon cinnamon has next to none\. Type: /)
})
