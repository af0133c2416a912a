import type { Price } from '../core/cost/price.ts'
import type { JarEntry } from '../core/jar/entry/entry.ts'
import type { DutyKind, OnOff, ShakeRhythm } from '../core/jar/tasks/duty.ts'
import type { UnitSystem } from '../core/quantity/read/parse-units.ts'
import type { IsoDay } from '../core/quantity/time/calendar-day.ts'

/** Where a person is reminded. */
export type Place =
  | { readonly kind: 'console' }
  | { readonly kind: 'private' }
  | { readonly kind: 'channel'; readonly channelId: string }

export interface Settings {
  /** Null: as typed. */
  readonly units: UnitSystem | null
  /** Two letters (ISO 3166), or null. */
  readonly country: string | null
  /** IANA name as chosen; null: the surface's own. */
  readonly zone: string | null
  /** Null: where the surface usually speaks. */
  readonly place: Place | null
  /** Minutes after local midnight. */
  readonly atMinutes: number
  readonly shake: ShakeRhythm
  /** Whether bottles that are soon past their best are spoken of; left out: they are. */
  readonly drink?: OnOff
  readonly pausedUntil: IsoDay | null
  /** Of the person's own freezer, °C, −40 to 0; null or left out: a usual one. */
  readonly freezerC?: number | null
  /** What things cost, as their maker said; left out: nothing was said. */
  readonly prices?: readonly Price[]
}

export interface Jar {
  /** Five letters or digits, unique among the person's jars. */
  readonly id: string
  readonly entries: readonly JarEntry[]
  /** Keys of the duties that were said. */
  readonly told: readonly string[]
  /** When each of `told` was said, by the clock of then; 0, or nothing, where that is not known. */
  readonly toldMs?: readonly number[]
  /** Keys of the cautions that were shown in full. */
  readonly cautioned: readonly string[]
}

/** A reminder on its way. Once it has been sent, its duties are in `told` and it is gone. */
export interface Nudge {
  readonly id: string
  readonly place: Place
  readonly duties: readonly { readonly jarId: string; readonly kind: DutyKind; readonly key: string }[]
  /** `kept`: could not be sent for a day; shown with the next list of jars. */
  readonly state: 'sending' | 'waiting' | 'kept'
  readonly madeMs: number
  readonly attempts: number
  /** When to try, or to look what became of it, next. */
  readonly nextMs: number
}

/** A line that is too long for a button, and what the button says instead. */
export interface KeptLine {
  /** Twelve hexadecimal digits. */
  readonly id: string
  readonly line: string
}

/** Where a message of ours stands in Discord. */
export interface PostedIn {
  readonly channelId: string
  readonly messageId: string
}

/** What a sent reminder asked of one jar. */
export interface NudgedJar {
  readonly jarId: string
  /** Number of the jar's last entry when the reminder was sent. */
  readonly seq: number
  readonly asked: readonly {
    readonly kind: DutyKind
    readonly day: IsoDay
    readonly by: IsoDay | null
    readonly isLast: boolean
    /** Said with the others, and no reminder of its own. */
    readonly isAside: boolean
  }[]
}

/** A reminder as it stands in Discord. What it was answered with are the entries of its jars after `seq`. */
export interface SentNudge {
  readonly id: string
  readonly postedIn: PostedIn
  readonly sentMs: number
  /** Sent elsewhere than was chosen, or perhaps for the second time: it says so. */
  readonly isMoved: boolean
  readonly mayHaveBeenSeen: boolean
  readonly jars: readonly NudgedJar[]
}

/** A batch shown to everybody, as it was then. */
export interface Share {
  /** Eight letters or digits. */
  readonly id: string
  readonly jarId: string
  /** Of the batch. */
  readonly code: string
  /** Null where it was posted nowhere: at the terminal, or where posting failed. */
  readonly postedIn: PostedIn | null
  readonly withdrawn: boolean
  /** Jars that others began from it; who they are is not kept. */
  readonly made: number
}

/** A file that could not be read and was set aside. */
export interface SetAside {
  /** Its name among those of people. */
  readonly file: string
  /** Of the nightly copy that holds most; null where none holds a jar. */
  readonly day: IsoDay | null
}

/** Everything that is stored about one person. */
export interface Person {
  readonly version: 8
  readonly settings: Settings
  readonly jars: readonly Jar[]
  readonly nudges: readonly Nudge[]
  /** The last reminders in Discord, the latest at the end; left out where there are none. */
  readonly sentNudges?: readonly SentNudge[]
  /** Those used last at the end. */
  readonly lines: readonly KeptLine[]
  /** In the order in which they were shared. */
  readonly shares: readonly Share[]
  /** The file that could not be read, until its owner has been told. */
  readonly setAside: SetAside | null
}

export const NOBODY: Person = {
  version: 8,
  settings: {
    units: null,
    country: null,
    zone: null,
    place: null,
    atMinutes: 540,
    shake: 'daily',
    pausedUntil: null,
  },
  jars: [],
  nudges: [],
  lines: [],
  shares: [],
  setAside: null,
}

/** How many entries a person's jars have. */
export const entriesOf = ({ jars }: Pick<Person, 'jars'>): number =>
  jars.reduce((sum, { entries }) => sum + entries.length, 0)
