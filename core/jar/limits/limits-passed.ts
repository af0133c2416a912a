import type { Botanical } from '../../botanical/botanical.ts'
import { botanicalById } from '../../botanical/catalogue/catalogue.ts'
import { inForm } from '../../botanical/find/in-form.ts'
import { type OverCeiling, overCeilings, type Weighed } from '../../botanical/limits/ceilings.ts'
import { mix, part, volumeMl, water } from '../../liquid/liquid.ts'
import { liquidOf } from '../../recipe/portion.ts'
import { valuesOf } from '../../recipe/propagate.ts'
import { allFinishedMl } from '../../recipe/targets.ts'
import type { HappeningEntry, PlantIn } from '../entry/entry.ts'
import type { JarState, Of } from '../state/jar-state.ts'
import { plantsOfStart } from '../state/later-plants.ts'
import { liquidAfter } from '../state/liquid-after.ts'
import { isCatalogued, type LiquidStep, stepsOf } from '../state/liquid-steps.ts'
import { putIn } from '../state/made-batch.ts'

/** What a jar's limits are judged by; see `overCeilings`. */
export interface Held {
  readonly weighed: readonly Weighed[]
  readonly spiritMl: number
  readonly finishedMl: number | null
}

const weighedPlants = (plants: readonly PlantIn[], share: number): readonly Weighed[] =>
  plants.flatMap(({ id, isDried, massG }): readonly Weighed[] => {
    if (id === null || !isCatalogued(id)) return []
    const usual = botanicalById(id)
    return [{ botanical: isDried ? (inForm(usual, 'dried') ?? usual) : usual, massG: share * massG.value }]
  })

/** The share of what went in by an entry that is still here: what was poured out since took its share of it along. */
const keptSince = ({ happened }: JarState, at: number): number =>
  happened.slice(at + 1).reduce((share, entry) => (entry.kind === 'parted' ? share * entry.kept.value : share), 1)

const keptOf = (story: JarState, { seq }: Pick<HappeningEntry, 'seq'>): number =>
  keptSince(
    story,
    story.happened.findIndex((entry) => entry.seq === seq),
  )

/** What came with liquid of other jars. */
const pouredIn = ({ happened }: JarState): readonly Of<'poured_in'>[] =>
  happened.filter((entry) => entry.kind === 'poured_in')

/** A plant's entries are added up; fresh and dried count apart. */
function weighedIn(story: JarState): readonly Weighed[] {
  const weighed = [
    ...putIn(story).flatMap((entry) =>
      weighedPlants(entry.kind === 'started' ? plantsOfStart(story) : entry.plants, keptOf(story, entry)),
    ),
    ...pouredIn(story).flatMap((entry) => weighedPlants(entry.plants, keptOf(story, entry))),
    // As if the first steep had drawn nothing: nobody knows how little is left.
    ...weighedPlants(story.started.secondOf?.plants ?? [], keptOf(story, story.started)),
  ]
  const isSame = (one: Botanical, other: Botanical): boolean =>
    one.id === other.id && one.form.state === other.form.state
  return weighed
    .filter(({ botanical }, at) => weighed.findIndex((each) => isSame(each.botanical, botanical)) === at)
    .map(({ botanical }) => ({
      botanical,
      massG: weighed.reduce((sum, each) => sum + (isSame(each.botanical, botanical) ? each.massG : 0), 0),
    }))
}

const volumeAfter = (steps: readonly LiquidStep[]): number => volumeMl(liquidAfter(valuesOf(steps)).liquid)

/** Much less came out than expected only where less spirit went in: the share of it that did, 0 to 1. */
function cameOutShare(steps: readonly LiquidStep[], at: number): number {
  const step = steps[at]
  if (step?.kind !== 'strained' || step.measured === null) return 1
  const { expected, liquid } = liquidAfter(valuesOf(steps.slice(0, at + 1)))
  const least = LEAST_SHARE * volumeMl(expected)
  return least > 0 ? Math.min(1, volumeMl(liquid) / least) : 1
}

/** Plants keep more than expected, and a jug reads too little: from this share on it is as expected. Estimated. */
const LEAST_SHARE = 0.6

/**
 * The drink, mL, that holds all of what the plants gave: what straining and filters take, takes its share of that along, so
 * that the whole jar counts, and grows with what is stirred in later.
 */
function wholeMl(steps: readonly LiquidStep[], strainedAt: number): number {
  const jarMl = volumeAfter(steps.slice(0, strainedAt))
  return steps.slice(strainedAt).reduce((wholeMl, step, index) => {
    if (step.kind === 'parted') return wholeMl * step.kept.value
    if (step.kind !== 'in') return wholeMl
    const beforeMl = volumeAfter(steps.slice(0, strainedAt + index))
    const afterMl = volumeAfter(steps.slice(0, strainedAt + index + 1))
    return beforeMl === 0 ? wholeMl : (wholeMl * afterMl) / beforeMl
  }, jarMl)
}

/** The drink that comes of it, mL; null where it is neither planned nor made. */
function finishedMlOf(story: JarState, steps: readonly LiquidStep[], strainedAt: number): number | null {
  const { started, strained, sweetened, bottled } = story
  if (sweetened !== null || bottled !== null) return strainedAt < 0 ? null : wholeMl(steps, strainedAt)
  const { targets } = started
  const steeped = liquidAfter(valuesOf(steps.slice(0, strainedAt < 0 ? steps.length : strainedAt)))
  const kept = strained === null ? 1 : keptOf(story, strained)
  const others = pouredIn(story).map((entry) => part(liquidOf(valuesOf(entry.liquid)), keptOf(story, entry)))
  const liquid = mix(part(steeped.liquid, kept), ...others)
  const isNone = targets === null || targets.abvPercent <= 0 || volumeMl(liquid) === 0
  return isNone ? null : allFinishedMl(liquid, targets)
}

/** What went into a jar, whether it steeps still or was strained, sweetened or bottled. */
export function heldIn(story: JarState): Held {
  // Only volumes count, which no reading of a strength changes.
  const taken = stepsOf(story.happened)
  const steps = taken.map(({ step }) => step)
  const strainedAt = steps.findIndex(({ kind }) => kind === 'strained')
  const until = strainedAt < 0 ? steps.length : strainedAt
  const poured = taken.slice(0, until).flatMap(({ step, seq }) => {
    if (step.kind !== 'in') return []
    const kept = keptOf(story, { seq })
    return [...valuesOf(step.spirits).map(liquidOf), water(step.waterG.value)].map((liquid) => part(liquid, kept))
  })
  const otherMl = pouredIn(story).reduce((sum, entry) => sum + keptOf(story, entry) * entry.spiritMl, 0)
  const share = strainedAt < 0 ? 1 : cameOutShare(steps, strainedAt)
  const finishedMl = finishedMlOf(story, steps, strainedAt)
  return {
    weighed: weighedIn(story),
    spiritMl: share * volumeMl(mix(...poured)) + otherMl,
    finishedMl: finishedMl === null ? null : share * finishedMl,
  }
}

/** The limits that a jar as it is passes, the worst first; empty where none. Never throws. */
export function limitsPassed(story: JarState): readonly OverCeiling[] {
  const { weighed, spiritMl, finishedMl } = heldIn(story)
  return spiritMl === 0 ? [] : overCeilings(weighed, spiritMl, finishedMl)
}
