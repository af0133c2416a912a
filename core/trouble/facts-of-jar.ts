import { botanicalById } from '../botanical/catalogue/catalogue.ts'
import { isDrink } from '../botanical/spirit/classify.ts'
import { judgeJar } from '../jar/limits/judge-jar.ts'
import { ingredientsOf, sweeteningsIn } from '../jar/state/batch-facts.ts'
import { believedSteps } from '../jar/state/believed-steps.ts'
import { contentsOf } from '../jar/state/contents.ts'
import type { JarState } from '../jar/state/jar-state.ts'
import { liquidAfter } from '../jar/state/liquid-after.ts'
import { isCatalogued, type LiquidStep } from '../jar/state/liquid-steps.ts'
import { inFreezer } from '../liquid/freezer.ts'
import { delleUnits, type Keeping, keepingOf, surelyDissolvedGPerL } from '../liquid/keeping.ts'
import { abvPercent, massG, sugarG, volumeMl } from '../liquid/liquid.ts'
import { largestSweetnessGPerL } from '../liquid/solubility.ts'
import { USUAL_MATERIAL } from '../quantity/materials.ts'
import { dayFromIso, daysBetween, type IsoDay } from '../quantity/time/calendar-day.ts'
import { plantOf } from '../recipe/plan/plant-of.ts'
import { valuesOf } from '../recipe/propagate.ts'
import { outcomeOf } from '../recipe/solve/outcome.ts'
import { type Sweetening, sugarsInG } from '../recipe/sweetening.ts'
import type { PlantThere, TroubleFacts } from './facts.ts'
import { isInGroup, isTakenForOthers } from './plant-groups.ts'
import { plantsThere } from './plants-there.ts'

/** How its person lives. */
export interface TroubleSetting {
  readonly today: IsoDay
  readonly freezerC: number
}

/** What surely could ferment once may have begun to; of what was near the line then, what it is now decides. */
const worstOf = (now: Keeping | null, weakestYet: Keeping): Keeping =>
  now === null || weakestYet === 'ferments' ? weakestYet : now

/** All steps up to each, from the first that has plants in it. */
function stages(steps: readonly LiquidStep[]): readonly (readonly LiquidStep[])[] {
  const first = steps.findIndex((step) => step.kind === 'in' && step.plants.length > 0)
  return first < 0 ? [steps] : steps.slice(first).map((_, at) => steps.slice(0, first + at + 1))
}

const percentAfter = (steps: readonly LiquidStep[]): number | null => {
  const { liquid } = liquidAfter(valuesOf(steps))
  return massG(liquid) === 0 ? null : abvPercent(liquid)
}

/** As it was at its weakest. */
function weakest(steps: readonly LiquidStep[]) {
  const all = stages(steps).flatMap((until) => {
    const percent = percentAfter(until)
    return percent === null ? [] : [{ until, percent }]
  })
  const least = all.toSorted((one, other) => one.percent - other.percent)[0]
  if (least === undefined) return null
  const outcome = outcomeOf(least.until, (values) => liquidAfter(values).liquid)
  const { abvPercent: strength } = outcome
  return {
    percent: least.percent,
    keeping: keepingOf(outcome),
    units: delleUnits(strength.value, surelyDissolvedGPerL(outcome)),
  }
}

/** While its plants were in, just before they came out. */
function steepPercent(steps: readonly LiquidStep[]): number | null {
  const at = steps.findIndex(({ kind }) => kind === 'strained')
  return percentAfter(at < 0 ? steps : steps.slice(0, at))
}

/** What is missing of what was expected to come out; null where it was not measured. */
function missingShare(steps: readonly LiquidStep[]): number | null {
  const at = steps.findIndex((step) => step.kind === 'strained' && step.measured !== null)
  if (at < 0) return null
  const { expected, liquid } = liquidAfter(valuesOf(steps.slice(0, at + 1)))
  return volumeMl(expected) === 0 ? null : Math.max(0, 1 - volumeMl(liquid) / volumeMl(expected))
}

/** What sweetened it once it was strained. */
const sweetenedLater = ({ happened, strained }: JarState): readonly Sweetening[] => {
  const from = strained === null ? happened.length : happened.indexOf(strained)
  return happened
    .slice(from)
    .flatMap((entry) => (entry.kind === 'sweetened' || entry.kind === 'added' ? entry.sweetenings : []))
}

