import type { QuantityProblems, UnitKind, Wanted } from '../../../core/quantity/problems.ts'
import type { DateSide } from '../../../core/quantity/quantities.ts'
import type { Format } from '../format.ts'
import { dayText, MONTHS, WEEKDAYS } from './day-text.ts'

const quote = (text: string): string => `“${text}”`

/** What is accepted, after "give". */
const accepted: { readonly [Key in Wanted]: string } = {
  volume: 'a volume of 0.1 ml to 1,000 l, such as 750 ml or 2 cups',
  mass: 'a weight of 0.01 g to 1,000 kg, such as 500 g or 1 lb 4 oz',
  amount: 'a volume of 0.1 ml to 1,000 l or a weight of 0.01 g to 1,000 kg, such as 750 ml or 500 g',
  sugar: 'white sugar by weight, 0.01 g to 1,000 kg, or by volume, such as 500 g or 2 cups',
  strength: '0.1 to 97 % vol, such as 95% or 190 proof',
  sweetness: '0 to 1,200 g/L, such as 250 g/L, or dry, everyday or rich',
  temperature: '−30 to 100 °C, such as 20 C or 68 F',
  ratio: 'sugar to water by weight, 0.01 to 20, such as 1:1 or 2:1',
  span: '1 hour to 20 years, such as 25 days or 2 months',
  date: 'a day such as 24 December, 2026-12-24 or Saturday',
  count: '0.1 to 10,000 pieces, such as 10 lemons or 1 stick cinnamon',
  plant: 'plants by weight or by the piece, such as 10 lemons or 30 g ginger',
  part: 'liquids joined with +, such as 750 ml 75.5% + 375 ml 40%',
}

/** The units, after "use". */
const units: { readonly [Key in Wanted]: string } = {
  volume: 'ml, cl, dl, l, tsp, tbsp, cup, fl oz, pint, quart or gallon (imp before the last four for imperial)',
  mass: 'mg, g, kg, oz or lb',
  amount: 'ml, cl, dl, l, cup, tbsp, tsp, fl oz, pint, quart or gallon, or g, kg, oz, lb',
  sugar: 'g, kg, oz or lb, or cup, tbsp, ml',
  strength: '%, °, gradi or proof',
  sweetness: 'g/L or g/100 ml',
  temperature: 'C or F',
  ratio: 'numbers alone, such as 2:1',
  span: 'hours, days, weeks, months or years',
  date: 'days, weeks, months or years',
  count: 'pieces, such as 10 lemons',
  plant: 'g, kg, oz or lb, or pieces, such as 10 lemons',
  part: 'ml, cl, dl, l, cup, fl oz, pint, quart or gallon, or g, kg, lb; % for strength, g/L for sweetness',
}

const names: { readonly [Key in Wanted]: string } = {
  volume: 'volume',
  mass: 'weight',
  amount: 'amount',
  sugar: 'amount of sugar',
  strength: 'strength',
  sweetness: 'sweetness',
  temperature: 'temperature',
  ratio: 'ratio',
  span: 'length of time',
  date: 'date',
  count: 'count',
  plant: 'amount',
  part: 'amount',
}

const kinds: { readonly [Kind in UnitKind]: string } = {
  volume: 'a volume',
  mass: 'a weight',
  strength: 'a strength',
  sweetness: 'a sweetness',
  temperature: 'a temperature',
  span: 'a length of time',
}

const acceptedDay: { readonly [Side in DateSide]: string } = {
  past: 'a day such as yesterday, Saturday, 3 days ago or 24 December',
  from_today: 'a day such as tomorrow, Saturday, in 2 weeks or 24 December',
  after_today: 'a day such as tomorrow, Saturday, in 2 weeks or 24 December',
}

const acceptedZone = 'a city such as Rome, a name such as Europe/Rome, or UTC'

const dayName = ({ month, day }: { readonly month: number; readonly day: number }): string =>
  `${day} ${MONTHS[month - 1] ?? month}`

