import type { Format } from '../format.ts'
import type { Feature } from '../language.ts'
import type { AgainMessages } from '../messages/again.ts'
import { counted, listed, spanWords } from './phrases.ts'
import { scaledFrom } from './scaled.ts'

interface Reached {
  readonly abvPercent: number
  readonly sugarGPerL: number
}

const madeText = ({ abvPercent, sugarGPerL }: Reached, format: Format): string =>
  `${format.wished.strength(abvPercent, 0)} and ${format.round.sweetness(sugarGPerL)}`

const rated = (rating: number | null): readonly string[] => (rating === null ? [] : [`gave it ${rating} of 5`])

const noted = (note: string | null): readonly string[] => (note === null ? [] : [`noted “${note}”`])

/** `less sweet: 200 g/L`. */
const stepText = (from: Reached, to: Reached, format: Format): string => {
  if (Math.abs(to.sugarGPerL - from.sugarGPerL) >= 1)
    return `${to.sugarGPerL < from.sugarGPerL ? 'less sweet' : 'sweeter'}: ${format.round.sweetness(to.sugarGPerL)}`
  return `${to.abvPercent < from.abvPercent ? 'milder' : 'stronger'}: ${format.wished.strength(to.abvPercent, 0)}`
}

/** What `/again` says of the batch that is planned once more. */
export const againSentences = {
  notes: {
    again_as: ({ name, factor, by, id, isOtherwise, pouredIn }, format) => {
      const whose = pouredIn.length === 0 ? name : `${name}, without the ${listed(pouredIn)} you poured in`
      if (by !== null) return scaledFrom({ factor, by, id }, whose, format)
      return `${isOtherwise ? 'Otherwise the same as' : 'Same amounts as'} ${whose}.`
    },
    again_by_alcohol: () => 'I’ve scaled it by the alcohol, so that it tastes as strong as before.',
    again_strained: ({ wentDays, plannedDays, isAsItWent }) => {
      const went = wentDays === 0 ? 'the same day' : `after ${counted(wentDays, 'day')}`
      return isAsItWent
        ? `Last time you strained ${went}, not ${spanWords(plannedDays)}. You liked it, so it’s ${wentDays === 0 ? 'the same day' : counted(wentDays, 'day')} again.`
        : `Last time you strained ${went}. This time it’s ${spanWords(plannedDays)}, as planned.`
    },
    again_came_out: ({ made, planned, isAsItWent }, format) =>
      isAsItWent
        ? `Last time: ${madeText(made, format)}. You liked it, so it’s that again.`
        : `Last time: ${madeText(made, format)}. Now ${madeText(planned, format)}, as planned.`,
    again_nearest: ({ beforeAbvPercent, abvPercent, isMade }, format) =>
      `${isMade ? 'Last time' : 'Last plan'}: ${format.wished.strength(beforeAbvPercent, 0)}. With that much sugar ${format.wished.strength(abvPercent, 1)} is the most, so it’s that now.`,
    again_mended: ({ from, to, isMade, note }, format) =>
      `${isMade ? 'Last time' : 'Last plan'}: ${madeText(from, format)}, “${note}”. Now ${stepText(from, to, format)}.`,
    again_liked_less: ({ rating, note }) => `Last time you ${[...rated(rating), ...noted(note)].join(' and ')}.`,
    again_noted: ({ note }) => `Last time you noted “${note}”.`,
  },
  actions: {
    again_days: ({ days }) => `Strain after ${counted(days, 'day')}`,
    again_targets: (targets, format) => `Aim for ${madeText(targets, format)}`,
  },
} satisfies Feature<AgainMessages>

/** What help and Discord say of it. */
export const againText = {
  summary: 'Plan a jar like an earlier one, scaled to the spirit you have',
  options: {
    jar: 'The earlier jar: lemon',
    of: 'Plants in another amount, or one more: 200 g ginger. The rest stays as before',
    spirit: 'The spirit you have: 700 ml, or 700 ml 75.5%. Leave it out for the same amounts',
    strength: 'Its strength, if it isn’t beside the amount: 95%',
    'to-strength': 'The strength you want, if not as before: 28%',
    'to-sweetness': 'The sweetness you want, if not as before: 200 g/L',
    sugar: 'What to sweeten with, if not as before: honey',
    water: 'What to use instead of water, if not as before: apple juice',
    days: 'How long to steep it, if not as before: 21 days',
    bottles: 'Bottles to fill, if not as before: 6 x 500 ml',
    name: 'What to call the new jar. Leave it out for the old name with a number',
  },
  examples: ['/again lemon spirit:700 ml 75.5%', '/again lemon spirit:1 l 95% name:lemon for the fair'],
}
