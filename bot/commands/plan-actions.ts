import { botanicalById } from '../../core/botanical/catalogue/catalogue.ts'
import { daysBetween } from '../../core/quantity/calendar.ts'
import type { CalendarDay } from '../../core/quantity/quantities.ts'
import type { Plan } from '../../core/recipe/plan/plan.ts'
import type { Action } from '../chat/reply.ts'
import { writeLine } from '../chat/write-line.ts'
import type { Given } from './fields.ts'

/** A jar called after its first plant: `lemon peel`; null where nothing fit for a name is left of it. */
function nameAfter({ plants, unknown }: Plan): string | null {
  const [first] = plants
  const title =
    first === undefined ? (unknown[0]?.name ?? '') : botanicalById(first.botanical.id).names.title.toLowerCase()
  const name = title
    .replace(/\s*\([^)]*\)/gu, '')
    .replace(/\s*[(,/].*$/u, '')
    .replace(/^[#\s]+|[:\s]+$/gu, '')
  return name === '' || name === 'all' ? null : name
}

/** The plan as a jar, with all that was typed; one that begins another day begins when it is started. */
export function startAction(
  input: { readonly [option: string]: Given<unknown> | undefined },
  plan: Plan,
  { start, today }: { readonly start: CalendarDay; readonly today: CalendarDay },
): readonly Action[] {
  const name = nameAfter(plan)
  if (name === null) return []
  const options = Object.entries(input).flatMap(([option, given]): readonly (readonly [string, string])[] => {
    if (given === undefined) return []
    if (option !== 'start') return [[option, given.typed]]
    return daysBetween(start, today) < 0 ? [['when', given.typed]] : []
  })
  return [
    { label: { group: 'actions', key: 'start_jar', values: undefined }, line: writeLine('jar start', name, options) },
  ]
}
