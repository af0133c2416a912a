import { describe, expect, it } from 'vitest'
import { nextDueMs } from '../../../store/due.ts'
import { world } from './inbox.ts'
import { at, happened, jarOf, personWith, ZONE } from './people.ts'

/** Shaken and tasted every day, strained from the 3rd to the 5th. */
const basil = jarOf({
  name: 'basil',
  startedMs: at('2026-12-01', '18:00'),
  plan: { tasteFrom: '2026-12-02', strainFrom: '2026-12-03', strainBy: '2026-12-05' },
})
const said = (told: readonly string[]) => [...told].sort()

describe('what was missed', () => {
  it('is said with what falls due of it within three hours, and that not again', async () => {
    const here = await world({ people: { local: personWith([basil]) } })
    await here.tick(at('2026-12-03', '06:00'))
    expect(here.box.texts()).toEqual([expect.stringMatching(/^Shake basil\. Taste basil\.\n/)])
    await here.tick(at('2026-12-03'))
    expect(here.box.texts()).toEqual([expect.stringMatching(/^Strain basil:/)])
    expect(said((await here.person()).jars[0]!.told)).toEqual([
      'shake.2026-12-02',
      'shake.2026-12-03',
      'strain.2026-12-03',
      'taste.2026-12-02',
      'taste.2026-12-03',
    ])
  })

  it('is said apart from what falls due later than that, or of another jar', async () => {
    const walnut = { ...jarOf({ name: 'walnut', startedMs: at('2026-12-01', '18:00') }), told: ['shake.2026-12-02'] }
    const here = await world({ people: { local: personWith([basil, walnut]) } })
    await here.tick(at('2026-12-03', '05:59'))
    await here.tick(at('2026-12-03'))
    const [, second] = here.box.texts()
    expect(second).toMatch(/^Shake basil and walnut\. Taste basil\. Strain basil:/)
  })

  it('stays one where it is tried again', async () => {
    const here = await world({ people: { local: personWith([basil]) } })
    here.box.answer = () => 'failed'
    await here.tick(at('2026-12-03', '08:58'))
    here.box.answer = () => 'sent'
    await here.tick(at('2026-12-03', '08:59'))
    await here.tick(at('2026-12-03'))
    expect(here.box.texts().map((text) => text.split('\n')[0])).toEqual([
      'Shake basil. Taste basil.',
      expect.stringMatching(/^Strain basil:/),
    ])
  })

  it('is forgotten where nothing is left to taste for, and nobody is asked again', async () => {
    const strainAsked = { ...basil, told: ['strain.2026-12-03', 'strain.2026-12-05'] }
    const here = await world({ people: { local: personWith([strainAsked], { shake: 'off' }) } })
    await here.tick(at('2026-12-06', '08:00'))
    expect(here.box.received).toEqual([])
    expect(nextDueMs(await here.person(), ZONE)).toBe(at('2026-12-12'))
    const onTime = await world({ people: { local: personWith([strainAsked], { shake: 'off' }) } })
    await onTime.tick(at('2026-12-05', '23:00'))
    expect(onTime.box.texts()).toEqual([expect.stringMatching(/^Taste basil\.\n/)])
  })

  it('is left out of a nudge that failed on the last day', async () => {
    const here = await world({ people: { local: personWith([basil]) } })
    here.box.answer = () => 'failed'
    await here.tick(at('2026-12-05', '23:59'))
    here.box.answer = () => 'sent'
    await here.tick(at('2026-12-06', '00:00'))
    expect(here.box.texts()).toEqual([expect.stringMatching(/^Shake basil\. Strain basil now: it was due/)])
    expect((await here.person()).nudges).toEqual([])
  })

  it('is not said ahead once the jar was shaken', async () => {
    const shaken = happened(personWith([basil]), 'basil', at('2026-12-02', '20:00'), { kind: 'shaken' })
    const here = await world({ people: { local: shaken } })
    await here.tick(at('2026-12-03', '08:00'))
    expect(here.box.texts()).toEqual([expect.stringMatching(/^Taste basil\.\n/)])
  })
})
