import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { syrupOfJar } from '../../../../core/jar/state/made-batch.ts'
import { USUAL_MATERIAL } from '../../../../core/quantity/materials.ts'
import { exactly } from '../../../../core/quantity/measured/measured.ts'
import type { SugarRead } from '../../../../core/quantity/quantities.ts'
import { writeSweetener } from '../../../../core/quantity/write/write-quantity.ts'
import type { Given } from '../../../calls/option.ts'
import type { InputOf } from '../../../calls/signatures.ts'
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
