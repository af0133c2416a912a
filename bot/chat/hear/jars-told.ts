import { lastStanding } from '../../../core/jar/entry/standing-entries.ts'
import { plantsInside } from '../../../core/jar/pour/lifted-out.ts'
import { bottleStock } from '../../../core/jar/state/bottle-stock.ts'
import { abvPercentIn, contentsOf } from '../../../core/jar/state/contents.ts'
import { type JarState, jarStateOf, stageOf } from '../../../core/jar/state/jar-state.ts'
import { standingTroubles } from '../../../core/jar/state/standing-troubles.ts'
import { isoDay } from '../../../core/quantity/time/calendar-day.ts'
import { dayAt } from '../../../core/quantity/time/zone.ts'
import { expectedOutcome } from '../../../core/shopping/needs-of-jar.ts'
import { isSymptom } from '../../../core/trouble/find-symptom.ts'
import { isSign, signText } from '../../../core/trouble/signs.ts'
import { symptoms } from '../../../core/trouble/symptoms.ts'
import type { Person } from '../../../store/person.ts'
import type { StandsOfJar, TalkJar } from '../../talk/bits/bit.ts'

/** What it was told of, the worst asked about as it was answered. */
function standsOf(state: JarState): Pick<TalkJar, 'isTroubled' | 'stands'> {
  const [worst] = standingTroubles(state)
  if (worst === undefined) return {}
  const { symptom } = worst
  if (!isSymptom(symptom)) return { isTroubled: true }
  const answers = (['yes', 'no'] as const).flatMap((is): readonly (readonly [string, string])[] => {
    const signs = worst[is].filter(isSign).map(signText)
    return signs.length === 0 ? [] : [[is, signs.join(' + ')]]
  })
  const options: StandsOfJar['options'] = { symptom: symptoms[symptom].en[0]!, ...Object.fromEntries(answers) }
  return { isTroubled: true, stands: { symptom, isOpen: worst.verdict === 'ask', options } }
}

/** What the last entry told of, where that stands. */
function lastToldOf(state: JarState, seq: number | undefined): Pick<TalkJar, 'lastTold'> {
  const symptom = standingTroubles(state).find((each) => each.seq === seq)?.symptom
  return symptom !== undefined && isSymptom(symptom) ? { lastTold: symptoms[symptom].en[0]! } : {}
}

/** How much can be poured of it, ml: what is in full bottles, else what it makes or is. */
function volumeMlIn(state: JarState): number | null {
  const stock = bottleStock(state)
  if (stock.length > 0) return stock.reduce((sum, { left, volumeMl }) => sum + left * volumeMl, 0)
  return abvPercentIn(state) === null ? null : (expectedOutcome(state) ?? contentsOf(state).outcome).volumeMl.value
}

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
        sugarGPerL: () => (abvPercentIn(state) === null ? null : contentsOf(state).outcome.sugarGPerL.value),
        volumeMl: () => volumeMlIn(state),
        spiritTyped: state.started.typed.find(([option]) => option === 'spirit')?.[1] ?? null,
        bottlesTyped: state.started.typed.find(([option]) => option === 'bottles')?.[1] ?? null,
        ...(state.ended === null && { ...standsOf(state), ...lastToldOf(state, lastStanding(entries)?.seq) }),
        told: () => state.happened.map(({ seq, kind, day, typed }) => ({ seq, kind, day, typed })),
      },
    ]
  })
}

/** A jar of which nobody may read how strong it is, nor how much of it there is. */
export const untold = (jar: TalkJar): TalkJar => ({ ...jar, strengthPercent: () => null, volumeMl: () => null })
