import { hazards, type Severity } from '../../../core/botanical/evidence/hazards.ts'
import { type Liquid, liquidFrom } from '../../../core/liquid/liquid.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import type { PlanWish } from '../../../core/recipe/plan/plan-wish.ts'
import { withoutTrace } from '../../../core/recipe/solve/without-trace.ts'
import { joinSweetenings } from '../../../core/recipe/sweetening.ts'
import type { Have } from '../../../core/shopping/have.ts'
import { inMore } from '../../chat/depth.ts'
import type { Reply } from '../../chat/reply.ts'
import type { PlantLimit } from '../../text/messages/plan.ts'
import type { Message } from '../../text/words.ts'
import { assumptionNotes, kitchenOf } from '../options/input-units.ts'
import { byDepth } from '../reply/first-screen.ts'
import { graveCautions } from '../reply/grave-cautions.ts'
import { lowAcidCautions } from '../reply/low-acid-cautions.ts'
import { caution, flashNotes, notNeatCautions, outcomeCautions, withoutKeeping } from '../reply/outcome-reply.ts'
import { sweetenerNotes } from '../reply/sweetener-notes.ts'
import { planAtHand } from './plan-at-hand.ts'
import type { PlanInput } from './plan-data.ts'
import { planData, plantsSaid, spiritsSaid, sweeteningsSaid } from './plan-data.ts'
import { dayNotes, shortOfBottles } from './plan-day-notes.ts'
import { planDays } from './plan-days.ts'
import { headed, saidOnce } from './plan-depths.ts'
import { hazardCautions } from './plan-hazards.ts'
import { allInNotes, assumedNotes, doseNotes, jarNotes } from './plan-notes.ts'
import { planRows } from './plan-rows.ts'
import { unknownCautions, unknownNotes } from './plan-unknown.ts'
import { planWith } from './plan-with.ts'

interface Asked {
  readonly input: PlanInput
  readonly wish: PlanWish
  readonly planned: Plan
  readonly limit: PlantLimit
}

interface Kitchens {
  /** Of the person's freezer, °C. */
  readonly freezerC: number
  /** False where the person has chosen units for everything. */
  readonly isAsTyped: boolean
  /** Whether it is grown south of the equator. */
  readonly isSouth: boolean
  /** What is at hand already; left out: nobody said. */
  readonly have?: readonly Have[] | undefined
}

/** A strength of 40 % vol is one, whatever its last digit. */
const ROUNDING = 1e-6

const RANK: { readonly [Key in Severity]: number } = { critical: 0, high: 1, medium: 3, low: 4, quality: 5 }
/** The caution about flame stands after what may kill or set off an allergy, before the rest. */
const OTHERS_RANK = 2

const strongestPercent = ({ steeping }: Plan): number =>
  Math.min(100, Math.max(...steeping.spirits.map(({ abvPercent }) => abvPercent.value)) + ROUNDING)

const strongestOf = (plan: Plan): Liquid =>
  liquidFrom({ volumeMl: 1, abvPercent: strongestPercent(plan), sugarGPerL: 0 })

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
  const others = outcomeCautions(plan.outcome, plan.sugarStays, [strongestOf(plan)], { freezerC })
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
  return [...unknownCautions(plan), ...notNeatCautions(plan.outcome), ...lowAcidCautions(plan), ...worst]
}

/** Notes that change what she does before she buys. */
const FIRST: ReadonlySet<string> = new Set([
  'plan_own_syrup',
  'plan_assumed',
  'plan_all_in',
  'plan_corrected',
  'plan_far_off',
  'plan_above_wise',
  'plan_hurried_rest',
  'plan_hurried_steep',
  'plan_latest_start',
  'plan_only_in_season',
  'plan_unknown_yours',
  'plan_unknown_days',
])

