import { pouredMl, weighedG } from '../../../core/recipe/tool-precision.ts'
import type { ChatProblems } from '../../chat/chat-error.ts'
import type { LimitProblems } from '../../chat/limit-problems.ts'
import { discordText } from './discord.ts'
import { fileProblems } from './file-problems.ts'
import { safetyProblems } from './jar/safety-problems.ts'

/** What a person typed, between quotation marks and not too much of it. */
const quote = (typed: string): string => `“${typed.length > 40 ? `${typed.slice(0, 39)}…` : typed}”`

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
        ? `There is no command ${quote(typed)}; /help lists them.`
        : `There is no command ${quote(typed)}; did you mean /${nearest}?`
    return isSentence ? `${unknown} If somebody’s hurt, type: emergency` : unknown
  },
  unknown_option: ({ command, typed, nearest, known }) =>
    nearest === null
      ? `/${command} has no option ${quote(`${typed}:`)}; it ${takes(known)}.`
      : `/${command} has no option ${quote(`${typed}:`)}; did you mean ${nearest}:?`,
  option_twice: ({ command, option }) => `${option}: is given twice; /${command} takes it once.`,
  option_empty: ({ command, option }) =>
    `Nothing stands after ${option}:; give it a value or leave it out (/help ${command} says what belongs there).`,
  colon_missing: ({ command, option }) =>
    `Put a colon after ${quote(option)}, as in ${option}:…, so that /${command} knows it for an option.`,
  stray_text: ({ command, text, known }) => `${quote(text)} belongs to no option; /${command} ${takes(known)}.`,
  quote_open: ({ option }) => `The double quote after ${option}: is not closed; end the value with " and a space.`,
  missing_option: ({ command, option, example }) =>
    example === null
      ? `/${command} also needs ${option}:.`
      : `/${command} also needs ${option}:, for example ${example}`,
  syrup_reckoned: ({ name, sugarG, waterMl, example }) => {
    const amounts = [
      ...(sugarG > 0 ? [`${weighedG(sugarG)}\u00a0g sugar`] : []),
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
  nothing_given: ({ command, example }) => `/${command} needs something to work with, for example ${example}`,
  label_unplanned: ({ jar }) =>
    `The ${jar} jar is not sweetened yet and what it is to become was not planned, so a label cannot tell its strength; sweeten or bottle it first.`,
  what_to_correct: ({ options, example }) => `Say what to put right, one of ${list(options)}; for example ${example}`,
  internal: () => 'Sorry, something went wrong inside me and I have no answer to that.',
  no_line: () => 'Give a command in quotes after ask, or - to read commands from standard input.',
  bad_flag: ({ typed, nearest }) =>
    nearest === null
      ? `ask has no flag ${quote(typed)}; it takes --json, --now and --help.`
      : `ask has no flag ${quote(typed)}; did you mean ${nearest}?`,
  bad_instant: ({ typed }) =>
    typed === ''
      ? '--now needs an instant such as 2026-12-24T18:00:00Z.'
      : `--now cannot be ${quote(typed)}; give an instant such as 2026-12-24T18:00:00Z.`,
  bad_argument: ({ typed, nearest }) =>
    nearest === null
      ? `I do not know ${quote(typed)}; start me with nothing for a chat, with ask and a command, or with register.`
      : `I do not know ${quote(typed)}; did you mean ${nearest}?`,
  button_too_old: discordText.tooOld,
  place_closed: discordText.placeClosed,
  bad_zone: ({ typed, nearest }) =>
    nearest === null
      ? `LARDERBELL_ZONE cannot be ${quote(typed)}; give a time zone such as Europe/Rome, or leave it out.`
      : `LARDERBELL_ZONE cannot be ${quote(typed)}; did you mean ${nearest}?`,
  bad_api: ({ typed }) =>
    `DISCORD_API cannot be ${quote(typed)}; give an address that begins with https:// (or http:// on this machine), such as https://discord.example/api, or leave it out.`,
  bad_guild: ({ typed }) =>
    `DISCORD_GUILD_ID cannot be ${quote(typed)}; give the server’s number of 17 to 20 digits, or leave it out.`,
  no_token: () =>
    'I need DISCORD_TOKEN to register the commands: copy it from the application’s page into the file .env.',
  one_at_a_time: ({ command, options }) => `Give /${command} one of ${list(options)} at a time.`,
  ...safetyProblems,
  ...fileProblems,
  bad_width: ({ typed, least, most }) =>
    `LARDERBELL_WIDTH cannot be ${quote(typed)}; give a whole number of columns from ${least} to ${most}, or leave it out.`,
} satisfies {
  readonly [Key in Exclude<keyof ChatProblems, keyof LimitProblems>]: (values: ChatProblems[Key]) => string
}
