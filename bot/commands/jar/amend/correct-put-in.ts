import { DomainError } from '../../../../core/domain-error.ts'
import type { Happening, Ingredients, PlantIn, Started } from '../../../../core/jar/entry/entry.ts'
import { isAllIn } from '../../../../core/jar/entry/is-all-in.ts'
import { nameKey } from '../../../../core/jar/entry/jar-name.ts'
import { startedFrom } from '../../../../core/jar/entry/start-from-plan.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { plantsAdded } from '../../../../core/jar/state/plants-added.ts'
import type { Strength, SugarRead } from '../../../../core/quantity/quantities.ts'
import { dayFromIso } from '../../../../core/quantity/time/calendar-day.ts'
import { steepsAtPercent } from '../../../../core/recipe/code/recipe-wish.ts'
import type { DrinkPart } from '../../../../core/recipe/drinks-in.ts'
import { wishOf } from '../../../../core/recipe/plan/batch-wish.ts'
import { type PlantsRead, plannedPlant } from '../../../../core/recipe/plan/find-plants.ts'
import { plan } from '../../../../core/recipe/plan/plan.ts'
import type { PlanWish } from '../../../../core/recipe/plan/plan-wish.ts'
import { answeredFor } from '../../../../core/recipe/plan/unknown-plant.ts'
import type { Portion } from '../../../../core/recipe/portion.ts'
import { asOptionProblem, type Given } from '../../../calls/option.ts'
import { ChatError } from '../../../chat/chat-error.ts'
import { ofStrength, spiritPortions, sweeteningsOf } from '../../options/input-to-portion.ts'

/** What may be put right about what went in, beside water. */
export interface PutInFixes {
  readonly of?: Given<PlantsRead> | undefined
  readonly spirit?: Given<readonly DrinkPart[]> | undefined
  readonly strength?: Given<Strength> | undefined
  readonly sugar?: Given<SugarRead> | undefined
}

/** The one spirit there is, of another strength; throws where there are several. */
function otherStrength([spirit, another]: readonly Portion[], strength: Given<Strength>): readonly Portion[] {
  if (spirit !== undefined && another === undefined) return [ofStrength(spirit, strength.is)]
  const values = { command: 'jar correct', option: 'spirit', example: 'spirit:1 l 95%' }
  throw new ChatError('missing_option', 'missing_option', values, { option: 'spirit' })
}

function spiritsPutRight(spirits: readonly Portion[], { spirit, strength }: PutInFixes): readonly Portion[] | null {
  if (spirit !== undefined) return spiritPortions(spirit.is, strength)
  return strength === undefined ? null : otherStrength(spirits, strength)
}

const keyOf = ({ id, name }: PlantIn): string => id ?? nameKey(name)

/** The days and, where they were not named anew, the amounts of a recipe's plants, of which a plan from them knows nothing. */
function asInRecipe(made: Started, { started }: JarState, isOther: boolean): Started {
  const { waterG } = started
  const isSame =
    made.plants.length === started.plants.length &&
    made.plants.every((plant) => started.plants.some((each) => keyOf(each) === keyOf(plant)))
  if (!isSame) return { ...made, waterG }
  const addOn = (plant: PlantIn) => started.plants.find((each) => keyOf(each) === keyOf(plant))!.addOn
  const plants = isOther ? made.plants.map((plant) => ({ ...plant, addOn: addOn(plant) })) : started.plants
  return { ...made, waterG, plants, days: started.days }
}

/** Throws of a day to be ready on, where it is not known any more how long the plants take. */
function expectReadyByKnown({ unknown: [first], readyBy }: PlanWish): void {
  if (first === undefined || readyBy === null) return
  throw new DomainError('unreachable', 'ready_by_unknown', { name: first.name })
}

/** Of plants that steep once more only the spirit can be otherwise. */
export function secondAnew(started: Started, fixes: PutInFixes): Started {
  if (fixes.of !== undefined) {
    const example = 'spirit:500 ml 60%'
    throw new ChatError('too_many_options', 'second_alone', { option: 'of', example }, { option: 'of' })
  }
  return { ...started, spirits: spiritsPutRight(started.spirits, fixes) ?? started.spirits }
}

/** A start planned anew with what is right; its day and its name stay. */
export function startedAnew(story: JarState, fixes: PutInFixes): Started {
  const { started } = story
  const { of, sugar } = fixes
  const { named, origin, targets } = started
  const readyBy = named.readyBy === null ? null : dayFromIso(named.readyBy)
  const wished = { ...wishOf(started, { start: dayFromIso(started.day), readyBy }), areAllIn: isAllIn(started) }
  const spirits = spiritsPutRight(started.spirits, fixes)
  // Water that went in first is there, whatever spirit it was.
  const isDiluted = origin !== null && started.waterG.value > 0
  const steeped = { spirits: spirits ?? started.spirits, waterG: started.waterG }
  const wish: PlanWish = {
    ...wished,
    ...(of && { plants: of.is.plants.map(plannedPlant), unknown: of.is.unknown.map(answeredFor) }),
    // Days that were said of a plant of which nothing is known are not those of one that is.
    ...(of && wished.unknown.length > 0 && of.is.unknown.length === 0 && { steepFor: null }),
    ...(spirits && { spirits }),
    ...(sugar && sugar.is.amounts.length > 0 && { sweetenings: sweeteningsOf(sugar) }),
    ...(sugar?.is.sweetener != null && { sweetener: sugar.is.sweetener }),
    ...(origin !== null && targets !== null && { named: targets }),
    ...(isDiluted && { steepAtPercent: steepsAtPercent(steeped) }),
    isPoured: true,
  }
  asOptionProblem('ready-by', () => expectReadyByKnown(wish))
  const made = startedFrom(plan(wish), wish, started.name)
  const right = { ...made, named: { ...made.named, steepAtPercent: named.steepAtPercent } }
  return origin === null ? right : asInRecipe(right, story, of !== undefined)
}

type Added = Extract<Happening, { kind: 'added' }>

/** What was added later, with the plants or spirit that are right. */
export function addedAnew(added: Added, seq: number, story: JarState, fixes: PutInFixes): Added {
  const { of } = fixes
  const others = { ...story, happened: story.happened.filter((entry) => entry.seq !== seq) }
  const isOneSpirit = added.spirits.length === 1
  const isKept = fixes.spirit === undefined && !isOneSpirit
  const spirits = (isKept ? null : spiritsPutRight(added.spirits, fixes)) ?? added.spirits
  const liquids: Ingredients = { ...added, spirits, plants: [] }
  return { ...added, spirits, ...(of && { plants: plantsAdded(of.is, others, liquids) }) }
}
