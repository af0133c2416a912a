import { lastStanding } from '../../../core/jar/entry/standing-entries.ts'
import { plantsInside } from '../../../core/jar/pour/lifted-out.ts'
import { abvPercentIn } from '../../../core/jar/state/contents.ts'
import { jarStateOf, stageOf } from '../../../core/jar/state/jar-state.ts'
import { standingTroubles } from '../../../core/jar/state/standing-troubles.ts'
import { isoDay } from '../../../core/quantity/time/calendar-day.ts'
import { dayAt } from '../../../core/quantity/time/zone.ts'
import type { Person } from '../../../store/person.ts'
import type { TalkJar } from '../../talk/bits/bit.ts'

/** A person's jars as a sentence may speak of them. `zone` an IANA name. */
export function jarsTold({ jars }: Pick<Person, 'jars'>, zone: string, nowMs: number): readonly TalkJar[] {
  const today = isoDay(dayAt(zone, nowMs))
  return jars.flatMap(({ id, entries }): TalkJar[] => {
    const state = jarStateOf(entries)
    if (state === null) return []
    const { day } = state.started
    const inside = [...state.started.plants, ...plantsInside(state)]
    const plants = [...new Set(inside.flatMap(({ id }) => (id === null ? [] : [id])))]
    return [
      {
        id,
        name: state.name,
        plants,
        stage: stageOf(state, today),
        month: Number(day.slice(5, 7)),
        startedOn: day,
        lastKind: lastStanding(entries)?.kind ?? null,
        strengthPercent: () => abvPercentIn(state),
        spiritTyped: state.started.typed.find(([option]) => option === 'spirit')?.[1] ?? null,
        bottlesTyped: state.started.typed.find(([option]) => option === 'bottles')?.[1] ?? null,
        ...(state.ended === null && standingTroubles(state).length > 0 && { isTroubled: true }),
        told: () => state.happened.map(({ seq, kind, day, typed }) => ({ seq, kind, day, typed })),
      },
    ]
  })
}
