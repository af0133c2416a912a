import { exampleIn } from '../../../core/quantity/write/example-in.ts'
import { type Call, callOfTexts } from '../../calls/call.ts'
import { type MixedKitchen, unitsIn } from '../../text/messages/kitchen.ts'
import type { Action, Reply } from '../reply.ts'

/** What is wished for in a unit that a kitchen has of its own. */
const SWEETNESSES: readonly string[] = ['sweetness', 'to-sweetness']
const STRENGTHS: readonly string[] = ['strength', 'to-strength']

const PERCENT = /^(\d+(?:\.\d+)?)%$/

const squeezed = (text: string): string => text.replaceAll(/\s/g, '')

/** The text of an option as its kitchen types it; what was `typed` stays. */
export function textIn(option: string, text: string, units: MixedKitchen, typed: string): string {
  if (SWEETNESSES.includes(option)) return units.sweetness === 'metric' ? text : exampleIn(text, units, typed)
  if (option === 'prices') return exampleIn(text, units, typed)
  if (!STRENGTHS.includes(option) || units.strength !== 'proof' || squeezed(typed).includes(squeezed(text))) return text
  return text.replace(PERCENT, (_, percent: string) => `${Math.round(2 * Number(percent))} proof`)
}

function callIn(call: Call, of: (option: string, text: string) => string): Call {
  const own = Object.entries(call.values).map(([option, { typed }]) => [option, typed] as const)
  const told = own.map(([option, text]) => [option, of(option, text)] as const)
  const changed = told.filter(([, text], at) => text !== own[at]![1])
  if (changed.length === 0) return call
  const read = callOfTexts(call.command, changed)
  return read === null ? call : { ...call, values: { ...call.values, ...read.values } }
}

/** The same where every line is an example of ours. */
export const examplesIn = (reply: Reply): Reply => {
  const units = unitsIn(reply.kitchen)
  const actions = reply.actions.map((each) => ({
    ...each,
    call: callIn(each.call, (_, text) => exampleIn(text, units)),
  }))
  return { ...reply, actions }
}

/** A reply whose lines wish for strengths and sweetnesses as its kitchen types them; an example of ours is in its amounts. */
export function offeredIn(reply: Reply, typed: string): Reply {
  const units = unitsIn(reply.kitchen)
  if (units.volume !== 'us') return reply
  const inUnits = (action: Action): Action => ({
    ...action,
    call: callIn(action.call, (option, text) =>
      action.isExample === true ? exampleIn(text, units, typed) : textIn(option, text, units, typed),
    ),
  })
  return { ...reply, actions: reply.actions.map(inUnits) }
}
