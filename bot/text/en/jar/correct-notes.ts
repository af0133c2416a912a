import { dayFromIso, type IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import { quoted } from '../../../chat/grammar/write-line.ts'
import type { Format } from '../../format.ts'
import { listed } from '../phrases.ts'
import { daysText, nameText } from '../plan/plan-words.ts'

interface Named {
  readonly id: string | null
  readonly name: string
}

interface LaterPlants {
  readonly name: string
  readonly plants: readonly (Named & { readonly addOn: IsoDay })[]
}

/** What follows from what was said, or not said, of the plants in a jar. */
export const correctNotes = {
  jar_plants_dropped: ({ plants }: { readonly plants: readonly Named[] }) =>
    `of: tells all that went in then; no longer in it: ${listed(plants.map(nameText))}.`,
  /** Null days: none is known any more. */
  jar_strain_moved: (
    { days }: { readonly days: { readonly from: IsoDay; readonly by: IsoDay } | null },
    format: Format,
  ) =>
    days === null
      ? 'With these plants I know no days for straining.'
      : `Straining moves: with these plants it is due ${daysText(dayFromIso(days.from), dayFromIso(days.by), format)}.`,
  jar_later_counted: ({ name, plants }: LaterPlants, format: Format) => {
    const texts = plants.map((plant) => `the ${nameText(plant)} as added on ${format.day(dayFromIso(plant.addOn))}`)
    return `I count ${listed(texts)}, as planned; if ${plants.length === 1 ? 'it' : 'any'} never went in, /jar correct ${quoted(name)} with of: and what did puts it right.`
  },
  jar_later_left_out: ({ name, plants }: LaterPlants, format: Format) => {
    const texts = plants.map((plant) => `the ${nameText(plant)}, planned for ${format.day(dayFromIso(plant.addOn))}`)
    return `I count it as strained without ${listed(texts)}; if it was to wait for ${plants.length === 1 ? 'it' : 'them'}, /jar undo ${quoted(name)} takes the straining back.`
  },
}
