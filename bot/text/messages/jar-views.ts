import type { DangerKind } from '../../../core/jar/limits/judge-jar.ts'
import type { Source } from '../../../core/jar/state/contents.ts'
import type { BottleFill } from '../../../core/jar/state/fill-weight.ts'
import type { Stage } from '../../../core/jar/state/jar-state.ts'
import type { ReadyBy } from '../../../core/jar/tasks/ready-by.ts'
import type { MaterialId } from '../../../core/quantity/materials.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { Targets } from '../../../core/recipe/targets.ts'
import type { IngredientsSaid, PlantName } from './ingredients.ts'
import type { EntryNumbers, EntrySaid } from './jar-entries.ts'
import type { BecameSaid } from './jar-recorded.ts'
import type { AskedTask, ComingTasks, TaskSaid } from './jar-tasks.ts'
import type { Kitchen } from './kitchen.ts'
import type { Plain } from './plain.ts'

export interface TodayHeadline {
  /** What needs putting right before anything else. */
  readonly held: readonly string[]
  /** How many jobs there are today. */
  readonly jobs: number
}

/** What one jar asks for today. */
export interface JobSaid {
  readonly task: TaskSaid
  /** What goes into it now. */
  readonly plants: readonly PlantName[]
  /** What is stirred in, 0 of what is not; null where that is not known, or nothing is. */
  readonly syrup: { readonly sweetener: MaterialId; readonly sugarG: number; readonly waterMl: number } | null
  /** What sugar drew out of strained fruit is to go back in. */
  readonly isFruit: boolean
  readonly today: IsoDay
  /** Of its jar. */
  readonly kitchen: Kitchen
}

export interface JarProgress {
  readonly stage: Stage
  readonly day: number
  readonly ofDays: number | null
}

export interface Sourced {
  readonly source: Source
}

export interface WholeNotebookBatch extends NotebookBatch {
  readonly inJar: IngredientsSaid
  readonly notes: readonly string[]
}

export interface NotebookBatch {
  readonly startedOn: IsoDay
  readonly stage: Stage
  readonly steepedDays: number | null
  /** Null where the jar holds nothing. */
  readonly made: { readonly volumeMl: Measured; readonly abvPercent: Measured; readonly sugarGPerL: Measured } | null
  readonly rating: number | null
  readonly danger: DangerKind | null
  /** In which it is told of among others. */
  readonly kitchen: Kitchen
}

export interface ComparedBatches {
  readonly names: readonly [one: ComparedName, other: ComparedName]
  readonly ratings: readonly [one: number | null, other: number | null]
}

/** A batch by its name, and by its month where both have the same. */
export interface ComparedName {
  readonly name: string
  readonly startedOn: IsoDay | null
}

/** The same of both batches, the first named first. */
export type Both<Fact> = { readonly both: readonly [one: Fact, other: Fact] }

/** Whether the ± leave the difference open. */
export interface ComparedDoubt {
  readonly isClose: boolean
}

export interface ListMessages {
  headlines: Plain<'jars_none'> & {
    jars_today: TodayHeadline
  }
  rows: Plain<'jobs_shake'> & {
    jar: { readonly name: string }
  }
  cells: {
    job: JobSaid
    job_shake: { readonly names: readonly string[] }
    jar_progress: JarProgress & {
      readonly tasks: readonly TaskSaid[]
      readonly today: IsoDay
      readonly danger: DangerKind | null
    }
  }
  notes: {
    /** Of which the first screen has no room. */
    jobs_more: { readonly count: number }
    /** The soonest first. */
    jars_coming: { readonly next: readonly ComingTasks[]; readonly today: IsoDay }
    jars_ready: { readonly names: readonly string[] }
    /** They have rested, and must not be drunk as they are. */
    jars_strong: { readonly names: readonly string[] }
    /** The others, the first first. */
    jars_ready_about: {
      readonly ready: readonly { readonly name: string; readonly day: IsoDay }[]
      readonly today: IsoDay
    }
    jars_finished: { readonly count: number }
    jars_set_aside: { readonly file: string | null; readonly day: IsoDay | null }
    jars_unsent: {
      readonly asked: readonly (AskedTask & { readonly day: IsoDay })[]
      readonly today: IsoDay
    }
    jars_paused: { readonly until: IsoDay; readonly today: IsoDay }
  }
  actions: Plain<'jars_plan'> & {
    jars_shaken: { readonly count: number }
  }
}

