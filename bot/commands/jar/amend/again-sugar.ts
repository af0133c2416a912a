import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { syrupOfJar } from '../../../../core/jar/state/made-batch.ts'
import { USUAL_MATERIAL } from '../../../../core/quantity/materials.ts'
import { exactly } from '../../../../core/quantity/measured/measured.ts'
import type { SugarRead } from '../../../../core/quantity/quantities.ts'
import { writeSweetener } from '../../../../core/quantity/write/write-quantity.ts'
import type { Plan } from '../../../../core/recipe/plan/plan.ts'
import { kitchenSweetness } from '../../../../core/recipe/tool-precision.ts'
import type { Given } from '../../../calls/option.ts'
import type { InputOf } from '../../../calls/signatures.ts'
import { sweetnessGiven } from '../../plan/batch-options.ts'
import { sugarWritten } from '../../plan/written-amounts.ts'

/** What was named, beside what went in before where only a name was, and beside the name where only amounts were. */
export function sugarAgain(before: Given<SugarRead> | undefined, said: Given<SugarRead> | undefined) {
  if (said === undefined) return {}
  const amounts = said.is.amounts.length === 0 ? (before?.is.amounts ?? []) : said.is.amounts
  const sweetener = said.is.sweetener ?? before?.is.sweetener ?? null
  const weighed = amounts.map(({ material, massG }) => ({ material, massG: exactly(massG) }))
  return { sugar: { typed: sugarWritten(weighed, sweetener), is: { amounts, sweetener } } }
}

/** What went into its syrup, where that was something else than planned. */
export function syrupAgain(before: Pick<InputOf<'plan'>, 'sugar' | 'water'>, story: JarState) {
  const { sweetener = USUAL_MATERIAL, filler } = syrupOfJar(story)
  const { sweetener: planned = USUAL_MATERIAL, filler: plannedFiller } = story.started
  const water = filler === undefined ? undefined : { typed: writeSweetener(filler), is: filler }
  return {
    ...(sweetener !== planned && sugarAgain(before.sugar, { typed: '', is: { amounts: [], sweetener } })),
    ...(filler !== plannedFiller && { water }),
  }
}

const weighedG = (sugar: Given<SugarRead> | undefined): number =>
  (sugar?.is.amounts ?? []).reduce((sum, { massG }) => sum + massG, 0)

type Sweet = Pick<InputOf<'plan'>, 'sugar' | 'to-sweetness'>

/** Rounded, and what it has in it already a little above that, g/L. */
const HIGHER_G_PER_L = [0, 5, 10, 15, 20]

/** With more or less sugar than before it becomes as much sweeter or drier than it was to be. */
export function sweetnessAgain(
  before: Sweet['sugar'],
  sugar: Sweet['sugar'],
  trial: (otherwise: Sweet) => Plan | null,
): Pick<Sweet, 'to-sweetness'> {
  const [wasG, isG] = [weighedG(before), weighedG(sugar)]
  const was = wasG > 0 && isG > 0 && wasG !== isG ? trial({ sugar: before }) : null
  if (was === null) return {}
  const rounded = kitchenSweetness((was.targets.sugarGPerL * isG) / wasG)
  const found = HIGHER_G_PER_L.map((more) => ({ 'to-sweetness': sweetnessGiven(rounded + more) })).find(
    (sweetness) => trial({ sugar, ...sweetness }) !== null,
  )
  return found ?? {}
}
