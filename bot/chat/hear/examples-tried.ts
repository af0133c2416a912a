import type { CallRead } from '../../talk/frames/reading.ts'
import type { Dispatch } from '../run/call-outcome.ts'
import { execute } from '../run/execute.ts'
import { onTrial } from '../run/on-trial.ts'
import { asInvocation, written } from './written-call.ts'

/** What a call runs without, though it was told. */
const TOLD: Readonly<Record<string, string>> = { fining: 'egg white' }

/** The line of a call that lacks something, with an example for it; null where none runs. */
export async function exampleFor(
  call: CallRead,
  { option, sample }: { readonly option: string; readonly sample?: string },
  dispatch: Dispatch,
): Promise<string | null> {
  const told = sample ?? TOLD[option]
  if (told !== undefined) {
    const withTold = { ...call, options: { ...call.options, [option]: told } }
    if (await runsOrAsks(withTold, dispatch)) return written(withTold)
  }
  const tried = await execute(asInvocation(call), onTrial(dispatch))
  if (tried.ok) return written(call)
  const { example } = tried.error.values as { example?: string | null }
  return typeof example === 'string' && example.startsWith('/') ? example : null
}

/** Another question may follow. */
async function runsOrAsks(call: CallRead, dispatch: Dispatch): Promise<boolean> {
  const tried = await execute(asInvocation(call), onTrial(dispatch))
  return tried.ok || tried.error.code === 'missing_option'
}

/** Those that run as they are. */
export async function runningOf(calls: readonly CallRead[], dispatch: Dispatch): Promise<readonly CallRead[]> {
  const run: CallRead[] = []
  for (const call of calls) if ((await execute(asInvocation(call), onTrial(dispatch))).ok) run.push(call)
  return run
}
