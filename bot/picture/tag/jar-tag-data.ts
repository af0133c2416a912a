import type { Ingredients } from '../../../core/jar/entry/entry.ts'
import type { DangerKind } from '../../../core/jar/limits/judge-jar.ts'
import { ingredientsOf } from '../../../core/jar/state/batch-facts.ts'
import type { JarView } from '../../../core/jar/tasks/jar-view.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import { isFlammable } from '../draw/flammable-mark.ts'

export interface JarTagData {
  readonly id: string
  readonly name: string
  readonly started: IsoDay
  /** Null where no day is planned, or it is strained. */
  readonly strainFrom: IsoDay | null
  readonly strainBy: IsoDay | null
  readonly inJar: Ingredients
  /** Of all that is in the jar; null where that holds no alcohol. */
  readonly abvPercent: Measured | null
  readonly isFlammable: boolean
  /** The worst that is wrong with it today. */
  readonly danger: DangerKind | null
}

export function jarTagData({ jar, story, contents, dangers }: JarView): JarTagData {
  const { name, started } = story
  const { abvPercent } = contents.outcome
  const { strainFrom, strainBy } = story.strained === null ? started.days : { strainFrom: null, strainBy: null }
  return {
    id: jar.id,
    name,
    started: started.day,
    strainFrom,
    strainBy,
    inJar: ingredientsOf(story),
    abvPercent: abvPercent.value > 0 ? abvPercent : null,
    danger: dangers[0]?.kind ?? null,
    isFlammable: abvPercent.value > 0 && (story.strained === null || isFlammable(abvPercent)),
  }
}
