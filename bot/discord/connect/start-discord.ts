import type { Maintenance } from '../../../store/maintenance.ts'
import { StorageError, type StorageProblems } from '../../../store/storage-error.ts'
import type { Store } from '../../../store/store.ts'
import { newDoubts } from '../../chat/doubts.ts'
import { newLastReplies } from '../../chat/last-replies.ts'
import { closedPlaces } from '../../reminders/closed-places.ts'
import { startReminders } from '../../reminders/start-reminders.ts'
import { noReminders } from '../../reminders/why-no-reminders.ts'
import { newTalkMemory } from '../../talk/memory/remembered.ts'
import { clean } from '../../text/clean.ts'
import { wordsOf } from '../../text/words-of.ts'
import { discordSurface } from '../nudges/nudge-surface.ts'
import type { InteractionDesk } from '../receive/interaction-context.ts'
import { after } from '../rest/timeout.ts'
import { type ConnectionDesk, connect } from './connect.ts'

interface DiscordStart
  extends Pick<InteractionDesk, 'commands' | 'language' | 'languageOf' | 'assumedZone' | 'now' | 'log'> {
  readonly store: Store & Maintenance
  readonly ended: AbortSignal
}

/** Whether another process has the folder; whatever else is wrong with it keeps nobody from an answer. */
async function lockedOut(store: Maintenance): Promise<StorageProblems['locked'] | null> {
  try {
    await store.hold()
    return null
  } catch (error) {
    if (!(error instanceof StorageError)) throw error
    return error.problem === 'locked' ? (error as StorageError<'locked'>).values : null
  }
}

/**
 * Answers and reminds in Discord until `ended`; returns the exit code. Where another process works on the folder it says so
 * and does not connect: two would answer everybody, and one of them could keep nothing.
 */
export async function startDiscord(
  discord: Pick<ConnectionDesk, 'token' | 'guildId' | 'api'>,
  start: DiscordStart,
): Promise<0 | 1> {
  const { store, language, ended, log } = start
  const words = wordsOf(language)
  const locked = await lockedOut(store)
  if (locked !== null) {
    log(clean(words.problem('locked', locked, 'metric')))
    return 1
  }
  const shared = {
    ...start,
    closed: closedPlaces(),
    doubts: newDoubts(),
    replies: newLastReplies(),
    talk: newTalkMemory(),
  }
  return connect({
    ...shared,
    ...discord,
    after,
    ended,
    remind: ({ rest, user }, heardMs) =>
      startReminders({
        ...shared,
        heardMs,
        surface: discordSurface({ ...shared, rest, botUserId: user.id }),
        complain: (error) => log(clean(noReminders(error, words, language.console))),
      }),
  })
}
