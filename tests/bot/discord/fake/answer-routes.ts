import { ApiError } from './api-error.ts'
import type { Context, Handler, Result } from './handler.ts'
import { CALLBACK, type FakeInteraction, forCallback, forWebhook, KIND, messageOf } from './interactions.ts'
import { isRecord, type Json, type Upload } from './json.ts'
import { createMessage, EPHEMERAL, editMessage, LOADING } from './messages.ts'
import { errorTree, problem } from './problem.ts'
import type { FakeMessage } from './world.ts'

const MOST_PERSONAL_FOLLOW_UPS = 5

const isEphemeral = (body: Json): boolean => (Number(body.flags ?? 0) & EPHEMERAL) !== 0

const post = (
  { world, announce }: Context,
  { user, channel, metadata }: FakeInteraction,
  body: Json,
  files: readonly Upload[],
): FakeMessage => {
  const onlyFor = isEphemeral(body) ? user : undefined
  const extra = { application_id: world.applicationId, webhook_id: world.applicationId, interaction_metadata: metadata }
  const { message } = createMessage(world, { channel, author: world.bot, body, files, onlyFor, extra })
  if (!onlyFor) announce('MESSAGE_CREATE', message)
  return message
}

const change = (context: Context, message: FakeMessage, body: Json, files: readonly Upload[]): FakeMessage => {
  const edited = editMessage(context.world, message, { body, files, blame: context.blame })
  edited.json = { ...edited.json, flags: (edited.json.flags ?? 0) & ~LOADING }
  if (!message.onlyFor) context.announce('MESSAGE_UPDATE', edited)
  return edited
}

/** Which callbacks an interaction takes, by Discord's documentation. */
const takes = ({ kind, source }: FakeInteraction): readonly number[] => {
  if (kind === KIND.autocomplete) return [CALLBACK.choices]
  const answers = [CALLBACK.message, CALLBACK.deferMessage, ...(kind === KIND.modal ? [] : [CALLBACK.modal])]
  return source ? [...answers, CALLBACK.deferUpdate, CALLBACK.update] : answers
}

const answered = (
  context: Context,
  interaction: FakeInteraction,
  type: number,
  data: Json,
): FakeMessage | undefined => {
  const { files } = context.request
  switch (type) {
    case CALLBACK.message:
      return post(context, interaction, data, files)
    case CALLBACK.deferMessage:
      return post(context, interaction, { flags: Number(data.flags ?? 0) | LOADING }, [])
    case CALLBACK.update:
      return change(context, interaction.source!, data, files)
    default:
      return interaction.source
  }
}

const callback: Handler = (context, params) => {
  const { world, interactions, request, blame } = context
  const interaction = forCallback(world, interactions, params.interaction!, params.token!)
  const { type, data: sent } = request.body as { type: number; data?: Json }
  const data = sent ?? {}
  if (!takes(interaction).includes(type)) {
    const found = [problem(['type'], `an interaction of kind ${interaction.kind} takes no callback of type ${type}`)]
    blame(found)
    throw new ApiError(50035, errorTree(found))
  }
  const message = answered(context, interaction, type, data)
  interaction.original = message
  interaction.callback = { type, data }
  if (request.query.get('with_response') !== 'true') return { status: 204 }
  const isShown = type === CALLBACK.message || type === CALLBACK.update
  return {
    status: 200,
    body: {
      interaction: {
        id: interaction.id,
        type: interaction.kind,
        ...(message && {
          response_message_id: message.json.id,
          response_message_loading: type === CALLBACK.deferMessage,
          response_message_ephemeral: message.onlyFor !== undefined,
        }),
      },
      ...(isShown && message && { resource: { type, message: message.json } }),
    },
  }
}

/** A follow-up, which fills the answer that was promised when none has yet. */
const followUp: Handler = (context, { token }) => {
  const { world, interactions, request } = context
  const interaction = forWebhook(world, interactions, token!)
  const body = request.body as Json
  const { original, followUps } = interaction
  const isPromised = original && !original.isDeleted && (original.json.flags ?? 0) & LOADING
  if (isPromised) return { status: 200, body: change(context, original, body, request.files).json }
  if (interaction.isPersonal && followUps.length >= MOST_PERSONAL_FOLLOW_UPS) throw new ApiError(40094)
  const message = post(context, interaction, body, request.files)
  followUps.push(message)
  return { status: 200, body: message.json }
}

const found = ({ world, interactions }: Context, params: Readonly<Record<string, string>>): FakeMessage =>
  messageOf(forWebhook(world, interactions, params.token!), params.message!)

const answer: Handler = (context, params): Result => ({ status: 200, body: found(context, params).json })

const editAnswer: Handler = (context, params) => {
  const { body, files } = context.request
  return { status: 200, body: change(context, found(context, params), isRecord(body) ? body : {}, files).json }
}

const removeAnswer: Handler = (context, params) => {
  const message = found(context, params)
  message.isDeleted = true
  message.channel.messages.delete(message.json.id)
  return { status: 204 }
}

export const answerRoutes = { callback, followUp, answer, editAnswer, removeAnswer }
