import { exampleIn } from '../../../core/quantity/write/example-in.ts'
import type { CallRead } from '../../talk/frames/reading.ts'
import { unitsIn } from '../../text/messages/kitchen.ts'
import type { Dispatch } from '../run/call-outcome.ts'
import { failureIn, helpIn } from '../run/in-kitchen.ts'
import { kitchenOfWhoever } from '../run/kitchen-said.ts'
import { examplesIn, textIn } from '../run/offered-in.ts'
import type { Heard } from './heard.ts'

/** What is worked out of no amount: a sentence tells whose measures it is to be in. */
const OF_NO_KITCHEN: ReadonlySet<string> = new Set(['handbook', 'talk', 'botanical'])

/** A call that was read, its wishes as its kitchen types them; what somebody said stays. */
export async function wishedIn(call: CallRead, line: string, dispatch: Dispatch): Promise<CallRead> {
  const texts = Object.values(call.options).join(' ')
  const units = unitsIn(await kitchenOfWhoever(texts, dispatch))
  if (units.volume !== 'us') return call
  const options = Object.entries(call.options).map(([option, text]) => [
    option,
    // A price is of what is sold, as its label says.
    option === 'prices' ? text : textIn(option, text, units, line),
  ])
  return { ...call, options: Object.fromEntries(options) }
}

/** What tells no units of its own is said in those of whoever asked: help, a question about a sentence, what the handbook says. */
export async function inOwnKitchen(said: Heard, line: string, dispatch: Dispatch): Promise<Heard> {
  const { outcome } = said
  if (outcome.ok && 'entries' in outcome) {
    const kitchen = await kitchenOfWhoever('', dispatch)
    return { ...said, outcome: helpIn(outcome, kitchen, dispatch.language) }
  }
  if (outcome.ok && OF_NO_KITCHEN.has(outcome.path) && 'reply' in outcome && outcome.reply.kitchen === 'metric') {
    const kitchen = await kitchenOfWhoever(line, dispatch)
    return { ...said, outcome: { ...outcome, reply: examplesIn({ ...outcome.reply, kitchen }) } }
  }
  if (outcome.ok || outcome.kitchen !== 'metric') return said
  const kitchen = await kitchenOfWhoever(line, dispatch)
  const choices = said.choices.map((each) => exampleIn(each, unitsIn(kitchen), line))
  return { ...said, choices, outcome: failureIn({ ...outcome, kitchen }, line) }
}
