import type { APIApplicationCommand, DiscordAPIError, REST, RESTOptions } from 'discord.js'
import { trace } from '../../chat/trace.ts'
import { commands } from '../../commands/index.ts'
import type { Language } from '../../text/language.ts'
import { restFault } from '../rest/rest-fault.ts'
import type { CommandIds } from '../show/reply-blocks.ts'
import { type RegisteredCommand, registrationOf } from './registration.ts'
import { isRegistered } from './same-registration.ts'
import { isToken } from './token.ts'

/** Where commands are registered. */
export interface Target {
  readonly applicationId: string
  /** Null: everywhere. */
  readonly guildId: string | null
  readonly commands: readonly RegisteredCommand[]
}

const routeOf = ({ applicationId, guildId }: Target): `/${string}` =>
  guildId === null
    ? `/applications/${applicationId}/commands`
    : `/applications/${applicationId}/guilds/${guildId}/commands`

/** A server's commands are used in that server alone. */
const bodyOf = ({ guildId, commands: all }: Target): readonly RegisteredCommand[] =>
  guildId === null ? all : all.map(({ integration_types: _, contexts: __, ...command }) => command)

type Registered = readonly APIApplicationCommand[]

/** Discord's numbers of commands, by their names. */
const idsOf = (registered: Registered): CommandIds => new Map(registered.map(({ name, id }) => [name, id]))

/** Puts the commands in place of all that were registered there. */
export const register = async (rest: REST, target: Target): Promise<Registered> =>
  (await rest.put(routeOf(target), { body: bodyOf(target) })) as Registered

/** What is registered there. */
const registeredAt = async (rest: REST, target: Target): Promise<Registered> => {
  const query = new URLSearchParams({ with_localizations: 'true' })
  return (await rest.get(routeOf(target), { query })) as Registered
}

/** What a start does: registers where that changes something, says whether it did, and knows the commands' numbers. */
export const registerIfChanged = async (
  rest: REST,
  target: Target,
): Promise<{ readonly isChanged: boolean; readonly ids: CommandIds }> => {
  const known = await registeredAt(rest, target)
  const isChanged = !isRegistered(target.commands, known, target.guildId)
  return { isChanged, ids: idsOf(isChanged ? await register(rest, target) : known) }
}

export interface RegisterRequest {
  readonly token: string
  /** Base address of Discord's REST, without its version; null: Discord's own. */
  readonly api: string | null
  /** Null: everywhere. */
  readonly guildId: string | null
  readonly language: Language
  readonly log: (text: string) => void
  /** How requests are sent, where not as usual. */
  readonly rest?: Partial<RESTOptions>
}

/**
 * `npm run register`: registers everything, says in one sentence how that went, and returns the exit code. The token is
 * never part of what is logged.
 */
export const registerCommands = async ({
  token,
  api,
  guildId,
  language,
  log,
  rest: options,
}: RegisterRequest): Promise<0 | 1> => {
  const { registered, faults } = language.registration
  if (!isToken(token)) {
    log(faults.wrong_token())
    return 1
  }
  const { REST: Rest } = await import('discord.js')
  const rest = new Rest({ ...(api !== null && { api }), ...options }).setToken(token)
  try {
    const { id } = (await rest.get('/applications/@me')) as { readonly id: string }
    const all = registrationOf(commands, language)
    await register(rest, { applicationId: id, guildId, commands: all })
    log(registered({ count: all.length, guildId }))
    return 0
  } catch (error) {
    const fault = restFault(error)
    if (fault === null) log(trace(error))
    if (fault === 'not_taken') log(JSON.stringify((error as Partial<DiscordAPIError>).rawError ?? null))
    log(fault === null ? language.problems.internal() : faults[fault]({ guildId }))
    return 1
  }
}
