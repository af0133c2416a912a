import { exactly } from '../../../core/quantity/measured/measured.ts'
import type { QuantityProblems, UnitKind, Wanted } from '../../../core/quantity/problems.ts'
import type { DateSide } from '../../../core/quantity/quantities.ts'
import type { OtherThing } from '../../../core/recipe/plan/other-than-plants.ts'
import type { PlanProblems } from '../../../core/recipe/plan/problems.ts'
import { pouredMl, weighedG } from '../../../core/recipe/tool-precision.ts'
import type { Written } from '../language.ts'
import type { ChatProblems } from '../messages/chat-problems.ts'
import type { LimitProblems } from '../messages/limit-problems.ts'
import { discordText } from './discord.ts'
import { safetyProblems, weakText } from './jar-problems.ts'
import { measureProblems } from './measure.ts'
import { fileProblems } from './notebook-file.ts'
import { dayText, MONTHS, WEEKDAYS } from './phrases.ts'
import { sweetenerName } from './sweeteners.ts'
import { plantName } from './words.ts'

const inQuotes = (text: string): string => `“${text}”`

/** What is accepted, after "give". */
const accepted: { readonly [Key in Wanted]: string } = {
  volume: 'a volume of 0.1 ml to 1,000 l, such as 750 ml or 2 cups',
  mass: 'a weight of 0.01 g to 1,000 kg, such as 500 g or 1 lb 4 oz',
  amount: 'a volume of 0.1 ml to 1,000 l or a weight of 0.01 g to 1,000 kg, such as 750 ml or 500 g',
  sugar: 'what sweetens by weight, 0.01 g to 1,000 kg, or by volume, such as 500 g, 2 cups or 300 g honey',
  sweetener: 'what sweetens, such as honey',
  strength: '0.1 to 97 % vol, such as 95% or 190 proof',
  sweetness: '0 to 1,200 g/L, such as 250 g/L, or dry, everyday or rich',
  temperature: '−30 to 100 °C, such as 20 C or 68 F',
  ratio: 'sugar to water by weight, 0.01 to 20, such as 1:1 or 2:1',
  span: '1 hour to 20 years, such as 25 days or 2 months',
  date: 'a day such as 24 December, 2026-12-24 or Saturday',
  count: '0.1 to 10,000 pieces, such as 10 lemons or 1 stick cinnamon',
  plant: 'plants by weight or by the piece, such as 10 lemons or 30 g ginger',
  part: 'liquids joined with +, such as 750 ml 75.5% + 375 ml 40%',
  hydrometer: 'what your hydrometer shows, such as 1.035, 8.7 Brix, 4.9 Baumé or 23%',
  brix: 'what your refractometer shows, 0 to 85 Brix, such as 26.5',
}

/** The units, after "use". */
const units: { readonly [Key in Wanted]: string } = {
  volume: 'ml, cl, dl, l, tsp, tbsp, cup, fl oz, pint, quart or gallon (imp before the last four for imperial)',
  mass: 'mg, g, kg, oz or lb',
  amount: 'ml, cl, dl, l, cup, tbsp, tsp, fl oz, pint, quart or gallon, or g, kg, oz, lb',
  sugar: 'g, kg, oz or lb, or cup, tbsp, ml',
  sweetener: 'the name alone, such as honey',
  strength: '%, °, gradi or proof',
  sweetness: 'g/L or g/100 ml',
  temperature: 'C or F',
  ratio: 'numbers alone, such as 2:1',
  span: 'hours, days, weeks, months or years',
  date: 'days, weeks, months or years',
  count: 'pieces, such as 10 lemons',
  plant: 'g, kg, oz or lb, or pieces, such as 10 lemons',
  part: 'ml, cl, dl, l, cup, fl oz, pint, quart or gallon, or g, kg, lb; % for strength, g/L for sweetness',
  hydrometer: 'SG, Brix, Baumé or %',
  brix: 'Brix',
}

