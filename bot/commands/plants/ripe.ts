import type { Botanical, BotanicalKind } from '../../../core/botanical/botanical.ts'
import { ripeIn } from '../../../core/botanical/find/ripe-in.ts'
import { isSouthern } from '../../../core/quantity/time/hemisphere.ts'
import type { MonthTyped } from '../../../core/quantity/time/parse-month.ts'
import { dayAt } from '../../../core/quantity/time/zone.ts'
import type { Context } from '../../chat/command.ts'
import type { Action, Reply } from '../../chat/reply.ts'
import type { Kitchen } from '../../text/messages/kitchen.ts'
import { row } from '../reply/outcome-reply.ts'
import { planOf } from './plan-of.ts'

/** What most is made of comes first. */
const KINDS: readonly BotanicalKind[] = [
  'fruit',
  'berry',
  'citrus',
  'nut',
  'flower',
  'herb',
  'vegetable',
  'root',
  'spice',
]

const MOST_OFFERED = 3

/** One of a kind after the other, so that not all that is offered is of one. */
function offered(plants: readonly Botanical[]): readonly Botanical[] {
  const byKind = KINDS.map((kind) => plants.filter((plant) => plant.kind === kind))
  const firsts = byKind.flatMap(([first]) => first ?? [])
  return [...firsts, ...plants.filter((plant) => !firsts.includes(plant))].slice(0, MOST_OFFERED)
}

const planAction = (plant: Botanical, kitchen?: Kitchen): Action => ({
  label: { group: 'actions', key: 'botanical_plan_of', values: { id: plant.id } },
  call: planOf(plant, kitchen),
})

/** What is ripe in a month where somebody lives, which their zone tells. */
export function ripeReply(month: MonthTyped, { zone, settings, nowMs, kitchen }: Context): Omit<Reply, 'kitchen'> {
  const number = month === 'now' ? dayAt(zone, nowMs).month : month
  const isSouth = isSouthern(zone)
  const plants = ripeIn(number, isSouth)
  const rows = KINDS.flatMap((kind) => {
    const ids = plants.filter((plant) => plant.kind === kind).map(({ id }) => id)
    return ids.length === 0
      ? []
      : [row(`botanical_kind_${kind}`, { group: 'cells', key: 'botanical_names', values: { ids } })]
  })
  return {
    headline: {
      group: 'headlines',
      key: 'botanical_ripe',
      values: { month: number, plants: plants.length, isNow: month === 'now' },
    },
    table: rows,
    sure: [],
    notes: [
      { group: 'notes', key: 'botanical_ripe_where', values: { isSouth, zone, isChosen: settings.zone !== null } },
    ],
    cautions: [],
    actions: offered(plants).map((plant) => planAction(plant, kitchen)),
    data: { month: number, hemisphere: isSouth ? 'south' : 'north', ripe: plants.map(({ id }) => id) },
  }
}
