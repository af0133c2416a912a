import { lineOf } from '../../calls/write-line.ts'
import type { CallRead, TalkReading } from '../../talk/frames/reading.ts'
import { saysNothing } from '../../talk/lexicon/says-nothing.ts'
import { NOTHING_SAID, whoAt } from '../../talk/memory/remembered.ts'
import { byPath } from '../callable.ts'
import { isSentence } from '../grammar/find-command.ts'
import type { Reply } from '../reply.ts'
import type { Dispatch } from '../run/call-outcome.ts'
import { execute } from '../run/execute.ts'
import { help } from '../run/help.ts'
import { inUnits } from '../run/in-units.ts'
import { moreOf } from '../run/more.ts'
import { besides, topicOutcome } from './besides.ts'
import { converted } from './converted.ts'
import { runningOf } from './examples-tried.ts'
import { asked, type Heard, heard } from './heard.ts'
import { wishedIn } from './in-own-kitchen.ts'
import {
  askingDay,
  byVessels,
  costingGlass,
  leading,
  leavingOut,
  pouredFor,
  takingKind,
  takingSpirit,
  tellingAhead,
} from './noted.ts'
import { onlyOffered } from './offered-where-it-runs.ts'
import { amountsReplaced, kitchenWished, sizedForMeasures } from './plan-kept.ts'
import { heldOrAsked } from './question-heard.ts'
import { sweetenedAsPlanned } from './sugar-guessed.ts'
import { changeSaid } from './taste-changed.ts'
import { whatFits } from './what-fits.ts'
import { whatItCanDo } from './what-it-can-do.ts'
import { asInvocation, written } from './written-call.ts'

const said = (key: 'talk_greeting' | 'talk_thanks' | 'talk_right' | 'talk_let_be' | 'talk_driest'): Reply => ({
  headline: { group: 'headlines', key, values: undefined },
  table: [],
  sure: [],
  notes: [],
  cautions: [],
  actions: [],
  data: { said: key },
  kitchen: 'metric',
})

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
      const before = dispatch.talk?.of(whoAt(dispatch.userId, place), dispatch.nowMs) ?? NOTHING_SAID
      const wished = await wishedIn(reading.call, line, dispatch)
      const sized = await sizedForMeasures(wished, reading, before.call, dispatch)
      const call = await sweetenedAsPlanned(sized, reading, dispatch)
      const kitchen = kitchenWished(reading, before)
      const asked = kitchen === null ? dispatch : inUnits(dispatch, kitchen)
      const changed = changeSaid(await execute(asInvocation(call), asked), call, before)
      const ran = await amountsReplaced(changed, call, before.call, asked)
      const taking = byVessels(takingKind(takingSpirit(ran, reading.spiritTaken), reading.kindTaken), reading)
      const leftOut = reading.leftOut.filter((word) => !saysNothing(word, call))
      const asIsAsked = costingGlass(leading(pouredFor(taking, reading.poured), reading.leads), reading.costOfMl)
      const outcome = askingDay(tellingAhead(leavingOut(asIsAsked, leftOut), reading.isAhead), reading.isDayOpen)
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
      return heard(pouredFor(topicOutcome(reading.entry, reading.more, dispatch), reading.poured, 'poured_bottles'))
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
