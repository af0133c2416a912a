import { unlessRefused } from '../domain-error.ts'
import { clearingOf } from '../jar/state/clearing.ts'
import { contentsOf } from '../jar/state/contents.ts'
import type { JarState } from '../jar/state/jar-state.ts'
import { plantsToAdd } from '../jar/state/later-plants.ts'
import { madeBatch } from '../jar/state/made-batch.ts'
import { plannedSyrup, syrupToAdd, wouldFerment } from '../jar/state/planned-syrup.ts'
import { once } from '../once.ts'
import { exactly } from '../quantity/measured/measured.ts'
import { dayFromIso } from '../quantity/time/calendar-day.ts'
import { steepsAtPercent } from '../recipe/code/recipe-wish.ts'
import { wishOf } from '../recipe/plan/batch-wish.ts'
import { type Bottles, USUAL_BOTTLE_ML } from '../recipe/plan/parse-bottles.ts'
import { planAsIs } from '../recipe/plan/plan.ts'
import type { Outcome } from '../recipe/solve/outcome.ts'
import type { Syrup } from '../recipe/solve/syrup.ts'
import { withoutTrace } from '../recipe/solve/without-trace.ts'
import type { Targets } from '../recipe/targets.ts'
import { type Needs, NOTHING_NEEDED, plantNeed } from './needs.ts'
import { bottlesNeeded, sweetenerNeeds } from './needs-of-plan.ts'

/** What a jar is expected to take after straining, and to become. */
type Expected = Pick<
  Syrup,
  'sweetener' | 'sugarG' | 'filler' | 'waterG' | 'waterMl' | 'syrupG' | 'syrupMl' | 'dissolvesG' | 'outcome'
>

/** A steeping jar as it would be were it strained now, and nothing measured. */
function asStrained(story: JarState): JarState {
  const { seq, day, atMs, zone, enteredMs, typed } = story.happened.at(-1)!
  const strained = {
    kind: 'strained',
    seq: seq + 1,
    day,
    atMs,
    zone,
    enteredMs,
    typed,
    measured: null,
    strength: null,
    rinseWaterG: exactly(0),
  } as const
  return { ...story, happened: [...story.happened, strained], strained }
}

/** A plan of what is in the jar by now, towards what it was planned to become; null where it cannot be. */
function expectedOf(story: JarState): Expected | null {
  const { targets, day } = story.started
  if (targets === null) return null
  // What other jars gave is in no plan: it is reckoned as it will be once this one is strained.
  if (
    story.started.secondOf !== undefined ||
    story.happened.some(({ kind }) => kind === 'poured_in' || kind === 'parted')
  ) {
    return plannedSyrup(asStrained(story))?.syrup ?? null
  }
  const made = madeBatch(story)
  const batch = {
    ...made,
    plants: made.plants.map((plant) => ({ ...plant, isUsual: false })),
    named: {
      ...made.named,
      isSpiritNamed: true,
      steepAtPercent: made.waterG.value === 0 ? null : steepsAtPercent(made),
    },
  }
  return unlessRefused(() =>
    planAsIs({ ...wishOf(batch, { start: dayFromIso(day), readyBy: null }), named: targets, isPoured: true }),
  )
}

/** What a jar still takes, and whether it is known how much sugar. */
export interface JarNeeds extends Needs {
  readonly isSugarKnown: boolean
}

const NOTHING: JarNeeds = { ...NOTHING_NEEDED, isSugarKnown: true }

/** The syrup that is still to go in; null where none is, or where nobody can tell how much of it. */
const syrupToCome = once((story: JarState): Expected | null => {
  const { strained, sweetened, bottled, started, ended } = story
  if (ended !== null || sweetened !== null || bottled !== null || started.targets === null) return null
  if (strained === null) return expectedOf(story)
  const syrup = syrupToAdd(story)
  return syrup === null ? null : withoutTrace(syrup)
})

/** The syrup that a jar which steeps will take, towards these targets; null where that cannot be told, or it steeps no more. */
export function expectedSyrup(
  story: JarState,
  wished: Partial<Targets>,
): (Expected & { readonly targets: Targets }) | null {
  const { strained, ended, started } = story
  const { abvPercent, sugarGPerL } = { ...started.targets, ...wished }
  if (strained !== null || ended !== null || abvPercent === undefined || sugarGPerL === undefined) return null
  const targets = { abvPercent, sugarGPerL }
  const expected = wouldFerment(targets) ? null : expectedOf({ ...story, started: { ...started, targets } })
  return expected === null ? null : { ...withoutTrace(expected), targets }
}

/** What a jar is to become that is not sweetened yet; null where that is not known, or it is what it is. */
export const expectedOutcome = (story: JarState): Outcome | null => syrupToCome(story)?.outcome ?? null

/** The bottles that were named, or that are chosen now; the first size once some are filled. */
function bottlesOf({ started, bottled }: JarState, chosen: JarBottles | null, usualMl: number): JarBottles {
  if (chosen !== null) return chosen
  const [first] = started.bottles
  return bottled !== null || first === undefined
    ? [{ count: null, volumeMl: first?.volumeMl ?? usualMl }]
    : started.bottles
}

type JarBottles = readonly Pick<Bottles, 'count' | 'volumeMl'>[]

/**
 * What is still to be bought for a jar: plants that go in later, sugar, bottles, what it is strained and filtered through. While it
 * steeps its syrup is as expected; strained, as it is worked out from what came out.
 *
 * @param chosen - the bottles to fill; null: as planned
 */
export function needsOfJar(story: JarState, chosen: JarBottles | null = null, usualMl = USUAL_BOTTLE_ML): JarNeeds {
  const { strained, sweetened, filtered, bottled, started, ended } = story
  if (ended !== null) return NOTHING
  const isSweetenedLater = sweetened === null && bottled === null && started.targets !== null
  const syrup = syrupToCome(story)
  const { outcome, bottledMl } = contentsOf(story)
  const leftMl = (syrup?.outcome ?? outcome).volumeMl.value - bottledMl
  const clearing = clearingOf(story)
  return {
    plants: (strained === null ? plantsToAdd(story) : []).map((plant) =>
      plantNeed({ ...plant, massG: plant.massG.value }),
    ),
    spirits: [],
    sweeteners:
      syrup === null
        ? []
        : sweetenerNeeds([
            { material: syrup.sweetener, massG: syrup.sugarG },
            ...(syrup.filler === null ? [] : [{ material: syrup.filler, massG: syrup.waterG }]),
          ]),
    bottles: leftMl > 0 ? bottlesNeeded(leftMl, bottlesOf(story, chosen, usualMl)) : [],
    jars: [],
    isToStrain: strained === null,
    isToFilter: filtered === null && (strained === null || (clearing !== null && clearing !== 'leave_cloudy')),
    isSugarKnown: !isSweetenedLater || syrup !== null,
  }
}
