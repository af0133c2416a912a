import type { APITextDisplayComponent } from 'discord.js'
import { expect } from 'vitest'
import type { Reply } from '../../../bot/chat/reply.ts'
import type { CallOutcome } from '../../../bot/chat/run/call-outcome.ts'
import type { HelpPage } from '../../../bot/chat/run/help-page.ts'
import { buttonIds } from '../../../bot/discord/buttons/button-ids.ts'
import { speechIn } from '../../../bot/discord/show/language-for-discord.ts'
import type { MessagePayload } from '../../../bot/discord/show/message-payload.ts'
import { type Rendering, replyMessages, toMessages } from '../../../bot/discord/show/to-messages.ts'
import { en } from '../../../bot/text/en/index.ts'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import { checkPayload } from './fake/check-payload.ts'
import { type ComponentNode, walk } from './fake/component-node.ts'
import { showProblem } from './fake/problem.ts'

export const OWNER = '123456789012345678'
const ROW = 1
const TEXT = 10

const nodesOf = ({ components }: MessagePayload): readonly ComponentNode[] =>
  walk(components as unknown as readonly ComponentNode[])

/** The markdown of a message, text by text. */
export const textsOf = (message: MessagePayload): readonly string[] =>
  nodesOf(message).flatMap(({ type, content }) =>
    type === TEXT ? [content as APITextDisplayComponent['content']] : [],
  )

export const labelsOf = (message: MessagePayload): readonly string[] =>
  nodesOf(message).flatMap(({ label }) => label ?? [])

export const hasRows = ({ components }: MessagePayload): boolean =>
  components.some(({ type }) => (type as number) === ROW)

/** Fails where Discord would refuse a message, in every way that it can be sent. */
export const expectValid = (messages: readonly MessagePayload[]): void => {
  for (const message of messages) {
    const [first, later] = [{ type: 4, data: message }, message]
    const found = [
      ...checkPayload('POST', '/interactions/1/token/callback', first),
      ...checkPayload('POST', '/webhooks/1/token', later),
      ...(message.flags & 64 ? [] : checkPayload('POST', '/channels/1/messages', message)),
    ]
    expect(found.map(showProblem)).toEqual([])
  }
}

export const speech = speechIn(en, 'Europe/Rome')

export const rendering = (more: Partial<Rendering> = {}): Rendering => ({
  owner: OWNER,
  isPrivate: true,
  pings: false,
  ids: new Map(),
  mostMessages: 5,
  ...more,
})

const idsOf = (reply: Reply) =>
  buttonIds(
    reply.actions.map(({ call }) => call),
    { owner: OWNER, nudgeId: null },
    memoryStore('UTC'),
  )

export const messagesOf = async (
  outcome: CallOutcome | HelpPage,
  more: Partial<Rendering> = {},
): Promise<readonly MessagePayload[]> =>
  toMessages(outcome, rendering({ ids: 'reply' in outcome ? await idsOf(outcome.reply) : new Map(), ...more }), speech)

export const messagesOfReply = async (
  reply: Reply,
  more: Partial<Rendering> = {},
): Promise<readonly MessagePayload[]> =>
  replyMessages(null, reply, rendering({ ids: await idsOf(reply), ...more }), speech)
