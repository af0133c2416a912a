import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import type { CallRead } from '../../talk/frames/reading.ts'
import { personOf } from '../own-language.ts'
import type { Dispatch } from '../run/call-outcome.ts'
import { asked, type Heard } from './heard.ts'
import { written } from './written-call.ts'

/** Which of several jobs is done. */
export async function whichDone(choices: readonly CallRead[], dispatch: Dispatch): Promise<Heard> {
  const { jars } = await personOf(dispatch)
  const nameOf = (jar: string): string => {
    const own = jars.find(({ id }) => `#${id}` === jar)
    return (own === undefined ? undefined : jarStateOf(own.entries)?.name) ?? jar
  }
  const jobs = choices.map(({ command, options: { jar } }) => ({
    command,
    name: jar === undefined || jar === 'all' ? null : nameOf(jar),
  }))
  const lines = choices.map(written)
  const values = { jobs, line: lines[0] ?? null }
  return asked(choices[0]?.command ?? null, { code: 'question', problem: 'talk_which_done', values }, null, lines)
}
