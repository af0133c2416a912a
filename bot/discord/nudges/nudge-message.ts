import type { Store } from '../../../store/store.ts'
import type { Callable } from '../../chat/callable.ts'
import type { Reply } from '../../chat/reply.ts'
import type { en } from '../../text/en/index.ts'
import { buttonIds } from '../receive/button-ids.ts'
import { speechIn } from '../show/language-for-discord.ts'
import type { MessagePayload } from '../show/message-payload.ts'
import { replyMessages } from '../show/to-messages.ts'

export interface NudgeWriting {
  readonly store: Pick<Store, 'read' | 'update'>
  readonly commands: readonly Callable[]
  readonly language: typeof en
  /** IANA name of the zone of who has chosen none. */
  readonly assumedZone: string
}

/** What a nudge shows: one message that pings its owner, its id in every button. What the store fails at comes out. */
export async function nudgeMessage(
  { userId: owner, nudgeId, reply }: { readonly userId: string; readonly nudgeId: string; readonly reply: Reply },
  { store, commands, language, assumedZone }: NudgeWriting,
): Promise<MessagePayload> {
  const lines = reply.actions.map(({ line }) => line)
  const ids = await buttonIds(lines, { owner, nudgeId }, { store, commands })
  const zone = (await store.read(owner)).settings.zone ?? assumedZone
  const [message] = replyMessages(
    null,
    reply,
    { owner, isPrivate: false, pings: true, ids, mostMessages: 1 },
    speechIn(language, zone),
  )
  return message!
}
