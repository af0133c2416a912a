import type { PostedIn } from '../../../store/person.ts'
import { trace } from '../../chat/trace.ts'
import { restFault } from '../rest/rest-fault.ts'
import type { StartTimer } from '../rest/timeout.ts'
import { EPHEMERAL, type MessagePayload } from '../show/message-payload.ts'
import type { SaidMessages } from './answer-messages.ts'
import { inTime } from './defer-slow-answer.ts'
import type { Answered, InteractionResponses, SentMessage } from './interaction-responses.ts'
import type { CallRun } from './run-call.ts'

export interface Responding {
  /** What is said where Discord does not take the answer; told why. */
  readonly excuse: (error: unknown) => MessagePayload
  /** What whoever asked is told where what they asked for stands under it, for all. */
  readonly posted: () => MessagePayload
  /** Nobody else reads along, so that nothing is promised to one. */
  readonly isAlone: boolean
  readonly after: StartTimer
  /** Resolves where the answer has to be drawn, with whether it is for all. */
  readonly slow: Promise<boolean>
  readonly log: (text: string) => void
}

/** Where a message stands; null where Discord let only its asker see it. */
const placeOf = ({ id, channel_id, flags = 0 }: SentMessage): PostedIn | null =>
  (flags & EPHEMERAL) === 0 ? { channelId: channel_id, messageId: id } : null

/**
 * Says it: as the first answer where it is ready soon, else as what was promised; the messages after it in order. What
 * is for all comes under what was promised to one.
 */
export async function respond(
  wire: InteractionResponses,
  work: Promise<CallRun>,
  { excuse, posted, isAlone, after, slow, log }: Responding,
): Promise<Answered> {
  let [isPromised, isPromisedToAll] = [false, false]
  const promise = (isPublic: boolean | null): Promise<Answered> => {
    isPromised = true
    isPromisedToAll = isAlone || isPublic === true
    return wire.promise(isPromisedToAll)
  }
  const first = async (payload: MessagePayload): Promise<Answered> => {
    if (!isPromised && payload.files === undefined) return wire.message(payload)
    if (!isPromised && (await promise(false)) === 'too_late') return 'too_late'
    await wire.fulfil(payload)
    return 'answered'
  }
  const forAll = async (payload: MessagePayload): Promise<SentMessage | 'too_late'> => {
    if (isPromised && !isPromisedToAll) {
      await wire.fulfil(posted())
      return wire.more(payload)
    }
    if (!isPromised && (await promise(true)) === 'too_late') return 'too_late'
    return wire.fulfil(payload)
  }
  const say = async (payload: MessagePayload, said: SaidMessages): Promise<Answered> => {
    if (!said.isPublic) return first(payload)
    const sent = await forAll(payload)
    if (sent === 'too_late') return sent
    const at = placeOf(sent)
    try {
      if (at !== null) await said.posted?.(at)
    } catch (error) {
      // It is there to see, whoever keeps where.
      log(trace(error))
    }
    return 'answered'
  }
  try {
    const { result, promised } = await inTime(work, promise, { after, slow })
    if (promised === 'too_late') return 'too_late'
    if (!isPromised && result.kind === 'form') return await wire.form(result.form)
    const said = result.kind === 'form' ? await result.instead() : result
    const [opening, ...others] = said.messages
    if (opening === undefined) throw new TypeError('an answer without a message')
    if ((await say(opening, said)) === 'too_late') return 'too_late'
    for (const more of others) await wire.more(more)
    return 'answered'
  } catch (error) {
    const fault = restFault(error)
    if (fault !== null && fault !== 'not_taken') throw error
    return first(excuse(error))
  }
}
