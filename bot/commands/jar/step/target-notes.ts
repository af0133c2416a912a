import { isHeldBack } from '../../../../core/jar/limits/judge-jar.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { isLeftAsItIs } from '../../../../core/jar/state/left-unsweetened.ts'
import { wouldFerment } from '../../../../core/jar/state/planned-syrup.ts'
import { keepsFromPercent } from '../../../../core/liquid/keeping.ts'
import type { Message } from '../../../text/words.ts'
import { note } from '../../reply/outcome-reply.ts'

/** Why there is no syrup for what was planned, where there is none. */
export function targetNotes(story: JarState, hasSyrup: boolean): readonly Message<'notes'>[] {
  if (hasSyrup || isHeldBack(story)) return []
  if (isLeftAsItIs(story.happened)) return [note('jar_unsweetened')]
  const { targets } = story.started
  if (targets !== null && wouldFerment(targets)) {
    const values = { ...targets, keepsFromPercent: keepsFromPercent(targets.sugarGPerL) }
    return [{ group: 'notes', key: 'jar_targets_ferment', values }]
  }
  return targets === null
    ? [note('jar_no_targets')]
    : [{ group: 'notes', key: 'jar_targets_unreached', values: targets }]
}
