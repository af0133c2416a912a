import { expect, it } from 'vitest'
import { testDesk } from '../test-desk.ts'

const START = '/jar start root of:90 g ginger + 2 g dried chilli spirit:600 ml vodka 40%'

const deskAt = () => testDesk({ nowMs: Date.UTC(2026, 10, 29, 12) })

it('offers at once that all went in with it, where a jar was started on a day that is over', async () => {
  const desk = deskAt()
  const text = (await desk.firstOf(`${START} when:8 days ago`)).replace(/\s+/g, ' ')
  const line = /It all went in at once: (\/jar add .*? when:\S+)/.exec(text)?.[1]
  expect(line).toMatch(/^\/jar add root of:2 g dried chill\S* when:2026-11-21$/)
  expect(await desk.run(line!)).toMatchObject({ ok: true })
  expect(await desk.run('/jar take-out root of:chilli')).toMatchObject({ ok: true })
})

it('leaves it for more where a jar is started now', async () => {
  const desk = deskAt()
  expect(await desk.firstOf(START)).not.toContain('It all went in at once')
  expect(await deskAt().textOf(START)).toContain('It all went in at once')
})