const names: { readonly [Key in Wanted]: string } = {
  volume: 'volume',
  mass: 'weight',
  amount: 'amount',
  sugar: 'amount of sugar',
  sweetener: 'sweetener',
  strength: 'strength',
  sweetness: 'sweetness',
  temperature: 'temperature',
  ratio: 'ratio',
  span: 'length of time',
  date: 'date',
  count: 'count',
  plant: 'amount',
  part: 'amount',
  hydrometer: 'hydrometer reading',
  brix: 'Brix reading',
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
    `${inQuotes(typed)} is too long: give a value of at most ${maxCharacters} characters.`,
  hidden_characters: ({ typed }) =>
    `${inQuotes(typed)} holds invisible characters: type it again in plain letters, digits and spaces.`,
  foreign_digits: ({ typed }) => `${inQuotes(typed)} holds digits I cannot read: type them as 0 to 9.`,
  no_number: ({ typed, wanted }) => `${inQuotes(typed)} holds no number where I need one: give ${accepted[wanted]}.`,
  bad_number: ({ typed, number }) =>
    `I cannot read the number ${inQuotes(number)} in ${inQuotes(typed)}: type it such as 1.5, 1,5, 1 1/2 or 1500.`,
  exponent_number: ({ typed, wanted }) =>
    `${inQuotes(typed)} has an exponent: write the number out and give ${accepted[wanted]}.`,
  negative_number: ({ typed, wanted }) => `${inQuotes(typed)} is below zero: give ${accepted[wanted]}.`,
  no_unit: ({ typed, wanted }) => `${inQuotes(typed)} has no unit: use ${units[wanted]}.`,
  unknown_unit: ({ typed, unit, wanted }) =>
    `I do not know the unit ${inQuotes(unit)} in ${inQuotes(typed)}: use ${units[wanted]}.`,
  wrong_kind: ({ typed, got, wanted }) => `${inQuotes(typed)} has the unit of ${kinds[got]}: give ${accepted[wanted]}.`,
  out_of_range: ({ typed, wanted }) =>
    `${inQuotes(typed)} is no ${names[wanted]} I can take: give ${accepted[wanted]}.`,
  unexpected_text: ({ typed, extra, wanted }) =>
    ['amount', 'volume', 'mass'].includes(wanted) && /^(?:(?:at|@) ?)?\d[\d.,]* ?%/.test(extra)
      ? `A strength has its own option: take ${inQuotes(extra)} out of ${inQuotes(typed)} and write strength:${extra.replace(/^\D+/, '')}.`
      : `I do not understand ${inQuotes(extra)} in ${inQuotes(typed)}: give ${accepted[wanted]}.`,
  wide_plus_minus: ({ typed }) =>
    `The ± in ${inQuotes(typed)} is larger than the value: give a smaller one, such as 930±5 ml, or leave it out.`,
  said_twice: ({ typed, kind }) =>
    `${inQuotes(typed)} gives the ${kind} of one liquid twice: give it once, and join several liquids with +.`,
  other_sweetener: ({ typed, sweetener }) =>
    `${inQuotes(sweetener)} in ${inQuotes(typed)} is no sweetener I can work with. I know sugar, demerara, muscovado, honey, 1:1 and 2:1` +
    ' syrup, and maple, agave, golden, date, glucose and invert syrup. Which will you take instead? 500 g honey',
  which_syrup: ({ typed, choices }) =>
    `${inQuotes(typed)}: how was that syrup made? Type ${choices.slice(0, -1).join(', ')} or ${choices.at(-1)}.`,
  amount_worked_out: ({ typed, fix, line }) =>
    `${inQuotes(typed)}: I work that amount out. Say only what it is: ${line ?? fix}`,
  one_sweetener: ({ typed }) =>
    `${inQuotes(typed)} names two sweeteners without amounts. Which one is to sweeten it? honey`,
  dangling_plus: ({ typed }) =>
    `Something is missing beside a + in ${inQuotes(typed)}: write one thing on each side of it.`,

  two_readings: ({ typed, choices: [one, other] }) =>
    `${inQuotes(typed)}: is that ${one} or ${other}? Type one of the two.`,
  which_scale: ({ typed, choices: [brix, baume, percent] }) =>
    `${inQuotes(typed)}: on which scale? Type ${brix}, ${baume} or ${percent}, as your hydrometer has it.`,
  us_or_uk_proof: ({ typed, choices: [us, uk], percents }) =>
    `${inQuotes(typed)}: in America that’s ${Number(percents[0].toFixed(1))} % vol, on an old British bottle ${Number(percents[1].toFixed(1))} %. Type ${us} or ${uk}.`,
  fraction_or_percent: ({ typed, choices: [one, other] }) =>
    `${inQuotes(typed)}: is that ${one} or ${other}? Type ${one} or ${other}.`,
  ounces: ({ typed, fluid, weight }) =>
    weight === null
      ? `${inQuotes(typed)}: are those fluid ounces? Type ${fluid} or another volume, such as 750 ml.`
      : `${inQuotes(typed)}: are those fluid ounces or a weight? Type ${fluid} or ${weight}.`,
  bottle_without_size: ({ typed }) =>
    `${inQuotes(typed)}: how much is in a bottle? Give the volume on its label, such as 700 ml; of several, all together.`,
  freezer_out_of_range: ({ typed }) =>
    `${inQuotes(typed)} is no freezer I know. How cold is yours? Type /settings freezer:-18 C`,
  celsius_or_fahrenheit: ({ typed, choices: [celsius, fahrenheit] }) =>
    `${inQuotes(typed)}: is that ${celsius} or ${fahrenheit}? Type it with C or F.`,
  day_or_month: ({ typed, days }) =>
    `${inQuotes(typed)}: is that ${days.map(dayName).join(' or ')}? Type the month as a word, such as 24 December.`,

  no_date: ({ typed, side }) => `${inQuotes(typed)} is no date I can read: give ${acceptedDay[side]}.`,
  no_such_day: ({ typed, side }) => `There is no such day as ${inQuotes(typed)}: give ${acceptedDay[side]}.`,
  other_weekday: ({ typed, day, weekday }) =>
    `${inQuotes(typed)} does not go together: ${dayText(day)} is a ${WEEKDAYS[weekday]}. Which one is it?`,
  no_clock_time: ({ typed }) => `${inQuotes(typed)} is no time of day I can read: give it as 9, 09:00, 9 am or 18.30.`,
  date_too_far: ({ typed, fromYear, toYear }) =>
    `${inQuotes(typed)} is too far away: give a day in the years ${fromYear} to ${toYear}.`,

  offset_zone: ({ typed }) => `${inQuotes(typed)} is an offset and knows no summer time: give ${acceptedZone}.`,
  unknown_zone: ({ typed, nearest }) =>
    nearest.length === 0
      ? `I know no time zone ${inQuotes(typed)}: name the nearest big city, such as Rome, or give a name such as Europe/Rome, or UTC.`
      : `I know no time zone ${inQuotes(typed)}; did you mean ${nearest.join(' or ')}?`,
  unknown_units: ({ typed }) => `${inQuotes(typed)} are no units I know: give metric, us, imperial, or “as typed”.`,
} satisfies Written<QuantityProblems>

