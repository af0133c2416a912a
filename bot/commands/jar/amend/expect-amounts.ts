import { DomainError } from '../../../../core/domain-error.ts'
import type { HappeningEntry } from '../../../../core/jar/entry/entry.ts'
import { isJuice } from '../../../../core/quantity/materials.ts'
import { writeSweetener } from '../../../../core/quantity/write/write-quantity.ts'
import { typedCall } from '../../../calls/call.ts'
import { lineOf } from '../../../calls/write-line.ts'
import type { Fixes } from './correction.ts'

/** Nobody said how much. */
const SOME_SUGAR_G = 500

/** Throws `sweetener_planned` where the name of what sweetens stands beside what has gone in, and no other was planned. */
export function expectAmounts(entry: HappeningEntry, { sugar }: Fixes, jar: string): void {
  if (sugar?.is.sweetener == null) return
  const wentIn = 'sweetenings' in entry ? entry.sweetenings.filter(({ material }) => !isJuice(material)) : []
  const massG = wentIn.reduce((sum, each) => sum + each.massG.value, 0)
  if (entry.kind === 'started' && (massG === 0 || sugar.is.amounts.length > 0 || entry.sweetener !== undefined)) return
  const much = massG > 0 ? Math.round(massG) : SOME_SUGAR_G
  const name = writeSweetener(sugar.is.sweetener)
  const example = lineOf(typedCall('jar correct', { jar, sugar: `${much} g ${name}` }))
  throw new DomainError('bad_value', 'sweetener_planned', { typed: name, example })
}
