import { fermentsNearer, jarKeeping } from '../../../../core/jar/limits/jar-keeping.ts'
import { contentsOf } from '../../../../core/jar/state/contents.ts'
import type { Story } from '../../../../core/jar/state/jar-state.ts'
import { weaknessOf } from '../../../../core/liquid/keeping.ts'
import type { Given } from '../../../calls/option.ts'
import { writeLine } from '../../../calls/write-line.ts'
import { ChatError } from '../../../chat/chat-error.ts'
import { spiritLine } from './jar-dangers.ts'
import { type Input, typedIn } from './record-step.ts'

/** What answers that it has happened already, so that it is recorded. */
const ALREADY = ['already', 'yes'] as const

type Asking = Input & { readonly jar: Given<string>; readonly already?: Given<boolean> | undefined }

/** The same line, with the answer. */
const answered = (path: string, { jar, ...input }: Asking): string =>
  writeLine(path, jar.typed, [...typedIn(input), ALREADY])

const weakOf = (story: Story) => ({ jar: story.name, ...weaknessOf(contentsOf(story).outcome) })

/** Asks before what makes a jar ferment, or brings one that does nearer to it; what happened before it was asked stands. */
export function expectPoured(path: string, before: Story, story: Story, input: Asking): void {
  if (input.already?.is === true || story.ended !== null || !fermentsNearer(before, story)) return
  const values = { ...weakOf(story), line: answered(path, input) }
  throw new ChatError('ambiguous', 'already_poured', values, { option: 'already' })
}

/** Throws what puts a fermenting jar right, and how to say that it has happened. */
export function expectKeeping(
  path: 'jar bottle' | 'jar label',
  problem: 'bottle_ferments' | 'label_ferments',
  story: Story,
  input: Asking,
): void {
  if (input.already?.is === true || story.ended !== null || jarKeeping(story) !== 'ferments') return
  const values = { ...weakOf(story), fix: spiritLine({ story }, input.jar.typed), line: answered(path, input) }
  throw new ChatError('ambiguous', problem, values, { option: 'already' })
}
