import { lineOf } from '../../calls/write-line.ts'
import type { CallRead, TalkReading } from '../../talk/frames/reading.ts'
import { NOTHING_SAID, whoAt } from '../../talk/memory/remembered.ts'
import { byPath } from '../callable.ts'
import { isSentence } from '../grammar/find-command.ts'
import { personOf } from '../own-language.ts'
import type { Reply } from '../reply.ts'
import type { Dispatch } from '../run/call-outcome.ts'
import { execute } from '../run/execute.ts'
import { withHeldInstead } from '../run/held-instead.ts'
import { help } from '../run/help.ts'
import { inUnits } from '../run/in-units.ts'
import { moreOf } from '../run/more.ts'
import { besides, topicOutcome } from './besides.ts'
import { converted } from './converted.ts'
import { exampleFor, runningOf } from './examples-tried.ts'
import { asked, type Heard, heard } from './heard.ts'
import { wishedIn } from './in-own-kitchen.ts'
import { byVessels, leavingOut, pouredFor, takingSpirit } from './noted.ts'
import { onlyOffered, whichJar } from './offered-where-it-runs.ts'
import { changeSaid } from './taste-changed.ts'
import { whatFits } from './what-fits.ts'
import { whatItCanDo } from './what-it-can-do.ts'
import { whichDone } from './which-done.ts'
import { asInvocation, written } from './written-call.ts'

const said = (key: 'talk_greeting' | 'talk_thanks' | 'talk_right' | 'talk_let_be'): Reply => ({
  headline: { group: 'headlines', key, values: undefined },
  table: [],
  sure: [],
  notes: [],
  cautions: [],
  actions: [],
  data: { said: key },
  kitchen: 'metric',
})

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
    case 'undo_jar': {
      const names = choices.flatMap(({ options }) => options.jar ?? [])
      return asked(call.command, { ...question, problem: 'talk_undo_jar', values: { names, line: read } }, read, lines)
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
    case 'which_reading':
      return asked(call.command, { ...question, problem: 'talk_which_reading', values: { lines } }, read, lines)
  }
}

/** Of a jar that is to go that is said, and nothing is asked that leads on with it. */
async function heldOrAsked(reading: Extract<TalkReading, { kind: 'question' }>, dispatch: Dispatch): Promise<Heard> {
  const made = await questionHeard(reading, dispatch)
  if (made.outcome.ok) return made
  const { error } = made.outcome
  const held = withHeldInstead(error, asInvocation(reading.call), (await personOf(dispatch)).jars)
  return held === error ? made : asked(reading.call.command, held, made.read)
}

async function lastHeard(
  what: Extract<TalkReading, { kind: 'last' }>['what'],
  dispatch: Dispatch,
  place: string,
): Promise<Heard> {
  if (what === 'let_be') return heard({ ok: true, path: 'talk', reply: said('talk_let_be') })
  const call = dispatch.talk?.of(whoAt(dispatch.userId, place), dispatch.nowMs).call ?? null
  if (call === null) return asked(null, { code: 'not_understood', problem: 'talk_no_last', values: {} }, null)
  const { lead, outcome, shown } = await moreOf(asInvocation(call), dispatch)
  return { ...heard(outcome, written(call)), shown, ...(lead !== null && { lead }) }
}

/** What a reading comes to: its call is run, its question asked, or it is said that it was not understood. */
export async function answered(line: string, reading: TalkReading, dispatch: Dispatch, place: string): Promise<Heard> {
  const lost = async (path: string | null, nearest: readonly CallRead[], read: string | null): Promise<Heard> => {
    const lines = whatItCanDo(
      // Which jar is shown is said by what fits.
      await runningOf(
        nearest.filter(({ command, options }) => command !== 'jar show' || options.jar !== undefined),
        dispatch,
      ),
      await whatFits(dispatch, place),
      dispatch.language.help,
    )
    const values = { lines, isSentence: isSentence(line) }
    return asked(path, { code: 'not_understood', problem: 'talk_lost', values }, read, lines)
  }
  switch (reading.kind) {
    case 'call': {
      const call = await wishedIn(reading.call, line, dispatch)
      const before = dispatch.talk?.of(whoAt(dispatch.userId, place), dispatch.nowMs) ?? NOTHING_SAID
      const { kitchen } = reading
      const asked = kitchen === undefined ? dispatch : inUnits(dispatch, kitchen)
      const ran = changeSaid(await execute(asInvocation(call), asked), call, before)
      const taking = byVessels(takingSpirit(ran, reading.spiritTaken), reading)
      const outcome = leavingOut(pouredFor(taking, reading.poured), reading.leftOut)
      return besides(reading, heard(outcome, written(call)), dispatch)
    }
    case 'question':
      return besides(reading, await heldOrAsked(reading, dispatch), dispatch)
    case 'only_typed':
      return onlyOffered(reading.call, dispatch)
    case 'refused': {
      const { code, problem, values } = reading.problem
      return asked(null, { code, problem, values }, null)
    }
    case 'small_talk': {
      if (reading.key !== 'help')
        return heard({
          ok: true,
          path: 'talk',
          reply: said(`talk_${reading.key === 'nothing_to_forget' ? 'greeting' : reading.key}`),
        })
      const page = help('/help', dispatch.commands, {
        commands: dispatch.language.commands,
        about: dispatch.language.help.about,
      })
      return page === null ? heard({ ok: true, path: 'talk', reply: said('talk_greeting') }) : heard(page)
    }
    case 'converted':
      return heard({ ok: true, path: 'talk', reply: converted(reading.said) })
    case 'last':
      return lastHeard(reading.what, dispatch, place)
    case 'topic':
      return heard(topicOutcome(reading.entry, reading.more, dispatch))
    case 'symptom': {
      const path = 'trouble'
      const call = { path, options: reading.options }
      if (byPath(path, dispatch.commands) !== null) return heard(await execute(call, dispatch), lineOf(call))
      return lost(path, [], lineOf(call))
    }
    default:
      return lost(null, reading.kind === 'lost' ? reading.nearest : [], null)
  }
}
