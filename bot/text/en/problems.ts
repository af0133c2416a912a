import { exactly } from '../../../core/quantity/measured/measured.ts'
import type { QuantityProblems, UnitKind, Wanted } from '../../../core/quantity/problems.ts'
import type { DateSide } from '../../../core/quantity/quantities.ts'
import type { OtherThing } from '../../../core/recipe/plan/other-than-plants.ts'
import type { PlanProblems } from '../../../core/recipe/plan/problems.ts'
import { call } from '../../calls/call.ts'
import { lineOf, lineTyped, shortLineTyped } from '../../calls/write-line.ts'
import type { Format } from '../format.ts'
import type { Written } from '../language.ts'
import type { ChatProblems } from '../messages/chat-problems.ts'
import type { LimitProblems } from '../messages/limit-problems.ts'
import type { TalkProblems } from '../messages/talk.ts'
import { cookName } from './cook-names.ts'
import { discordText } from './discord.ts'
import { safetyProblems, weakText } from './jar-problems.ts'
import { isnt } from './jar-verbs.ts'
import { measureProblems } from './measure.ts'
import { fileProblems } from './notebook-file.ts'
import { capital, dayText, either, MONTHS, uncapital, WEEKDAYS } from './phrases.ts'

const inQuotes = (text: string): string => `“${text}”`

/** What is asked where a text cannot be read as what was wanted. */
const questions: { readonly [Key in Wanted]: string } = {
  volume: 'How much?',
  mass: 'How much?',
  amount: 'How much?',
  sugar: 'How much?',
  sweetener: 'What sweetens it?',
  filler: 'What goes in instead of water?',
  strength: 'How strong?',
  sweetness: 'How sweet?',
  temperature: 'How warm?',
  ratio: 'How much sugar to how much water?',
  span: 'How long?',
  date: 'Which day?',
  count: 'How many?',
  plant: 'How much?',
  part: 'How much?',
  hydrometer: 'What did it show?',
  brix: 'What did it show?',
}

/** One that can be read, where no whole line is known. */
const examples: { readonly [Key in Wanted]: string } = {
  volume: '750 ml',
  mass: '500 g',
  amount: '750 ml',
  sugar: '500 g',
  sweetener: 'honey',
  filler: 'apple juice',
  strength: '40%',
  sweetness: '250 g/L',
  temperature: '20 C',
  ratio: '1:1',
  span: '3 weeks',
  date: '24 December',
  count: '10 lemons',
  plant: '30 g ginger',
  part: '750 ml 40%',
  hydrometer: '1.035',
  brix: '26.5',
}

const names: { readonly [Key in Wanted]: string } = {
  volume: 'a volume',
  mass: 'a weight',
  amount: 'an amount',
  sugar: 'an amount of sugar',
  sweetener: 'a sweetener',
  filler: 'a juice',
  strength: 'a strength',
  sweetness: 'a sweetness',
  temperature: 'a temperature',
  ratio: 'a ratio',
  span: 'a length of time',
  date: 'a day',
  count: 'a number',
  plant: 'an amount',
  part: 'an amount',
  hydrometer: 'a hydrometer reading',
  brix: 'a Brix reading',
}

const kinds: { readonly [Kind in UnitKind]: string } = {
  volume: 'a volume',
  mass: 'a weight',
  strength: 'a strength',
  sweetness: 'a sweetness',
  temperature: 'a temperature',
  span: 'a length of time',
}

const exampleDay: { readonly [Side in DateSide]: string } = {
  past: 'yesterday, or 24 September',
  from_today: 'tomorrow, or 24 December',
  after_today: 'tomorrow, or 24 December',
}

/** A line to type where one is known, else how a text of that kind is written. */
const forExample = (line: string | null | undefined, example: string): string =>
  line === null || line === undefined ? `For example ${example}.` : `For example: ${line}`

/** The same where there may be none. */
const forInstance = (line: string | null | undefined): string =>
  line === null || line === undefined ? '' : ` For example: ${line}`

/** The line without an option, or which one to leave out. */
const without = (option: string, line: string | null | undefined): string =>
  line === null || line === undefined ? ` Leave out ${option}.` : ` Type: ${line}`

/** The line to type, where there is one. */
const typeIt = (line: string | null | undefined): string =>
  line === null || line === undefined ? '' : ` Type: ${line}`

