import type { Format } from '../../format.ts'
import { listed } from '../phrases.ts'
import { plantName } from '../plan/plan-words.ts'

interface CodeFrom {
  readonly factor: number
  /** What there was least of; null where nothing was said. */
  readonly by: 'spirit' | 'plant' | 'bottles' | null
  /** The plant that there was least of. */
  readonly id: string | null
  readonly isSpiritLeft: boolean
}

interface Strengths {
  readonly abvPercent: number
  /** Of what the batch of the code steeped in. */
  readonly recipeAbvPercent: number
}

interface Days {
  readonly fromDays: number
  readonly byDays: number
}

const daysText = ({ fromDays, byDays }: Days): string =>
  fromDays === byDays ? `${byDays}` : `${fromDays} to ${byDays}`

const why = ({ by, id }: CodeFrom): string => {
  if (by === 'plant') return `as far as your ${id === null ? 'plants' : plantName(id)} goes`
  return by === 'bottles'
    ? 'as much as fills your bottles'
    : 'by the alcohol in your spirit, so that a glass holds as much of the plants'
}

const timesText = ({ factor }: CodeFrom, format: Format): string => {
  const times = format.plain(factor, factor < 0.1 ? 3 : 2)
  return times === '1' ? 'in about the same amounts' : `times ${times}`
}

/** What `/plan from:` says besides the plan. */
export const codeSentences = {
  notes: {
    code_from: (values: CodeFrom, format: Format) =>
      values.by === null
        ? 'As the batch of this code was made, in the same amounts.'
        : `As the batch of this code was made, ${timesText(values, format)}: ${why(values)}.` +
          `${values.isSpiritLeft ? ' Some of your spirit stays over.' : ''}`,
    code_only_plant: ({ typed, id }: { readonly typed: string; readonly id: string }) =>
      `I took “${typed}” as ${plantName(id)}, the one plant of that batch.`,
    code_weaker: ({ abvPercent, recipeAbvPercent }: Strengths, format: Format) =>
      `That batch steeped in ${format.plain(recipeAbvPercent, 1)} % vol, yours does in ${format.plain(abvPercent, 1)}: as much alcohol` +
      ' comes with more water, so it steeps weaker, and less water goes in after straining.',
    code_stronger: ({ abvPercent, recipeAbvPercent }: Strengths, format: Format) =>
      `Your spirit has ${format.plain(abvPercent, 1)} % vol: water first brings it to ${format.plain(recipeAbvPercent, 1)}, in which that batch steeped.`,
    code_dried: ({ ids }: { readonly ids: readonly string[] }) =>
      `Dried, not fresh: ${listed(ids.map(plantName))}. Fresh would be another amount.`,
    code_days: ({ usual, ...days }: Days & { readonly usual: Days | null }) =>
      // Days that were are one number; one number may also have been planned, for a feast.
      `${daysText(days)} ${days.byDays === 1 ? 'day' : 'days'} on the plants, ${days.fromDays === days.byDays ? 'like that batch' : 'as that batch was planned'}` +
      `${usual === null ? '' : `; usual are ${daysText(usual)}, so taste as it goes`}.`,
  },
}
