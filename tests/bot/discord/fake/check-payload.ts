import {
  ApplicationCommandAutocompleteCallbackRequestSchema,
  ApplicationCommandUpdateRequestSchema,
  CreateMessageInteractionCallbackRequestSchema,
  CreatePrivateChannelRequestSchema,
  IncomingWebhookInteractionRequestSchema,
  IncomingWebhookUpdateRequestPartialSchema,
  MessageCreateRequestSchema,
  MessageEditRequestPartialSchema,
  ModalInteractionCallbackRequestSchema,
  PongInteractionCallbackRequestSchema,
  UpdateMessageInteractionCallbackRequestSchema,
} from 'discord-api-spec/zod'
import type { ZodMiniType } from 'zod/mini'
import { type CommandNode, checkCommands } from './check-commands.ts'
import { checkMessage, type MessageRules } from './check-message.ts'
import { checkModal } from './check-modal.ts'
import { checkSchema, withoutEmptyExtras } from './check-schema.ts'
import { isRecord, type Json, type Upload } from './json.ts'
import { type Problem, problem } from './problem.ts'
import { matchRoute, type RouteName } from './routes.ts'

export interface Payload {
  readonly body: unknown
  readonly files: readonly Upload[]
}

type Check = (payload: Payload) => readonly Problem[]

const under = (at: Problem['path'], found: readonly Problem[]): readonly Problem[] =>
  found.map(({ path, message }) => problem([...at, ...path], message))

/** The description first: only what it accepts has the shape that the further checks read. */
const inTurn = (first: readonly Problem[], then: () => readonly Problem[]): readonly Problem[] =>
  first.length > 0 ? first : then()

const noBody: Check = ({ body }) => (body === undefined ? [] : [problem([], 'this route takes no body')])

const message =
  (schema: ZodMiniType, rules: MessageRules): Check =>
  ({ body, files }) => {
    if (!isRecord(body)) return [problem([], 'has to be an object')]
    return inTurn(checkSchema(schema, withoutEmptyExtras(body)), () => checkMessage(body, files, rules))
  }

const commands: Check = ({ body }) => {
  if (!Array.isArray(body)) return [problem([], 'has to be a list')]
  const found = body.flatMap((command: Json, index) => {
    // A string on the wire, says Discord's documentation and does discord.js; a number in the description.
    const rights = command.default_member_permissions
    const sent = typeof rights === 'string' ? { ...command, default_member_permissions: Number(rights) } : command
    return checkSchema(ApplicationCommandUpdateRequestSchema, sent, [index])
  })
  return inTurn(found, () => checkCommands(body as readonly CommandNode[]))
}

/** Choices carry strings of 100 at most, by Discord's documentation; the description says 6000. */
const choices = (data: unknown): readonly Problem[] =>
  (isRecord(data) && Array.isArray(data.choices) ? (data.choices as readonly Json[]) : []).flatMap(
    ({ value }, index) =>
      typeof value === 'string' && value.length > 100
        ? [problem(['data', 'choices', index, 'value'], 'longer than 100')]
        : [],
  )

const callback: Check = ({ body, files }) => {
  if (!isRecord(body)) return [problem([], 'has to be an object')]
  const data = isRecord(body.data) ? body.data : {}
  const sent = isRecord(body.data) ? { ...body, data: withoutEmptyExtras(body.data) } : body
  const against = (schema: ZodMiniType, further: () => readonly Problem[]): readonly Problem[] =>
    inTurn(checkSchema(schema, sent), further)
  const ofMessage = (rules: MessageRules) => (): readonly Problem[] => under(['data'], checkMessage(data, files, rules))
  switch (body.type) {
    case 1:
      return against(PongInteractionCallbackRequestSchema, () => [])
    case 4:
      return against(CreateMessageInteractionCallbackRequestSchema, ofMessage({ mayBePrivate: true }))
    case 5:
      return against(CreateMessageInteractionCallbackRequestSchema, () => [])
    case 6:
      return against(UpdateMessageInteractionCallbackRequestSchema, () => [])
    case 7:
      return against(UpdateMessageInteractionCallbackRequestSchema, ofMessage({ isEdit: true, mayBePrivate: true }))
    case 8:
      return against(ApplicationCommandAutocompleteCallbackRequestSchema, () => choices(body.data))
    case 9:
      return against(ModalInteractionCallbackRequestSchema, () => checkModal(data))
    default:
      return [problem(['type'], 'is not a type of callback that is known here')]
  }
}

const CHECKS: Readonly<Record<RouteName, Check>> = {
  gatewayBot: noBody,
  me: noBody,
  application: noBody,
  ownApplication: noBody,
  globalCommands: noBody,
  setGlobalCommands: commands,
  guildCommands: noBody,
  setGuildCommands: commands,
  user: noBody,
  guild: noBody,
  member: noBody,
  channel: noBody,
  messages: noBody,
  message: noBody,
  openDm: ({ body }) => checkSchema(CreatePrivateChannelRequestSchema, body),
  send: message(MessageCreateRequestSchema, {}),
  edit: message(MessageEditRequestPartialSchema, { isEdit: true }),
  remove: noBody,
  callback,
  followUp: message(IncomingWebhookInteractionRequestSchema, { mayBePrivate: true }),
  answer: noBody,
  editAnswer: message(IncomingWebhookUpdateRequestPartialSchema, { isEdit: true, mayBePrivate: true }),
  removeAnswer: noBody,
}

/**
 * What is wrong with a request by Discord's published description (npm `discord-api-spec`) and the limits that it does not
 * state. A path that is not known here is a problem too.
 *
 * @param path - below `/api/v10`, without its query
 */
export const checkPayload = (
  method: string,
  path: string,
  body: unknown,
  files: readonly Upload[] = [],
): readonly Problem[] => {
  const route = matchRoute(method, path)
  return route ? CHECKS[route.name]({ body, files }) : [problem([], `${method} ${path} is not a route that is checked`)]
}
