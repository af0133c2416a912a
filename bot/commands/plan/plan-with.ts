import { type Call, type CallValues, call } from '../../calls/call.ts'
import { planShape } from '../../calls/signatures.ts'

/** The same batch as a plan with some of it told otherwise; of what was typed, what a plan takes. */
export function planWith(input: object, changed: CallValues<'plan'>): Call {
  const own = Object.entries(input).filter(([name, given]) => Object.hasOwn(planShape, name) && given !== undefined)
  return call('plan', { ...Object.fromEntries(own), ...changed })
}
