import type { APIApplicationCommand } from 'discord.js'
import type { RegisteredCommand } from './registration.ts'

/** Everything that either may carry, as plain JSON. */
interface Node {
  readonly name: string
  readonly type?: number
  readonly description?: string
  readonly name_localizations?: Readonly<Record<string, string | null>> | null
  readonly description_localizations?: Readonly<Record<string, string | null>> | null
  readonly options?: readonly Node[]
  readonly choices?: readonly Node[]
  readonly value?: string | number
  readonly required?: boolean
  readonly autocomplete?: boolean
  readonly min_length?: number
  readonly max_length?: number
  readonly integration_types?: readonly number[] | null
  readonly contexts?: readonly number[] | null
  readonly nsfw?: boolean
  readonly default_member_permissions?: string | null
}

const inOrder = (numbers: readonly number[] | null | undefined): readonly number[] => [...(numbers ?? [])].sort()

const byName = ([one]: readonly [string, unknown], [other]: readonly [string, unknown]): number =>
  one < other ? -1 : Number(one > other)

const translations = (texts: Node['name_localizations']) => Object.entries(texts ?? {}).sort(byName)

/** What is left of a command, option or choice without what Discord adds and with what it takes for granted. */
const plain = (node: Node): unknown => [
  node.name,
  node.type ?? 1,
  node.description ?? '',
  translations(node.name_localizations),
  translations(node.description_localizations),
  node.value ?? null,
  node.required ?? false,
  node.autocomplete ?? false,
  node.min_length ?? null,
  node.max_length ?? null,
  (node.choices ?? []).map(plain),
  (node.options ?? []).map(plain),
]

/** Only what is registered everywhere says where it is used. */
const top = (node: Node, isEverywhere: boolean): unknown => [
  plain(node),
  node.nsfw ?? false,
  node.default_member_permissions ?? null,
  ...(isEverywhere ? [inOrder(node.integration_types ?? [0]), inOrder(node.contexts)] : []),
]

const textOf = (commands: readonly Node[], isEverywhere: boolean): string =>
  JSON.stringify(
    commands
      .map((command) => [command.name, top(command, isEverywhere)] as const)
      .sort(byName)
      .map(([, each]) => each),
  )

/** Whether what Discord has is what it would be told; the order of the commands makes no difference. */
export const isRegistered = (
  commands: readonly RegisteredCommand[],
  known: readonly APIApplicationCommand[],
  guildId: string | null,
): boolean =>
  textOf(commands as readonly Node[], guildId === null) === textOf(known as readonly Node[], guildId === null)
