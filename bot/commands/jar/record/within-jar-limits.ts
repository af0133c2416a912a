import { ceilingsUsed, type OverCeiling } from '../../../../core/botanical/limits/ceilings.ts'
import type { HappeningEntry } from '../../../../core/jar/entry/entry.ts'
import { heldIn, limitsPassed } from '../../../../core/jar/limits/limits-passed.ts'
import type { Story } from '../../../../core/jar/state/jar-state.ts'
import { exactly } from '../../../../core/quantity/measured/measured.ts'
import type { FoundPlant, PlantsRead } from '../../../../core/recipe/plan/find-plants.ts'
import { expectUsual } from '../../../../core/recipe/plan/unknown-plant.ts'
import type { Given } from '../../../calls/option.ts'
import { writeLine } from '../../../calls/write-line.ts'
import { ChatError } from '../../../chat/chat-error.ts'
import { piecesOf, withAtMost } from '../../plan/within-limits.ts'
import { type Input, typedIn } from './record-step.ts'

type Asking = Input & {
  readonly jar: Given<string>
  readonly of?: Given<PlantsRead> | undefined
  readonly already?: Given<boolean> | undefined
}

/** Room for the last digit of a double. */
const SLACK = 1e-6

const shareOf = (story: Story, hazard: OverCeiling['hazard']): number => {
  const { weighed, spiritMl, finishedMl } = heldIn(story)
  if (spiritMl === 0) return 0
  return ceilingsUsed(weighed, spiritMl, finishedMl).shares.find((each) => each.hazard === hazard)?.share ?? 0
}

/** The limits that a jar passes and did not pass before, or not so far. */
const newlyPassed = (before: Story, story: Story): readonly OverCeiling[] =>
  limitsPassed(story).filter(({ hazard, share }) => share > shareOf(before, hazard) * (1 + SLACK))

/** The story with other plants in one entry. */
const withPlants = (story: Story, seq: number, change: (entry: HappeningEntry) => HappeningEntry): Story => {
  const happened = story.happened.map((entry) => (entry.seq === seq ? change(entry) : entry))
  const started = happened.find((entry) => entry.kind === 'started')
  return { ...story, happened, started: started ?? story.started }
}

const timesPlants =
  (factorOf: (id: string | null) => number) =>
  (entry: HappeningEntry): HappeningEntry =>
    entry.kind !== 'started' && entry.kind !== 'added'
      ? entry
      : {
          ...entry,
          plants: entry.plants.map((plant) => {
            const { value, plusMinus } = plant.massG
            const factor = factorOf(plant.id)
            return { ...plant, massG: { value: value * factor, plusMinus: plusMinus * factor } }
          }),
        }

/** A little less, so that what is rounded to be weighed out still fits. */
const ROUNDED = 1 - 1e-4

/** The plants of an entry with as much of them as fits beside what is in the jar; null where nothing of one does. */
function fitting({ of, story, seq }: { of: PlantsRead; story: Story; seq: number }, over: readonly OverCeiling[]) {
  const factors = new Map<string, number>()
  const rest = withPlants(
    story,
    seq,
    timesPlants(() => 0),
  )
  for (const { hazard, share, of: parts } of over) {
    const others = shareOf(rest, hazard)
    const factor = (ROUNDED * (1 - others)) / (share - others)
    for (const { id } of parts) factors.set(id, Math.min(factor, factors.get(id) ?? 1))
  }
  const factorOf = (id: string | null): number => (id === null ? 1 : (factors.get(id) ?? 1))
  if ([...factors.values()].some((factor) => factor <= 0)) return null
  const isWithin = newlyPassed(rest, withPlants(story, seq, timesPlants(factorOf))).length === 0
  const mostG = ({ botanical: { id }, massG }: FoundPlant): number | null =>
    factors.has(id) && massG !== null ? massG.value * factorOf(id) : null
  return isWithin ? withAtMost(of, mostG) : null
}

/** All of each food in a jar that the catalogue has no amounts for, by name, in grams. */
const foodsIn = ({ happened }: Story): ReadonlyMap<string, number> => {
  const foods = new Map<string, number>()
  for (const entry of happened) {
    if (entry.kind !== 'started' && entry.kind !== 'added') continue
    for (const { id, name, massG } of entry.plants) {
      if (id === null) foods.set(name, (foods.get(name) ?? 0) + massG.value)
    }
  }
  return foods
}

/** Throws `over_food_bound` where there is more of a food than before, and more than is usual of its kind. */
function expectUsualFoods(before: Story, story: Story): void {
  const were = foodsIn(before)
  const more = [...foodsIn(story)].filter(([name, massG]) => massG > (were.get(name) ?? 0))
  expectUsual(
    more.map(([name, massG]) => ({ name, massG: exactly(massG) })),
    heldIn(story).spiritMl,
  )
}

/**
 * Refuses what would bring a jar over a limit, or further over it, with as much as fits; what is in it already is recorded
 * all the same. `seq`: the entry that is new, or stands otherwise than before.
 */
export function expectWithinLimits(
  path: 'jar add' | 'jar correct',
  { before, story, seq }: { readonly before: Story; readonly story: Story; readonly seq: number },
  input: Asking,
): void {
  if (input.already?.is === true || story.ended !== null) return
  expectUsualFoods(before, story)
  const over = newlyPassed(before, story)
  const [worst] = over
  if (worst === undefined) return
  const { jar, of, ...others } = input
  const typed = typedIn({ of, ...others })
  const less = of === undefined ? null : fitting({ of: of.is, story, seq }, over)
  const lineOf = (options: ReturnType<typeof typedIn>): string => writeLine(path, jar.typed, options)
  throw new ChatError(
    'over_ceiling',
    'jar_passes_ceiling',
    {
      ...worst,
      jar: story.name,
      pieces: of === undefined ? [] : piecesOf(of.is, worst),
      line: less === null ? null : lineOf(typed.map(([name, text]) => [name, name === 'of' ? less : text])),
      isPlants: of !== undefined,
      already: lineOf([...typed, ['already', 'yes']]),
    },
    { option: of === undefined ? 'spirit' : 'of' },
  )
}
