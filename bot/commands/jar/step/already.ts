import { fermentsNearer, jarKeeping } from '../../../../core/jar/limits/jar-keeping.ts'
import { contentsOf } from '../../../../core/jar/state/contents.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { weaknessOf } from '../../../../core/liquid/keeping.ts'
import type { Given } from '../../../calls/option.ts'
import type { Path } from '../../../calls/signatures.ts'
import { lineOf } from '../../../calls/write-line.ts'
import { ChatError } from '../../../chat/chat-error.ts'
import { spiritCall } from '../known/jar-dangers.ts'
import type { JarAsker } from '../known/jar-kitchen.ts'
import { happenedIn, type Input } from './record-step.ts'

/** What answers that it has happened already, so that it is recorded. */
export const YES: Given<boolean> = { typed: 'yes', is: true }

type Asking = Input & { readonly jar: Given<string>; readonly already?: Given<boolean> | undefined }

/** The same line, with the answer. */
const answered = (path: Path, input: Asking): string =>
  lineOf({ command: path, values: { jar: input.jar, ...happenedIn(input), already: YES } })

const weakOf = (story: JarState) => ({ jar: story.name, ...weaknessOf(contentsOf(story).outcome) })

/** Asks before what makes a jar ferment, or brings one that does nearer to it; what happened before it was asked stands. */
export function expectPoured(path: Path, before: JarState, story: JarState, input: Asking): void {
  if (input.already?.is === true || story.ended !== null || !fermentsNearer(before, story)) return
  const values = { ...weakOf(story), line: answered(path, input) }
  throw new ChatError('ambiguous', 'already_poured', values, { option: 'already' })
}

/** Throws what puts a fermenting jar right, and how to say that it has happened. */
export function expectKeeping(
  path: 'jar bottle' | 'jar label',
  problem: 'bottle_ferments' | 'label_ferments',
  story: JarState,
  input: Asking,
  settings: JarAsker['settings'],
): void {
  if (input.already?.is === true || story.ended !== null || jarKeeping(story) !== 'ferments') return
  const fix = spiritCall({ story }, input.jar.typed, settings)
  const values = { ...weakOf(story), fix: fix === null ? null : lineOf(fix), line: answered(path, input) }
  throw new ChatError('ambiguous', problem, values, { option: 'already' })
}