const tryIt = (line: string | null | undefined, example: string): string =>
  line === null || line === undefined ? `Try ${example}.` : `Try: ${line}`

const dayName = ({ month, day }: { readonly month: number; readonly day: number }): string =>
  `${day} ${MONTHS[month - 1] ?? month}`

/** Spirit among the plants. */
const isSpirit = (extra: string): boolean => /\d\s*(?:%|°)|proof/i.test(extra)

/** What is asked about a value that cannot be read, or can be read two ways. */
const sweetenerRefused = {
  kills_dogs: ': it kills dogs, also from spent fruit, and it doesn’t help a drink keep',
  no_sugar: ': it isn’t sugar, so it gives no body and doesn’t help a drink keep',
} as const

export const quantityProblems = {
  empty_text: ({ wanted, line }, format) =>
    `${questions[wanted]} ${forExample(line, format.example(examples[wanted]))}`,
  text_too_long: () => 'That’s too long for me. Can you say it in fewer words?',
  hidden_characters: ({ typed }) => `There are invisible characters in ${inQuotes(typed)}. Could you type it again?`,
  foreign_digits: ({ typed }) => `I can’t read the digits in ${inQuotes(typed)}. Could you type them as 0 to 9?`,
  no_number: ({ typed, wanted, line }, format) =>
    `${inQuotes(typed)}: ${uncapital(questions[wanted])} ${forExample(line, format.example(examples[wanted]))}`,
  bad_number: ({ typed, number, line }) =>
    `I can’t read ${inQuotes(number)}${number === typed ? '' : ` in ${inQuotes(typed)}`} as a number. ${tryIt(line, '1.5')}`,
  exponent_number: ({ typed, wanted, line }, format) =>
    `Could you write out the number in ${inQuotes(typed)}? ${forExample(line, format.example(examples[wanted]))}`,
  negative_number: ({ typed, wanted, line }, format) =>
    `${inQuotes(typed)} is below zero. ${questions[wanted]} ${forExample(line, format.example(examples[wanted]))}`,
  no_unit: ({ typed, wanted, line }, format) =>
    `${inQuotes(typed)} of what? ${forExample(line, format.example(examples[wanted]))}`,
  unknown_unit: ({ typed, unit, wanted, line }, format) =>
    `I don’t know ${inQuotes(unit)}${unit === typed ? '' : ` in ${inQuotes(typed)}`}. ${questions[wanted]} ${forExample(line, format.example(examples[wanted]))}`,
  wrong_kind: ({ typed, got, wanted, line }, format) =>
    `${inQuotes(typed)} is ${kinds[got]}. ${questions[wanted]} ${forExample(line, format.example(examples[wanted]))}`,
  out_of_range: ({ typed, wanted, line }, format) =>
    `${inQuotes(typed)} isn’t ${names[wanted]} I can use. ${tryIt(line, format.example(examples[wanted]))}`,
  unexpected_text: ({ extra, wanted, line }, format) => {
    if (wanted === 'date' && line != null) return `I keep days, not hours. Did you mean this? ${line}`
    if (line?.includes(' spirit:') === true && isSpirit(extra)) return `Is ${inQuotes(extra)} the spirit? Type: ${line}`
    return line === null || line === undefined
      ? `I don’t know what to do with ${inQuotes(extra)}. ${forExample(line, format.example(examples[wanted]))}`
      : `I don’t know what to do with ${inQuotes(extra)}. Did you mean this? ${line}`
  },
  wide_plus_minus: ({ typed, line }) =>
    `The ± in ${inQuotes(typed)} is larger than the value. ${tryIt(line, '930±5 ml')}`,
  said_twice: ({ typed, kind, line }) =>
    `There are two ${kind === 'amount' ? 'amounts' : kind === 'strength' ? 'strengths' : 'sweetnesses'} in ${inQuotes(typed)}. Which one is it?${typeIt(line)}`,
  other_sweetener: ({ sweetener, why, line }) =>
    `I can’t work with ${sweetener}${why === null ? '' : sweetenerRefused[why]}. What else have you got: sugar, honey, maple or agave syrup? ${forExample(line, '500 g sugar')}`,
  which_syrup: ({ typed, choices, line }) =>
    `${inQuotes(typed)}: how was that syrup made, ${either(choices)}?${typeIt(line)}`,
  amount_worked_out: ({ typed, fix, line }) =>
    `${inQuotes(typed)}: I work that amount out. Just say what it is: ${line ?? fix}`,
  other_water: ({ extra, line }) =>
    `I don’t know what’s in ${extra}. Would water, coffee, tea, or apple, orange or lemon juice do? ${forExample(line, '500 ml apple juice')}`,
  one_sweetener: ({ typed }) => `There are two sweeteners in ${inQuotes(typed)}. Which one sweetens it?`,
  dangling_plus: ({ typed }) => `There’s a + with nothing next to it in ${inQuotes(typed)}. What goes there?`,

  two_readings: ({ typed, choices: [one, other], line }) => `Is ${inQuotes(typed)} ${one} or ${other}?${typeIt(line)}`,
  which_scale: ({ typed, choices: [brix, baume, percent], line }) =>
    `${inQuotes(typed)} on which scale: ${brix}, ${baume} or ${percent}?${typeIt(line)}`,
  us_or_uk_proof: ({ choices: [us, uk], percents, line }) =>
    `Is that ${us} (${Number(percents[0].toFixed(1))} %) or ${uk} (${Number(percents[1].toFixed(1))} %)?${typeIt(line)}`,
  fraction_or_percent: ({ typed, choices: [one, other], line }) =>
    `Is ${inQuotes(typed)} ${one} or ${other}?${typeIt(line)}`,
  ounces: ({ fluid, weight, line }) =>
    weight === null
      ? `Are those fluid ounces?${line === null || line === undefined ? ` Then write ${fluid}.` : typeIt(line)}`
      : `Fluid ounces (${fluid}) or a weight (${weight})?${typeIt(line)}`,
  bottle_without_size: ({ line }) => `How big is the bottle? ${forExample(line, 'spirit:700 ml 40%')}`,
  freezer_out_of_range: ({ typed }, format) =>
    `${inQuotes(typed)} isn’t a freezer’s temperature. How cold is yours? Type: ${format.example(lineTyped('settings', { freezer: '-18 C' }))}`,
  celsius_or_fahrenheit: ({ choices: [celsius, fahrenheit], line }) =>
    `Is that ${celsius} or ${fahrenheit}?${typeIt(line)}`,
  day_or_month: ({ typed, days }) =>
    `Is ${inQuotes(typed)} ${days.map(dayName).join(' or ')}? Write the month as a word, like 24 December.`,

  no_month: ({ typed }) =>
    `“${typed}” isn’t a month I know. Which month? For example: ${lineTyped('botanical', { month: 'October' })}`,
  no_date: ({ typed, side, line }) =>
    `${inQuotes(typed)}: which day${side === 'past' ? ' was that' : ' is that'}? ${forExample(line, exampleDay[side])}`,
  no_such_day: ({ typed, side, line }) =>
    `There’s no ${inQuotes(typed)}. Which day${side === 'past' ? ' was it' : ''}? ${forExample(line, exampleDay[side])}`,
  other_weekday: ({ day, weekday, line }) =>
    `${dayText(day)} is a ${WEEKDAYS[weekday]}. Which did you mean?${typeIt(line)}`,
  no_clock_time: ({ typed, line }) => `${inQuotes(typed)}: what time is that? ${forExample(line, '09:00')}`,
  date_too_far: ({ typed, line }) =>
    `${inQuotes(typed)} is too far away for me. Which day? ${forExample(line, 'tomorrow')}`,

  offset_zone: ({ typed, line }) =>
    `${inQuotes(typed)} doesn’t change with summer time. Which big city is near you? ${forExample(line, 'London')}`,
  unknown_zone: ({ typed, nearest, line }) =>
    nearest.length === 0
      ? `I don’t know ${inQuotes(typed)}. Which big city is near you? ${forExample(line, 'London')}`
      : `I don’t know ${inQuotes(typed)}. Did you mean ${either(nearest)}?`,
  unknown_units: ({ typed, line }) =>
    `I don’t know the units ${inQuotes(typed)}. Metric, US, imperial or as typed? ${forExample(line, 'metric')}`,
} satisfies Written<QuantityProblems>