/** What a person typed, between quotation marks and not too much of it. */
const shortQuote = (typed: string): string => `“${typed.length > 40 ? `${typed.slice(0, 39)}…` : typed}”`

const list = (names: readonly string[]): string => names.map((name) => `${name}:`).join(', ')

const takes = (known: readonly string[]): string => (known.length === 0 ? 'takes no options' : `takes ${list(known)}`)

/** What was wrong with a line, what is accepted, and the nearest name. */
export const chatProblems = {
  empty_line: () => 'There is no command here; /help lists them.',
  line_too_long: ({ length, limit }) => `This line has ${length} characters; at most ${limit} are read.`,
  control_characters: () => 'This line holds invisible control characters; type it again as plain text on one line.',
  unknown_command: ({ typed, nearest, isSentence = false }) => {
    const unknown =
      nearest === null
        ? `There is no command ${shortQuote(typed)}; /help lists them.`
        : `There is no command ${shortQuote(typed)}; did you mean /${nearest}?`
    return isSentence ? `${unknown} If somebody’s hurt, type: emergency` : unknown
  },
  unknown_option: ({ command, typed, nearest, known }) =>
    nearest === null
      ? `/${command} has no option ${shortQuote(`${typed}:`)}; it ${takes(known)}.`
      : `/${command} has no option ${shortQuote(`${typed}:`)}; did you mean ${nearest}:?`,
  option_twice: ({ command, option }) => `${option}: is given twice; /${command} takes it once.`,
  option_empty: ({ command, option }) =>
    `Nothing stands after ${option}:; give it a value or leave it out (/help ${command} says what belongs there).`,
  colon_missing: ({ command, option }) =>
    `Put a colon after ${shortQuote(option)}, as in ${option}:…, so that /${command} knows it for an option.`,
  colons_missing: ({ example }) => `Put a colon after each name: ${example}`,
  stray_text: ({ command, text, known }) => `${shortQuote(text)} belongs to no option; /${command} ${takes(known)}.`,
  quote_open: ({ option }) => `The double quote after ${option}: is not closed; end the value with " and a space.`,
  missing_option: ({ command, option, example }) =>
    example === null
      ? `/${command} also needs ${option}:.`
      : `/${command} also needs ${option}:, for example ${example}`,
  syrup_reckoned: ({ name, sweetener, sugarG, waterMl, example }) => {
    const amounts = [
      ...(sugarG > 0 ? [`${weighedG(sugarG)}\u00a0g ${sweetenerName(sweetener)}`] : []),
      ...(waterMl > 0 ? [`${pouredMl(waterMl)}\u00a0ml water`] : []),
    ]
    return `Say what went in. For ${name} I reckoned ${amounts.join(' and ')}: ${example}`
  },
  spirit_or_bottles: ({ examples: [spirit, bottles] }) =>
    `How much is it to be? Say the spirit you have, as in ${spirit}, or how many bottles to fill, as in ${bottles}`,
  spirit_strength: () => 'How strong is the spirit? Say it beside the amount, as in 1 l 40%, or by itself (strength:).',
  strength_twice: () => 'The strength stands beside the spirit and by itself (strength:) as well; give it once.',
  strength_or_plants: () =>
    'Give the strength you measured, or what went in (of: and spirit:) to have it estimated; not both.',
  jar_or_infusion: ({ option }) =>
    `jar: tells what the infusion is, so ${option}: is one too many; leave one of the two out.`,
  code_or_recipe: ({ option }) =>
    `from: tells what goes into the jar, so ${option}: is one too many; leave one of the two out.`,
  sweet_reading: () =>
    'A hydrometer cannot read a sweet liqueur: 10 g/L of sugar moves it by 2 to 3.5 % vol. Give the strength you computed, without a temperature.',
  ...measureProblems,
  nothing_given: ({ command, example }) => `/${command} needs something to work with, for example ${example}`,
  label_unplanned: ({ jar }) =>
    `The ${jar} jar is not sweetened yet and what it is to become was not planned, so a label cannot tell its strength; sweeten or bottle it first.`,
  what_to_correct: ({ options, example }) => `Say what to put right, one of ${list(options)}; for example ${example}`,
  internal: () => 'Sorry, something went wrong inside me and I have no answer to that.',
  no_line: () => 'Give a command in quotes after ask, or - to read commands from standard input.',
  nothing_said: () => 'Ask me something first. Then “more” tells you the rest.',
  bad_flag: ({ typed, nearest }) =>
    nearest === null
      ? `ask has no flag ${shortQuote(typed)}; it takes --json, --now and --help.`
      : `ask has no flag ${shortQuote(typed)}; did you mean ${nearest}?`,
  bad_instant: ({ typed }) =>
    typed === ''
      ? '--now needs an instant such as 2026-12-24T18:00:00Z.'
      : `--now cannot be ${shortQuote(typed)}; give an instant such as 2026-12-24T18:00:00Z.`,
  bad_argument: ({ typed, nearest }) =>
    nearest === null
      ? `I do not know ${shortQuote(typed)}; start me with nothing for a chat, with ask and a command, or with register.`
      : `I do not know ${shortQuote(typed)}; did you mean ${nearest}?`,
  button_too_old: discordText.tooOld,
  place_closed: discordText.placeClosed,
  bad_zone: ({ typed, nearest }) =>
    nearest === null
      ? `LARDERBELL_ZONE cannot be ${shortQuote(typed)}; give a time zone such as Europe/Rome, or leave it out.`
      : `LARDERBELL_ZONE cannot be ${shortQuote(typed)}; did you mean ${nearest}?`,
  bad_api: ({ typed }) =>
    `DISCORD_API cannot be ${shortQuote(typed)}; give an address that begins with https:// (or http:// on this machine), such as https://discord.example/api, or leave it out.`,
  bad_guild: ({ typed }) =>
    `DISCORD_GUILD_ID cannot be ${shortQuote(typed)}; give the server’s number of 17 to 20 digits, or leave it out.`,
  no_token: () =>
    'I need DISCORD_TOKEN to register the commands: copy it from the application’s page into the file .env.',
  one_at_a_time: ({ command, options }) => `Give /${command} one of ${list(options)} at a time.`,
  ...safetyProblems,
  ...fileProblems,
  bad_width: ({ typed, least, most }) =>
    `LARDERBELL_WIDTH cannot be ${shortQuote(typed)}; give a whole number of columns from ${least} to ${most}, or leave it out.`,
} satisfies {
  readonly [Key in Exclude<keyof ChatProblems, keyof LimitProblems>]: (values: ChatProblems[Key]) => string
}

