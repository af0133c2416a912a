import type { Interaction, REST } from 'discord.js'
import type { InTurn } from '../../../store/queue.ts'
import type { Store } from '../../../store/store.ts'
import type { ProvePlace } from '../../chat/command.ts'
import type { Doubts } from '../../chat/doubts.ts'
import type { LastReplies } from '../../chat/last-replies.ts'
import type { Dispatch } from '../../chat/run/call-outcome.ts'
import { trace } from '../../chat/trace.ts'
import type { ClosedPlaces } from '../../reminders/closed-places.ts'
import type { TalkMemory } from '../../talk/memory/remembered.ts'
import type { Spoken } from '../../text/language.ts'
import type { CallDispatch, SaidMessages } from '../answer/answer-messages.ts'
import { proofMessage, sentenceFor } from '../answer/answer-messages.ts'
import type { Answered, InteractionResponses } from '../answer/interaction-responses.ts'
import { wireOf } from '../answer/interaction-responses.ts'
import { respond } from '../answer/respond.ts'
import type { CallRun } from '../answer/run-call.ts'
import { redrawNudges } from '../nudges/redraw-nudges.ts'
import type { StartTimer } from '../rest/timeout.ts'
import type { CommandIds } from '../show/reply-blocks.ts'
import { attachmentsOf, pathOf } from './call-of.ts'
import { isAloneIn, placeCheck, placeOf, provePlaceBy } from './check-place.ts'
import { openAttachment } from './open-attachment.ts'
import { withdrawPostBy } from './withdraw-post.ts'

export interface InteractionDesk extends Spoken {
  readonly commands: Dispatch['commands']
  readonly store: Store
  readonly assumedZone: string
  readonly now: () => number
  /** Places that took no reminders. */
  readonly closed: Pick<ClosedPlaces, 'has' | 'open' | 'close'>
  /** Attempts that may have been kept. */
  readonly doubts?: Doubts
  /** Replies of which more may be asked. */
  readonly replies?: LastReplies
  /** What was said last, by person and place. */
  readonly talk?: TalkMemory
  readonly after: StartTimer
  readonly log: Dispatch['log']
  /** Of the registered commands, once they are known. */
  readonly commandIds?: CommandIds
  /** Base address of Discord's REST, or null: Discord's own. */
  readonly api: string | null
  /** Sends answers, which need no token. */
  readonly answers: REST
  /** Sends what the bot does by itself. */
  readonly rest: REST
}

/** One interaction being answered. */
export interface InteractionContext {
  readonly wire: InteractionResponses
  readonly dispatch: CallDispatch
  readonly say: (sentence: string) => Promise<Answered>
  /** Answers with what the work comes to; then the reminders are drawn anew that it has answered. */
  readonly respond: (work: Promise<CallRun>) => Promise<Answered>
}

/** For the log: the command, or what else it was. */
export const nameOf = (interaction: Interaction): string =>
  interaction.isChatInputCommand() || interaction.isAutocomplete()
    ? `/${pathOf(interaction)}`
    : `interaction of type ${interaction.type}`

/** What only shows a jar. */
const SHOWS: readonly string[] = ['jar list', 'jar show', 'jar compare', 'jar tag', 'jar label']

/** Only what is done with a jar answers a reminder. */
export const mayHaveRecorded = ({ outcome }: SaidMessages): boolean =>
  outcome?.ok === true && outcome.path.startsWith('jar ') && !SHOWS.includes(outcome.path)

export const turnOf = (interaction: Interaction, desk: InteractionDesk, inTurn: InTurn): InteractionContext => {
  const {
    commands,
    language,
    languageOf,
    store,
    assumedZone,
    now,
    closed,
    doubts,
    replies,
    talk,
    after,
    log,
    answers,
    rest,
    api,
  } = desk
  const userId = interaction.user.id
  const isAlone = isAloneIn(interaction)
  const facts = {
    userId,
    channelType: interaction.channel?.type ?? null,
    appPermissions: interaction.appPermissions?.bitfield ?? null,
    owners: interaction.authorizingIntegrationOwners.toJSON() as Readonly<Record<string, string>>,
  }
  let tellSlow: CallDispatch['slow'] = () => undefined
  const slow = new Promise<boolean>((resolve) => {
    tellSlow = resolve
  })
  const sendProof = provePlaceBy({ userId, rest, message: () => proofMessage(userId, language), log })
  const provePlace: ProvePlace = async (place) => {
    const proof = await sendProof(place)
    if (proof === 'sent') closed.open(userId, place)
    if (proof === 'closed') closed.close(userId, place)
    return proof
  }
  const dispatch: CallDispatch = {
    userId,
    place: placeOf(interaction),
    assumedZone,
    store,
    lackingAt: placeCheck(facts, rest),
    provePlace,
    isClosed: (place) => closed.has(userId, place),
    withdrawPost: withdrawPostBy({ rest, sentence: language.discord.withdrawn(), log }),
    newAttempt: () => interaction.id,
    ...(doubts !== undefined && { doubts }),
    ...(replies !== undefined && { replies }),
    ...(talk !== undefined && { talk }),
    ...(desk.commandIds !== undefined && { commandIds: desk.commandIds }),
    commands,
    nowMs: now(),
    log,
    language,
    ...(languageOf !== undefined && { languageOf }),
    locale: interaction.locale,
    isAlone,
    slow: tellSlow,
    ...(interaction.isChatInputCommand() && { openFile: openAttachment(attachmentsOf(interaction), api) }),
  }
  const wire = wireOf({ answers, rest }, interaction, { after, log })
  const sentence = (text: string) => sentenceFor(text, dispatch)
  const excuse = (error: unknown) => {
    log(`${nameOf(interaction)}: ${trace(error)}`)
    return sentence(language.problems.internal())
  }
  const posted = () => sentence(language.discord.posted())
  return {
    wire,
    dispatch,
    say: (text) => wire.message(sentence(text)),
    respond: async (work) => {
      try {
        return await respond(wire, work, { excuse, posted, isAlone, after, slow, log })
      } finally {
        const said = await work
        if (said.kind === 'messages' && mayHaveRecorded(said))
          await redrawNudges(userId, interaction.id, { ...desk, inTurn })
      }
    },
  }
}
