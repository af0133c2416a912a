import { AvailableLocalesEnumSchema } from 'discord-api-spec/zod'
import { isRecord } from './json.ts'
import { type Problem, problem, repeated } from './problem.ts'

type Localisations = Readonly<Record<string, string>> | null

interface Choice {
  readonly name: string
  readonly value: string | number
  readonly name_localizations?: Localisations
}

/** A command or an option of one, as it is registered. */
export interface CommandNode {
  readonly name: string
  readonly type?: number
  readonly description?: string
  readonly name_localizations?: Localisations
  readonly description_localizations?: Localisations
  readonly options?: readonly CommandNode[]
  readonly choices?: readonly Choice[]
  readonly required?: boolean
  readonly autocomplete?: boolean
  readonly min_value?: number
  readonly max_value?: number
  readonly min_length?: number
  readonly max_length?: number
}

export const SUBCOMMAND = 1
export const GROUP = 2

const MOST_COMMANDS = 100
const MOST_CHARACTERS = 8000
const MOST_CHOICE_VALUE = 100

/** Discord's documentation, "Application Command Naming"; lower case where the script has one. */
const NAME = /^[-_'\p{L}\p{N}\p{sc=Deva}\p{sc=Thai}]{1,32}$/u
const isName = (name: string): boolean => NAME.test(name) && name === name.toLowerCase()

const longest = (text: string | undefined, others: Localisations | undefined): number =>
  Math.max(text?.length ?? 0, ...Object.values(others ?? {}).map((other) => other.length))

/** Names, descriptions and values of a command with all its options; of translations only the longest counts. */
const characters = (node: CommandNode): number =>
  longest(node.name, node.name_localizations) +
  longest(node.description, node.description_localizations) +
  (node.choices ?? []).reduce(
    (sum, { name, value, name_localizations: names }) => sum + longest(name, names) + String(value).length,
    0,
  ) +
  (node.options ?? []).reduce((sum, option) => sum + characters(option), 0)

const checkNames = (node: CommandNode, path: Problem['path']): readonly Problem[] => {
  const names = [node.name, ...Object.values(node.name_localizations ?? {})]
  const locales = [node.name_localizations, node.description_localizations].flatMap((texts) =>
    isRecord(texts) ? Object.keys(texts) : [],
  )
  return [
    ...names.filter((name) => !isName(name)).map((name) => problem([...path, 'name'], `"${name}" is not a legal name`)),
    ...(node.description ? [] : [problem([...path, 'description'], 'is empty')]),
    ...locales
      .filter((locale) => !AvailableLocalesEnumSchema.safeParse(locale).success)
      .map((locale) => problem(path, `"${locale}" is not a locale of Discord's`)),
  ]
}

const checkValues = (node: CommandNode, path: Problem['path']): readonly Problem[] => {
  const { choices = [], min_value: min, max_value: max, min_length: shortest, max_length: most } = node
  const tooLong = choices.filter(({ value }) => typeof value === 'string' && value.length > MOST_CHOICE_VALUE)
  return [
    ...repeated(choices.map(({ name }) => name)).map((name) => problem(path, `the choice "${name}" occurs twice`)),
    ...tooLong.map(({ name }) => problem(path, `the value of the choice "${name}" is longer than 100`)),
    ...(choices.length > 0 && node.autocomplete ? [problem(path, 'choices exclude autocomplete')] : []),
    ...((min ?? -Infinity) > (max ?? Infinity) ? [problem(path, 'min_value is above max_value')] : []),
    ...((shortest ?? 0) > (most ?? Infinity) ? [problem(path, 'min_length is above max_length')] : []),
  ]
}

const checkOptions = (node: CommandNode, path: Problem['path']): readonly Problem[] => {
  const options = node.options ?? []
  const isBranch = ({ type }: CommandNode): boolean => type === SUBCOMMAND || type === GROUP
  const late = options.findIndex((option, index) => option.required && index > 0 && !options[index - 1]!.required)
  return [
    ...repeated(options.map(({ name }) => name)).map((name) => problem(path, `the option "${name}" occurs twice`)),
    ...(late >= 0 ? [problem([...path, 'options', late], 'a required option after an optional one')] : []),
    ...(options.some(isBranch) && !options.every(isBranch) ? [problem(path, 'mixes subcommands with options')] : []),
    ...(node.type === GROUP && options.length === 0 ? [problem(path, 'a group without a subcommand')] : []),
  ]
}

const checkNode = (node: CommandNode, path: Problem['path']): readonly Problem[] => [
  ...checkNames(node, path),
  ...checkValues(node, path),
  ...checkOptions(node, path),
  ...(node.options ?? []).flatMap((option, index) => checkNode(option, [...path, 'options', index])),
]

/** What the published description does not say about the list of slash commands that is registered. */
export const checkCommands = (commands: readonly CommandNode[]): readonly Problem[] => [
  ...(commands.length > MOST_COMMANDS ? [problem([], `${commands.length} commands; 100 are allowed`)] : []),
  ...repeated(commands.map(({ name }) => name)).map((name) => problem([], `the command "${name}" occurs twice`)),
  ...commands.flatMap((command, index) => [
    ...(characters(command) > MOST_CHARACTERS
      ? [problem([index], `${characters(command)} characters; 8000 are allowed`)]
      : []),
    ...checkNode(command, [index]),
  ]),
]
