import type { StockOf } from '../../../core/jar/state/bottle-stock.ts'
import { KEEPS_ABV_PERCENT } from '../../../core/liquid/keeping.ts'
import { dayFromIso, type IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { Format } from '../format.ts'
import type { Feature } from '../language.ts'
import type { KeepingMessages } from '../messages/keeping.ts'
import { plantName } from './cook-names.ts'
import { capital, counted, monthText, trustNamed } from './phrases.ts'
import { vesselText } from './words.ts'

/** Help for `/keeping`. */
export const keepingText = {
  summary: 'How long it keeps, closed and opened',
  options: {
    jar: 'The jar: its plants, strength and sugar count',
    of: 'Without a jar, what it’s of: strawberry + lemon',
    strength: 'Without a jar, how strong it is: 28%',
    sweetness: 'Without a jar, how sweet it is: 250 g/L',
  },
  examples: ['/keeping of:strawberry strength:25% sweetness:250 g/L', '/keeping of:lemon'],
}

const monthOf = (iso: IsoDay): string => monthText(dayFromIso(iso))

/** `3 of 5 bottles of 500 ml left, 1 given away, 1 opened`. */
function stockText({ volumeMl, filled, given, opened, left }: StockOf, format: Format): string {
  const gone = [...(given > 0 ? [`${given} given away`] : []), ...(opened > 0 ? [`${opened} opened`] : [])]
  const size = vesselText(volumeMl, format)
  return [`${left === 0 ? 'none' : left} of ${counted(filled, 'bottle')} of ${size} left`, ...gone].join(', ')
}

/** Help for `/bottles`. */
export const bottlesText = {
  summary: 'Bottles left, given away, opened',
  options: {
    jar: 'Which jar they’re from. Leave it out for the whole shelf',
    given: 'Bottles you gave away: 2, or 1 x 200 ml',
    opened: 'Bottles you opened: 1',
    when: 'The day, if it wasn’t today: yesterday, Saturday, 24 December',
    already: 'yes: they’re gone, though it shouldn’t be drunk',
  },
  examples: ['/bottles'],
}

/** What `/keeping` and `/bottles` say. */
export const keepingSentences = {
  headlines: {
    bottles_shelf: ({ count, jars }) => {
      if (jars === 0) return 'Nothing’s bottled yet.'
      return count === 0
        ? 'No bottles left on the shelf.'
        : `On the shelf: ${counted(count, 'bottle')}${jars > 1 ? ` of ${jars} liqueurs` : ''}.`
    },
    keeping_best: ({ months, until }) => {
      const by = until === null ? '' : `, until about ${monthOf(until)}`
      return `Shut, dark and cool it’s at its best for ${counted(months, 'month')}${by}.`
    },
    keeping_not_known: ({ abvPercent, line }, format) =>
      abvPercent === null
        ? `Nobody has measured how long it’s at its best. How strong is it? For example: ${format.call(line)}`
        : `Shut, dark and cool it doesn’t spoil at ${format.strength(abvPercent)}. Nobody has measured how long it’s at its best.`,
    keeping_fridge: ({ abvPercent }, format) =>
      `Keep it in the fridge and drink it within weeks: at ${format.strength(abvPercent)} it may ferment.`,
    keeping_not: ({ abvPercent }, format) =>
      `It doesn’t keep as it is: at ${format.strength(abvPercent)} it ferments. Put it in the fridge today, and make it stronger.`,
  },
  notes: {
    bottles_stock: ({ name, stock, bestUntil, isPast }, format) => {
      const [first = '', ...others] = stock.map((each) => stockText(each, format))
      const sizes = [first, ...others.map(capital)].join('. ')
      const best =
        bestUntil === null
          ? ''
          : isPast
            ? ` It was at its best until about ${monthOf(bestUntil)}: drink it next.`
            : ` Best until about ${monthOf(bestUntil)}.`
      return `${name}: ${sizes}.${best}`
    },
    keeping_opened: ({ fromMonths, toMonths }) =>
      `Opened: ${fromMonths === toMonths ? `${toMonths} months at most` : `${fromMonths} to ${toMonths} months`}, less when half empty. Pour the rest into a smaller bottle.`,
    keeping_decides: ({ id }) => `The ${plantName(id)} goes first.`,
    keeping_safe: ({ abvPercent }, format) =>
      `That’s taste and colour. At ${format.strength(abvPercent)} nothing spoils it while it’s shut.`,
    keeping_red: () => 'In the fridge its red lasts five to seven times as long.',
    /** Sokół-Łętowska et al., Molecules 23(9):2156 (2018), abstract: half-lives of 5.9 and 6.6 weeks. */
    keeping_sugar: () =>
      'Sugar hardly matters to it. At 30 °C a sour cherry lost half its red in 6 weeks with sugar, in 7 without.',
    keeping_weak: () => `It’s weaker than ${KEEPS_ABV_PERCENT} %, so I give it no longer than that.`,
    keeping_cream: () =>
      'For cream, mix pasteurised or UHT cream in a jug, cold. Keep it in the fridge and use it within two days. I don’t plan egg: no amount of waiting makes raw egg safe.',
    keeping_say_more: ({ line }, format) => `How strong is it? For example: ${format.call(line)}`,
    keeping_evidence: ({ trust, source }) => `How that’s known: ${trustNamed[trust]}, ${source}.`,
    keeping_units: ({ units, abvPercent, sugarGPerL }, format) =>
      `${format.strength(abvPercent)} and ${format.sweetness(sugarGPerL)} come to ${format.number(units, 0)} Delle units. Under 75 it’s expected to ferment, over 85 it’s not. That says nothing about mould, cream or egg.`,
  },
  actions: {
    bottles_all_gone: () => 'If that was all of it',
    bottles_label: () => 'Its label',
  },
  cautions: {
    keeping_low_acid: () => 'Garlic or vegetables: only over 20 % from the first day to the last, and never with oil.',
  },
} satisfies Feature<KeepingMessages>
