import { hazards, type Severity } from '../../../core/botanical/evidence/hazards.ts'
import { liquidFrom } from '../../../core/liquid/liquid.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import type { PlanWish } from '../../../core/recipe/plan/plan-wish.ts'
import { withoutTrace } from '../../../core/recipe/plan/without-trace.ts'
import { isSyrup } from '../../../core/recipe/solve/syrup.ts'
import { joinSweetenings } from '../../../core/recipe/sweetening.ts'
import type { Reply } from '../../chat/reply.ts'
import type { BatchSaid, PlantLimit } from '../../text/messages/plan.ts'
import type { Message } from '../../text/words.ts'
import { assumptionNotes, kitchenOf } from '../options/input-units.ts'
import { caution, outcomeCautions, withoutKeeping } from '../reply/outcome-reply.ts'
import { sweetenerNotes } from '../reply/sweetener-notes.ts'
import type { PlanInput } from './plan-data.ts'
import { planData, plantsSaid } from './plan-data.ts'
import { dayNotes } from './plan-day-notes.ts'
import { hazardCautions } from './plan-hazards.ts'
import { assumedNotes, doseNotes, jarNotes } from './plan-notes.ts'
import { addedLater, planRows } from './plan-rows.ts'
import { unknownCautions, unknownNotes } from './plan-unknown.ts'

const MOST_CAUTIONS = 3
/** A strength of 40 % vol is one, whatever its last digit. */
const ROUNDING = 1e-6

const RANK: { readonly [Key in Severity]: number } = { critical: 0, high: 1, medium: 3, low: 4, quality: 5 }
/** The caution about flame stands after what may kill or set off an allergy, before the rest. */
const OTHERS_RANK = 2

const strongestPercent = ({ steeping }: Plan): number =>
  Math.min(100, Math.max(...steeping.spirits.map(({ abvPercent }) => abvPercent.value)) + ROUNDING)

/** That the jar, or what comes of it, may not keep: of the drink by what is wished for, which is exact. */
function keepingCautions({ steep, keeping, targets }: Plan): readonly Message<'cautions'>[] {
  const { jarAbvPercent: abvPercent, jarSugarGPerL: sugarGPerL } = steep
  const wished = { abvPercent: exactly(targets.abvPercent), sugarGPerL: exactly(targets.sugarGPerL) }
  return [
    ...(steep.keeping === 'keeps'
      ? []
      : [{ group: 'cautions', key: 'plan_jar_undecided', values: { abvPercent, sugarGPerL } } as const]),
    ...(keeping === 'keeps' ? [] : [{ group: 'cautions', key: 'keeps_undecided', values: wished } as const]),
  ]
}

const hasHoney = ({ steeping, sweetener, sugarG }: Plan): boolean =>
  (sweetener === 'honey' && sugarG.value > 0) || steeping.sweetenings.some(({ material }) => material === 'honey')

/** Worst first, the plants' own among those of strong spirit; the same hazard of several plants once. */
export function planCautions(plan: Plan, freezerC: number | null): readonly Message<'cautions'>[] {
  const botanicals = plan.plants.map(({ botanical }) => botanical)
  const spirit = liquidFrom({ volumeMl: 1, abvPercent: strongestPercent(plan), sugarGPerL: 0 })
  const others = outcomeCautions(plan.outcome, plan.sugarStays, [spirit], { freezerC })
  const ranked = [
    ...hazardCautions(botanicals).map((message) => ({
      rank: RANK[hazards[message.values.hazard].severity],
      message,
    })),
    ...(hasHoney(plan) ? [{ rank: RANK.medium, message: caution('honey_infant') }] : []),
    ...keepingCautions(plan).map((message) => ({ rank: RANK.high, message })),
    ...withoutKeeping(others).map((message) => ({ rank: OTHERS_RANK, message })),
  ]
  const worst = ranked.toSorted((one, other) => one.rank - other.rank).map(({ message }) => message)
  return [...unknownCautions(plan), ...worst].slice(0, MOST_CAUTIONS)
}

function headlineOf(plan: Plan, batch: BatchSaid): Reply['headline'] {
  const { schedule, told, unknown } = plan
  if (schedule === null) {
    const values = { ...batch, names: unknown.map(({ name }) => name), strainOn: told.strainOn }
    return { group: 'headlines', key: 'plan_unknown', values }
  }
  const { strainFrom, strainBy, ready, isHours } = schedule
  return {
    group: 'headlines',
    key: 'plan',
    values: { ...batch, later: addedLater(plan, schedule), strainFrom, strainBy, ready, isHours },
  }
}

/** The whole batch: what to buy, what goes in, the days, what comes out. */
export function planReply(input: PlanInput, wish: PlanWish, planned: Plan, limit: PlantLimit, freezerC: number): Reply {
  const plan = withoutTrace(planned)
  const { sweetener, sugarG, steeping, outcome } = plan
  const { volumeMl, abvPercent } = outcome
  const plants = plantsSaid(input, plan)
  const sweetenings = joinSweetenings([...steeping.sweetenings, { material: sweetener, massG: sugarG }])
  const batch = { spirits: steeping.spirits, plants, sweetenings, volumeMl, bottles: plan.filled.bottles }
  return {
    headline: headlineOf(plan, batch),
    table: planRows(wish, plan, plants, freezerC),
    sure: [
      {
        group: 'sure',
        key: 'plan_expected',
        values: { abvPercent, volumeMl, isSyrup: isSyrup(plan) || sugarG.value === 0 },
      },
    ],
    notes: [
      ...unknownNotes(plan),
      ...assumptionNotes(input),
      ...assumedNotes(input, wish, plan),
      ...dayNotes(plan, input, limit),
      ...doseNotes(input, plan),
      ...sweetenerNotes(
        sweetenings.flatMap(({ material, massG }) => (massG.value > 0 ? material : [])),
        sugarG.value > 0 ? sweetener : null,
      ),
      ...jarNotes(plan),
    ],
    cautions: planCautions(plan, freezerC),
    actions: [],
    data: planData(planned, plants),
    kitchen: kitchenOf(input),
  }
}
