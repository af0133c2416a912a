import type { HazardKey } from '../../../core/botanical/evidence/hazards.ts'
import { sugarState } from '../../../core/liquid/solubility.ts'
import { usualDays } from '../../../core/recipe/code/plan-recipe.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import type { PlanWish } from '../../../core/recipe/plan/plan-wish.ts'
import { USUAL } from '../../../core/recipe/plan/reach-targets.ts'
import { saidDays } from '../../../core/recipe/plan/schedule.ts'
import {
  amountBesideUsual,
  doseGPerL,
  isUnusualSpirit,
  NOTED_SUGAR_G,
} from '../../../core/recipe/plan/unusual-amounts.ts'
import { isSyrup } from '../../../core/recipe/solve/syrup.ts'
import { isSweetened } from '../../../core/recipe/sweetening.ts'
import type { Message } from '../../text/words.ts'
import { note } from '../reply/outcome-reply.ts'
import { percentGiven } from './batch-options.ts'
import { caffeineNotes } from './caffeine-notes.ts'
import { farNotes } from './far-notes.ts'
import { isFormTaken, type PlanInput } from './plan-data.ts'
import { planWith } from './plan-with.ts'

type Note = Message<'notes'>

/** Notes that stand where something is so. */
export const when = (isSo: boolean, ...notes: readonly Note[]): readonly Note[] => (isSo ? notes : [])

/** What was taken where nothing was said. */
export function assumedNotes(input: PlanInput, wish: PlanWish, plan: Plan): readonly Note[] {
  const { named } = wish
  const { targets, outcome } = plan
  const [abvPercent, sugarGPerL] = [
    named.abvPercent === undefined && named.own === undefined ? targets.abvPercent : null,
    named.sugarGPerL === undefined && (named.own?.sugarG ?? null) === null ? targets.sugarGPerL : null,
  ]
  // Without sugar it is as strong as it is.
  const isStrengthOther = abvPercent !== null && abvPercent !== USUAL.abvPercent && named.sugarGPerL !== 0
  const nearest = isStrengthOther
    ? 'strength'
    : sugarGPerL === null || sugarGPerL === USUAL.sugarGPerL
      ? null
      : sugarGPerL > USUAL.sugarGPerL
        ? 'dryness'
        : 'sweetness'
  // As the plan tells it, where the usual is out of reach.
  const values = { abvPercent: abvPercent === null ? null : outcome.abvPercent, sugarGPerL, nearest } as const
  const found = input.of.is.plants
  const forms = found.filter(isFormTaken).map(({ botanical }) => ({ id: botanical.id, state: botanical.form.state }))
  const ids = found.filter(({ corrected }) => corrected).map(({ botanical }) => botanical.id)
  return [
    ...ownSyrupNotes(wish, plan),
    ...when(abvPercent !== null || sugarGPerL !== null, { group: 'notes', key: 'plan_assumed', values }),
    ...when(ids.length > 0, { group: 'notes', key: 'plan_corrected', values: { ids } }),
    ...when(forms.length > 0, { group: 'notes', key: 'plan_form_taken', values: { forms } }),
    ...saidDaysNotes(wish),
  ]
}

/** What a recipe's own water and sugar come to, and what of them a wish stands for. */
function ownSyrupNotes({ named }: PlanWish, plan: Plan): readonly Note[] {
  const { own } = named
  if (own === undefined) return []
  const sugar = own.sugarG === null ? 'open' : named.sugarGPerL === undefined ? 'own' : 'wished'
  const water = named.abvPercent === undefined ? 'own' : 'wished'
  const { sweetener, filler, targets, outcome } = plan
  const { abvPercent } = outcome
  const values = { water, sugar, sweetener, filler, abvPercent, sugarGPerL: targets.sugarGPerL } as const
  return [{ group: 'notes', key: 'plan_own_syrup', values }]
}

/** What would go in later, had its maker not put all in at once. */
export function allInNotes({ plants, schedule }: Plan): readonly Note[] {
  const early = plants.filter((_, at) => schedule?.wouldWait[at] === true).map(({ botanical }) => botanical)
  const values = {
    ids: early.map(({ id }) => id),
    fromDays: Math.min(...early.map(({ timesDays }) => timesDays.usualMin)),
    byDays: Math.max(...early.map(({ timesDays }) => timesDays.usualMax)),
  }
  return when(early.length > 0, { group: 'notes', key: 'plan_all_in', values })
}

/** What is usual for these plants, where its maker said another number of days. */
function saidDaysNotes(wish: PlanWish): readonly Note[] {
  const said = saidDays(wish.steepFor)
  if (said === undefined || wish.unknown.length > 0) return []
  const { fromDays, byDays } = said.steep
  const usual = usualDays(wish)
  const isUsual = fromDays >= usual.fromDays && byDays <= usual.byDays
  return when(!isUsual, { group: 'notes', key: 'plan_days_said', values: usual })
}

