import type { OverCeiling } from '../../../../core/botanical/limits/ceilings.ts'
import { expectUsualFoods, fittingFactors, newlyPassed } from '../../../../core/jar/limits/newly-passed.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import type { FoundPlant, PlantsRead } from '../../../../core/recipe/plan/find-plants.ts'
import { invocationOf } from '../../../calls/call.ts'
import type { Given } from '../../../calls/option.ts'
import { lineOf } from '../../../calls/write-line.ts'
import { ChatError } from '../../../chat/chat-error.ts'
import { piecesOf, withAtMost } from '../../plan/within-limits.ts'
import { YES } from './already.ts'
import { happenedIn, type Input } from './record-step.ts'

type Asking = Input & {
  readonly jar: Given<string>
  readonly of?: Given<PlantsRead> | undefined
  readonly already?: Given<boolean> | undefined
}

/** The plants of an entry with as much of them as fits beside what is in the jar, as a line names them; null where nothing of one does. */
function fitting({ of, story, seq }: { of: PlantsRead; story: JarState; seq: number }, over: readonly OverCeiling[]) {
  const factors = fittingFactors(story, seq, over)
  if (factors === null) return null
  const mostG = ({ botanical: { id }, massG }: FoundPlant): number | null => {
    const factor = factors.get(id)
    return factor !== undefined && massG !== null ? massG.value * factor : null
  }
  return withAtMost(of, mostG)
}

/**
 * Refuses what would bring a jar over a limit, or further over it, with as much as fits; what is in it already is recorded
 * all the same. `seq`: the entry that is new, or stands otherwise than before.
 */
export function expectWithinLimits(
  path: 'jar add' | 'jar correct',
  { before, story, seq }: { readonly before: JarState; readonly story: JarState; readonly seq: number },
  input: Asking,
): void {
  if (input.already?.is === true || story.ended !== null) return
  expectUsualFoods(before, story)
  const over = newlyPassed(before, story)
  const [worst] = over
  if (worst === undefined) return
  const { jar, of, ...others } = input
  const less = of === undefined ? null : fitting({ of: of.is, story, seq }, over)
  const happened = happenedIn({ of, ...others })
  throw new ChatError(
    'over_ceiling',
    'jar_passes_ceiling',
    {
      ...worst,
      jar: story.name,
      pieces: of === undefined ? [] : piecesOf(of.is, worst),
      line:
        less === null
          ? null
          : lineOf({
              path,
              options: { ...invocationOf({ command: path, values: { jar, ...happened } }).options, of: less },
            }),
      isPlants: of !== undefined,
      already: lineOf({ command: path, values: { jar, ...happened, already: YES } }),
    },
    { option: of === undefined ? 'spirit' : 'of' },
  )
}
