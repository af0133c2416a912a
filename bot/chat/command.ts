import type { z } from 'zod'
import type { Place, PostedIn, Settings } from '../../store/person.ts'
import type { Store } from '../../store/store.ts'
import type { Hunch } from '../talk/hunch/hunch.ts'
import type { TalkMemory } from '../talk/memory/remembered.ts'
import type { HelpTopic } from '../text/help-text.ts'
import type { Spoken } from '../text/language.ts'
import type { Kitchen } from '../text/messages/kitchen.ts'
import type { Lacking } from '../text/messages/lacking.ts'
import type { PostChange } from '../text/messages/share.ts'
import type { Doubts } from './doubts.ts'
import type { OpenFile } from './given-file.ts'
import type { LastReplies } from './last-replies.ts'
import type { Reply } from './reply.ts'

/** What is lacking at a place, at once; nothing where all is well. */
export type PlaceCheck = (place: Place) => Promise<readonly Lacking[]>

/** What came of a message to a place where somebody wants to be reminded. `closed`: it will never take one. */
export type Proof = 'sent' | 'closed' | 'failed'

/** Sends one. Never throws. */
export type ProvePlace = (place: Place) => Promise<Proof>

/** Puts a sentence in the place of what was shared. Never throws. */
export type WithdrawPost = (at: PostedIn) => Promise<PostChange>

/** Removes the files of replies that a surface kept for a person, and counts them. */
export type ForgetFiles = () => Promise<number>

/** Who asks, and where: what a surface tells of itself. */
export interface Asker extends Spoken {
  /** `local`, or a number of 17 to 20 digits. */
  readonly userId: string
  readonly place: Place
  /** IANA name of the zone taken for somebody who has chosen none. */
  readonly assumedZone: string
  readonly store: Store
  /** Where it is left out, no place lacks anything. */
  readonly lackingAt?: PlaceCheck
  /** Where it is left out, a place is believed. */
  readonly provePlace?: ProvePlace
  /** Whether a place did not take the person's last reminder; where it is left out, none is known to be closed. */
  readonly isClosed?: (place: Place) => boolean
  /** Where it is left out, no file can be given. */
  readonly openFile?: OpenFile
  /** Where it is left out, nothing is posted. */
  readonly withdrawPost?: WithdrawPost
  /** Where it is left out, no file of a reply is kept. */
  readonly forgetFiles?: ForgetFiles
  /** An id for each attempt to record something; where it is left out, what is recorded names none. */
  readonly newAttempt?: () => string
  /** Where it is left out, no attempt is known again. */
  readonly doubts?: Doubts
  /** Where it is left out, no reply is kept to say more of it. */
  readonly replies?: LastReplies
  /** Where it is left out, every sentence stands by itself. */
  readonly talk?: TalkMemory
  /** What sentences like one are after; where it is left out, what was learnt says it. */
  readonly hunch?: Hunch
}

/** What a command may know besides its input. */
export interface Context extends Asker {
  readonly nowMs: number
  readonly settings: Settings
  /** The zone chosen, or the assumed one. */
  readonly zone: string
  /** In whose measures it is answered: those that were typed, else those that were chosen, or the last jar was begun in; left out: metric. */
  readonly kitchen?: Kitchen
  /** What every entry that comes of this keeps. */
  readonly attempt?: string
}

/**
 * One command, for every surface. Its options are the keys of `input`, each a schema from `bot/calls/quantity-options.ts` that
 * takes the text typed and returns a quantity; help, completion and the grammar read the names from there.
 */
export interface Command<Path extends string = string, Shape extends z.ZodRawShape = z.ZodRawShape> {
  /** `syrup`, later `jar start`. */
  readonly path: Path
  /** Where help lists it. */
  readonly topic: HelpTopic
  /**
   * Worked out of its line where that names no jar, so that all who read along may see it; whatever else there is, or comes, is
   * somebody's own.
   */
  readonly isOfLineAlone?: true
  readonly input: z.ZodObject<Shape>
  run(input: z.output<z.ZodObject<Shape>>, context: Context): Reply | Promise<Reply>
}

export const defineCommand = <const Path extends string, Shape extends z.ZodRawShape>(
  command: Command<Path, Shape>,
): Command<Path, Shape> => command