/** What a person typed, between quotation marks and not too much of it. */
const shortQuote = (typed: string): string => `“${typed.length > 40 ? `${typed.slice(0, 39)}…` : typed}”`

const eitherOf = (options: readonly string[]): string => either(options.map((name) => `“${name}”`))

/** What is asked where an option is lacking. */
const lacking: Readonly<Record<string, string>> = {
  bottles: 'How many bottles?',
  compare: 'Which two?',
  infusion: 'How much have you got?',
  jar: 'Which jar?',
  liqueur: 'How much have you got?',
  measured: 'How much came out?',
  of: 'What goes in?',
  parts: 'What are you blending?',
  pour: 'How big is the glass?',
  spirit: 'What spirit have you got?',
  strength: 'How strong is it?',
  sugar: 'How much sugar went in?',
  sweetness: 'How sweet is it?',
  to: 'What should it be called?',
  'to-strength': 'How strong should it be?',
  'to-sweetness': 'How sweet should it be?',
  until: 'Until when?',
}

const askFor = (option: string): string => {
  const [first = '', ...others] = option.split(/:,? (?:or )?/)
  if (first === 'rating') return 'How was it?'
  return others.length > 0 ? 'What went in?' : (lacking[first.replace(':', '')] ?? `What’s ${option}:?`)
}

