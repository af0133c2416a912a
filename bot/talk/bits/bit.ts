import type { HappeningKind, JarEntry } from '../../../core/jar/entry/entry.ts'
import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import type { TypedText } from '../../../core/quantity/read/tokens.ts'
import type { SymptomId } from '../../../core/trouble/symptoms.ts'
import type { ConceptSpan } from '../lexicon/concepts.ts'
import type { Concept, Lexicon } from '../lexicon/lexicon.ts'

export type BitKind =
  | 'volume'
  | 'mass'
  | 'strength'
  | 'sweetness'
  | 'style'
  | 'temperature'
  | 'span'
  | 'bare'
  | 'negative'
  | 'gravity'
  | 'rating'
  | 'bottles'
  | 'plant'
  | 'spirit'
  | 'sugar'
  | 'water'
  | 'date'
  | 'jar'

/** What an amount is an amount of, or whether it is there or wished; decided once, before any frame is looked at. */
export type Role = 'have' | 'want' | 'of_plant' | 'of_sugar' | 'of_water' | 'of_spirit' | 'gone' | 'left_out' | 'price'

export interface Bit {
  readonly kind: BitKind
  /** ml, g, % vol, g/L, °C, days, pieces; 0 where it is no number. */
  readonly value: number
  /** As an option takes it. */
  readonly text: string
  /** Pieces of the sentence. */
  readonly from: number
  readonly to: number
  readonly role: Role | null
  /** Of a plant: ids of the catalogue; of a jar: its id. */
  readonly ids?: readonly string[]
  /** What the amount belongs to, or what belongs to the thing: the place of the other bit. */
  readonly with?: number
  /** Of a drink that is named: the spirit it is usually made with. */
  readonly spirit?: string
  /** A measure that tells no weight stood there: `a punnet of`. */
  readonly loose?: string
  /** Of a bottle: its size was not said. */
  readonly isSizeAssumed?: boolean
  /** How large a jar is, and no amount of what is in it. */
  readonly isJarSize?: boolean
  /** How much such a bottle holds where it is one of spirit, ml. */
  readonly assumedMl?: number
  /** `2 bottles of 70 cl`: how many of the volume. */
  readonly count?: number
}

/** Without a role, which is given later. */
export const bit = (
  kind: Bit['kind'],
  from: number,
  to: number,
  value: number,
  text: string,
  more: Partial<Bit> = {},
): Bit => ({
  kind,
  value,
  text,
  from,
  to,
  role: null,
  ...more,
})

/** An entry of a jar, as it was typed. */
export interface ToldEntry {
  readonly seq: number
  readonly kind: HappeningKind
  /** A day in ISO form. */
  readonly day: string
  readonly typed: readonly (readonly [option: string, text: string])[]
}

/** What a jar was told of, as it is asked about. */
export interface StandsOfJar {
  readonly symptom: SymptomId
  /** Nobody has said yet whether it has to go. */
  readonly isOpen: boolean
  /** Those of `/trouble`, without the jar. */
  readonly options: Readonly<Record<string, string>>
}

/** A jar as a sentence may speak of it. */
export interface TalkJar {
  readonly id: string
  readonly name: string
  /** Ids of the catalogue. */
  readonly plants: readonly string[]
  readonly stage: 'steeping' | 'strained' | 'sweetened' | 'resting' | 'ready' | 'emptied' | 'discarded'
  /** 1 to 12: the month it was begun in. */
  readonly month: number
  readonly startedOn: string
  /** The last entry that stands, which is the one to be taken back. */
  readonly lastKind: JarEntry['kind'] | null
  /** The symptom that the last entry told of, as it is typed, where that still stands. */
  readonly lastTold?: string
  /** How strong it is now, % vol; null where there is no liquid. Worked out when it is asked for. */
  readonly strengthPercent: () => number | null
  /** How sweet it is now, g/L; null where there is no liquid, left out where nobody may see it. Worked out when it is asked for. */
  readonly sugarGPerL?: () => number | null
  /** How much it is once it is finished, ml, of what was bottled what is in full bottles; null where there is no liquid, left out where nobody may see it. */
  readonly volumeMl?: () => number | null
  /** The spirit that it was started with, as it was typed; null where none was. */
  readonly spiritTyped: string | null
  /** The bottles that it was planned for, as they were typed; null or left out where none were. */
  readonly bottlesTyped?: string | null
  /** It was told of a trouble that nobody has taken back; left out: of none. */
  readonly isTroubled?: boolean
  /** The worst of it, and how it is looked at again; left out: nothing, or nothing that has a name. */
  readonly stands?: StandsOfJar
  /** What stands of its entries, the oldest first. */
  readonly told: () => readonly ToldEntry[]
}

/** What is known beside the sentence. */
export interface Surroundings {
  readonly lexicons: readonly Lexicon[]
  readonly jars: readonly TalkJar[]
  readonly today: CalendarDay
  /** Whether whoever says it cooks by US measures; left out: nobody knows. */
  readonly isUs?: boolean
}

/** A sentence taken apart. */
export interface Sentence {
  readonly typed: TypedText
  readonly lexicon: Lexicon
  readonly bits: readonly Bit[]
  readonly spans: readonly ConceptSpan[]
  has(...concepts: readonly Concept[]): boolean
  /** A bottle of spirit whose size was not said, ml. */
  readonly spiritBottleMl: number
  /** Whether whoever says it cooks by US measures. */
  readonly isUs: boolean
  readonly jars: readonly TalkJar[]
  readonly today: CalendarDay
  /** The same where plants may be misspelt; itself where none is. */
  forgiving(): Sentence
}