/** What was wrong with a value, which value, and what is accepted; a question where it can be read two ways. */
export const quantityProblems = {
  empty_text: ({ wanted }) => `Nothing was given here: give ${accepted[wanted]}.`,
  text_too_long: ({ typed, maxCharacters }) =>
    `${quote(typed)} is too long: give a value of at most ${maxCharacters} characters.`,
  hidden_characters: ({ typed }) =>
    `${quote(typed)} holds invisible characters: type it again in plain letters, digits and spaces.`,
  foreign_digits: ({ typed }) => `${quote(typed)} holds digits I cannot read: type them as 0 to 9.`,
  no_number: ({ typed, wanted }) => `${quote(typed)} holds no number where I need one: give ${accepted[wanted]}.`,
  bad_number: ({ typed, number }) =>
    `I cannot read the number ${quote(number)} in ${quote(typed)}: type it such as 1.5, 1,5, 1 1/2 or 1500.`,
  exponent_number: ({ typed, wanted }) =>
    `${quote(typed)} has an exponent: write the number out and give ${accepted[wanted]}.`,
  negative_number: ({ typed, wanted }) => `${quote(typed)} is below zero: give ${accepted[wanted]}.`,
  no_unit: ({ typed, wanted }) => `${quote(typed)} has no unit: use ${units[wanted]}.`,
  unknown_unit: ({ typed, unit, wanted }) =>
    `I do not know the unit ${quote(unit)} in ${quote(typed)}: use ${units[wanted]}.`,
  wrong_kind: ({ typed, got, wanted }) => `${quote(typed)} has the unit of ${kinds[got]}: give ${accepted[wanted]}.`,
  out_of_range: ({ typed, wanted }) => `${quote(typed)} is no ${names[wanted]} I can take: give ${accepted[wanted]}.`,
  unexpected_text: ({ typed, extra, wanted }) =>
    ['amount', 'volume', 'mass'].includes(wanted) && /^(?:(?:at|@) ?)?\d[\d.,]* ?%/.test(extra)
      ? `A strength has its own option: take ${quote(extra)} out of ${quote(typed)} and write strength:${extra.replace(/^\D+/, '')}.`
      : `I do not understand ${quote(extra)} in ${quote(typed)}: give ${accepted[wanted]}.`,
  wide_plus_minus: ({ typed }) =>
    `The ± in ${quote(typed)} is larger than the value: give a smaller one, such as 930±5 ml, or leave it out.`,
  said_twice: ({ typed, kind }) =>
    `${quote(typed)} gives the ${kind} of one liquid twice: give it once, and join several liquids with +.`,
  other_sweetener: ({ typed, sweetener }) =>
    `${quote(sweetener)} in ${quote(typed)} is not white sugar, and I can reckon with no other sweetener yet: ` +
    'give white sugar, such as 500 g.',
  dangling_plus: ({ typed }) => `A liquid is missing beside a + in ${quote(typed)}: give ${accepted.part}.`,

  two_readings: ({ typed, choices: [one, other] }) =>
    `${quote(typed)}: is that ${one} or ${other}? Type one of the two.`,
  fraction_or_percent: ({ typed, choices: [one, other] }) =>
    `${quote(typed)}: is that ${one} or ${other}? Type ${one} or ${other}.`,
  ounces: ({ typed, fluid, weight }) =>
    weight === null
      ? `${quote(typed)}: are those fluid ounces? Type ${fluid} or another volume, such as 750 ml.`
      : `${quote(typed)}: are those fluid ounces or a weight? Type ${fluid} or ${weight}.`,
  bottle_without_size: ({ typed }) =>
    `${quote(typed)}: how much is in a bottle? Give the volume on its label, such as 700 ml; of several, all together.`,
  celsius_or_fahrenheit: ({ typed, choices: [celsius, fahrenheit] }) =>
    `${quote(typed)}: is that ${celsius} or ${fahrenheit}? Type it with C or F.`,
  day_or_month: ({ typed, days }) =>
    `${quote(typed)}: is that ${days.map(dayName).join(' or ')}? Type the month as a word, such as 24 December.`,

  no_date: ({ typed, side }) => `${quote(typed)} is no date I can read: give ${acceptedDay[side]}.`,
  no_such_day: ({ typed, side }) => `There is no such day as ${quote(typed)}: give ${acceptedDay[side]}.`,
  other_weekday: ({ typed, day, weekday }) =>
    `${quote(typed)} does not go together: ${dayText(day)} is a ${WEEKDAYS[weekday]}. Which one is it?`,
  no_clock_time: ({ typed }) => `${quote(typed)} is no time of day I can read: give it as 9, 09:00, 9 am or 18.30.`,
  date_too_far: ({ typed, fromYear, toYear }) =>
    `${quote(typed)} is too far away: give a day in the years ${fromYear} to ${toYear}.`,

  offset_zone: ({ typed }) => `${quote(typed)} is an offset and knows no summer time: give ${acceptedZone}.`,
  unknown_zone: ({ typed, nearest }) =>
    nearest.length === 0
      ? `I know no time zone ${quote(typed)}: name the nearest big city, such as Rome, or give a name such as Europe/Rome, or UTC.`
      : `I know no time zone ${quote(typed)}; did you mean ${nearest.join(' or ')}?`,
  unknown_units: ({ typed }) => `${quote(typed)} are no units I know: give metric, us, imperial, or “as typed”.`,
} satisfies { readonly [Key in keyof QuantityProblems]: (values: QuantityProblems[Key], format: Format) => string }