/** A stronger spirit for all that goes in is bought, a strong one is diluted. */
const wantsStronger = (note: Message<'notes'>, { plants }: Plan): boolean =>
  note.key === 'plan_spirit_usual' && note.values.diluted === null && note.values.ids.length === plants.length

/** That the jar, or what comes of it, may not keep, and what a food can do of which little is known. */
const GRAVE: ReadonlySet<string> = new Set([
  'plan_grave',
  'plan_jar_undecided',
  'keeps_undecided',
  'can_ferment',
  'low_acid_weak',
  'not_neat',
  'plan_unknown',
  'honey_infant',
])

/** The whole batch: what to buy, what to do on which day; one question deeper the numbers and the reasons. */
export function planReply(
  { input, wish, planned, limit }: Asked,
  { freezerC, isAsTyped, isSouth, have = [] }: Kitchens,
): Reply {
  const plan = withoutTrace(planned)
  const { sweetener, filler, waterG, sugarG, steeping, outcome, filled, told, schedule } = plan
  const { volumeMl, abvPercent } = outcome
  const plants = plantsSaid(input, plan, isAsTyped)
  const spirits = isAsTyped ? spiritsSaid(input, steeping.spirits) : steeping.spirits
  const sweetenings = joinSweetenings([
    ...steeping.sweetenings,
    { material: sweetener, massG: sugarG },
    ...(filler === null ? [] : [{ material: filler, massG: waterG }]),
  ])
  const inTyped = (each: typeof sweetenings) => (isAsTyped ? sweeteningsSaid(input, each) : each)
  const batch = { spirits, plants, sweetenings: inTyped(sweetenings) }
  const cautions = planCautions(plan, freezerC).filter(({ key }) => key !== 'plan_unknown')
  const grave = graveCautions(
    plan.plants.map(({ botanical }) => botanical),
    cautions.some(({ key }) => key === 'flame'),
  )
  const isGrave = ({ key }: Message<'cautions'>): boolean => GRAVE.has(key) || (key === 'flame' && grave.length === 0)
  const makes = {
    volumeMl,
    abvPercent,
    bottles: filled.bottles,
    leftoverMl: { value: filled.leftoverMl, plusMinus: volumeMl.plusMinus },
    start: told.start,
    ready: schedule?.ready ?? null,
  }
  const bought: Message<'headlines'> = {
    group: 'headlines',
    key: 'plan',
    values: { ...batch, atHand: have.length === 0 ? null : planAtHand(batch, plan, have) },
  }
  const short = shortOfBottles(plan, input, limit)
  const [headline = bought, ...under] = [
    ...(short === null ? [] : [short.headline]),
    bought,
    { group: 'headlines', key: 'plan_makes', values: makes } as const,
  ]
  return {
    headline,
    under,
    table: [
      ...planDays(plan, plants, { freezerC, sweetenings: inTyped(steeping.sweetenings) }),
      ...inMore(planRows(plan, freezerC)),
    ],
    sure: [{ group: 'sure', key: 'plan_expected', values: { abvPercent, volumeMl } }],
    notes: headed(
      byDepth(
        [
          ...unknownNotes(plan, (days) => planWith(input, { days })),
          ...assumptionNotes(input),
          ...assumedNotes(input, wish, plan),
          ...allInNotes(plan),
          ...dayNotes(plan, isSouth),
          ...doseNotes(input, plan),
          ...sweetenerNotes(
            sweetenings.flatMap(({ material, massG }) => (massG.value > 0 ? material : [])),
            sugarG.value > 0 ? sweetener : null,
          ),
          ...flashNotes([strongestOf(plan)]),
          ...jarNotes(plan),
        ],
        (note: Message<'notes'>) => FIRST.has(note.key) || wantsStronger(note, plan),
      ),
    ),
    cautions: saidOnce(byDepth([...unknownCautions(plan), ...grave, ...cautions], isGrave)),
    actions: short?.actions ?? [],
    data: planData(planned, plants),
    kitchen: kitchenOf(input),
  }
}
