import { invocationOf } from '../../calls/call.ts'
import { lineOf } from '../../calls/write-line.ts'
import { readingFor } from '../../chat/hear/reading-for.ts'
import { personOf } from '../../chat/own-language.ts'
import type { Action, Reply } from '../../chat/reply.ts'
import type { Dispatch } from '../../chat/run/call-outcome.ts'
import type { ConsoleText } from '../../text/terminal-text.ts'

/** What can be said in place of a line, by the line. */
export type SayingFor = ReadonlyMap<string, string>

/** Of how much drier or stronger nobody is in doubt. */
const WISHES: ReadonlySet<string> = new Set(['plan_drier', 'plan_stronger'])

/**
 * The lines that a reply offers, each with a word or two that is read as that very line where it is said next. Nothing where no
 * talk is remembered.
 */
export async function sayingsFor(
  { actions }: Pick<Reply, 'actions'>,
  dispatch: Dispatch,
  { saying }: Pick<ConsoleText, 'saying'>,
): Promise<SayingFor> {
  if (dispatch.talk === undefined || actions.every(({ label }) => saying(label.key) === null)) return new Map()
  const person = await personOf(dispatch)
  const said = ({ label, call }: Action): readonly [string, string][] => {
    const text = saying(label.key)
    const reading = text === null ? null : readingFor(text, dispatch, person)
    if (text === null || reading?.kind !== 'call') return []
    const [meant, read] = [invocationOf(call), { path: reading.call.command, options: reading.call.options }]
    const isSame =
      lineOf(meant) === lineOf(read) ||
      (WISHES.has(label.key) && Object.keys(meant.options).join() === Object.keys(read.options).join())
    return isSame ? [[lineOf(meant), text]] : []
  }
  return new Map(actions.flatMap(said))
}
