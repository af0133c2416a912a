/** The package publishes no typings for its schemas; these are the ones that are read here. */
declare module 'discord-api-spec/zod' {
  import type { ZodMiniType } from 'zod/mini'

  export const ApplicationCommandAutocompleteCallbackRequestSchema: ZodMiniType
  export const ApplicationCommandResponseSchema: ZodMiniType
  export const ApplicationCommandUpdateRequestSchema: ZodMiniType
  export const AvailableLocalesEnumSchema: ZodMiniType
  export const CreateMessageInteractionCallbackRequestSchema: ZodMiniType
  export const CreatePrivateChannelRequestSchema: ZodMiniType
  export const ErrorResponseSchema: ZodMiniType
  export const GatewayBotResponseSchema: ZodMiniType
  export const GuildChannelResponseSchema: ZodMiniType
  export const GuildMemberResponseSchema: ZodMiniType
  export const GuildResponseSchema: ZodMiniType
  export const IncomingWebhookInteractionRequestSchema: ZodMiniType
  export const IncomingWebhookUpdateRequestPartialSchema: ZodMiniType
  export const InteractionCallbackResponseSchema: ZodMiniType
  export const MessageCreateRequestSchema: ZodMiniType
  export const MessageEditRequestPartialSchema: ZodMiniType
  export const MessageResponseSchema: ZodMiniType
  export const ModalInteractionCallbackRequestSchema: ZodMiniType
  export const PongInteractionCallbackRequestSchema: ZodMiniType
  export const PrivateApplicationResponseSchema: ZodMiniType
  export const PrivateChannelResponseSchema: ZodMiniType
  export const RatelimitedResponseSchema: ZodMiniType
  export const UpdateMessageInteractionCallbackRequestSchema: ZodMiniType
  export const UserPIIResponseSchema: ZodMiniType
}
