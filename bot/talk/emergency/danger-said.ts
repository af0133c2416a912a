import type { HarmId } from './harm.ts'

/** What an answer told of a moment ago that more may be told of: a drink that nobody may drink, or somebody who is harmed. */
export interface DangerSaid {
  readonly of: 'drink' | 'person'
  /** What drinking it does; or what had happened to them. */
  readonly harm: HarmId
  /** Of somebody out of their senses: what stays a danger once they wake up, if anything. */
  readonly behind?: HarmId | null
  /** Where they are, two letters, if it was told. */
  readonly country?: string | null
  /** Whether a taste of it is asked about too, not only a drink. */
  readonly isBeyondDoubt: boolean
  /** How many answers came since. */
  readonly answersSince: number
}
