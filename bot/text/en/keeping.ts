import type { Trust } from '../../../core/botanical/evidence/trust.ts'
import { dayFromIso } from '../../../core/quantity/time/calendar-day.ts'
import type { Feature } from '../language.ts'
import type { KeepingMessages } from '../messages/keeping.ts'
import { plantName } from './cook-names.ts'
import { counted, MONTHS } from './phrases.ts'

/** Help for `/keeping`. */
export const keepingText = {
  summary: 'How long a liqueur keeps, closed and opened, and what supports that',
  options: {
    jar: 'The jar: its plants, strength and sugar count',
    of: 'Without a jar, what it’s of: strawberry + lemon',
    strength: 'Without a jar, how strong it is: 28%',
    sweetness: 'Without a jar, how sweet it is: 250 g/L',
  },
  examples: ['/keeping of:strawberry strength:25% sweetness:250 g/L', '/keeping of:lemon'],
}

const TRUST: Readonly<Record<Trust, string>> = {
  published: 'published',
  derived: 'worked out',
  common_practice: 'common practice',
  estimated: 'estimated',
  memory: 'from memory',
  not_found: 'nothing found',
}

/** What `/keeping` says. */
export const keepingSentences = {
  headlines: {
    keeping_best: ({ months, until }) => {
      const day = until === null ? null : dayFromIso(until)
      const by = day === null ? '' : `, until about ${MONTHS[day.month - 1]} ${day.year}`
      return `Shut, dark and cool it’s at its best for ${counted(months, 'month')}${by}.`
    },
    keeping_not_known: ({ abvPercent }, format) =>
      abvPercent === null
        ? 'How long it’s at its best nobody has measured. How strong is it? Add strength:.'
        : `Shut, dark and cool it doesn’t spoil at ${format.strength(abvPercent)}. How long it’s at its best nobody has measured.`,
    keeping_fridge: ({ abvPercent }, format) =>
      `Keep it in the fridge and drink it within weeks: at ${format.strength(abvPercent)} it may ferment.`,
    keeping_not: ({ abvPercent }, format) =>
      `It doesn’t keep as it is: at ${format.strength(abvPercent)} it ferments. Fridge today, and bring it up.`,
  },
  notes: {
    keeping_opened: ({ fromMonths, toMonths }) =>
      `Opened, ${fromMonths} to ${toMonths} months, sooner half empty. Pour the rest into a smaller bottle.`,
    keeping_decides: ({ id }) => `The ${plantName(id)} goes first.`,
    keeping_safe: ({ abvPercent }, format) =>
      `That’s taste and colour. At ${format.strength(abvPercent)} nothing spoils it while it’s shut.`,
    keeping_red: () => 'In the fridge its red lasts five to seven times as long.',
    keeping_cream: () =>
      'Cream: mix pasteurised or UHT cream in a jug, cold, keep it in the fridge, use it within two days. Egg I don’t plan, and no waiting makes raw egg safe.',
    keeping_say_more: () => 'How strong is it? Add strength:, and sweetness: if you know it.',
    keeping_evidence: ({ trust, source }) => `How that’s known: ${TRUST[trust]}, ${source}.`,
    keeping_units: ({ units, abvPercent, sugarGPerL }, format) =>
      `${format.strength(abvPercent)} and ${format.sweetness(sugarGPerL)} come to ${format.number(units, 0)} Delle units. Under 75 it’s expected to ferment, over 85 it’s not. That says nothing of mould, cream or egg.`,
  },
  cautions: {
    keeping_low_acid: () => 'Garlic or vegetables: only over 20 % from first to last day, and never with oil.',
  },
} satisfies Feature<KeepingMessages>
