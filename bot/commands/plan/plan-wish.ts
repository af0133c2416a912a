import type { z } from 'zod'
import { abvPercentAt20 } from '../../../core/liquid/measure/hydrometer.ts'
import { exactly, type Measured } from '../../../core/quantity/measured/measured.ts'
import { abvPercent } from '../../../core/quantity/measured/precision.ts'
import type { CalendarDay, Strength } from '../../../core/quantity/quantities.ts'
import { heldMl } from '../../../core/recipe/plan/fill-bottles.ts'
import { type PlantsRead, plannedPlant } from '../../../core/recipe/plan/find-plants.ts'
import type { Bottles } from '../../../core/recipe/plan/parse-bottles.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import type { PlanWish } from '../../../core/recipe/plan/plan-wish.ts'
import { answeredFor } from '../../../core/recipe/plan/unknown-plant.ts'
import { invocationOf } from '../../calls/call.ts'
import { asOptionProblem, type Given } from '../../calls/option.ts'
import type { planShape } from '../../calls/signatures.ts'
import { lineOf } from '../../calls/write-line.ts'
import { ChatError } from '../../chat/chat-error.ts'
import type { Kitchen } from '../../text/messages/kitchen.ts'
import type { PlantLimit } from '../../text/messages/plan.ts'
import type { Message } from '../../text/words.ts'
import { spiritsCalled } from '../options/input-to-portion.ts'
import { missing } from '../options/missing-option.ts'
import { usualBottleIn } from '../options/usual-bottles.ts'
import { planWith } from './plan-with.ts'
import { syrupSaid } from './syrup-said.ts'

export type Planned = z.output<z.ZodObject<typeof planShape>>

/** With the plants, named or of a recipe. */
export type WithPlants = Planned & { readonly of: Given<PlantsRead> }

export interface Setting {
  /** The command that asks, for what it says of a missing option. */
  readonly command: string
  readonly today: CalendarDay
  readonly country: string | null
  readonly start: CalendarDay
  /** In whose measures it is told; left out: metric. */
  readonly kitchen?: Kitchen | undefined
  /** Only to see whether it can be: what would do instead is not worked out. */
  readonly isTrial?: boolean | undefined
  /** It stands in the jar already. */
  readonly isPoured?: boolean | undefined
}

export const spiritStrength = (strength: Strength): Measured => {
  const read = abvPercent(strength, 'label')
  return strength.atC === null ? read : { ...read, value: abvPercentAt20(read.value, strength.atC) }
}

/** The bottles to fill; as many of the usual ones as it fills where none were said. */
export const bottlesOf = (
  { bottles }: Pick<Planned, 'bottles'>,
  { kitchen }: Pick<Setting, 'kitchen'>,
): readonly Bottles[] => bottles?.is ?? [{ count: null, volumeMl: usualBottleIn(kitchen), size: null }]

export const readyByOf = (
  { 'ready-by': readyBy }: Planned,
  setting: Pick<Setting, 'today' | 'country'>,
): CalendarDay | null => (readyBy === undefined ? null : asOptionProblem('ready-by', () => readyBy.is.read(setting)))

/** What is there already, with how much of a spirit, or for how many bottles. */
function howMuch(input: WithPlants): readonly [string, string] {
  const { options } = invocationOf(planWith(input, {}))
  const { of = '10 lemons', strength = '95%', ...others } = options
  const lineWith = (told: Readonly<Record<string, string>>): string =>
    lineOf({ path: 'plan', options: { of, ...told, strength, ...others } })
  return [lineWith({ spirit: '1 l' }), lineWith({ bottles: '4 x 500 ml' })]
}

/** What is wished for, in core's words. */
export function planWish(input: WithPlants, setting: Setting): PlanWish {
  const { command, today, country, start, isPoured } = setting
  const bottles = bottlesOf(input, setting)
  const toFind = input.spirit === undefined
  if (toFind && heldMl(bottles) === null && command !== 'plan') throw missing(command, 'spirit', 'spirit:1 l 95%')
  if (toFind && heldMl(bottles) === null) {
    throw new ChatError('missing_option', 'spirit_or_bottles', { examples: howMuch(input) }, { option: 'bottles' })
  }
  if (toFind && input.strength === undefined) throw missing(command, 'strength', 'strength:95%')
  const { own, ...syrup } = syrupSaid(input)
  if (toFind && own !== undefined) throw missing(command, 'spirit', 'spirit:1 l 95%')
  return {
    plants: input.of.is.plants.map(plannedPlant),
    unknown: input.of.is.unknown.map(answeredFor),
    steepFor: input.days?.is ?? null,
    spirits: input.spirit === undefined ? null : spiritsCalled(input.spirit.is, input.strength),
    spiritAbvPercent: input.strength === undefined ? exactly(0) : spiritStrength(input.strength.is),
    steepAtPercent: input['steep-at']?.is.abvPercent ?? null,
    ...syrup,
    named: { abvPercent: input['to-strength']?.is.abvPercent, sugarGPerL: input['to-sweetness']?.is.sugarGPerL, own },
    bottles,
    areBottlesNamed: input.bottles !== undefined,
    start,
    readyBy: readyByOf(input, { today, country }),
    isPoured,
    areAllIn: input['all-in']?.is,
  }
}

/** What is planned, and what has to be said of how it was come by. */
export interface AskedPlan<Input> {
  /** With the plants that are planned, named or of the recipe. */
  readonly input: Input & WithPlants
  readonly wish: PlanWish
  readonly planned: Plan
  readonly notes: readonly Message<'notes'>[]
  readonly limit: PlantLimit
}
