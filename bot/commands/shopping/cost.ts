import { askedPrice } from '../../../core/cost/asked-price.ts'
import { costOfUsed } from '../../../core/cost/cost.ts'
import { pricesRead, withPrices } from '../../../core/cost/keep-prices.ts'
import type { PriceTyped } from '../../../core/cost/price.ts'
import { parsePrices } from '../../../core/cost/read-price.ts'
import { usedInJar, usedInPlan } from '../../../core/cost/used.ts'
import { isFinished } from '../../../core/jar/tasks/jar-view.ts'
import type { Settings } from '../../../store/person.ts'
import { call } from '../../calls/call.ts'
import { asOptionProblem } from '../../calls/option.ts'
import { type InputOf, signature } from '../../calls/signatures.ts'
import { ChatError } from '../../chat/chat-error.ts'
import { type Context, defineCommand } from '../../chat/command.ts'
import type { Action, Reply } from '../../chat/reply.ts'
import { jarNamed } from '../jar/known/jar-named.ts'
import { jarRef } from '../jar/known/jar-ref.ts'
import { heldFirst } from '../jar/known/told-trouble.ts'
import { viewOf } from '../jar/known/view-of.ts'
import { changeSettings } from '../person/change-settings.ts'
import { bottlesOf } from '../plan/plan-wish.ts'
import { type Costed, costReply, pricesReply } from './cost-reply.ts'
import { planNamed, planOfCode } from './plan-of-code.ts'

type Input = InputOf<'cost'>

/** The prices kept, with those that were given just now. */
async function pricesKept({ prices }: Input, context: Context): Promise<NonNullable<Settings['prices']>> {
  if (prices === undefined) return (await context.store.read(context.userId)).settings.prices ?? []
  const { settings } = await changeSettings(context, ({ prices: kept = [] }) => ({
    prices: asOptionProblem('prices', () => withPrices(kept, prices.is)),
  }))
  return settings.prices ?? []
}

/** What is asked about: a jar, or a plan by its code; null where neither is. */
async function costedIn(input: Input, context: Context): Promise<Costed | null> {
  const { jar, plan, bottles } = input
  if (jar !== undefined && plan !== undefined) {
    const values = { command: 'cost', options: ['jar', 'plan'] }
    throw new ChatError('too_many_options', 'one_at_a_time', values, { command: 'cost', option: 'plan' })
  }
  if (jar !== undefined) {
    const view = await jarNamed(jar.is, context)
    const { name } = view.story
    const asked = (prices: readonly PriceTyped[]) => call('cost', { jar: jarRef(view, context), prices })
    return { batch: { plantId: null, name }, used: usedInJar(view.story), story: view.story, asked }
  }
  if (plan === undefined) return null
  const planned = planOfCode(plan.is, 'plan', context)
  const asked = (prices: readonly PriceTyped[]) => call('cost', { plan, bottles, prices })
  return { batch: planNamed(planned), used: usedInPlan(planned, bottlesOf(input, context)), story: null, asked }
}

/** Jars that a cost is offered of. */
const MOST_OFFERED = 3

async function jarActions(context: Context): Promise<readonly Action[]> {
  const { jars } = await context.store.read(context.userId)
  return jars
    .flatMap((jar) => viewOf(jar, context) ?? [])
    .filter((view) => !isFinished(view))
    .slice(0, MOST_OFFERED)
    .map((view) => ({
      label: { group: 'actions', key: 'cost_of', values: { name: view.story.name } },
      call: call('cost', { jar: jarRef(view, context) }),
    }))
}

/** A line to fill in. */
const ASKED = 'lemons ? per kg + sugar ? per kg + spirit 95% ? per l + bottles ? each'

const askAction = (): Action => ({
  label: { group: 'actions', key: 'cost_prices', values: undefined },
  call: call('cost', { prices: { typed: ASKED, is: parsePrices(ASKED) } }),
  isChangedFirst: true,
})

export const costCommand = defineCommand({
  ...signature('cost'),
  topic: 'planning',
  async run(input, context): Promise<Reply> {
    const costed = await costedIn(input, context)
    const kept = await pricesKept(input, context)
    const prices = pricesRead(kept)
    if (costed === null) {
      const actions = kept.length === 0 ? [askAction()] : await jarActions(context)
      return pricesReply(input, { kept, prices, actions })
    }
    const cost = costOfUsed(costed.used, prices)
    const asked = cost.missing.flatMap((item) => askedPrice(item) ?? [])
    const reply = costReply(input, costed, { cost, asked, kept, prices })
    return costed.story === null ? reply : heldFirst(reply, [costed.story])
  },
})
