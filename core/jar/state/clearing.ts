import { botanicalById } from '../../botanical/catalogue/catalogue.ts'
import type { JarState } from './jar-state.ts'

/**
 * How what was strained becomes clear. `filter_before_syrup`: through paper while it is thin; `stand_then_rack`: fruit that
 * steeped in sugar is poured off what sinks in the cold; `rest_then_rack`: a haze after the syrup rests first, and only what
 * is left at the bottom is filtered; `leave_cloudy`: oils that cloud with the syrup would stay in the paper. Common
 * practice, no source.
 */
export type Clearing = 'filter_before_syrup' | 'stand_then_rack' | 'rest_then_rack' | 'leave_cloudy'

/** Oils of peel and of anise come out of solution as a liqueur is diluted. */
const isOily = (id: string | null): boolean => {
  if (id === null) return false
  const { kind, hazards } = botanicalById(id)
  return kind === 'citrus' || hazards.includes('louche_anethole')
}

/** Null before it is strained, and once it is in bottles. */
export function clearingOf({ started, strained, sweetened, bottled, happened }: JarState): Clearing | null {
  if (strained === null || bottled !== null) return null
  const added = happened.flatMap((entry) => (entry.kind === 'added' ? entry.plants : []))
  if (sweetened !== null) {
    return [...started.plants, ...added].some(({ id }) => isOily(id)) ? 'leave_cloudy' : 'rest_then_rack'
  }
  return started.sweetenings.length > 0 ? 'stand_then_rack' : 'filter_before_syrup'
}
