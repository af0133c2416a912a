import { describe, expect, it } from 'vitest'
import type { Reply } from '../../../bot/chat/reply.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import type { Jar, Settings } from '../../../store/person.ts'
import { speech } from '../test-desk.ts'
import { ginger, lemon, nudgedReply, STARTED, walnut } from './nudged.ts'
import { at, happened, jarOf, personWith, ZONE } from './people.ts'

const replyOf = (jars: readonly Jar[], day: string, settings: Partial<Settings>): Reply =>
  nudgedReply(personWith(jars, settings), { nowMs: at(day), assumedZone: ZONE }, 'private')

/** Without the last four, which every nudge has. */
const labelsOf = (jars: readonly Jar[], day: string, settings: Partial<Settings> = {}): readonly string[] =>
  replyOf(jars, day, settings)
    .actions.map(({ label }) => speech.words.say(label, 'metric'))
    .slice(0, -4)

describe('the buttons of a nudge', () => {
  it('name their jar where it is one of several', () => {
    const basil = jarOf({ name: 'basil', startedMs: STARTED, plan: { tasteFrom: '2026-12-10' } })
    expect(labelsOf([ginger, basil], '2026-12-10', { shake: 'off' })).toEqual([
      'ginger strained',
      'basil: good',
      'basil: not yet',
    ])
    expect(labelsOf([lemon, walnut], '2026-12-02')).toEqual(['All shaken'])
    const shaken = happened(personWith([lemon, ginger]), 'ginge', at('2026-12-10', '07:00'), { kind: 'shaken' })
    expect(labelsOf(shaken.jars, '2026-12-10')).toEqual(['ginger strained', 'lemon shaken'])
  })

  it('need no name where there is one jar', () => {
    expect(labelsOf([lemon], '2026-12-02')).toEqual(['Shaken'])
    expect(labelsOf([ginger], '2026-12-10')).toEqual(['Strained', 'Shaken'])
  })

  it('are for the tastings that cannot wait, which the text names first', () => {
    const until = (name: string, strainBy: string) => {
      return jarOf({ name, startedMs: STARTED, plan: { tasteFrom: '2026-12-05', strainFrom: '2026-12-20', strainBy } })
    }
    const jars = [until('orange', '2026-12-29'), until('plum', '2026-12-27'), until('lemon', '2026-12-22')]
    expect(speech.words.say(replyOf(jars, '2026-12-05', {}).headline, 'metric')).toContain(
      'Taste lemon, plum and orange.',
    )
    expect(labelsOf(jars, '2026-12-05')).toEqual([
      'All shaken',
      'lemon: good',
      'lemon: not yet',
      'plum: good',
      'plum: not yet',
    ])
  })

  it('offer bottling once the syrup has settled, and no filtering', () => {
    const started = { targets: { abvPercent: 30, sugarGPerL: 0 }, bottles: [{ count: 2, volumeMl: 500 }] } as const
    const jar = jarOf({ name: 'ginger', startedMs: STARTED, plan: started })
    const strained = { kind: 'strained', measured: null, strength: null, rinseWaterG: exactly(0) } as const
    const syrup = { kind: 'sweetened', waterG: exactly(700), sweetenings: whiteSugar(exactly(500)) } as const
    const done = [strained, syrup].reduce(
      (person, happening) => happened(person, 'ginge', at('2026-12-10', '07:00'), happening),
      personWith([jar], { shake: 'off' }),
    )
    expect(labelsOf(done.jars, '2026-12-13', { shake: 'off' }).slice(0, 1)).toEqual(['Bottled'])
  })
})
