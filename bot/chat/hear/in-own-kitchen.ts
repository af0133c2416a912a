import { exampleIn } from '../../../core/quantity/write/example-in.ts'
import { unitsIn } from '../../text/messages/kitchen.ts'
import type { Dispatch } from '../run/call-outcome.ts'
import { kitchenOfWhoever } from '../run/execute.ts'
import { failureIn, helpIn } from '../run/in-kitchen.ts'
import { examplesIn } from '../run/offered-in.ts'
import type { Heard } from './heard.ts'

/** What tells no units of its own is said in those of whoever asked: help, a question about a sentence, what the handbook says. */
export async function inOwnKitchen(said: Heard, line: string, dispatch: Dispatch): Promise<Heard> {
  const { outcome } = said
  if (outcome.ok && 'entries' in outcome) {
    const kitchen = await kitchenOfWhoever('', dispatch)
    return { ...said, outcome: helpIn(outcome, kitchen, dispatch.language.help.first) }
  }
  if (outcome.ok && outcome.path === 'handbook' && 'reply' in outcome) {
    const kitchen = await kitchenOfWhoever(line, dispatch)
    return { ...said, outcome: { ...outcome, reply: examplesIn({ ...outcome.reply, kitchen }) } }
  }
  if (outcome.ok || outcome.kitchen !== 'metric') return said
  const kitchen = await kitchenOfWhoever(line, dispatch)
  const choices = said.choices.map((each) => exampleIn(each, unitsIn(kitchen), line))
  return { ...said, choices, outcome: failureIn({ ...outcome, kitchen }, line) }
}
