import type { CallRead } from '../../talk/frames/reading.ts'
import type { Dispatch } from '../run/call-outcome.ts'
import { execute } from '../run/execute.ts'
import { onTrial } from '../run/on-trial.ts'
import { asked, type Heard, heard } from './heard.ts'
import { asInvocation, written } from './written-call.ts'

/** What no sentence does: its line is offered where it runs, else it is said why it cannot be. */
export async function onlyOffered(call: CallRead, dispatch: Dispatch): Promise<Heard> {
  const { command, options } = call
  const tried = await execute(asInvocation(call), onTrial(dispatch))
  // What it would erase is told here, so the one line that is typed does it.
  const line = written(command === 'forget' ? { command, options: { ...options, confirm: 'yes' } } : call)
  if (!tried.ok) return heard(tried, line)
  const jar = options.jar ?? null
  return asked(command, { code: 'question', problem: 'talk_only_typed', values: { command, jar, line } }, line, [line])
}

/** Which jar is meant of those that it can be: of those in another stage only where there is no other. */
export async function whichJar(call: CallRead, choices: readonly CallRead[], dispatch: Dispatch): Promise<Heard> {
  const tried = await Promise.all(
    choices.map(async (choice) => ({ choice, outcome: await execute(asInvocation(choice), onTrial(dispatch)) })),
  )
  const able = tried.filter(({ outcome }) => outcome.ok || outcome.error.code !== 'wrong_stage')
  // Where it can only be one that is to go, that is said, and its name leads nowhere.
  const [only, another] = able
  if (only !== undefined && another === undefined && !only.outcome.ok && only.outcome.error.problem === 'jar_told_held')
    return heard(only.outcome, written(only.choice))
  const can = (able.length > 0 ? able : tried).map(({ choice }) => choice)
  const read = written(call)
  const lines = [...new Set(can.map(written))]
  const names = can.flatMap(({ options }) => options.jar ?? [])
  const values = { names, line: lines[0] ?? null }
  return asked(call.command, { code: 'question', problem: 'talk_which_jar', values, option: 'jar' }, read, lines)
}
