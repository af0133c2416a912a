import type { DangerSaid } from '../emergency/danger-said.ts'
import type { CallRead, KitchenWished, TalkReading } from '../frames/reading.ts'

/** What was said last, in one place, by one person. */
export interface Remembered {
  /** The last call that was answered. */
  readonly call: CallRead | null
  /** The last step of a jar that was recorded. */
  readonly step: CallRead | null
  /** The step of a jar that was refused just now for what was told of it; null where none was. */
  readonly refused: CallRead | null
  /** The recipe that was refused or not read last, until another is worked out; null where none was. */
  readonly declined: TalkReading | null
  /** How many answers came after it. */
  readonly answersSince: number
  /** How many other answers came after that of the last call. */
  readonly answersBehind: number
  /** What its answer offered, in order. */
  readonly offered: readonly CallRead[]
  /** What was asked back and not answered yet. */
  readonly question: Extract<TalkReading, { kind: 'question' }> | null
  /** What the last answer asked of a step that may be a mistake; null where it asked nothing of the kind. */
  readonly doubt: Doubt | null
  /** The sweetening as planned that was offered last; null where none was, or something was written down since. */
  readonly planned: CallRead | null
  /** The last recipe that was worked out: what is wished behind other answers is wished of it. */
  readonly worked: WorkedOut | null
  /** What was worked out in this talk, the latest last; what was gone back to ends it. */
  readonly trail: readonly CallRead[]
  /** The lists of what to buy for what was worked out in this talk, the latest last; one for each batch. */
  readonly lists: readonly ListOffered[]
  /** What the drink comes to that was worked out last; null where none was. */
  readonly drink: DrinkSaid | null
  /** The sentence that told the last plan by the jar it fills, of which the size may be put right; null where none did. */
  readonly jarTold: string | null
  /** What else a sentence told or asked of a jar that is asked for: answered once it is known. */
  readonly later: readonly string[]
  /** What only a line or a button does, where the last answer was that; a yes does not do it. */
  readonly onlyTyped: CallRead | null
  /** The danger that was told last; null where none was, or too much was said since. */
  readonly danger: DangerSaid | null
}

/** How strong a drink is, % vol, how sweet, g/L, how much sugar it takes, g, and the jar for it, ml; null where that is not worked out. */
export interface DrinkSaid {
  readonly abvPercent: number
  readonly sugarGPerL: number
  readonly sugarG: number | null
  readonly jarMl: number | null
  /** How much it makes, ml. */
  readonly volumeMl: number | null
}

/** A batch, and the list that its answer offered. */
export interface ListOffered {
  readonly batch: CallRead
  readonly list: CallRead
}

/** A recipe that was worked out, and what its answer offered. */
export interface WorkedOut {
  /** Whose measures it was wished to be told in; absent where nobody’s were. */
  readonly kitchen?: KitchenWished
  readonly call: CallRead
  readonly offered: readonly CallRead[]
  readonly drink: DrinkSaid | null
}

/** Whether to take it back, whether it was meant, or whether its number is a slip. */
export type Doubt = 'undo' | 'meant' | 'slip'

export const NOTHING_SAID: Remembered = {
  call: null,
  step: null,
  refused: null,
  declined: null,
  answersSince: 0,
  answersBehind: 0,
  offered: [],
  question: null,
  doubt: null,
  planned: null,
  worked: null,
  trail: [],
  lists: [],
  drink: null,
  jarTold: null,
  later: [],
  onlyTyped: null,
  danger: null,
}

/** For how long it is remembered. */
const REMEMBERED_MS = 30 * 60_000

const MOST = 1000

/** What was said, by person and place; in memory only, bounded, and gone after half an hour. */
export interface TalkMemory {
  of(who: string, nowMs: number): Remembered
  /** When anything was said last; null where nothing is remembered. */
  saidMs(who: string, nowMs: number): number | null
  keep(who: string, said: Remembered, nowMs: number): void
  /** Everything of a person, wherever it was said. */
  forget(userId: string): void
}

/** Who is remembered: a person at a place. */
export const whoAt = (userId: string, place: string): string => `${userId} ${place}`

export function newTalkMemory(): TalkMemory {
  const kept = new Map<string, { readonly said: Remembered; readonly atMs: number }>()
  return {
    of(who, nowMs) {
      const known = kept.get(who)
      if (known === undefined) return NOTHING_SAID
      if (nowMs - known.atMs <= REMEMBERED_MS) return known.said
      kept.delete(who)
      return NOTHING_SAID
    },
    saidMs(who, nowMs) {
      const atMs = kept.get(who)?.atMs
      return atMs === undefined || nowMs - atMs > REMEMBERED_MS ? null : atMs
    },
    keep(who, said, nowMs) {
      kept.delete(who)
      kept.set(who, { said, atMs: nowMs })
      const [oldest] = kept.keys()
      if (kept.size > MOST && oldest !== undefined) kept.delete(oldest)
    },
    forget(userId) {
      for (const who of kept.keys()) if (who.startsWith(`${userId} `)) kept.delete(who)
    },
  }
}
