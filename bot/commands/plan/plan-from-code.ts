import type { Botanical } from '../../../core/botanical/botanical.ts'
import { isWholePeel } from '../../../core/botanical/catalogue/piece-mass.ts'
import { isFormAsked } from '../../../core/botanical/find/in-form.ts'
import type { Batch } from '../../../core/recipe/batch.ts'
import { planRecipe, type RecipePlan, usualDays } from '../../../core/recipe/code/plan-recipe.ts'
import { plantsAtHand } from '../../../core/recipe/code/plants-at-hand.ts'
import { expectDistilledPercent } from '../../../core/recipe/distilled.ts'
import type { FoundPlant, PlantsRead } from '../../../core/recipe/plan/find-plants.ts'
import type { PlanWish } from '../../../core/recipe/plan/plan-wish.ts'
import { asOptionProblem, type Given } from '../../calls/option.ts'
import type { Message } from '../../text/words.ts'
import { spiritsCalled } from '../options/input-to-portion.ts'
import { type AskedPlan, bottlesOf, type Planned, readyByOf, type Setting, spiritStrength } from './plan-wish.ts'
import { titleOf, weighedText } from './written-amounts.ts'

type Note = Message<'notes'>

/** From so much on a spirit is another one than the recipe's, % vol. */
const OTHER_PERCENT = 1
/** A share of the spirit that is all of it, whatever its last digit. */
const ALL = 1 - 1e-9

/** Somebody's batch with the spirit, plants and bottles that the input names. */
export function planFromCode(
  batch: Batch,
  input: Planned,
  setting: Setting,
): Omit<AskedPlan<unknown>, 'input'> & { readonly plants: Given<PlantsRead> } {
  const { of, spirit, strength } = input
  const atHand = {
    spirits: spirit === undefined ? null : spiritsCalled(spirit.is, strength),
    spiritAbvPercent: strength === undefined || spirit !== undefined ? null : spiritStrength(strength.is),
    plants: of === undefined ? [] : asOptionProblem('of', () => plantsAtHand(of.is, batch)),
  }
  const asked = {
    named: { abvPercent: input['to-strength']?.is.abvPercent, sugarGPerL: input['to-sweetness']?.is.sugarGPerL },
    bottles: bottlesOf(input, setting),
    start: setting.start,
    readyBy: readyByOf(input, setting),
    steepAtPercent: input['steep-at']?.is.abvPercent ?? null,
    areAllIn: input['all-in']?.is,
  }
  if (atHand.spirits === null && atHand.spiritAbvPercent === null)
    asOptionProblem('from', () => expectSpiritsDistilled(batch))
  const made = planRecipe(batch, atHand, asked)
  const plants = plantsTyped(made, batch)
  const words = plants.is.plants.map(({ botanical, typed: { noun } }, index) => {
    return { noun, isFormSaid: batch.plants[index]!.isDried || isFormAsked(botanical), unit: null }
  })
  const withWords = <Plant>(plant: Plant, index: number): Plant => ({ ...plant, words: words[index] })
  return {
    wish: { ...made.wish, plants: made.wish.plants.map(withWords) },
    planned: { ...made.plan, plants: made.plan.plants.map(withWords) },
    plants,
    limit: { limitId: limitId(made, batch), isPlantSaid: of !== undefined },
    notes: codeNotes(made, batch, { isOther: atHand.spirits !== null || atHand.spiritAbvPercent !== null, input }),
  }
}

/** Spirits no stronger as distilling makes them. */
function expectSpiritsDistilled({ spirits }: Batch): void {
  for (const { abvPercent } of spirits) expectDistilledPercent(abvPercent.value)
}

const limitId = ({ limit }: RecipePlan, { plants }: Batch): string | null =>
  limit?.by === 'plant' ? plants[limit.index]!.id : null

const nounOf = (botanical: Botanical, isDried: boolean): string =>
  isDried ? `dried ${titleOf(botanical)}` : titleOf(botanical)

/** The recipe's plants as if they had been typed: so a jar keeps them, whatever becomes of the code. */
function plantsTyped({ plan }: RecipePlan, batch: Batch): Given<PlantsRead> {
  const plants = plan.plants.map(({ botanical, massG, count }, index): FoundPlant => {
    const noun = nounOf(botanical, batch.plants[index]!.isDried)
    return {
      botanical,
      saidState: botanical.form.state,
      corrected: false,
      typed: { amount: null, kind: null, noun, typed: `${weighedText(massG.value)} g ${noun}` },
      massG,
      count,
      ofZest: count !== null && isWholePeel(botanical, count, massG.value),
    }
  })
  return { typed: plants.map(({ typed }) => typed.typed).join(' + '), is: { plants, unknown: [] } }
}

const steepNote = (made: RecipePlan, isOther: boolean, input: Planned): readonly Note[] => {
  const { abvPercent, recipeAbvPercent, wish } = made
  const values = { abvPercent, recipeAbvPercent }
  if (!isOther || input['steep-at'] !== undefined) return []
  if (wish.steepAtPercent !== null) return [{ group: 'notes', key: 'code_stronger', values }]
  return abvPercent < recipeAbvPercent - OTHER_PERCENT ? [{ group: 'notes', key: 'code_weaker', values }] : []
}

/** That the spirit is weaker than the recipe's changes what she buys. */
export const isWeaker = ({ key }: Note): boolean => key === 'code_weaker'

/** How long it is to steep, where the recipe tells, and what is usual where that is something else. */
export function daysNotes({ days: { strainFrom, strainBy } }: Batch, wish: PlanWish): readonly Note[] {
  if (strainFrom === null || strainBy === null) return []
  const steep = { fromDays: strainFrom, byDays: strainBy }
  const usual = usualDays(wish)
  const isUsual = steep.fromDays >= usual.fromDays && steep.byDays <= usual.byDays
  return [{ group: 'notes', key: 'code_days', values: { ...steep, usual: isUsual ? null : usual } }]
}

function codeNotes(
  made: RecipePlan,
  batch: Batch,
  { isOther, input }: { readonly isOther: boolean; readonly input: Planned },
): readonly Note[] {
  const { plants } = batch
  const { factor, limit, spiritShare } = made
  const nameless = input.of?.is.nameless
  const dried = plants.flatMap(({ id, isDried }) => (isDried && id !== null ? [id] : []))
  return [
    {
      group: 'notes',
      key: 'code_from',
      values: { factor, by: limit?.by ?? null, id: limitId(made, batch), isSpiritLeft: spiritShare < ALL },
    },
    ...(nameless === undefined
      ? []
      : [{ group: 'notes', key: 'code_only_plant', values: { typed: nameless.typed, id: plants[0]!.id! } } as const]),
    ...steepNote(made, isOther, input),
    ...(dried.length === 0 ? [] : [{ group: 'notes', key: 'code_dried', values: { ids: dried } } as const]),
    ...(input['ready-by'] === undefined ? daysNotes(batch, made.wish) : []),
  ]
}
