import { findJar } from '../../../core/jar/state/find-jar.ts'
import { type JarState, jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { runningJars } from '../../../core/jar/state/running-jars.ts'
import { needsOfJar } from '../../../core/shopping/needs-of-jar.ts'
import { needsOfPlan } from '../../../core/shopping/needs-of-plan.ts'
import { shoppingList } from '../../../core/shopping/shopping-list.ts'
import { type Sold, soldIn } from '../../../core/shopping/sold.ts'
import { call } from '../../calls/call.ts'
import { asOptionProblem } from '../../calls/option.ts'
import type { SharedRecipe } from '../../calls/share-ref.ts'
import { type InputOf, signature } from '../../calls/signatures.ts'
import { type Context, defineCommand } from '../../chat/command.ts'
import type { Action, Reply } from '../../chat/reply.ts'
import { unitsIn } from '../../text/messages/kitchen.ts'
import { kitchenAmong } from '../jar/known/jar-kitchen.ts'
import { planActions } from '../jar/known/plan-one.ts'
import { heldFirst } from '../jar/known/told-trouble.ts'
import { usualBottleIn } from '../options/usual-bottles.ts'
import { bottlesOf } from '../plan/plan-wish.ts'
import { planNamed, planOfCode } from './plan-of-code.ts'
import { type BatchNeeds, shoppingReply } from './shopping-reply.ts'

type Input = InputOf<'shopping'>

function needsOfCode(code: SharedRecipe, input: Input, context: Context): BatchNeeds {
  const planned = planOfCode(code, 'plans', context)
  return { batch: planNamed(planned), needs: needsOfPlan(planned, bottlesOf(input, context)) }
}

/** The jars that were named, each once; all that run where neither they nor plans were. */
async function jarsMeant({ jars, plans }: Input, { store, userId }: Context): Promise<readonly JarState[]> {
  if (jars === undefined && plans !== undefined) return []
  const all = (await store.read(userId)).jars
  if (jars === undefined) return runningJars(all).map(({ story }) => story)
  const named = asOptionProblem('jars', () => jars.is.split('+').map((typed) => findJar(typed, all)))
  return [...new Set(named)].map(({ entries }) => jarStateOf(entries)!)
}

const nothingReply = (): Reply => ({
  headline: { group: 'headlines', key: 'shopping_no_jars', values: undefined },
  table: [],
  sure: [],
  notes: [],
  cautions: [],
  actions: planActions,
  data: { batches: [] },
  kitchen: 'metric',
})

/** What one plan costs; of jars each is asked for by itself. */
function costActions({ plans, jars, bottles }: Input): readonly Action[] {
  const [only, another] = plans?.is ?? []
  if (only === undefined || another !== undefined || jars !== undefined) return []
  const label = { group: 'actions', key: 'shopping_cost', values: undefined } as const
  return [{ label, call: call('cost', { plan: only, bottles }) }]
}

const soldTo = (input: Input, { settings, kitchen = 'metric' }: Context): Sold => {
  const usual = soldIn(settings.country, unitsIn(kitchen).volume)
  const size = input['spirit-size']
  return size === undefined ? usual : { ...usual, spiritMl: [size.is.volumeMl] }
}

export const shoppingCommand = defineCommand({
  ...signature('shopping'),
  topic: 'planning',
  async run(input, context) {
    const { plans, bottles, have } = input
    const stories = await jarsMeant(input, context)
    const ofPlans = (plans?.is ?? []).map((code) => needsOfCode(code, input, context))
    if (stories.length + ofPlans.length === 0) return nothingReply()
    const running = stories.filter(({ ended }) => ended === null)
    const ofJars = running.map((story) => ({
      batch: { plantId: null, name: story.name },
      needs: needsOfJar(story, bottles?.is ?? null, usualBottleIn(kitchenAmong(story, context.settings))),
    }))
    const batches: readonly BatchNeeds[] = [...ofPlans, ...ofJars]
    const sold = soldTo(input, context)
    const list = shoppingList(
      batches.map(({ needs }) => needs),
      have?.is ?? [],
      sold,
    )
    const reply = shoppingReply(input, {
      kitchen: context.kitchen,
      batches,
      stories: running,
      list,
      sold,
      done: stories.filter(({ ended }) => ended !== null).map(({ name }) => name),
      sugarUnknown: ofJars.filter(({ needs }) => !needs.isSugarKnown).map(({ batch }) => batch.name),
      actions: costActions(input),
      isExpected: running.some(({ strained, started }) => strained === null && started.targets !== null),
    })
    return heldFirst(reply, running)
  },
})
