import { expect, it } from 'vitest'
import { USUAL_MATERIAL } from '../../../core/quantity/materials.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { newAsker } from '../asker.ts'
import { flat } from '../flat.ts'
import { nudgedReply } from '../reminders/nudged.ts'
import { speech, testDesk } from '../test-desk.ts'

const DAY_MS = 24 * 3_600_000
const STARTED_MS = Date.UTC(2026, 10, 20, 12)

/** What is said of the sweetening of a batch: by its plan, when it is strained, and by the reminder of the next morning. */
async function saidOf(batch: string, measured: string) {
  const asker = newAsker()
  const begun = testDesk({ asker, nowMs: STARTED_MS })
  const plan = flat(await begun.textOf(`/plan ${batch}`))
  expect((await begun.jsonOf(`/jar start name:lemon ${batch}`)).error).toBeUndefined()
  const later = testDesk({ asker, nowMs: STARTED_MS + 14 * DAY_MS })
  const strained = flat(await later.textOf(`/jar strain lemon measured:${measured}`))
  const now = { nowMs: STARTED_MS + 15 * DAY_MS, assumedZone: 'UTC' }
  const reply = nudgedReply(await asker.store.read(asker.userId), now)
  const reminded = speech.words.say(reply.headline, 'metric').replaceAll('\u00a0', ' ')
  return { plan, strained, reminded, cautions: reply.cautions.map(({ key }) => key) }
}

it('makes no syrup of sugar that its water does not dissolve, from the plan to the reminder', async () => {
  const said = await saidOf('of:10 lemons spirit:1 l 40% to-strength:30%', '960 ml')
  expect(said.plan).toMatch(/Stir in \d+ g sugar and \d+ ml water\. Shake daily/)
  expect(said.plan).not.toMatch(/cooled syrup|syrup’s/)
  for (const text of [said.plan, said.strained]) {
    expect(text).toMatch(/[Tt]hat water dissolves only about \d+ g of the sugar/)
  }
  for (const text of Object.values(said).map(String)) expect(text).not.toMatch(/sugar in \d+ ml water|Cool the syrup/)
  expect(said.reminded).toMatch(/^Sweeten lemon: put \d+ g sugar and \d+ ml water straight into the jar, .*heat/)
  expect(said.cautions).toEqual([])
})

it('names a syrup where there is one, from the plan to the reminder', async () => {
  const said = await saidOf('of:10 lemons spirit:1 l 95% to-strength:30%', '960 ml')
  expect(said.plan).toContain('Stir in cooled syrup')
  for (const text of [said.plan, said.strained, said.reminded]) {
    expect(text).toMatch(/sugar in [\d.]+ l water/)
    expect(text).not.toContain('kip the syrup')
  }
  expect(said.cautions).toEqual(['cool_first'])
})

it('stirs sugar in alone where there is no water to come', () => {
  const none = { filler: null, waterMl: exactly(0), dissolvesG: 0, isEstimated: false }
  const syrup = { sweetener: USUAL_MATERIAL, sugarG: exactly(200), ...none }
  const jar = {
    kitchen: 'metric' as const,
    name: 'lemon',
    fromDay: null,
    byDay: null,
    plants: [],
    bottles: null,
    strong: null,
    syrup,
  }
  const values = { asked: [{ duty: 'sweeten' as const, jars: [jar] }], held: [], today: '2026-12-05' }
  const text = speech.words.say({ group: 'headlines', key: 'nudge', values }, 'metric').replaceAll('\u00a0', ' ')
  expect(text).toMatch(/^Sweeten lemon: .*200 g sugar .*into (?:it|the jar).*heat/)
  expect(text).not.toMatch(/water/)
})
