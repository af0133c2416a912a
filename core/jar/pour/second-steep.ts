import { botanicalById } from '../../botanical/catalogue/catalogue.ts'
import { DomainError } from '../../domain-error.ts'
import { abvPercent, dissolvedIn, ethanolG, sugarGPerL, volumeMl } from '../../liquid/liquid.ts'
import { type Measured, times } from '../../quantity/measured/measured.ts'
import type { CalendarDay } from '../../quantity/quantities.ts'
import { type IsoDay, isoDay } from '../../quantity/time/calendar-day.ts'
import type { BatchDays } from '../../recipe/batch.ts'
import { timesOf } from '../../recipe/plan/plan.ts'
import { schedule } from '../../recipe/plan/schedule.ts'
import { propagate, valuesOf } from '../../recipe/propagate.ts'
import { timesSweetenings } from '../../recipe/sweetening.ts'
import type { PlantIn, SecondOf } from '../entry/entry.ts'
import { sweeteningsIn } from '../state/batch-facts.ts'
import { believedSteps } from '../state/believed-steps.ts'
import { type JarState, jarStateOf, type KeptJar } from '../state/jar-state.ts'
import { plantKey } from '../state/later-plants.ts'
import { liquidAfter } from '../state/liquid-after.ts'
import { isCatalogued } from '../state/liquid-steps.ts'
import { plantsInside } from './lifted-out.ts'

/** What is left in strained plants, by the balance of their jar; estimated, as what plants soak up is. */
export interface LeftInPlants {
  readonly soakedMl: Measured
  /** Alcohol in it, g. */
  readonly ethanolG: Measured
  /** Of all that the first steep drew, the share that is in it, 0 to 1. */
  readonly share: Measured
}

/** Of what was poured into another jar the plants went along in part. */
const keptShare = ({ happened }: JarState): number =>
  happened.reduce((share, entry) => (entry.kind === 'parted' ? share * entry.kept.value : share), 1)

/** The plants that were strained, as they had been weighed in. */
function spentPlants(story: JarState): readonly PlantIn[] {
  const went = story.happened.flatMap((entry) => {
    if (entry.kind === 'started') return [...entry.plants, ...(entry.secondOf?.plants ?? [])]
    return entry.kind === 'added' ? entry.plants : []
  })
  return plantsInside(story).flatMap(({ id, name, massG }): readonly PlantIn[] => {
    const first = went.find((plant) => plantKey(plant) === plantKey({ id, name }))
    const spent = { massG: times(massG, keptShare(story)), count: null, isUsual: false, words: null, addOn: null }
    return first === undefined ? [] : [{ ...first, ...spent }]
  })
}

/** The jar whose plants these are already; undefined where none is. */
const takenBy = (id: string, jars: readonly KeptJar[]): JarState | undefined =>
  jars.flatMap(({ entries }) => jarStateOf(entries) ?? []).find(({ started }) => started.secondOf?.otherId === id)

/** Throws `second_begun` where the plants steep in another jar already: what they soaked up counts there. */
export function expectPlantsHere(jar: KeptJar, jars: readonly KeptJar[]): void {
  const taken = takenBy(jar.id, jars)
  if (taken === undefined) return
  throw new DomainError('wrong_stage', 'second_begun', { jar: jarStateOf(jar.entries)!.name, by: taken.name })
}

/** Throws `second_begun_since` where a jar whose plants steep in another one would count them as in it, or as under sugar, again. */
export function expectStillSpent(jar: KeptJar, jars: readonly KeptJar[]): void {
  const story = jarStateOf(jar.entries)
  const taken = takenBy(jar.id, jars)
  if (taken === undefined || (story !== null && story.strained !== null && story.onFruit === null)) return
  const name = story?.name ?? taken.started.secondOf!.other
  throw new DomainError('wrong_stage', 'second_begun_since', { jar: name, by: taken.name })
}

/**
 * The plants of a strained jar for a second steep, with what they soaked up. Throws `second_not_strained`, `no_fruit`,
 * `second_sugared` and `second_taken`.
 */
export function secondOf(
  jar: KeptJar,
  jars: readonly KeptJar[],
): { readonly again: SecondOf; readonly left: LeftInPlants } {
  const story = jarStateOf(jar.entries)!
  if (story.strained === null) throw new DomainError('wrong_stage', 'second_not_strained', { jar: story.name })
  if (story.onFruit !== null) throw new DomainError('wrong_stage', 'second_sugared', { jar: story.name })
  const plants = spentPlants(story)
  if (plants.length === 0) throw new DomainError('wrong_stage', 'no_fruit', { jar: story.name })
  const taken = takenBy(jar.id, jars)
  if (taken !== undefined) throw new DomainError('wrong_stage', 'second_taken', { jar: story.name, by: taken.name })
  const every = believedSteps(story.happened)
  const strainedAt = every.findIndex(({ step }) => step.kind === 'strained')
  const steps = every.map(({ step }) => step)
  const found = propagate(steps, (values) => {
    const { soaked } = liquidAfter(values).inFruit
    const { liquid, keptBackMl } = liquidAfter(values.slice(0, strainedAt + 1))
    const allMl = volumeMl(liquid) + (keptBackMl ?? 0)
    return {
      soakedMl: volumeMl(soaked),
      abvPercent: abvPercent(soaked),
      sugarGPerL: sugarGPerL(soaked),
      ethanolG: ethanolG(soaked),
      share: allMl === 0 ? 0 : Math.min(1, volumeMl(soaked) / allMl),
    }
  })
  const { soaked } = liquidAfter(valuesOf(steps)).inFruit
  const dissolved = dissolvedIn(soaked)
  const steeped = { ...story, happened: story.happened.slice(0, story.happened.indexOf(story.strained)) }
  const sweetenings = timesSweetenings(sweeteningsIn(steeped), found.share.value)
  return {
    again: {
      other: story.name,
      otherId: jar.id,
      soaked: {
        amount: found.soakedMl,
        by: 'volume',
        atC: 20,
        abvPercent: found.abvPercent,
        abvAtC: null,
        sugarGPerL: found.sugarGPerL,
        ...(Object.keys(dissolved).length > 0 && { dissolved }),
      },
      ...(sweetenings.length > 0 && { sweetenings }),
      plants,
    },
    left: { soakedMl: found.soakedMl, ethanolG: found.ethanolG, share: found.share },
  }
}

/** As long as these plants usually steep; no days where one is not in the catalogue. */
export function secondDays(plants: readonly PlantIn[], start: CalendarDay): BatchDays<IsoDay> {
  const times = plants.flatMap(({ id }) => (id !== null && isCatalogued(id) ? [timesOf(botanicalById(id))] : []))
  if (times.length < plants.length || times.length === 0) {
    return { tasteFrom: null, strainFrom: null, strainBy: null, restDays: null, isHours: false, steepHours: null }
  }
  const { tasteFrom, strainFrom, strainBy, restDays } = schedule(times, { start, readyBy: null, areAllIn: true })
  return {
    tasteFrom: isoDay(tasteFrom),
    strainFrom: isoDay(strainFrom),
    strainBy: isoDay(strainBy),
    restDays,
    isHours: false,
    steepHours: null,
  }
}