/** Where to begin. */
const PLAN_LINE = shortLineTyped('plan', { of: '10 lemons', spirit: '1 l 95%' })

/** What was wrong with a line, one question, and the line that was meant. */
export const chatProblems = {
  empty_line: (_values?: unknown, format?: Format) =>
    `What are you making? Type: ${format?.example(PLAN_LINE) ?? PLAN_LINE}`,
  line_too_long: () => 'That’s too long a line for me. Could you say it in two?',
  control_characters: () => 'There are invisible characters in that line. Could you type it again?',
  unknown_command: ({ typed, nearest, isSentence = false, line = null }, format) => {
    if (isSentence)
      return `I didn’t catch that. If somebody’s hurt, type: emergency. To plan a jar, type: ${format.example(PLAN_LINE)}`
    if (nearest === null) return `I don’t know ${shortQuote(typed)}. To plan a jar, type: ${format.example(PLAN_LINE)}`
    const see = nearest === 'help' ? '' : ` See: /help ${nearest}`
    return `I don’t know ${shortQuote(typed)}. Did you mean ${line ?? `/${nearest}?${see}`}`
  },
  unknown_option: ({ command, typed, nearest, line = null }) => {
    const unknown = `I don’t know what to do with ${shortQuote(`${typed}:`)}.`
    if (nearest === null) return `${unknown} See what goes with this: /help ${command}`
    return `${unknown} Did you mean ${line === null ? `${nearest}:? See: /help ${command}` : `this? ${line}`}`
  },
  option_twice: ({ option }) => `You gave ${option}: twice. Which one should I keep?`,
  option_empty: ({ command, option, line = null }) =>
    `${option}: is empty. What goes there? ${line === null ? `See: /help ${command}` : `For example: ${line}`}`,
  colon_missing: ({ option, line = null }) =>
    `Put a colon after ${shortQuote(option)}${line === null ? `, like ${option}:` : `: ${line}`}`,
  colons_missing: ({ example }) => `Put a colon after each name: ${example}`,
  stray_text: ({ command, text }) =>
    `I don’t know what to do with ${shortQuote(text)}. See what goes with this: /help ${command}`,
  quote_open: ({ option, line = null }) =>
    `The quotation mark after ${option}: has no end.${line === null ? ' Close it with another.' : ` Type: ${line}`}`,
  missing_option: ({ option, example }) =>
    example === null ? askFor(option) : `${askFor(option)} For example: ${example}`,
  syrup_reckoned: ({ example }) => `How much went in? If you followed the plan: ${example}`,
  spirit_or_bottles: ({ examples: [spirit] }) =>
    `How much are you making? Say what spirit you have, how many bottles you want, or “fill a jam jar”. For example: ${spirit}`,
  spirit_strength: ({ line }) => `How strong is it? It’s on the label. ${forExample(line, 'strength:40%')}`,
  strength_twice: () => 'You gave the strength twice. Which one should I keep?',
  bottles_one_way: () => 'Given away or opened? Say one after the other.',
  keeping_of_what: () => `Keep what? For example: ${lineTyped('keeping', { of: 'lemon', strength: '28%' })}`,
  jar_or_liqueur: ({ option, line }) => `The jar already tells me what there is.${without(option, line)}`,
  adjust_to_what: ({ jar, example }) => `What should ${jar} become? For example: ${example}`,
  glass_of_jar: ({ line }) => `Which jar was in that glass?${forInstance(line)}`,
  glass_how_much: ({ line }) => `How much was in the glass?${forInstance(line)}`,
  glass_of_what: ({ line }) => `What did you stir into the glass: sugar, water or spirit?${forInstance(line)}`,
  glass_or_wish: ({ option, line }) => `The glass already tells me what you want.${without(option, line)}`,
  glass_one_sugar: () => 'One kind of sugar in the glass, please.',
  glass_one_spirit: () => 'One spirit in the glass, please, with its strength.',
  jar_or_infusion: ({ option, line }) => `The jar already tells me what there is.${without(option, line)}`,
  code_or_recipe: ({ option, line }) => `The code already says what goes in.${without(option, line)}`,
  sweet_reading: () =>
    'A hydrometer can’t read anything with sugar in it. Use the strength I worked out, without a temperature.',
  ...measureProblems,
  second_alone: ({ option, example }) =>
    `The plants are those of the first jar, so leave ${option}: out. For example: ${example}`,
  second_spirit: ({ example }) => `What goes over them? For example: ${example}`,
  layer_needs_fruit: ({ example }) => `Which fruit is the layer? For example: ${example}`,
  top_up_needs_liquid: ({ example }) => `Topped up with how much of what? For example: ${example}`,
  fruit_dry_sugar: ({ example }) => `Only dry sugar goes on the fruit. How much? For example: ${example}`,
  nothing_given: ({ command, example }) =>
    `${command === 'jar note' ? 'What shall I note?' : 'What have you got?'} For example: ${example}`,
  label_unplanned: ({ jar }) =>
    `I can’t put a strength on the label yet: ${jar} ${isnt(jar)} sweetened. What to do next: ${lineOf(call('jar show', { jar }))}`,
  what_to_correct: ({ example }) => `What was wrong? For example: ${example}`,
  internal: () => 'Sorry, something broke on my side. Please try again.',
  no_line: () => `What should I answer? Put it in quotes after ask: npm run -s ask -- '${PLAN_LINE}'`,
  nothing_said: () => 'Ask me something first. Then “more” tells you the rest.',
  bad_flag: ({ typed, nearest }) =>
    nearest === null
      ? `ask has no flag ${shortQuote(typed)}. See: npm run -s ask -- --help`
      : `ask has no flag ${shortQuote(typed)}. Did you mean ${nearest}?`,
  bad_instant: ({ typed }) =>
    typed === ''
      ? 'What time is it? For example --now 2026-12-24T18:00:00Z.'
      : `--now can’t be ${shortQuote(typed)}. For example --now 2026-12-24T18:00:00Z.`,
  bad_argument: ({ typed, nearest }) =>
    nearest === null
      ? `I don’t know ${shortQuote(typed)}. To chat, type: npm start`
      : `I don’t know ${shortQuote(typed)}. Did you mean ${nearest}?`,
  button_too_old: discordText.tooOld,
  place_closed: discordText.placeClosed,
  bad_zone: ({ typed, nearest }) =>
    nearest === null
      ? `LARDERBELL_ZONE can’t be ${shortQuote(typed)}. For example Europe/London.`
      : `LARDERBELL_ZONE can’t be ${shortQuote(typed)}. Did you mean ${nearest}?`,
  bad_api: ({ typed }) =>
    `DISCORD_API can’t be ${shortQuote(typed)}. For example https://discord.example/api. Or leave it out.`,
  bad_guild: ({ typed }) =>
    `DISCORD_GUILD_ID can’t be ${shortQuote(typed)}. It’s the server’s number, of 17 to 20 digits. Or leave it out.`,
  no_token: () =>
    'I need DISCORD_TOKEN to register the commands. Copy it from the application’s page into the file .env.',
  one_at_a_time: ({ options }) => `Which one: ${eitherOf(options)}? I can only do one at a time.`,
  ...safetyProblems,
  ...fileProblems,
  bad_width: ({ typed, least, most }) =>
    `LARDERBELL_WIDTH can’t be ${shortQuote(typed)}. It’s a number of columns from ${least} to ${most}. Or leave it out.`,
} satisfies {
  readonly [Key in Exclude<keyof ChatProblems, keyof LimitProblems | keyof TalkProblems>]: (
    values: ChatProblems[Key],
    format: Format,
  ) => string
}