/** How the amounts stand to what is usual, and how they were come by. */
export function doseNotes(input: PlanInput, planned: Plan): readonly Note[] {
  const { plants, ceilings, steeping } = planned
  const dosed = plants.map((plant) => ({
    ...plant,
    gPerL: doseGPerL(plant, planned),
    beside: amountBesideUsual(plant, planned),
  }))
  const capped = dosed.filter((each) => each.capped).map(({ botanical }) => botanical.id)
  const typical = plants
    .filter((_, index) => input.of.is.plants[index]?.massG === null)
    .map(({ botanical }) => botanical.id)
  const isDiluted = steeping.waterG.value > 0
  return [
    ...when(
      // The fruit of a recipe was weighed.
      input.of.is.plants.some(({ ofZest, typed }) => ofZest && typed.amount !== null),
      note('plan_zest'),
    ),
    ...when(
      input.of.is.plants.some(({ ofZest, count }) => count !== null && !ofZest),
      note('plan_pieces'),
    ),
    ...when(typical.length > 0, { group: 'notes', key: 'plan_typical', values: { ids: typical } }),
    ...when(capped.length > 0, { group: 'notes', key: 'plan_capped', values: { ids: capped } }),
    ...ceilings.warned.map(({ id, gPerLSpirit, limitGPerL }): Note => {
      return { group: 'notes', key: 'plan_above_wise', values: { id, gPerL: gPerLSpirit, limitGPerL } }
    }),
    ...caffeineNotes(planned),
    ...farNotes(planned),
    ...dosed.flatMap(({ botanical: { id, dose }, gPerL, beside }): readonly Note[] => [
      ...when(beside === 'more', {
        group: 'notes',
        key: 'plan_more_than_usual',
        values: { id, gPerL, limitGPerL: dose.maxGPerL },
      }),
      ...when(beside === 'less', {
        group: 'notes',
        key: 'plan_less_than_usual',
        values: { id, gPerL, limitGPerL: dose.minGPerL },
      }),
    ]),
    ...(isDiluted ? [] : spiritNotes(input, planned)),
  ]
}

/** That another strength suits these plants better, once for all that it suits. */
function spiritNotes(input: PlanInput, { plants, spiritAbvPercent: { value: percent } }: Plan): readonly Note[] {
  const unsuited = plants
    .map(({ botanical }) => botanical)
    .filter(({ spiritPercent }) => isUnusualSpirit(percent, spiritPercent))
  const byRange = new Map<string, typeof unsuited>()
  for (const each of unsuited) {
    const range = `${each.spiritPercent.min} ${each.spiritPercent.max}`
    byRange.set(range, [...(byRange.get(range) ?? []), each])
  }
  return [...byRange.values()].map((botanicals): Note => {
    const { min, max } = botanicals[0]!.spiritPercent
    const diluted = percent > max ? planWith(input, { 'steep-at': percentGiven(max) }) : null
    const ids = botanicals.map(({ id }) => id)
    return { group: 'notes', key: 'plan_spirit_usual', values: { ids, lowPercent: min, highPercent: max, diluted } }
  })
}

/** How the sugar goes in where no syrup can be made of it: as it is said once it is strained. */
function sweetenNotes({ sugarG, waterG, dissolvesG }: Plan): readonly Note[] {
  if (sugarG.value === 0) return []
  // The day's own line says how sugar alone goes in.
  return waterG.value === 0 || dissolvesG === null
    ? []
    : [{ group: 'notes', key: 'plan_no_syrup', values: { dissolvesG } }]
}

/** What belongs to these plants, to any jar, and to the law. */
export function jarNotes(plan: Plan): readonly Note[] {
  const { plants, steep, steeping, waterG, sugarG } = plan
  const botanicals = plants.map(({ botanical }) => botanical)
  const has = (hazard: HazardKey) => botanicals.some(({ hazards }) => hazards.includes(hazard))
  const isZest = botanicals.some(({ zestGPerFruit }) => zestGPerFruit !== null)
  const hasSyrup = isSyrup(plan) || sugarG.value === 0
  const rinse = waterG.value === 0 ? null : hasSyrup ? 'syrup' : 'water'
  const isSlow = isSweetened(steeping.sweetenings) && sugarState(steep.jar) !== 'dissolved'
  return [
    ...when(isSlow, note('plan_sugar_slow')),
    ...when(steep.plantSugarG.value >= NOTED_SUGAR_G, {
      group: 'notes',
      key: 'plan_fruit_sugar',
      values: { sugarG: steep.plantSugarG },
    }),
    ...sweetenNotes(plan),
    note(isSweetened(steeping.sweetenings) ? 'plan_adjust' : 'plan_measure'),
    { group: 'notes', key: 'plan_care', values: { bulky: botanicals.some(({ bulky }) => bulky) } },
    ...when(
      botanicals.some(({ id }) => id === 'coffee_ground'),
      note('plan_crack'),
    ),
    ...when(has('pectin'), note('plan_pectin')),
    ...when(isZest, note('plan_citrus_cloud')),
    ...when(has('louche_anethole'), note('plan_anethole_cloud')),
    ...when(has('chlorophyll'), note('plan_green')),
    { group: 'notes', key: 'plan_spent', values: { keptBackMl: steep.keptBackMl, rinse } },
    ...when(waterG.value > 0, note('plan_water')),
    note('plan_law'),
  ]
}