export interface JarStanding extends JarProgress {
  readonly name: string
  /** What is in it, once it was strained; null before, and where nothing is. */
  readonly became: BecameSaid | null
  /** How strong it is on the plants; null once it was strained. */
  readonly steepsAt: Measured | null
}

export interface ShowMessages {
  headlines: {
    jar_shown: JarStanding
    /** The same under a line that names it. */
    jar_stands: JarStanding
    /** What comes next; `ready`: the day of the first glass, where it is known and not what comes next. */
    jar_next_of: {
      readonly name: string
      readonly tasks: readonly TaskSaid[]
      readonly ready: IsoDay | null
      readonly today: IsoDay
    }
    /** Whether it can be drunk by a day. */
    jar_ready_by: { readonly name: string; readonly by: IsoDay; readonly told: ReadyBy; readonly today: IsoDay }
  }
  rows: Plain<
    | 'jar_holds'
    | 'jar_volume'
    | 'jar_strength'
    | 'jar_sweetness'
    | 'jar_best'
    | 'jar_planned'
    | 'jar_rating'
    | 'jar_taken_back'
  > & {
    jar_entry: EntryNumbers
  }
  cells: {
    jar_holds: IngredientsSaid
    jar_volume: Sourced & { readonly volumeMl: Measured }
    jar_strength: Sourced & { readonly abvPercent: Measured }
    jar_sweetness: { readonly sugarGPerL: Measured }
    jar_best: { readonly until: IsoDay }
    jar_planned: { readonly abvPercent: number; readonly sugarGPerL: number }
    jar_rating: { readonly ratings: readonly number[] }
    jar_taken_back: { readonly count: number }
    jar_entry: EntrySaid & { readonly today: IsoDay }
  }
  notes: {
    jar_corrects: { readonly name: string }
    jar_fill_weight: { readonly fills: readonly BottleFill[] }
  }
}

export interface NotebookMessages {
  headlines: Plain<'notebook_empty'> & {
    notebook: { readonly running: number; readonly finished: number }
  }
  rows: {
    batch: { readonly name: string }
  }
  cells: {
    batch: WholeNotebookBatch
    batch_short: NotebookBatch
  }
  notes: {
    /** The newest. */
    notebook_short: { readonly name: string }
  }
  actions: Plain<'notebook_compare'>
}

/** Each jar is told of in its own. */
export interface InTheirUnits {
  readonly kitchens: readonly [one: Kitchen, other: Kitchen]
}

export interface CompareMessages {
  headlines: {
    compared: ComparedBatches & { readonly count: number }
  }
  rows: Plain<
    | 'compare_spirit'
    | 'compare_jar_water'
    | 'compare_jar_sugar'
    | 'compare_begun'
    | 'compare_planned'
    | 'compare_days'
    | 'compare_strength'
    | 'compare_sweetness'
    | 'compare_rest'
    | 'compare_rating'
    | 'compare_notes'
  > & {
    compare_plant: PlantName
  }
  cells: {
    compare_spirit: Both<{ readonly volumeMl: Measured; readonly abvPercent: Measured }> & InTheirUnits
    compare_dose: Both<Measured | null> & InTheirUnits
    compare_begun: Both<IsoDay>
    compare_planned: Both<Targets | null>
    compare_days: Both<number | null>
    compare_strength: Both<Measured> & ComparedDoubt & InTheirUnits
    compare_sweetness: Both<Measured> & ComparedDoubt
    compare_rating: Both<number | null>
    compare_notes: Both<readonly string[]>
  }
}

declare module '../language.ts' {
  interface MessagesByFeature {
    readonly list: ListMessages
    readonly show: ShowMessages
    readonly notebook: NotebookMessages
    readonly compare: CompareMessages
  }
}