type Instead = NonNullable<PlanProblems['steep_too_weak']['instead']>

function wouldDo(instead: Instead): string {
  const { spiritAbvPercent, isSpiritGiven, steepAtPercent, isDilutedFirst, fewerPlants, lessSugar } = instead
  const spirit = isSpiritGiven ? 'As much spirit' : 'Spirit'
  const fewer = `${fewerPlants ? ', or fewer plants' : ''}${lessSugar ? ', or less sugar' : ''}`
  if (steepAtPercent !== null) return `Bring it down less: steep-at:${steepAtPercent}% would do${fewer}.`
  if (spiritAbvPercent !== null) return `${spirit} of ${spiritAbvPercent} % vol would do${fewer}.`
  if (fewerPlants || lessSugar) {
    const less = [fewerPlants ? 'fewer plants' : '', lessSugar ? 'less sugar' : ''].filter((text) => text !== '')
    return `Take ${less.join(' or ')}${isSpiritGiven ? ', or more spirit' : ''}.`
  }
  const rest = `${isDilutedFirst ? ', without steep-at:,' : ''} and ask for fewer plants or a weaker drink too`
  return `No one change will do: take stronger spirit${rest}.`
}

/** What to write for what has its own option. */
const itsOption: { readonly [Thing in OtherThing]: (value: string) => string } = {
  sugar: (value) => `take it out and write sugar:${value || '500 g'}`,
  water: (value) =>
    `leave it out. A plan works its water out, and steep-at: thins the spirit first; /jar add takes water:${value || '500 ml'}`,
  spirit: (value) =>
    `take it out and write spirit:${value || '1 l 40%'}${value === '' || /[%°]|proof/i.test(value) ? '' : ' and its strength, such as 40%'}`,
}

