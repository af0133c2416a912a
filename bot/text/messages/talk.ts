import type { JarEntry } from '../../../core/jar/entry/entry.ts'
import type { FreezerState } from '../../../core/liquid/freezer.ts'
import type { IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { Targets } from '../../../core/recipe/targets.ts'
import type { SymptomId } from '../../../core/trouble/symptoms.ts'
import type { Path } from '../../calls/signatures.ts'
import type {
  ConvertedSaid,
  GlassesThere,
  KindTaken,
  OfferedWay,
  PouredFor,
  TastingAsked,
  YieldThere,
} from '../../talk/frames/reading.ts'
import type { HandbookId } from './handbook.ts'
import type { Plain } from './plain.ts'

export interface TalkMessages {
  headlines: Plain<'talk_greeting' | 'talk_thanks' | 'talk_right' | 'talk_let_be' | 'talk_driest'> & {
    /** An amount, and how many it is of a unit, by its key. */
    talk_converted: Omit<ConvertedSaid, 'assumed'>
    handbook_entry: { readonly entry: HandbookId }
    /** Said first of a jar, because it was asked. */
    asked_freezer: { readonly name: string; readonly state: FreezerState }
    /** Of a jar that is past its syrup. */
    asked_enough: { readonly name: string; readonly sugarGPerL: number }
    asked_yield: YieldThere & { readonly name: string }
    /** The days it is strained on as planned; null where nobody knows. */
    asked_taken_out: {
      readonly name: string
      readonly from: IsoDay | null
      readonly by: IsoDay | null
      readonly today: IsoDay
    }
    asked_tasting: TastingAsked & { readonly name: string; readonly today: IsoDay }
    asked_glasses: GlassesThere & { readonly name: string }
    /** A drink that was worked out anew with another strength or sweetness. */
    drink_changed: { readonly was: Targets; readonly now: Targets }
  }
  sure: {
    handbook_source: { readonly entry: HandbookId }
  }
  actions: {
    /** The command of the line that goes on from there. */
    handbook_next: { readonly command: Path }
  }
  notes: Plain<'sugar_to_taste' | 'start_ahead' | 'day_open'> & {
    /** Words that were neither used nor of no weight, as they were typed. */
    handbook_more: { readonly entries: readonly HandbookId[] }
    left_out: { readonly words: readonly string[] }
    /** The option as it was taken. */
    spirit_taken: { readonly spirit: string }
    kind_taken: KindTaken
    vessels_taken: { readonly vessels: readonly { readonly name: string; readonly ml: number }[] }
    unmeasured: undefined
    bottles_taken: undefined
    sugar_guessed: undefined
    jar_open: undefined
    strength_open: undefined
    /** What was told of a plan before bottles were wished: how many it fills, and for how many this one is. */
    amounts_replaced: { readonly typed: string; readonly filled: number; readonly wished: number }
    /** Glasses for people; `glasses` of each. */
    poured_for: {
      readonly people: number
      readonly glasses: number
      readonly glassMl: number
      readonly volumeMl: number
    }
    /** The same, with the bottles that it takes. */
    poured_bottles: PouredFor
    /** Glasses that a plan makes. */
    glasses_there: GlassesThere
  }
}

/** What a sentence lacks, or why it is not done; each names lines that run. */
export interface TalkProblems {
  /** `line`: the whole of it, with an example for what is lacking; null where none would run. */
  talk_lacks: {
    readonly command: string
    readonly option: string
    readonly line: string | null
    /** Another answer, where there is one. */
    readonly other: string | null
  }
  talk_which_jar: { readonly names: readonly string[]; readonly line: string | null }
  /** Jobs of a reminder or a list, by the command that says that one is done; a name of null: of all jars. */
  talk_which_done: {
    readonly jobs: readonly { readonly command: Path; readonly name: string | null }[]
    readonly line: string | null
  }
  talk_not_so: { readonly symptom: SymptomId; readonly line: string }
  talk_jar_size: Record<string, never>
  talk_jar_of_what: Record<string, never>
  talk_two_drinks: { readonly lines: readonly string[] }
  talk_which_reading: { readonly lines: readonly string[] }
  talk_which_offered: { readonly ways: readonly OfferedWay[] }
  talk_number: { readonly typed: string; readonly line: string }
  /** Asked or told? Nothing was recorded. */
  talk_told: { readonly line: string }
  /** `jar` and `line`: where a jar can be asked about on that day; `reminders` shows them, or moves them all. */
  talk_one_reminder: {
    readonly jar: string | null
    readonly line: string | null
    readonly reminders: string | null
    readonly moves: boolean
    /** Not asked to be reminded of, but told as still to be done. */
    readonly isMeant: boolean
  }
  /** `step`: the command that recorded it. */
  talk_undo_step: { readonly jar: string; readonly step: string; readonly line: string }
  /** `last` came after the step of the command `wanted`, or that was never done. */
  talk_undo_first: {
    readonly jar: string
    readonly last: JarEntry['kind'] | null
    readonly wanted: string
    readonly line: string
  }
  /** The last entry told of a danger. */
  talk_undo_told: { readonly jar: string; readonly told: string; readonly line: string }
  /** Another one was told of; without a line where more has to be said first. */
  talk_only_jar: { readonly jar: string; readonly line: string | null }
  talk_undo_jar: {
    readonly names: readonly string[]
    readonly line: string
    readonly told: readonly { readonly jar: string; readonly told: string }[]
  }
  /** A wish of no recipe that was said. */
  talk_wish_of_what: { readonly line: string }
  talk_zone_of: { readonly place: string; readonly line: string }
  talk_only_typed: { readonly command: string; readonly jar: string | null; readonly line: string }
  /** `isSentence`: it may tell of somebody hurt. */
  talk_lost: { readonly lines: readonly string[]; readonly isSentence: boolean }
  /** Said behind something else, and not done; `isOfNone`: no jar is there that it could be of. */
  talk_set_aside: { readonly words: string; readonly isOfNone: boolean }
  talk_no_last: Record<string, never>
}

declare module '../language.ts' {
  interface MessagesByFeature {
    readonly talk: TalkMessages
  }
}
