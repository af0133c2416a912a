import type { MaterialId } from '../../../core/quantity/materials.ts'
import type { FileProblems } from './file-problems.ts'
import type { Lacking } from './lacking.ts'
import type { LimitProblems } from './limit-problems.ts'
import type { SafetyProblems } from './safety-problems.ts'
import type { TalkProblems } from './talk.ts'

/** The whole line as it was meant, where it was tried and runs. */
interface Meant {
  readonly line?: string | null
}

/** What can be wrong with a line or its surroundings, by key, with the values its sentence needs. */
export interface ChatProblems extends FileProblems, LimitProblems, SafetyProblems, TalkProblems {
  empty_line: Record<string, never>
  line_too_long: { length: number; limit: number }
  control_characters: Record<string, never>
  /** `isSentence`: it was not meant as a command, and may tell of somebody hurt. */
  unknown_command: Meant & { typed: string; nearest: string | null; isSentence?: boolean }
  unknown_option: Meant & { command: string; typed: string; nearest: string | null; known: readonly string[] }
  option_twice: { command: string; option: string }
  option_empty: Meant & { command: string; option: string }
  /** `spirit 1 l`: the name of an option without its colon. */
  colon_missing: Meant & { command: string; option: string }
  colons_missing: { example: string }
  stray_text: { command: string; text: string; known: readonly string[] }
  quote_open: Meant & { command: string; option: string }
  /** `jar`: the one that was named; `example` is empty where no line of the kind would run. */
  missing_option: { command: string; option: string; example: string | null; jar?: string }
  /** A sweetening without amounts, of a jar for which they are worked out; `example`: the whole line. */
  syrup_reckoned: {
    name: string
    sweetener: MaterialId
    filler: MaterialId | null
    sugarG: number
    waterMl: number
    example: string
  }
  /** A plan without anything that tells how much of it; whole lines. */
  spirit_or_bottles: { examples: readonly [spirit: string, bottles: string] }
  /** An amount of spirit without its strength. */
  spirit_strength: Meant
  /** A strength beside the spirit and in `strength:`. */
  strength_twice: Record<string, never>
  /** A measured strength and what would tell the expected one. */
  /** Bottles given away or opened, of no jar; and both at once. */
  bottles_one_way: Record<string, never>
  keeping_of_what: Record<string, never>
  /** A jar, and what else would tell of a liqueur. */
  jar_or_liqueur: { option: string; line?: string | null }
  /** A jar to be put right without what it is to become; `example`: a whole line. */
  adjust_to_what: { jar: string; example: string }
  /** A glass that was tried, of no jar. */
  glass_of_jar: { line?: string | null }
  /** What went into a glass without how much was in it, and the other way round. */
  glass_how_much: { line?: string | null }
  glass_of_what: { line?: string | null }
  glass_or_wish: { option: string; line?: string | null }
  glass_one_spirit: Record<string, never>
  glass_one_sugar: Record<string, never>
  /** A jar, and what else would tell of an infusion. */
  jar_or_infusion: { option: string; line?: string | null }
  /** A batch's code, and what else would tell of its recipe. */
  code_or_recipe: { option: string; line?: string | null }
  label_unplanned: { jar: string }
  /** A hydrometer's reading of a liqueur with sugar in it. */
  sweet_reading: Record<string, never>
  /** A reading of `/measure` that needs another beside it; `example`: a whole line. */
  measure_more: { have: string; example: string }
  measure_one_way: { example: string }
  /** The second reading below the first. */
  boiled_lighter: { example: string }
  /** A command whose options may all be left out, but not together. */
  /** What tells of fresh plants, beside plants that steep once more. */
  second_alone: { option: string; example: string }
  second_spirit: { example: string }
  layer_needs_fruit: { example: string }
  top_up_needs_liquid: { example: string }
  /** Water beside the sugar, or no amount of it. */
  fruit_dry_sugar: { example: string }
  nothing_given: { command: string; example: string }
  /** A correction that says nothing; `example`: a whole line. */
  what_to_correct: { options: readonly string[]; example: string }
  internal: Record<string, never>
  no_line: Record<string, never>
  /** More is asked for, of what nobody knows any more. */
  nothing_said: Record<string, never>
  bad_flag: { typed: string; nearest: string | null }
  bad_instant: { typed: string }
  bad_argument: { typed: string; nearest: string | null }
  /** A button whose line is no longer kept. */
  button_too_old: { path: string }
  /** A place that was chosen for reminders. */
  place_closed: { lacking: readonly Lacking[] }
  /** Of the environment; no zone that is known. */
  bad_zone: { typed: string; nearest: string | null }
  /** Of the environment; neither https nor this machine. */
  bad_api: { typed: string }
  /** Of the environment; no number of a server. */
  bad_guild: { typed: string }
  /** Registering commands without DISCORD_TOKEN. */
  no_token: Record<string, never>
  /** Options that do not go together. */
  one_at_a_time: { command: string; options: readonly string[] }
  bad_width: { typed: string; least: number; most: number }
}
