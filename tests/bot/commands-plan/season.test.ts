import { describe, expect, it } from 'vitest'
import { talker } from '../../talk/reader/told.ts'
import { newAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'
import { ask, textOf } from './desk.ts'

describe('what is out of season on the day it is wanted', () => {
  const seasons = async (line: string, key: string) =>
    (await ask(line)).notes.filter((note) => note.key === key).map(({ text }) => text)
  const plants = 'of:300 g strawberries + 300 g sloes + 10 lemons spirit:2 l 95%'

  it('is said on the first screen where nobody sells it then', async () => {
    expect(await seasons(`/plan ${plants}`, 'plan_only_in_season')).toEqual([
      'You only get sloes September to November. For then, say “start it in September”.',
    ])
    expect(await textOf('/plan of:24 green walnuts spirit:1 l 95% start:20 November')).toContain(
      'You only get green walnuts June to July.',
    )
    expect(await textOf('/plan of:24 green walnuts spirit:1 l 95% start:20 June')).not.toContain('only get')
  })

  it('offers the first month that all of it is to be had in, by words that plan it from then on', async () => {
    const noted = async (plants: string) =>
      (await seasons(`/plan of:${plants} spirit:1 l 95% start:3 January`, 'plan_only_in_season'))[0]
    expect(await noted('24 green walnuts')).toBe(
      'You only get green walnuts June to July. For then, say “start it in June”.',
    )
    expect(await noted('24 green walnuts + 300 g sloes')).not.toContain('say')
    for (const first of ['nocino', '/plan of:24 green walnuts spirit:1 l 95%']) {
      const one = talker()
      await one.say(first)
      expect(await one.say('start it in June')).toMatchObject({
        command: 'plan',
        code: null,
        recorded: 0,
        call: { options: { start: '1 june' } },
        notes: expect.not.arrayContaining(['plan_only_in_season']),
      })
    }
  })

  it('is said deeper where it is only best then, and not of what is dried', async () => {
    const line = `/plan ${plants} start:3 January`
    expect(await seasons(line, 'plan_out_of_season')).toEqual([
      'Strawberries are best April to June (half a year later south of the equator).',
    ])
    expect(await textOf(line)).toMatch(/You only get sloes[\s\S]*\n\nIn the jar\n[\s\S]*Strawberries are best/)
    expect(await seasons('/plan of:10 g dried ginger + 10 lemons spirit:1 l 95%', 'plan_out_of_season')).toEqual([])
  })

  it('is told by the months of the south there', async () => {
    const there = testDesk({ asker: { ...newAsker(), assumedZone: 'Australia/Hobart' } })
    const line = '/plan of:24 green walnuts spirit:1 l 95% start:20 November'
    expect(await there.textOf(line)).toContain('You only get green walnuts December to January.')
    expect(await there.textOf(line.replace('November', 'December'))).not.toContain('only get')
  })
})
