import { typedName } from '../../../core/botanical/find/typed-name.ts'
import { styleSweetnessGPerL } from '../../../core/quantity/read/sweetness-at.ts'
import { readPlants } from '../../../core/recipe/plan/find-plants.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import { call } from '../../calls/call.ts'
import type { InputOf } from '../../calls/signatures.ts'
import type { Action, Reply } from '../../chat/reply.ts'
import type { Message } from '../../text/words.ts'
import { canBe } from './plan-actions.ts'
import type { Setting } from './plan-wish.ts'

/** Sweeter than the richest that is usual by more than is measured at home. Common practice, no source. */
const FAR_SWEET_GPERL = 1.1 * styleSweetnessGPerL.rich

/** What is said of amounts, days and spirit that are not the usual ones. */
const DEPARTURES: ReadonlySet<string> = new Set([
  'plan_days_said',
  'plan_more_than_usual',
  'plan_less_than_usual',
  'plan_far_off',
  'plan_above_wise',
  'plan_spirit_usual',
  'plan_sweeter_than_usual',
])

/** Somebody's own recipe: it says what else goes in, or how long it lies. */
const isRecipe = ({ sugar, days, water }: InputOf<'plan'>): boolean =>
  days !== undefined || (sugar?.is.amounts.length ?? 0) > 0 || typeof water?.is === 'object'

/** The same plants and spirit in the usual amounts, as a line that was tried; none where no spirit was said. */
function asUsual(
  { spirit, strength, start }: InputOf<'plan'>,
  { plants, unknown }: Plan,
  setting: Setting,
): readonly Action[] {
  if (spirit === undefined || plants.length === 0 || unknown.length > 0) return []
  const typed = plants.map(({ botanical }) => typedName(botanical)).join(' + ')
  const usual = { of: { typed, is: readPlants(typed) }, spirit, strength, start }
  const label = { group: 'actions', key: 'plan_as_usual', values: undefined } as const
  return canBe(usual, setting) ? [{ label, call: call('plan', usual) }] : []
}

/** Where a recipe that somebody brought departs from what is usual, said at once, with the line that plans the usual. */
export function recipeDepartures(input: InputOf<'plan'>, plan: Plan, notes: Reply['notes'], setting: Setting) {
  if (!isRecipe(input)) return { notes, actions: [] }
  const { sugarGPerL } = plan.targets
  const sweet: readonly Message<'notes'>[] =
    sugarGPerL > FAR_SWEET_GPERL
      ? [
          {
            group: 'notes',
            key: 'plan_sweeter_than_usual',
            values: { sugarGPerL, richGPerL: styleSweetnessGPerL.rich },
          },
        ]
      : []
  // How sweet it comes out is said once.
  const own = (note: Reply['notes'][number]): Reply['notes'][number] =>
    note.key === 'plan_own_syrup' && sweet.length > 0 ? { ...note, values: { ...note.values, sugarGPerL: null } } : note
  const departing = [...sweet, ...notes.filter(({ key }) => DEPARTURES.has(key))]
  const raised = departing.map(({ depth: _, ...note }: Reply['notes'][number]) => note as Reply['notes'][number])
  return {
    notes: [...raised, ...notes.filter(({ key }) => !DEPARTURES.has(key)).map(own)],
    actions: departing.length === 0 ? [] : asUsual(input, plan, setting),
  }
}
