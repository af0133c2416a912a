import type { QuantityProblems } from '../../../core/quantity/problems.ts'
import type { Invocation } from '../../calls/invocation.ts'
import { readBatch } from '../grammar/read-rest.ts'
import type { Problem } from './call-outcome.ts'
import type { Try } from './example-tried.ts'
import { lineWith } from './line-instead.ts'
import { EXAMPLES } from './option-examples.ts'
import { choicesOf, instead, type Replaced, weighedOf } from './plant-instead.ts'

/** A number that has its thousands apart, with its unit. */
const IN_THOUSANDS = /\d{1,3}(?:[.,]\d{3})+\s*[a-z]*/i
const PROOF = /\d+(?:[.,]\d+)?\s*°?\s*proof/i
const FRACTION = /(?<!\d)0?[.,]\d+/
const BOTTLES = /(?:(\d+)\s*|an?\s+)?\bbottles?\b(?:\s+of\b)?/i
const WEEKDAY = /\b(?:mon|tues|wednes|thurs|fri|satur|sun)day\b,?\s*/i
const USUAL_BOTTLE_ML = 700

/** From here on a bare number of an amount counts millilitres or grams. */
const LEAST_SMALL_UNITS = 20

const UNIT_OF: Partial<Record<string, (number: number) => string>> = {
  volume: (number) => (number < LEAST_SMALL_UNITS ? ' l' : ' ml'),
  amount: (number) => (number < LEAST_SMALL_UNITS ? ' l' : ' ml'),
  part: (number) => (number < LEAST_SMALL_UNITS ? ' l' : ' ml'),
  mass: () => ' g',
  sugar: () => ' g',
  span: () => ' days',
}

const without = (whole: string, extra: string): string => whole.replace(extra, () => '').trim()

type Values<Key extends keyof QuantityProblems> = QuantityProblems[Key]

/** What could stand in an option's place, the likeliest first, by what is wrong with it. */
const MEANT: { readonly [Key in keyof QuantityProblems]?: (values: Values<Key>) => readonly Replaced[] } = {
  two_readings: ({ choices: [one, other] }) => [other, one].map((each) => instead(IN_THOUSANDS, each)),
  us_or_uk_proof: ({ choices }) => choices.map((each) => instead(PROOF, each)),
  fraction_or_percent: ({ choices: [fraction, percent] }) => [percent, fraction].map((each) => instead(FRACTION, each)),
  which_scale: ({ typed, choices }) => choices.map((each) => instead(typed, each)),
  celsius_or_fahrenheit: ({ typed, choices }) => choices.map((each) => instead(typed, each)),
  which_syrup: ({ typed, choices }) => choices.map((each) => instead(typed, each)),
  ounces: ({ typed, fluid }) => [instead(typed, fluid)],
  bottle_without_size: () => [
    (whole) => whole.replace(BOTTLES, (_, count?: string) => `${USUAL_BOTTLE_ML * Number(count ?? 1)} ml`),
  ],
  no_unit: ({ typed, wanted }) => {
    const unit = UNIT_OF[wanted]
    const number = Number(typed.replace(',', '.'))
    return unit === undefined || !Number.isFinite(number) ? [] : [instead(typed, `${typed}${unit(number)}`)]
  },
  other_weekday: () => [instead(WEEKDAY, '')],
  unexpected_text: ({ extra }) => [(whole) => without(whole, extra)],
}

type Key = keyof QuantityProblems | 'unclear_botanical' | 'spirit_strength' | 'piece_not_weighed'

const KEYS: ReadonlySet<string> = new Set<Key>([
  'empty_text',
  'no_number',
  'bad_number',
  'exponent_number',
  'negative_number',
  'no_unit',
  'unknown_unit',
  'wrong_kind',
  'out_of_range',
  'unexpected_text',
  'wide_plus_minus',
  'said_twice',
  'other_sweetener',
  'other_water',
  'dangling_plus',
  'which_syrup',
  'two_readings',
  'which_scale',
  'us_or_uk_proof',
  'fraction_or_percent',
  'ounces',
  'bottle_without_size',
  'celsius_or_fahrenheit',
  'no_date',
  'no_such_day',
  'other_weekday',
  'no_clock_time',
  'date_too_far',
  'offset_zone',
  'unknown_zone',
  'unknown_units',
  'unclear_botanical',
  'spirit_strength',
  'piece_not_weighed',
])