type Instead = NonNullable<PlanProblems['steep_too_weak']['instead']>

function wouldDo(instead: Instead): string {
  const { spiritAbvPercent, isSpiritGiven, steepAtPercent, isDilutedFirst, fewerPlants, lessSugar } = instead
  const less = [fewerPlants ? 'less fruit' : '', lessSugar ? 'less sugar' : ''].filter((text) => text !== '')
  const orLess = less.length === 0 ? '' : ` Or use ${either(less)}.`
  if (steepAtPercent !== null) return `Dilute it less, to ${steepAtPercent} %.${orLess}`
  if (spiritAbvPercent !== null) return `Use spirit of ${spiritAbvPercent} %.${orLess}`
  if (less.length > 0) return `Use ${either([...less, ...(isSpiritGiven ? ['more spirit'] : [])])}.`
  return `Use stronger spirit${isDilutedFirst ? ', undiluted,' : ''} and less fruit, or make a weaker drink.`
}

/** Nothing else was named, where there is no line. */
const orWhatElse = (line: string | null | undefined): string => forInstance(line) || ' What else goes in?'

/** What to write for what has its own option. */
const itsOption: {
  readonly [Thing in OtherThing]: (value: string, line: string | null | undefined) => string
} = {
  sugar: (_, line) => `Sugar goes under “sugar”, not with the plants.${orWhatElse(line)}`,
  water: (_, line) => `I work the water out for you, so leave it out.${typeIt(line)}`,
  spirit: (_, line) => `Spirit goes under “spirit”, not with the plants.${orWhatElse(line)}`,
}

