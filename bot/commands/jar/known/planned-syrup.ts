import { DomainError } from '../../../../core/domain-error.ts'
import { asPortion, contentsOf } from '../../../../core/jar/state/contents.ts'
import type { Story } from '../../../../core/jar/state/jar-state.ts'
import { keepingAt } from '../../../../core/liquid/keeping.ts'
import type { Portion } from '../../../../core/recipe/portion.ts'
import { type Syrup, syrup } from '../../../../core/recipe/solve/syrup.ts'
import type { Targets } from '../../../../core/recipe/targets.ts'
import { pouredMl, weighedG } from '../../../../core/recipe/tool-precision.ts'

interface PlannedSyrup {
  readonly infusion: Portion
  readonly syrup: Syrup
}

/** What `/jar sweeten` is told once this syrup is in, as it was shown; nothing where none is wanted. */
export const sweetenOptions = ({ waterMl, sugarG }: Syrup): readonly (readonly [option: string, text: string])[] => [
  ...(waterMl.value > 0 ? [['water', `${pouredMl(waterMl.value)} ml`] as const] : []),
  ...(sugarG.value > 0 ? [['sugar', `${weighedG(sugarG.value)} g`] as const] : []),
]

/** Whether what was planned, before such plans were refused, would ferment. */
export const wouldFerment = ({ abvPercent, sugarGPerL }: Targets): boolean =>
  keepingAt(abvPercent, sugarGPerL) === 'ferments'

/** What makes of a strained jar what it was planned to become; null where that was not planned, cannot be or would ferment. */
export function plannedSyrup(story: Story): PlannedSyrup | null {
  const { targets } = story.started.plan
  if (targets === null) return null
  if (wouldFerment(targets)) return null
  const infusion = asPortion(contentsOf(story))
  try {
    return { infusion, syrup: syrup(infusion, { by: 'strength_and_sweetness', ...targets }) }
  } catch (error) {
    if (error instanceof DomainError && error.code !== 'internal') return null
    throw error
  }
}
