import { contentsOf } from '../../../../core/jar/state/contents.ts'
import { unbottledOf } from '../../../../core/jar/state/jar-bottles.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import type { InputOf } from '../../../calls/signatures.ts'
import { lineOf } from '../../../calls/write-line.ts'
import { ChatError } from '../../../chat/chat-error.ts'
import { YES } from '../step/already.ts'
import { happenedIn } from '../step/record-step.ts'

/** Asks before a sweetening of what is all in bottles by then; its maker may have opened them for it. */
export function expectUnbottled(before: JarState, story: JarState, input: InputOf<'jar sweeten'>): void {
  const isLast = story.happened.at(-1)?.kind === 'sweetened'
  if (input.again?.is === true || before.bottled === null || !isLast) return
  const leftMl = unbottledOf(contentsOf(before))
  if (leftMl !== null && leftMl.value > 0) return
  const line = lineOf({ command: 'jar sweeten', values: { jar: input.jar, ...happenedIn(input), again: YES } })
  throw new ChatError('ambiguous', 'sweeten_bottled', { jar: before.name, line }, { option: 'again' })
}
