import { DomainError } from '../../domain-error.ts'
import { type Keeping, keepingAt, keepsFromPercent } from '../../liquid/keeping.ts'
import type { Targets } from '../targets.ts'
import type { KeptDays, Times } from './schedule.ts'

/** Whether what is wanted keeps; throws `drink_ferments` where it would not and nothing has been poured yet. */
export function drinkKeeping(
  { abvPercent, sugarGPerL }: Targets,
  { isPoured = false }: { readonly isPoured?: boolean | undefined },
): Keeping {
  const keeping = keepingAt(abvPercent, sugarGPerL)
  if (keeping !== 'ferments' || isPoured) return keeping
  const values = { abvPercent, sugarGPerL, keepsFromPercent: keepsFromPercent(sugarGPerL) }
  throw new DomainError('unreachable', 'drink_ferments', values)
}

/** Of what is not known to keep there must be weeks left to drink it, d. Judgement. */
const MOST_REST_DAYS = 14

export const restedShortly = (times: Times): Times => ({
  ...times,
  restMinDays: Math.min(MOST_REST_DAYS, times.restMinDays),
})

/** The same of days that another batch had. */
export const keptShortly = <Wish extends { readonly kept?: KeptDays | undefined }>(wish: Wish): Wish =>
  wish.kept == null || wish.kept.restDays === null
    ? wish
    : { ...wish, kept: { ...wish.kept, restDays: Math.min(MOST_REST_DAYS, wish.kept.restDays) } }
