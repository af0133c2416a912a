import { ingredientsOfWhole } from '../../../../core/jar/state/batch-facts.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import type { Plan } from '../../../../core/recipe/plan/plan.ts'
import { callOfTexts } from '../../../calls/call.ts'
import { type InputOf, signatures } from '../../../calls/signatures.ts'
import { withUsualBottles } from '../../options/usual-bottles.ts'
import { bottlesGiven } from '../../plan/batch-options.ts'
import { trialOf } from '../../plan/plan-actions.ts'
import type { Setting } from '../../plan/plan-wish.ts'

/** Of the day on which it was started, or of another jar's code. */
const LEFT_OUT: ReadonlySet<string> = new Set(['name', 'when', 'start', 'ready-by'])

/** A millionth more or less is the last bits of a sum. */
const isSame = (one: number, other: number): boolean => Math.abs(one - other) <= 1e-6 * Math.max(one, other)

/** Whether a plan puts in what went into the jar. */
function isAsWent({ plants, unknown, steeping }: Plan, story: JarState): boolean {
  const went = ingredientsOfWhole(story)
  const planned = [
    ...plants.map(({ botanical: { id }, massG }) => ({ id, name: '', massG })),
    ...unknown.map(({ name, massG }) => ({ id: null, name, massG })),
  ]
  return (
    planned.length === went.plants.length &&
    steeping.spirits.length === went.spirits.length &&
    steeping.sweetenings.length === went.sweetenings.length &&
    planned.every(({ id, name, massG }) =>
      went.plants.some(
        (plant) => plant.id === id && (id !== null || plant.name === name) && isSame(plant.massG.value, massG.value),
      ),
    ) &&
    steeping.spirits.every(
      ({ amount, abvPercent }, at) =>
        isSame(amount.value, went.spirits[at]!.amount.value) &&
        isSame(abvPercent.value, went.spirits[at]!.abvPercent.value),
    ) &&
    steeping.sweetenings.every(({ massG }, at) => isSame(massG.value, went.sweetenings[at]!.massG.value)) &&
    isSame(steeping.waterG.value + 1, went.waterG.value + 1)
  )
}

/** What its maker typed when it was started; null where that is not, or not any more, what went in. */
export function typedAgain(story: JarState, setting: Setting): InputOf<'plan'> | null {
  const { typed, origin } = story.started
  if (origin !== null) return null
  const options = typed.filter(([option]) => !LEFT_OUT.has(option) && option in signatures.plan.shape)
  const values = callOfTexts('plan', options)?.values as InputOf<'plan'> | undefined
  if (values?.of === undefined) return null
  const fits = (sized: InputOf<'plan'>): boolean => {
    const planned = trialOf(sized, setting)
    return planned !== null && isAsWent(planned, story)
  }
  if (fits(values)) return values
  // Bottles whose size nobody said were those of a kitchen that pours in cups.
  const { bottles } = withUsualBottles(values, 'us')
  const inUs = { ...values, ...(bottles !== undefined && { bottles: bottlesGiven(bottles.is) }) }
  return bottles !== values.bottles && fits(inUs) ? inUs : null
}