/** Why a batch cannot be planned so, and what can. */
export const planProblems = {
  steep_too_weak: ({ instead, ...weak }, format) => {
    const why = `It would steep at ${weakText(weak, format)}. That can ferment and burst the jar.`
    return instead === null ? why : `${why} ${wouldDo(instead)}`
  },
  drink_ferments: ({ abvPercent, sugarGPerL, keepsFromPercent }, format) =>
    `At ${weakText({ abvPercent, sugarGPerL, lowAbvPercent: null }, format, keepsFromPercent)} it can ferment and burst the bottle. Make it ${keepsFromPercent} % or more.`,
  plants_drink_all: ({ plantsG, enoughMl }, format) =>
    `That’s too little spirit: ${format.round.mass(plantsG)} of fruit would soak up nearly all of it.` +
    ` Use about ${format.round.volume(enoughMl)}, or less fruit.`,
  plant_not_weighed: ({ typed }) =>
    `How much is “${typed}”? Give a number or a weight, like 10 lemons or 30 g ginger. Spirit goes under “spirit”.`,
  not_a_plant: ({ thing, value, line }) => itsOption[thing](value, line),
  plant_not_named: ({ typed }) => `“${typed}” of what? Write it after the amount, like 30 g ginger or 8 lemons.`,
  piece_not_weighed: ({ typed, id, typicalGPerL, line }, format) =>
    `I don’t know what “${typed}” weighs. Can you weigh it? A ${format.dose.each} of spirit usually takes ${format.dose.mass(typicalGPerL)} ${cookName(id)}.${forInstance(line)}`,
  plant_twice: ({ id }) =>
    `${id === null ? 'One plant' : capital(cookName(id))} is in there twice. How much is it in all?`,
  bottles_not_read: ({ typed, line }) =>
    `“${typed}”: how many bottles, and what size? ${forExample(line, '4 x 500 ml')}`,
  spirit_out_of_range: ({ wantedMl }, format) =>
    `That spirit can’t fill ${format.volume(exactly(wantedMl))} with so much fruit. Use less fruit, or stronger spirit.`,
  ready_too_soon: ({ readyBy, earliest }, format) =>
    `It can’t be ready by ${format.day(readyBy)}. Even in a hurry it takes until ${format.day(earliest)}.`,
  yes_or_no: ({ typed }) => `“${typed}”: is that yes or no?`,
  ready_by_unknown: ({ name, line }) =>
    `I have no days for ${name}, so I can’t plan for a date.${without('ready-by', line)}`,
} satisfies Written<PlanProblems>
