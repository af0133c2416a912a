import type { TalkReading } from '../../talk/frames/reading.ts'
import { personOf } from '../own-language.ts'
import type { Dispatch } from '../run/call-outcome.ts'
import { withHeldInstead } from '../run/held-instead.ts'
import { exampleFor, runningOf } from './examples-tried.ts'
import { asked, type Heard } from './heard.ts'
import { whichJar } from './offered-where-it-runs.ts'
import { whichDone } from './which-done.ts'
import { asInvocation, written } from './written-call.ts'

/** What is asked back, and its answers as lines. */
async function questionHeard(reading: Extract<TalkReading, { kind: 'question' }>, dispatch: Dispatch): Promise<Heard> {
  const { about, call, choices } = reading
  const lines = [...new Set(choices.map(written))]
  const read = written(call)
  const question = { code: 'question' } as const
  switch (about.kind) {
    case 'lacks': {
      const line = await exampleFor(call, about, dispatch)
      const { otherwise } = about
      const other =
        otherwise === undefined ? null : written({ ...call, options: { ...call.options, [about.option]: otherwise } })
      const values = { command: call.command, option: about.option, line, other }
      return asked(
        call.command,
        { ...question, problem: 'talk_lacks', values, option: about.option },
        read,
        [line, other].filter((each) => each !== null),
      )
    }
    case 'which_jar':
      return whichJar(call, choices, dispatch)
    case 'which_done':
      return whichDone(choices, dispatch)
    case 'number':
      return asked(
        call.command,
        { ...question, problem: 'talk_number', values: { typed: about.typed, line: read } },
        read,
        lines,
      )
    case 'zone_of': {
      const line = written({ command: 'settings', options: { zone: 'Rome' } })
      return asked('settings', { ...question, problem: 'talk_zone_of', values: { place: about.place, line } }, null, [
        line,
      ])
    }
    case 'undo_step': {
      const values = { jar: call.options.jar ?? '', step: about.step, line: read }
      return asked(call.command, { ...question, problem: 'talk_undo_step', values }, read, lines)
    }
    case 'undo_first': {
      const { last, wanted } = about
      const values = { jar: call.options.jar ?? '', last, wanted, line: read }
      return asked(call.command, { ...question, problem: 'talk_undo_first', values }, read, lines)
    }
    case 'undo_told': {
      const values = { jar: call.options.jar ?? '', told: about.told, line: read }
      return asked(call.command, { ...question, problem: 'talk_undo_told', values }, read, lines)
    }
    case 'only_jar': {
      const values = { jar: about.jar, line: lines[0] ?? null }
      return asked(call.command, { ...question, problem: 'talk_only_jar', values }, null, lines)
    }
    case 'undo_jar': {
      const names = choices.flatMap(({ options }) => options.jar ?? [])
      return asked(
        call.command,
        { ...question, problem: 'talk_undo_jar', values: { names, line: read, told: about.told } },
        read,
        lines,
      )
    }
    case 'one_reminder': {
      const run = await runningOf(choices, dispatch)
      const ofJar = run.find(({ command }) => command === 'jar later')
      const all = run.find(({ command }) => command === 'reminders')
      const values = {
        jar: ofJar?.options.jar ?? null,
        line: ofJar === undefined ? null : written(ofJar),
        reminders: all === undefined ? null : written(all),
        moves: all?.options.time !== undefined,
        isMeant: about.isMeant === true,
      }
      return asked('reminders', { ...question, problem: 'talk_one_reminder', values }, null, run.map(written))
    }
    case 'not_so': {
      const values = { symptom: about.symptom, line: read }
      return asked('trouble', { ...question, problem: 'talk_not_so', values }, null, lines)
    }
    case 'told_or_asked':
      return asked(call.command, { ...question, problem: 'talk_told', values: { line: read } }, read, lines)
    case 'wish_of_what':
      return asked(null, { ...question, problem: 'talk_wish_of_what', values: { line: read } }, null, lines)
    case 'jar_size':
      return asked(
        call.command,
        { ...question, problem: about.text === null ? 'talk_jar_of_what' : 'talk_jar_size', values: {} },
        null,
        lines,
      )
    case 'two_drinks':
      return asked(call.command, { ...question, problem: 'talk_two_drinks', values: { lines } }, read, lines)
    case 'which_offered':
      return asked(
        call.command,
        { ...question, problem: 'talk_which_offered', values: { ways: about.ways } },
        null,
        lines,
      )
    case 'less_of_it':
    case 'which_reading':
      return asked(call.command, { ...question, problem: 'talk_which_reading', values: { lines } }, read, lines)
  }
}

/** Of a jar that is to go that is said, and nothing is asked that leads on with it. */
export async function heldOrAsked(
  reading: Extract<TalkReading, { kind: 'question' }>,
  dispatch: Dispatch,
): Promise<Heard> {
  const made = await questionHeard(reading, dispatch)
  if (made.outcome.ok) return made
  const { error } = made.outcome
  const held = withHeldInstead(error, asInvocation(reading.call), (await personOf(dispatch)).jars)
  return held === error ? made : asked(reading.call.command, held, made.read)
}
