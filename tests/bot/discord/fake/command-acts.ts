import type { Answer } from './answer.ts'
import { type CommandNode, GROUP, SUBCOMMAND } from './check-commands.ts'
import { KIND } from './interactions.ts'
import type { Json } from './json.ts'
import { type By, type Stage, startInteraction } from './start-interaction.ts'
import type { Registered, World } from './world.ts'

/** A file given to an attachment option. */
export interface GivenFile {
  readonly name: string
  readonly mime: string
  readonly bytes: Uint8Array
}

export type OptionValue = string | number | boolean | GivenFile
export type Options = Readonly<Record<string, OptionValue>>

export interface ByCommand extends By {
  /** Sends a command that is not registered (any more), as one does who has an old list. */
  readonly isOld?: boolean
}

const TYPE_OF = { string: 3, number: 10, boolean: 5, object: 11 } as const
const ATTACHMENT = 11

const registered = ({ commands }: World, name: string, guildId: string | undefined): Registered | undefined =>
  [...(commands.get(guildId ?? '') ?? []), ...(commands.get('') ?? [])].find((command) => command.name === name)

/** Goes down the words of a line: command, group, subcommand. */
const leafOf = (command: CommandNode, words: readonly string[], line: string): CommandNode =>
  words.reduce((node, word) => {
    const inner = node.options?.find(({ name, type }) => name === word && (type === SUBCOMMAND || type === GROUP))
    if (!inner) throw new Error(`/${line} is not registered`)
    return inner
  }, command)

/** What Discord's own client would not let anybody send. */
const refuse = (leaf: CommandNode, options: Options, line: string): void => {
  const known = leaf.options ?? []
  if (known.some(({ type }) => type === SUBCOMMAND || type === GROUP)) throw new Error(`/${line} needs a subcommand`)
  for (const name of Object.keys(options))
    if (!known.some((option) => option.name === name)) throw new Error(`/${line} has no option ${name}`)
  for (const { name, required, choices, max_length: most } of known) {
    const value = options[name]
    if (required && value === undefined) throw new Error(`/${line} needs ${name}`)
    if (choices?.length && value !== undefined && !choices.some((choice) => choice.value === value))
      throw new Error(`/${line} ${name}: ${String(value)} is not among its choices`)
    if (typeof value === 'string' && most !== undefined && value.length > most)
      throw new Error(`/${line} ${name}: longer than ${most}`)
  }
}

const attached = (world: World, value: GivenFile): Json => {
  const id = world.clock.snowflake()
  const path = `/attachments/given/${id}/${encodeURIComponent(value.name)}`
  world.files.set(path, { index: '0', ...value })
  const url = world.filesUrl + path
  const { name: filename, mime: content_type, bytes } = value
  return { id, filename, content_type, size: bytes.length, url, proxy_url: url, ephemeral: true }
}

/** The `data` of a command interaction: its words nested, its options with their registered types. */
const commandData = (stage: Stage, line: string, options: Options, by: ByCommand, focused?: string): Json => {
  const { world } = stage
  const [name = '', ...words] = line.split(' ')
  const guildId = (by.channel ?? stage.channel).guild?.id
  const command = by.isOld ? undefined : registered(world, name, guildId)
  if (!command && !by.isOld) throw new Error(`/${name} is not registered`)
  const leaf = command && leafOf(command, words, line)
  if (leaf && focused === undefined) refuse(leaf, options, line)
  if (focused !== undefined && leaf?.options?.find((option) => option.name === focused)?.autocomplete !== true && leaf)
    throw new Error(`/${line} ${focused}: has no autocomplete`)
  const attachments: Record<string, Json> = {}
  const given = Object.entries(options).map(([option, value]) => {
    const type =
      leaf?.options?.find((known) => known.name === option)?.type ?? TYPE_OF[typeof value as keyof typeof TYPE_OF]
    if (type !== ATTACHMENT) return { name: option, type, value, ...(option === focused && { focused: true }) }
    const file = attached(world, value as GivenFile)
    attachments[String(file.id)] = file
    return { name: option, type, value: file.id }
  })
  const nested = words.reduceRight<readonly Json[]>(
    (inner, word, index) => [
      { name: word, type: words.length === 2 && index === 0 ? GROUP : SUBCOMMAND, options: inner },
    ],
    given,
  )
  return {
    id: command?.id ?? world.clock.snowflake(),
    name,
    type: 1,
    options: nested,
    ...(Object.keys(attachments).length > 0 && { resolved: { attachments } }),
  }
}

/** What people do with slash commands. */
export const commandActs = (stage: Stage) => ({
  /** Sends a command, such as `slash('jar shake', { jar: '#k7f2a' })`; what Discord's client would refuse throws. */
  slash: async (line: string, options: Options = {}, by: ByCommand = {}): Promise<Answer> =>
    startInteraction(stage, { kind: KIND.command, data: commandData(stage, line, options, by), what: `/${line}` }, by),
  /** Types in the option `focused`, whose text so far is among the options; the answer has `choices`. */
  autocomplete: async (line: string, options: Options, focused: string, by: ByCommand = {}): Promise<Answer> => {
    const data = commandData(stage, line, { [focused]: '', ...options }, by, focused)
    return startInteraction(stage, { kind: KIND.autocomplete, data, what: `/${line} ${focused}: (autocomplete)` }, by)
  },
})
