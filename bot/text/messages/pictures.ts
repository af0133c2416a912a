import type { PlantIn } from '../../../core/jar/entry/entry.ts'
import type { DangerKind } from '../../../core/jar/limits/judge-jar.ts'
import type { IngredientsTold } from '../../../core/jar/state/batch-facts.ts'
import type { Source } from '../../../core/jar/state/contents.ts'
import type { Stage } from '../../../core/jar/state/jar-state.ts'
import type { ForGuests } from '../../../core/label/for-guests.ts'
import type { MaterialId } from '../../../core/quantity/materials.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { Targets } from '../../../core/recipe/targets.ts'
import type { TaskSaid } from './jar-tasks.ts'

export type MilestoneKind = 'started' | 'strained' | 'sweetened' | 'ready'

export interface Milestone {
  readonly kind: MilestoneKind
  /** Null where neither the jar nor its plan tells. */
  readonly day: IsoDay | null
  /** False for what is planned, or still to come. */
  readonly isDone: boolean
}

/** Of the whole, what each takes of its room; together 1. */
export interface Shares {
  readonly alcohol: number
  readonly water: number
  readonly sugar: number
}

/** A plant that steeped less long than the rest. */
export interface LaterPlant extends Pick<PlantIn, 'id' | 'name'> {
  readonly days: number
}

export interface BatchCardData extends ForGuests {
  readonly name: string
  readonly stage: Stage
  readonly inJar: IngredientsTold
  /** Null where the jar holds nothing. */
  readonly made: {
    readonly abvPercent: Measured
    readonly sugarGPerL: Measured
    readonly strength: Source
    readonly shares: Shares
  } | null
  /** What it is to become, while it is not yet sweetened. */
  readonly planned: Targets | null
  readonly day: number
  /** Whole days on the plants; null while they are in. */
  readonly steepedDays: number | null
  /** What went in on a later day than the first, with its own whole days. */
  readonly laterPlants: readonly LaterPlant[]
  /** The last one given, 1 to 5. */
  readonly rating: number | null
  readonly milestones: readonly Milestone[]
  readonly today: IsoDay
}

export type Phase = 'steeping' | 'straining' | 'resting'

/** Days as `dayNumber` counts them, the last one outside. */
export interface ShelfSpan {
  readonly phase: Phase
  readonly from: number
  readonly to: number
}

export interface ShelfJar {
  readonly id: string
  readonly name: string
  readonly stage: Stage
  readonly day: number
  readonly ofDays: number | null
  readonly spans: readonly ShelfSpan[]
  /** Null where it is not known. */
  readonly readyDay: number | null
  /** What it asks for, the most pressing first; what comes next where that is nothing. */
  readonly tasks: readonly TaskSaid[]
  /** The worst that is wrong with it today. */
  readonly danger: DangerKind | null
}

export interface ShelfData {
  readonly jars: readonly ShelfJar[]
  readonly today: IsoDay
}

export interface JarTagData extends Pick<ForGuests, 'allergens' | 'unknown'> {
  readonly id: string
  readonly name: string
  readonly started: IsoDay
  /** Null where no day is planned, or it is strained. */
  readonly strainFrom: IsoDay | null
  readonly strainBy: IsoDay | null
  /** Null before it is strained, and where nobody knows. */
  readonly bestUntil: IsoDay | null
  readonly inJar: IngredientsTold
  /** Then, alcohol aside, no child under one year may have of it. */
  readonly hasHoney: boolean
  /** Of all that is in the jar; null where that holds no alcohol. */
  readonly abvPercent: Measured | null
  readonly isFlammable: boolean
  /** The worst that is wrong with it today. */
  readonly danger: DangerKind | null
}

export interface BottleLabelData extends ForGuests {
  readonly id: string
  readonly name: string
  readonly abvPercent: Measured
  /** `planned`: what the jar is to become. */
  readonly strength: Source | 'planned'
  /** What such a drink is; null of one that has too little alcohol, or that is not to be drunk. */
  readonly kind: 'liqueur' | 'steeped_spirit' | null
  /** Who made it, as it was typed; null where nobody said. */
  readonly maker: string | null
  /** What the bottle holds; null where it is not known. */
  readonly volumeMl: number | null
  readonly bottled: IsoDay | null
  /** Null below what keeps about a year. */
  readonly bestBefore: IsoDay | null
  readonly plants: readonly Pick<PlantIn, 'id' | 'name'>[]
  readonly hasWater: boolean
  /** What sweetened it, or is to; empty for nothing. */
  readonly sweeteners: readonly MaterialId[]
  readonly isFlammable: boolean
  /** Not to be drunk as it is. */
  readonly isTooStrong: boolean
  /** The worst that is wrong with it today, or with what it is to become. */
  readonly danger: DangerKind | null
}

/** What is on a picture, for whoever cannot see it. */
export interface PictureMessages {
  files: {
    batch_card: BatchCardData
    shelf: ShelfData
    jar_tag: JarTagData
    bottle_label: BottleLabelData
  }
}

declare module '../language.ts' {
  interface MessagesByFeature {
    readonly picture: PictureMessages
  }
}
