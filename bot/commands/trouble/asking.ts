import type { JarView } from '../../../core/jar/tasks/jar-view.ts'
import type { TroubleFacts } from '../../../core/trouble/facts.ts'
import type { SymptomId } from '../../../core/trouble/symptoms.ts'
import type { TroubleKept } from '../../../core/trouble/trouble-told.ts'
import type { Context } from '../../chat/command.ts'
import type { TroubleInput } from './known-facts.ts'

/** Who asks, and what is asked about. */
export interface Asking {
  readonly input: TroubleInput
  readonly held: JarView | null
  /** What was written down of it just now; null where nothing was. */
  readonly kept: TroubleKept | null
  readonly facts: TroubleFacts
  /** What else was told of the same drink. */
  readonly also: readonly SymptomId[]
  readonly context: Context
}
