import type { FiningId } from '../../label/fining.ts'
import type { Measured } from '../../quantity/measured/measured.ts'
import type { IsoDay } from '../../quantity/time/calendar-day.ts'
import type { HappeningKind } from '../entry/entry.ts'
import type { BadName } from '../entry/jar-name.ts'
import type { Stage } from './jar-state.ts'

/** What can be wrong with jars. */
export interface JarProblems {
  /** `did` cannot follow; `first` is what has to come before it, or null where it is too late for it. */
  cannot_follow: {
    readonly jar: string
    readonly did: HappeningKind
    readonly stage: Stage
    readonly first: HappeningKind | null
    /** The day of the entry in its way. */
    readonly day: IsoDay | null
    /** The jar into which all of it was poured. */
    readonly into?: string
  }
  /** More is to be poured out of a jar than there is. */
  pour_too_much: { readonly jar: string; readonly volumeMl: Measured }
  /** All of a jar is to be poured into a new one. */
  split_all: { readonly jar: string }
  /** A jar is to be poured into itself. */
  pour_same_jar: { readonly jar: string }
  /** Some of a jar goes into another, and what they become has no name. */
  pour_where: { readonly jar: string; readonly other: string; readonly free: string; readonly line?: string | null }
  /** What was poured between two jars can only be taken back in both; in `other` something happened since. */
  undo_other_first: { readonly jar: string; readonly other: string }
  /** Another jar was poured in: a code holds one batch. */
  two_batches: { readonly jar: string; readonly other: string }
  /** Its plants had steeped before: a code tells of fresh ones. */
  second_steep_unshared: { readonly jar: string; readonly other: string }
  /** The plants of a jar are to steep once more, and are not strained yet. */
  second_not_strained: { readonly jar: string }
  /** Sugar still draws on them. */
  second_sugared: { readonly jar: string }
  /** They are in another jar already. */
  second_taken: { readonly jar: string; readonly by: string; readonly line?: string | null }
  /** Sugar is to draw on plants that are in another jar. */
  second_begun: { readonly jar: string; readonly by: string }
  /** What is taken back would leave them in both. */
  second_begun_since: { readonly jar: string; readonly by: string }
  /** A plant is to be lifted out that is not in. */
  not_in_jar: {
    readonly jar: string
    readonly typed: string
    readonly plants: readonly { readonly id: string | null; readonly name: string }[]
  }
  /** Only some of a plant is to be lifted out: what stays in is not known then. */
  part_lifted: {
    readonly jar: string
    /** As it was typed. */
    readonly typed: string
    readonly plant: { readonly id: string | null; readonly name: string }
  }
  /** Sugar is to go on strained plants of a jar that had none. */
  no_fruit: { readonly jar: string }
  /** What sugar drew out of strained plants is to go in, and no sugar lies on them. */
  fruit_not_sugared: { readonly jar: string }
  /** More came of sugared plants than can be in them. */
  more_than_in_fruit: { readonly jar: string; readonly measuredMl: Measured; readonly mostMl: number }
  /** Neither a layer nor a topping up. */
  no_added_as: { readonly typed: string; readonly line?: string | null }
  /** No fining that is known, with those that are. */
  no_fining: { readonly typed: string; readonly ids: readonly FiningId[] }
  /** `did` on a day before the straining, which has to come first. */
  before_straining: {
    readonly jar: string
    readonly did: HappeningKind
    readonly day: IsoDay
    readonly line?: string | null
  }
  /** `did` would come before `later`, which cannot follow it. */
  in_the_way: {
    readonly jar: string
    readonly did: HappeningKind
    readonly day: IsoDay
    readonly later: HappeningKind
    readonly laterDay: IsoDay
    readonly laterSeq: number
  }
  /** A strength that no hydrometer can have shown: so much is dissolved that it would stand for more than was poured. */
  sweet_strength: {
    readonly jar: string
    readonly dissolvedGPerL: Measured
    readonly abvPercent: Measured
    readonly line?: string | null
  }
  /** More came out than can have been in it. */
  more_than_went_in: { readonly jar: string; readonly measuredMl: Measured; readonly mostMl: number }
  /** Stronger than all that was poured in, together. */
  stronger_than_spirit: { readonly jar: string; readonly abvPercent: Measured; readonly mostAbvPercent: number }
  stronger_than_went_in: {
    readonly jar: string
    readonly measuredMl: Measured
    readonly abvPercent: Measured
    /** As it was read, where what is dissolved hides some of it: at most the strength. */
    readonly readPercent: Measured
    /** The strongest that this much can be. */
    readonly mostAbvPercent: number
    readonly line?: string | null
  }
  /** A correction puts something of the same kind in an entry's place. */
  other_kind: { readonly jar: string; readonly seq: number; readonly kind: HappeningKind; readonly by: HappeningKind }
  /** Before the jar was started. */
  before_start: { readonly jar: string; readonly day: IsoDay }
  in_the_future: { readonly typed: string; readonly line?: string | null }
  no_such_jar: {
    readonly typed: string
    readonly nearest: string | null
    /** A jar whose name stands before something else; `line`: what was meant, where that can be told. */
    readonly begun?: { readonly name: string; readonly line?: string }
    /** All that may be meant, where more than one may. */
    readonly several?: readonly string[]
    /** Those that there are: the running ones, else those that are done. */
    readonly all?: readonly string[]
  }
  /** Bottles of a size that the jar never filled. */
  no_such_bottles: { readonly jar: string; readonly volumeMl: number; readonly sizesMl: readonly number[] }
  /** More bottles than are left of a size. */
  bottles_not_left: { readonly jar: string; readonly wanted: number; readonly left: number; readonly volumeMl: number }
  /** A number alone that is more than are left of any size. */
  bottles_of_sizes: {
    readonly jar: string
    readonly use: 'given' | 'opened'
    readonly wanted: number
    readonly left: readonly { readonly volumeMl: number; readonly count: number }[]
  }
  /** What takes away wants the whole name; `name` only begins so. */
  jar_begins_so: { readonly typed: string; readonly name: string }
  /** Water and sugar only lower the strength. */
  jar_too_weak: {
    readonly jar: string
    readonly volumeMl: number
    readonly abvPercent: number
    readonly sugarGPerL: number
    readonly toAbvPercent: number
    /** Null where it was not said. */
    readonly toSugarGPerL: number | null
    /** What works out how much spirit, tried. */
    readonly line?: string
  }
  no_jars: Record<string, never>
  /** All running jars are in bottles, and open. */
  none_to_remind: Record<string, never>
  /** No jar asks for anything before then. */
  none_due_until: { readonly untilDay: IsoDay; readonly untilMs: number | null; readonly zone: string }
  /** What is left in a jar fills none of these. */
  no_bottle_filled: { readonly jar: string; readonly leftMl: Measured; readonly bottleMl: number }
  /** At least a whole bottle more than there can be. */
  bottles_too_many: { readonly jar: string; readonly bottlesMl: number; readonly leftMl: Measured }
  jar_name_taken: { readonly name: string; readonly free: string }
  bad_jar_name: { readonly typed: string; readonly why: BadName }
  nothing_to_undo: { readonly jar: string }
  no_such_entry: { readonly jar: string; readonly seq: number }
  too_many_jars: { readonly most: number }
  too_many_entries: { readonly jar: string; readonly most: number }
  /** What was written about it is as much as is kept of one jar. */
  jar_full: { readonly jar: string }
  too_many_changes: { readonly jar: string; readonly most: number }
  note_too_long: { readonly length: number; readonly most: number }
  /** Neither daily, every other day nor off. */
  no_rhythm: { readonly typed: string }
  /** No kind of file that is made. */
  no_format: { readonly typed: string }
  /** Neither here nor private nor the terminal. */
  no_place: { readonly typed: string }
  /** A place that this surface does not have. */
  place_elsewhere: { readonly typed: string; readonly isTerminal: boolean }
  bad_rating: { readonly typed: string }
  /** A day that was to come is past, or today. */
  not_ahead: { readonly typed: string; readonly line?: string | null }
  not_ahead_today: { readonly typed: string; readonly line?: string | null }
  /** A pause that long is taken for a day of the past, unless its year was typed. */
  pause_long: { readonly typed: string; readonly until: IsoDay }
  bad_entry_number: { readonly typed: string }
  /** No running jar is steeping. */
  none_to_shake: Record<string, never>
  /** No standing entry has all of these options, or the one named has not. */
  nothing_to_correct: { readonly jar: string; readonly seq: number | null; readonly options: readonly string[] }
  /** What sweetens, by its name alone, of what went in already; `example`: a line that says how much of it went in. */
  sweetener_planned: { readonly typed: string; readonly example: string }
  /** Two different batches are compared. */
  compare_two: { readonly typed: string; readonly line?: string | null }
}

declare module '../../domain-error.ts' {
  interface Problems extends JarProblems {}
}
