import { describe, expect, it } from 'vitest'
import type { Happening } from '../../../core/jar/entry/entry.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import type { Person } from '../../../store/person.ts'
import { linesOf } from '../call-typed.ts'
import { ginger, lemon, nudgedReply, walnut } from './nudged.ts'
import { at, happened, jarOf, personWith, ZONE } from './people.ts'

const WATER: Happening = {
  kind: 'added',
  plants: [],
  spirits: [],
  waterG: exactly(8000),
  sweetenings: whiteSugar(exactly(0)),
}

const on = (person: Person, day: string) => nudgedReply(person, { nowMs: at(day), assumedZone: ZONE })

const offeredBy = ({ actions }: ReturnType<typeof on>) => linesOf(actions)

/** 95 % vol in a litre, and eight litres of water. */
const watered = (person: Person, id: string): Person => happened(person, id, at('2026-12-02', '10:00'), WATER)

describe('a reminder of a jar that must not be drunk as it is', () => {
  it('says that first, and asks for nothing of it', () => {
    const reply = on(watered(personWith([lemon]), 'lemon'), '2026-12-03')
    expect(reply.headline).toMatchObject({ key: 'nudge', values: { held: ['lemon'], asked: [] } })
    expect(reply.cautions.map(({ key }) => key)).toEqual(['jar_ferments'])
    const [fix, away, later] = offeredBy(reply)
    expect(fix).toMatch(/^\/jar add lemon spirit:\d+ ml 95%$/)
    expect([away, later]).toEqual(['/jar discard lemon', '/jar later lemon until:tomorrow'])
    expect(reply.notes.map(({ key }) => key)).not.toContain('nudge_how')
  })

  it('still asks for what other jars want', () => {
    const reply = on(watered(personWith([lemon, walnut, ginger]), 'walnu'), '2026-12-03')
    expect(reply.headline).toMatchObject({ values: { held: ['walnut'] } })
    expect(JSON.stringify(reply.headline)).not.toMatch(/"name":"walnut"/)
    expect(reply.cautions[0]!.key).toBe('jar_ferments')
    expect(offeredBy(reply)).toContain('/jar shake all')
  })

  it('never asks to taste or drink of poison', () => {
    const plants = [
      {
        id: null,
        name: 'oleander leaves',
        massG: exactly(20),
        count: null,
        isDried: false,
        isUsual: false,
        words: null,
        addOn: null,
      },
    ]
    const plan = { tasteFrom: '2026-12-03', strainFrom: '2026-12-10', strainBy: '2026-12-20' }
    const olea = jarOf({ name: 'olea', startedMs: at('2026-12-01', '18:00'), plan, more: { plants } })
    const reply = on(personWith([olea]), '2026-12-03')
    expect(reply.headline).toMatchObject({ values: { held: ['olea'], asked: [] } })
    expect(reply.cautions.map(({ key }) => key)).toEqual(['jar_refused'])
    expect(offeredBy(reply)).toEqual(['/jar discard olea', '/jar later olea until:tomorrow'])
  })

  it('says of what may not keep where it stands, beside what it asks for', () => {
    const person = happened(personWith([lemon]), 'lemon', at('2026-12-02', '10:00'), {
      ...WATER,
      waterG: exactly(4400),
    })
    const reply = on(person, '2026-12-03')
    expect(reply.headline).toMatchObject({ values: { held: [], asked: [{ duty: 'shake' }] } })
    expect(reply.cautions).toEqual([{ group: 'cautions', key: 'jar_still_weak', values: { name: 'lemon' } }])
  })
})
