import { unlessRefused } from '../../../core/domain-error.ts'
import { US_FLUID_OUNCE_ML } from '../../../core/quantity/customary.ts'
import { parseBottles } from '../../../core/recipe/plan/parse-bottles.ts'
import { usualBottleIn } from '../../commands/options/usual-bottles.ts'
import type { CallRead, KitchenWished, TalkReading } from '../../talk/frames/reading.ts'
import { isSameCall, withOption } from '../../talk/memory/change-call.ts'
import { isChanged } from '../../talk/memory/earlier.ts'
import type { Remembered } from '../../talk/memory/remembered.ts'
import { type Kitchen, unitsIn } from '../../text/messages/kitchen.ts'
import type { CallOutcome, Dispatch } from '../run/call-outcome.ts'
import { execute } from '../run/execute.ts'
import { kitchenOfWhoever } from '../run/kitchen-said.ts'
import { withoutKeeping } from '../run/without-keeping.ts'
import { asInvocation } from './written-call.ts'

/** The usual bottle of a kitchen, as it is typed there. */
function sizeText(kitchen: Kitchen): string {
  const ml = usualBottleIn(kitchen)
  return unitsIn(kitchen).volume === 'us' ? `${ml / US_FLUID_OUNCE_ML} fl oz` : `${ml} ml`
}

/**
 * A plan for so many bottles that is told in other measures, with their size: said again it stays the same batch, and what is begun of it
 * is what was shown.
 */
export async function sizedForMeasures(
  call: CallRead,
  { kitchen }: Extract<TalkReading, { kind: 'call' }>,
  before: CallRead | null,
  dispatch: Dispatch,
): Promise<CallRead> {
  const { bottles } = call.options
  if (kitchen === undefined || bottles === undefined || call.command !== 'plan') return call
  const read = unlessRefused(() => parseBottles(bottles))
  const [only, another] = read ?? []
  if (only === undefined || only.count === null || only.size !== null || another !== undefined) return call
  const isShown = before !== null && isSameCall(before, call)
  const shown = isShown ? await kitchenOfWhoever(Object.values(call.options).join(' '), dispatch) : kitchen
  return withOption(call, 'bottles', `${only.count} x ${sizeText(shown)}`)
}

/** Whose measures a reading is told in: those it wishes, else those that the same batch was told in before it was changed. */
export function kitchenWished(
  reading: TalkReading | null,
  { worked }: Pick<Remembered, 'worked'>,
): KitchenWished | null {
  if (reading?.kind !== 'call') return null
  const isSameBatch = reading.does === 'compute' && worked !== null && isChanged(worked.call, reading.call)
  // What to buy for it is told as it was.
  const isList = reading.call.command === 'shopping' && worked !== null
  return reading.kitchen ?? (isSameBatch || isList ? worked.kitchen : undefined) ?? null
}

const AMOUNT = /\d/

/** How much somebody had told of plants and spirit, in the words of the plan; null where neither was. */
function amountsTold({ of = '', spirit = '' }: Readonly<Record<string, string>>): string | null {
  const told = [...of.split('+'), ...spirit.split('+')].map((each) => each.trim()).filter((each) => AMOUNT.test(each))
  const isPoured = /\d\s*\p{L}/u.test(spirit)
  return told.length === 0 || !isPoured ? null : told.join(', ').replace(/, (?=[^,]*$)/, ' and ')
}

interface Filled {
  readonly bottles: readonly { readonly count: number; readonly volumeMl: number }[]
  readonly leftoverMl: number
}

const isFilled = (data: object): data is Filled =>
  'bottles' in data && Array.isArray(data.bottles) && 'leftoverMl' in data

/** Full bottles of a plan, with those that what is over fills; null where none is told. */
function bottlesIn(outcome: CallOutcome): number | null {
  if (!outcome.ok || !('reply' in outcome) || !isFilled(outcome.reply.data)) return null
  const { bottles, leftoverMl } = outcome.reply.data
  const [first] = bottles
  if (first === undefined) return 0
  return bottles.reduce((sum, { count }) => sum + count, 0) + Math.floor(leftoverMl / first.volumeMl)
}

/** Where a wish for bottles takes the place of amounts that were told, `10 lemons and a litre`: how far those would have gone. */
export async function amountsReplaced(
  outcome: CallOutcome,
  call: CallRead,
  before: CallRead | null,
  dispatch: Dispatch,
): Promise<CallOutcome> {
  const { bottles, spirit } = call.options
  if (before?.command !== 'plan' || call.command !== 'plan' || bottles === undefined || spirit !== undefined)
    return outcome
  const typed = amountsTold(before.options)
  const wished = bottlesIn(outcome)
  if (typed === null || wished === null || !outcome.ok || !('reply' in outcome)) return outcome
  const own = withOption(before, 'bottles', bottles)
  const filled = bottlesIn(await execute(asInvocation(own), { ...dispatch, store: withoutKeeping(dispatch.store) }))
  if (filled === null) return outcome
  const note = { group: 'notes', key: 'amounts_replaced', values: { typed, filled, wished } } as const
  return { ...outcome, reply: { ...outcome.reply, notes: [note, ...outcome.reply.notes] } }
}