/** The part of its sugar that its plants brought, g/L of it now. */
function plantSugarGPerL(story: JarState, sugarGPerL: number): number {
  const { plants, sweetenings } = ingredientsOf(story)
  const broughtG = plants.reduce((sum, { id, massG: mass }) => {
    if (id === null || !isCatalogued(id)) return sum
    const { sugarShare, exchangeShare } = plantOf(botanicalById(id), mass)
    return sum + mass.value * sugarShare.value * exchangeShare.value
  }, 0)
  const later = sweetenedLater(story)
  const addedG = sugarsInG([...sweetenings, ...later])
  return broughtG === 0 ? 0 : (sugarGPerL * broughtG) / (broughtG + addedG)
}

/** Whether every spirit in it was typed with the name of a drink. */
const areSpiritsNamed = ({ happened }: JarState): boolean => {
  const typed = happened.flatMap((entry) =>
    entry.kind === 'started' || entry.kind === 'added'
      ? entry.typed.flatMap(([option, text]) => (option === 'spirit' ? text.split('+') : []))
      : [],
  )
  // What was poured in from another jar has its own record.
  return typed.length > 0 && typed.every(isDrink) && !happened.some(({ kind }) => kind === 'poured_in')
}

/** What a jar's record answers of itself. */
function signsOf(story: JarState, plants: readonly PlantThere[]): TroubleFacts['signs'] {
  const kinds = judgeJar(story).map(({ kind }) => kind)
  const known = plants.flatMap(({ botanical }) => botanical ?? [])
  const isAllKnown = known.length === plants.length
  const isRefused = kinds.includes('refused_plant') || kinds.includes('unknown_plant')
  return {
    known: true,
    // Nobody can put it into a jar here.
    dairy: false,
    // Nobody's bottle burst that was never filled.
    ...(story.bottled === null && !isPouredIn(story) ? { burst: false } : {}),
    ...(kinds.includes('refused_spirit') ? { bought: false } : areSpiritsNamed(story) ? { bought: true } : {}),
    ...(isRefused ? { sure: false } : isAllKnown && !known.some(isTakenForOthers) ? { sure: true } : {}),
    ...(isAllKnown && !known.some((plant) => isInGroup(plant, 'kernels')) ? { stones: false } : {}),
  }
}

/** What another jar had become may be anything. */
const isPouredIn = ({ happened }: JarState): boolean => happened.some(({ kind }) => kind === 'poured_in')

/** All that a jar's entries tell of what may have gone wrong with it. */
export function factsOfJar(story: JarState, { today, freezerC }: TroubleSetting): TroubleFacts {
  const steps = believedSteps(story.happened).map(({ step }) => step)
  const { outcome, isEmpty, sugarStays } = contentsOf(story)
  const plants = plantsThere(story, today)
  const weak = weakest(steps)
  const daysFrom = (day: IsoDay): number => Math.max(0, daysBetween(dayFromIso(today), dayFromIso(day)))
  const { strained, sweetened, started, ended } = story
  const known = isEmpty ? null : outcome
  const steepedUntil = strained?.day ?? today
  return {
    abvPercent: known?.abvPercent ?? null,
    sugarGPerL: known?.sugarGPerL ?? null,
    steepPercent: plants.length === 0 ? null : steepPercent(steps),
    weakestPercent: weak?.percent ?? null,
    keeping: weak === null ? null : worstOf(known === null ? null : keepingOf(known), weak.keeping),
    delleUnits: weak?.units ?? null,
    sugarState: known === null ? null : sugarStays,
    largestGPerL: known === null ? null : largestSweetnessGPerL(known.abvPercent.value),
    inFreezer:
      known === null
        ? null
        : {
            state: inFreezer(known.liquid, freezerC, known.freezesAtC.plusMinus).state,
            freezesAtC: known.freezesAtC.value,
            freezerC,
          },
    plants,
    steepedDays: Math.max(0, daysBetween(dayFromIso(steepedUntil), dayFromIso(started.day))),
    isSteeping: strained === null && ended === null,
    restedDays: sweetened === null ? null : daysFrom(sweetened.day),
    ageDays: daysFrom(started.day),
    missingShare: missingShare(steps),
    plannedPercent: sweetened === null ? null : (started.targets?.abvPercent ?? null),
    plantSugarGPerL: known === null || sugarG(known.liquid) === 0 ? 0 : plantSugarGPerL(story, known.sugarGPerL.value),
    isSweetened: sweeteningsIn(story).length > 0 || isPouredIn(story),
    hasSyrup: story.sweetened !== null || sweetenedLater(story).length > 0 || isPouredIn(story),
    isOddlySweetened: [...ingredientsOf(story).sweetenings, ...sweetenedLater(story)].some(
      ({ material }) => material !== USUAL_MATERIAL,
    ),
    isOverCeiling: judgeJar(story).some(({ kind }) => kind === 'over_ceiling'),
    signs: signsOf(story, plants),
  }
}
