import { lineOf } from '../../bot/calls/write-line.ts'
import type { testDesk } from './test-desk.ts'

/** The line that starts what a plan is of. */
export async function startLine(desk: ReturnType<typeof testDesk>, line: string): Promise<string> {
  const outcome = await desk.run(line)
  if (!outcome.ok) throw new Error(`${line}: ${outcome.error.problem} ${desk.faults().join()}`)
  const start = outcome.reply.actions.find(({ label }) => label.key === 'start_jar')
  if (start === undefined) throw new Error(`${line} offers no start`)
  return lineOf(start.call)
}