/** Why a batch cannot be planned so, and what can. */
export const planProblems = {
  steep_too_weak: ({ instead, ...weak }) => {
    const why = `It would steep at ${weakText(weak)}. That can ferment, and a closed jar of it can burst.`
    return instead === null ? why : `${why} ${wouldDo(instead)}`
  },
  drink_ferments: ({ abvPercent, sugarGPerL, keepsFromPercent }) =>
    `At ${weakText({ abvPercent, sugarGPerL, lowAbvPercent: null })} it can ferment, and a closed bottle of it can burst. From ${keepsFromPercent} % vol it keeps.`,
  plants_drink_all: ({ plantsG, liquidMl, enoughMl }, format) =>
    `${format.mass({ value: plantsG, plusMinus: plantsG * 0.02 })} of plants would keep nearly all of ${format.volume(exactly(liquidMl))};` +
    ` take about ${format.volume({ value: enoughMl, plusMinus: enoughMl * 0.05 })} of spirit, or fewer plants.`,
  plant_not_weighed: ({ typed }) =>
    `“${typed}” says no weight, and plants are too unlike to guess one: weigh it, as in 30 g ginger.`,
  not_a_plant: ({ typed, thing, value }) => `“${typed}” is no plant: ${itsOption[thing](value)}.`,
  plant_not_named: ({ typed }) =>
    `“${typed}” names no plant: write it after the amount, as in 30 g ginger or 8 lemons.`,
  piece_not_weighed: ({ typed, id, typicalGPerL }, format) =>
    `I don’t know what “${typed}” weighs, so weigh it. Of ${plantName(id)}, ${format.plain(typicalGPerL)} g in a litre of spirit is usual.`,
  plant_twice: ({ typed, id }) =>
    `“${typed}” names ${id === null ? 'a plant' : plantName(id)} a second time: give it once, with its whole amount.`,
  bottles_not_read: ({ typed }) => `“${typed}” are no bottles I can read: write 4 x 500 ml, 4, or 500 ml.`,
  spirit_out_of_range: ({ wantedMl }, format) =>
    `No amount of such a spirit fills ${format.volume(exactly(wantedMl))} with these plants: take fewer of them or a stronger spirit.`,
  ready_too_soon: ({ readyBy, earliest }, format) =>
    `It cannot be ready by ${format.day(readyBy)}: even with a short steep and a week’s rest the earliest day is ${format.day(earliest)}.`,
  yes_or_no: ({ typed }) => `“${typed}” is neither yes nor no: write one of them.`,
  ready_by_unknown: ({ name }) =>
    `I do not know “${name}”, so I cannot plan towards a day with it: leave out ready-by:.`,
} satisfies Written<PlanProblems>
