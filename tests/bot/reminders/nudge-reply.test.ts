import { describe, expect, it } from 'vitest'
import { lineOf } from '../../../bot/calls/write-line.ts'
import { parseLine } from '../../../bot/chat/grammar/grammar.ts'
import type { Reply } from '../../../bot/chat/reply.ts'
import { render } from '../../../bot/terminal/show/render.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import type { Person } from '../../../store/person.ts'
import { linesOf } from '../call-typed.ts'
import { commands, speech } from '../test-desk.ts'
import { ginger, lemon, nudgedReply, STARTED, walnut } from './nudged.ts'
import { at, DAY_MS, happened, jarOf, personWith, ZONE } from './people.ts'

const replyOf = (person: Person, nowMs: number, kind?: 'private'): Reply =>
  nudgedReply(person, { nowMs, assumedZone: ZONE }, kind)

const textOf = (reply: Reply): string =>
  render(reply, speech, { width: 300, colour: false }, [], 'whole').replaceAll('\u00a0', ' ')

const headOf = (person: Person, nowMs: number): string => textOf(replyOf(person, nowMs)).split('\n')[0] ?? ''

describe('what a nudge says', () => {
  it('is what to do across the jars, how, and the answers', () => {
    const answered = happened(personWith([lemon, walnut, ginger]), 'ginge', at('2026-12-10', '07:00'), {
      kind: 'shaken',
    })
    expect(textOf(replyOf(answered, at('2026-12-10')))).toBe(
      [
        'Shake lemon and walnut. Strain ginger: it’s ready, any day until 20 December.',
        '',
        '• Sieve away from flames and measure.',
        '• My last reminder to shake lemon and walnut for now.',
        '',
        '  ginger strained: /jar strain ginger   All shaken: /jar shake all',
      ].join('\n'),
    )
  })

  it.each<[day: string, text: string]>([
    ['2026-12-18', 'Strain ginger by 20 December.'],
    ['2026-12-20', 'Strain ginger: today is the last day.'],
    ['2026-12-25', 'Strain ginger now: it was due by 20 December.'],
  ])('tells on %s where the window stands', (day, text) => {
    expect(headOf(personWith([ginger], { shake: 'off' }), at(day))).toBe(text)
  })

  it('names one jar alone in its answers', () => {
    const { actions } = replyOf(personWith([lemon]), at('2026-12-02'))
    expect(linesOf(actions)).toEqual(['/jar shake lemon', '/jar later lemon until:tomorrow'])
  })

  it('counts the jars that are too many to name', () => {
    const jars = Array.from({ length: 20 }, (_, index) => jarOf({ name: `j${1000 + index}`, startedMs: STARTED }))
    expect(headOf(personWith(jars), at('2026-12-02'))).toBe(
      'Shake j1000, j1001, j1002, j1003, j1004, j1005 and 14 more.',
    )
  })

  it('says that shaking is asked for no more with the seventh, and only then', () => {
    const person = personWith([lemon])
    const stops = (day: number): boolean =>
      textOf(replyOf(person, at('2026-12-01') + day * DAY_MS)).includes('My last reminder to shake')
    const days = [1, 2, 3, 4, 5, 6, 7]
    expect(days.filter((day) => stops(day))).toEqual([7])
  })

  it('says how to taste: never neat', () => {
    const basil = jarOf({ name: 'basil', startedMs: STARTED, plan: { tasteFrom: '2026-12-03' } })
    const text = textOf(replyOf(personWith([basil], { shake: 'off' }), at('2026-12-03')))
    expect(text).toMatch(/^Taste basil\.\n/)
    expect(text).toContain('mix a teaspoon with two of water')
    expect(text).toContain('It tastes good: /jar taste basil note:good')
  })

  it('names what is to be put in later, with its amount in the answer', () => {
    const cinnamon = {
      id: 'cinnamon-cassia',
      name: 'cinnamon',
      massG: exactly(4.5),
      count: null,
      isDried: false,
      isUsual: false,
      words: null,
      addOn: '2026-12-08',
    }
    const more = { plants: [{ ...cinnamon, id: null, name: 'jaboticaba' }] }
    const jar = jarOf({ name: 'walnut', startedMs: STARTED, more })
    const reply = replyOf(personWith([jar], { shake: 'off' }), at('2026-12-08'))
    expect(textOf(reply)).toMatch(/^Add jaboticaba to walnut\.\n/)
    expect(lineOf(reply.actions[0]!.call)).toBe('/jar add walnut of:4.5 g jaboticaba')
  })
})

describe('what there is room for', () => {
  const plan = { tasteFrom: '2026-12-10', strainFrom: '2026-12-10', strainBy: '2026-12-20' }
  const jars = (count: number) =>
    Array.from({ length: count }, (_, index) => jarOf({ name: `jar ${index}`, startedMs: STARTED, plan }))
  const linesOf = (count: number) =>
    replyOf(
      personWith(
        jars(count).map((jar, index) => ({ ...jar, id: `jar0${index}` })),
        { shake: 'off' },
      ),
      at('2026-12-10'),
    )
      .actions.map(({ call }) => lineOf(call))
      .filter((line) => line !== '/jar list')
      .slice(0, -1)

  it('is both words on a taste or none, after what presses, and no mark that nobody gave', () => {
    expect(linesOf(1)).toEqual([
      '/jar strain jar 0',
      '/jar taste jar 0 note:good',
      '/jar taste jar 0 note:not right yet',
    ])
    expect(linesOf(2)).toEqual([
      '/jar strain jar 0',
      '/jar strain jar 1',
      '/jar taste jar 0 note:good',
      '/jar taste jar 0 note:not right yet',
      '/jar taste jar 1 note:good',
      '/jar taste jar 1 note:not right yet',
    ])
    expect(linesOf(5)).toEqual([0, 1, 2, 3, 4].map((index) => `/jar strain jar ${index}`))
  })
})

describe('the lines of a nudge', () => {
  const strange = ['all in: one', '“quoted”', '"half', 'of: plums', 'Žofka ☂', 'until tomorrow', 'לימון', 'a  b'].map(
    (name, index) => {
      const jar = jarOf({ name, startedMs: STARTED, plan: { strainFrom: '2026-12-10', strainBy: '2026-12-20' } })
      return { ...jar, id: `jar0${index}` }
    },
  )

  it.each(strange.map((jar) => [jar.entries[0]?.kind === 'started' ? jar.entries[0].name : '', jar] as const))(
    'are read back whole with a jar called %s',
    (name, jar) => {
      const { actions } = replyOf(personWith([jar]), at('2026-12-10'))
      const shake = actions.find(({ call }) => call.command === 'jar shake')
      expect(Object.values(parseLine(lineOf(shake!.call), commands).options)).toEqual([name])
      const later = actions.at(-1)
      expect(Object.values(parseLine(lineOf(later!.call), commands).options)).toEqual([name, 'tomorrow'])
    },
  )

  it('name jars by id where they are buttons, which outlive a new name', () => {
    const { actions } = replyOf(personWith([ginger]), at('2026-12-10'), 'private')
    expect(linesOf(actions)).toEqual([
      '/jar strain #ginge',
      '/jar shake #ginge',
      '/jar later #ginge until:later today',
      '/jar later #ginge until:tomorrow',
      '/jar show #ginge',
      '/reminders',
    ])
  })
})
