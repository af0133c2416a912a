import type { AskId } from '../../../core/botanical/ask-back.ts'
import type { DomainError } from '../../../core/domain-error.ts'
import type { JarEntry } from '../../../core/jar/entry/entry.ts'
import type { MaterialId } from '../../../core/quantity/materials.ts'
import type { Assumption } from '../../../core/quantity/quantities.ts'
import type { IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { SymptomId } from '../../../core/trouble/symptoms.ts'
import type { Path } from '../../calls/signatures.ts'

/** A command with its options as texts, as if it had been typed. */
export interface CallRead {
  readonly command: Path
  readonly options: Readonly<Record<string, string>>
}

/** Whose measures an answer is wished in. */
export type KitchenWished = 'us' | 'metric' | 'imperial'

/** A vessel by which somebody told an amount, and what it was taken to hold; without a name where its size was said. */
export interface VesselTaken {
  readonly name: string
  readonly ml: number
}

/** A plant that was asked about, as what it was taken for somebody who could not tell; by their ids. */
export interface KindTaken {
  readonly ask: AskId
  readonly id: string
}

/** What a sentence was understood as. */
export type TalkReading =
  | {
      readonly kind: 'call'
      readonly call: CallRead
      readonly leftOut: readonly string[]
      readonly does: 'compute' | 'record' | 'set'
      readonly kitchen?: KitchenWished
      /** The spirit as it was taken, where how strong or how much was not said. */
      readonly spiritTaken?: string
      readonly kindTaken?: KindTaken
      /** What so many people drink, of which the bottles come. */
      readonly poured?: PouredFor
      /** A glass of so much, ml, of which the price is asked. */
      readonly costOfMl?: number
      /** What the reply begins with, because it was asked. */
      readonly leads?: LeadAsked
      /** Vessels by which amounts were told. */
      readonly vessels?: readonly VesselTaken[]
      /** The sentence, where it told amounts by the jar they fill. */
      readonly jarTold?: string
      /** Bottles as many and as large as was offered, which nobody counted. */
      readonly isBottlesTaken?: true
      /** A part of the jar came out, of which nobody said how large it is. */
      readonly isJarOpen?: true
      /** How much it was sweetened with nobody measured: as planned, where no amount is told. */
      readonly isSugarGuessed?: true
      /** How strong it is nobody has measured, and its maker said so. */
      readonly isStrengthOpen?: true
      /** What came out was not measured, and its maker said so. */
      readonly isUnmeasured?: true
      /** It is to be begun on a day to come: it is told, and nothing is written down. */
      readonly isAhead?: true
      /** It is for a day that only its maker knows: it is told how that is said. */
      readonly isDayOpen?: true
      /** What is done next with what the same sentence told. */
      readonly next?: CallRead
      /** The entry of the handbook for a danger that is told beside a deed: `strained it, and my guest has a nut allergy`. */
      readonly beside?: string
    }
  /** Something is lacking, or it can be read in several ways: one question, and its answers as lines where there are some. */
  | {
      readonly kind: 'question'
      readonly call: CallRead
      readonly about: QuestionAbout
      readonly choices: readonly CallRead[]
      readonly leftOut: readonly string[]
      readonly beside?: string
    }
  /** Only a line that is typed, or a button, does it. */
  | { readonly kind: 'only_typed'; readonly call: CallRead }
  | { readonly kind: 'refused'; readonly problem: DomainError }
  | { readonly kind: 'symptom'; readonly id: SymptomId; readonly options: Readonly<Record<string, string>> }
  /** What so many people drink is said first, where that was asked and nothing stands there. */
  | { readonly kind: 'topic'; readonly entry: string; readonly more: readonly string[]; readonly poured?: PouredFor }
  | {
      readonly kind: 'small_talk'
      readonly key: 'greeting' | 'thanks' | 'right' | 'help' | 'nothing_to_forget' | 'driest'
    }
  /** An amount in another unit. */
  | { readonly kind: 'converted'; readonly said: ConvertedSaid }
  /** What was answered last is shown in another way, or let be. */
  | { readonly kind: 'last'; readonly what: 'more' | 'why' | 'how_sure' | 'let_be' }
  | { readonly kind: 'lost'; readonly nearest: readonly CallRead[] }

/** An amount as it was typed, and how many of the unit asked for it is. */
export interface ConvertedSaid {
  readonly typed: string
  /** What it is of; null where only measures are compared. */
  readonly material: MaterialId | 'water' | null
  /** Null where nothing tells it. */
  readonly massG: number | null
  readonly volumeMl: number | null
  /** What was taken of it. */
  readonly assumed: readonly Assumption[]
  /** By its key. */
  readonly unit: string
  readonly count: number
}

/** Glasses for people. */
export interface PouredFor {
  readonly people: number
  /** Of each of them. */
  readonly glasses: number
  readonly glassMl: number
  readonly volumeMl: number
}

/** What of a jar is said first: whether it freezes, how sweet it is, how many glasses there are. */
export type LeadAsked =
  | { readonly kind: 'freezer' | 'enough' | 'taken_out' }
  | ({ readonly kind: 'tasting' } & Pick<TastingAsked, 'isHot'>)
  | ({ readonly kind: 'yield' } & YieldThere)
  | ({ readonly kind: 'glasses' } & GlassesThere)

/** How much a jar gives, ml: what comes of it, what is in full bottles, or what stands there. */
export type YieldThere = Pick<GlassesThere, 'thereMl' | 'held'>

/** How often a jar is tasted; hot where chilli is in it. */
export interface TastingAsked {
  readonly isHot: boolean
  readonly from: IsoDay | null
  readonly isDaily: boolean
}

/** Glasses in what there is, and how many are wanted; `poured` null where nobody said. */
export interface GlassesThere {
  readonly thereMl: number
  readonly glassMl: number
  readonly poured: PouredFor | null
  /** It is what comes of it, what is in full bottles, or what stands there. */
  readonly held: 'ahead' | 'bottled' | 'there'
}

/** What is offered behind a recipe and has a word of its own. */
export type OfferedWay = 'start' | 'drier' | 'stronger' | 'shopping'

export type QuestionAbout =
  /** The sample fills it, where an example of the command would not fit what was said; or what is meant otherwise. */
  | { readonly kind: 'lacks'; readonly option: string; readonly sample?: string; readonly otherwise?: string }
  | { readonly kind: 'which_jar' }
  /** A plan that was refused for too much of a plant: its choice is the one that was offered in its place. */
  | { readonly kind: 'less_of_it' }
  | { readonly kind: 'number'; readonly typed: string }
  | { readonly kind: 'which_reading' }
  /** Which of what an answer offered, where each has a word of its own; the choices are in the same order. */
  | { readonly kind: 'which_offered'; readonly ways: readonly OfferedWay[] }
  /** Which of several jobs is done; each choice says that one is. */
  | { readonly kind: 'which_done' }
  | { readonly kind: 'two_drinks' }
  /** A jar that was filled, of which nobody said how large it is: the sentence that told of it; null where it did not tell with what. */
  | { readonly kind: 'jar_size'; readonly text: string | null }
  | { readonly kind: 'told_or_asked' }
  /** Another jar is told of than the one there is; the choice is the same of that one. */
  | { readonly kind: 'only_jar'; readonly jar: string }
  /** What was written down last, some answers ago; or which jar's last entry. */
  | { readonly kind: 'undo_step'; readonly step: Path }
  /** `told`: of those whose last entry is a danger, its jar and what it was. */
  | { readonly kind: 'undo_jar'; readonly told: readonly { readonly jar: string; readonly told: string }[] }
  /** The last entry told of a danger, which would be forgotten with it: its symptom as it is typed. */
  | { readonly kind: 'undo_told'; readonly told: string }
  /** A step that another came after: `last` is the entry that goes first. */
  | { readonly kind: 'undo_first'; readonly last: JarEntry['kind'] | null; readonly wanted: Path }
  /** A place that no time zone is named for. */
  | { readonly kind: 'zone_of'; readonly place: string }
  /** A wish, `drier`, where no recipe was said that it could be of. */
  | { readonly kind: 'wish_of_what' }
  /** What is said not to be wrong with it. */
  | { readonly kind: 'not_so'; readonly symptom: SymptomId }
  /** A reminder that there is none of, or what is only meant to be done; the choices are what there is instead. */
  | { readonly kind: 'one_reminder'; readonly isMeant?: true }