/** Where one of a few was meant, and nothing else will do. */
const CHOICES: ReadonlySet<string> = new Set<Key>([
  'two_readings',
  'which_scale',
  'which_syrup',
  'us_or_uk_proof',
  'fraction_or_percent',
  'ounces',
  'celsius_or_fahrenheit',
  'other_weekday',
  'unclear_botanical',
  'piece_not_weighed',
])

/** Plants and spirit in one, where only plants belong. */
const batchIn = ({ options }: Invocation, option: string): Readonly<Record<string, string>> | null => {
  const read = option !== 'of' || options.spirit !== undefined ? null : readBatch(options.of!, false)
  return read === null || read.name !== null ? null : Object.fromEntries(read.options)
}

const STRENGTH = /^[\d.,]+\s*(?:%|°|proof)/i
const SWEETNESS = /g\s*\/\s*l|^(?:dry|everyday|rich)$/i

/** Options that are often said without their names, behind another one's text, and what such a text looks like. */
const UNNAMED: readonly (readonly [option: string, looks: RegExp])[] = [
  ['strength', STRENGTH],
  ['sweetness', SWEETNESS],
  ['spirit', /\d.*(?:%|°|proof)/i],
  ['to-strength', STRENGTH],
  ['to-sweetness', SWEETNESS],
  ['bottles', /\d\s*x\s*\d/i],
]

/** What stood behind an option's text, in each option that it may belong to. */
const moved = (
  problem: Problem,
  { options }: Invocation,
  option: string,
): readonly Readonly<Record<string, string>>[] => {
  if (problem.problem !== 'unexpected_text') return []
  const { extra } = problem.values as Values<'unexpected_text'>
  const text = extra.replace(/^(?:and|at|in|to|with|,|@)\s+/i, '')
  return UNNAMED.filter(([each, looks]) => options[each] === undefined && looks.test(text)).map(([each]) => ({
    [option]: without(options[option]!, extra),
    [each]: text,
  }))
}

/** Texts for an option that cannot be read as it is. */
const textsFor = (problem: Problem, option: string, whole: string): readonly string[] => {
  const meant = MEANT[problem.problem as keyof QuantityProblems] as
    | ((values: object) => readonly Replaced[])
    | undefined
  const changed = [...choicesOf(problem), ...weighedOf(problem), ...(meant?.(problem.values) ?? [])].map((replaced) =>
    replaced(whole),
  )
  const others = CHOICES.has(problem.problem) ? [] : (EXAMPLES[option] ?? [])
  return [...changed.filter((text) => text !== whole), ...others]
}

/** Lines that are tried for one answer, which has to come soon. */
const MOST_TRIED = 6

/** A problem of an option's text, with the whole line and a text in its place that runs. */
export async function withValueInstead(problem: Problem, call: Invocation, attempt: Try): Promise<Problem> {
  const { option } = problem
  if (option === undefined || !KEYS.has(problem.problem)) return problem
  const whole = call.options[option] ?? ''
  if (whole === '' && problem.problem !== 'spirit_strength') return problem
  const batch = batchIn(call, option)
  const changes = [
    ...(batch === null ? [] : [batch]),
    ...moved(problem, call, option),
    ...textsFor(problem, option, whole).map((text) => ({ [option]: text })),
  ]
  for (const changed of changes.slice(0, MOST_TRIED)) {
    const line = lineWith(call, changed)
    if ((await attempt(line)).ok) return { ...problem, values: { ...problem.values, line } as Problem['values'] }
  }
  return problem
}
