import { describe, expect, it } from 'vitest'
import { atDepth, partsAt } from '../../../bot/chat/depth.ts'
import { cookName } from '../../../bot/text/en/cook-names.ts'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { isFormAsked } from '../../../core/botanical/find/in-form.ts'
import type { Person } from '../../../store/person.ts'
import { sampled } from '../../runs.ts'
import { newAsker } from '../asker.ts'
import { nudgedReply } from '../reminders/nudged.ts'
import { speech, testDesk } from '../test-desk.ts'
import { STORIES, type Story } from './own-units.ts'

const START_MS = Date.UTC(2026, 8, 1, 9)
const DAY_MS = 86_400_000

const squeezed = (text: string): string => text.toLowerCase().replaceAll(/\s/g, '')

/** All that a nudge says first, where anything is due. */
function nudgesOf(person: Person, nowMs: number): readonly string[] {
  const { say, line } = speech.words
  try {
    const { kitchen, ...reply } = nudgedReply(person, { nowMs, assumedZone: 'UTC' })
    const shown = partsAt(reply, 'first')
    return [
      ...[reply.headline, ...(reply.under ?? [])].map((each) => say<'headlines'>(each, kitchen)),
      ...shown.table.flatMap(({ label, cell }) => [say<'rows'>(label, kitchen), say<'cells'>(cell, kitchen)]),
      ...shown.notes.map((each) => say<'notes'>(each, kitchen)),
      ...shown.cautions.map((each) => say<'cautions'>(each, kitchen)),
      ...shown.actions.map(({ label, call }) => `${say<'actions'>(label, kitchen)} ${line(call)}`),
    ]
  } catch (error) {
    if (error instanceof Error && error.message === 'nothing is due') return []
    throw error
  }
}

/** What stands of the other kitchen on a screen, unless somebody typed it. */
const foreignIn = (screen: string, { foreign, isFine }: Story, typed: string, line: string): readonly string[] => {
  const said = new Set([...typed.matchAll(foreign)].map(([amount]) => squeezed(amount)))
  return [...screen.replaceAll('\u00a0', ' ').matchAll(foreign)]
    .filter(([amount]) => !said.has(squeezed(amount)) && !isFine(amount, line))
    .map(([amount, ...rest]) => `${line}: ${amount}${rest.join('')}`)
}

describe('a kitchen is told its own units on first screens', () => {
  it.each(STORIES)(
    '$name',
    async (story) => {
      const asker = newAsker()
      const found: string[] = []
      let typed = ''
      for (const [day, line] of story.lines) {
        typed += ` ${line}`
        const desk = testDesk({ nowMs: START_MS + day * DAY_MS, asker })
        const { outcome, text } = await desk.toldOf(line, 'first')
        expect(desk.faults()).toEqual([])
        const buttons =
          outcome.ok && 'reply' in outcome
            ? atDepth(outcome.reply.actions, 'first').map(
                ({ label, call }) =>
                  `${speech.words.say<'actions'>(label, outcome.reply.kitchen)} ${speech.words.line(call)}`,
              )
            : []
        const person = await asker.store.read(asker.userId)
        const nudged = nudgesOf(person, START_MS + day * DAY_MS)
        found.push(...[text, ...buttons, ...nudged].flatMap((screen) => foreignIn(screen, story, typed, line)))
      }
      expect([...new Set(found)]).toEqual([])
    },
    120_000,
  )

  it('in a plan of any plant', async () => {
    const [us, , metric] = STORIES as readonly [Story, Story, Story]
    const found: string[] = []
    for (const botanical of sampled(catalogue, 18)) {
      const name = `${isFormAsked(botanical) ? 'dried ' : ''}${cookName(botanical.id)}`
      for (const [story, line] of [
        [us, `/plan of:${name} spirit:1 quart 120 proof`],
        [metric, `/plan of:${name} spirit:1 l 60%`],
      ] as const) {
        found.push(...foreignIn(await testDesk({ nowMs: START_MS }).firstOf(line), story, line, line))
      }
    }
    expect(found).toEqual([])
  }, 120_000)

  it('knows the units of the other kitchen', () => {
    const [us, , metric] = STORIES as readonly [Story, Story, Story]
    const screen = 'Put 70 cl, 1.5 l, 500 g and 250 g/L at 20 °C with 2 ½ cups, 60 proof, 8 oz and 0 °F.'
    expect(foreignIn(screen, us, '/plan spirit:70 cl', '/plan')).toHaveLength(4)
    expect(foreignIn(screen, metric, '/plan', '/plan')).toHaveLength(4)
  })
})
