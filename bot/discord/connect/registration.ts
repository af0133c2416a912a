import type {
  APIApplicationCommandAttachmentOption,
  APIApplicationCommandBasicOption,
  APIApplicationCommandStringOption,
  APIApplicationCommandSubcommandOption,
  Locale,
  LocalizationMap,
  RESTPostAPIChatInputApplicationCommandsJSONBody,
} from 'discord.js'
import type { z } from 'zod'
import { isRequired, optionTextOf } from '../../calls/option.ts'
import type { Command } from '../../chat/command.ts'
import { HELP } from '../../chat/run/help-page.ts'
import type { CommandText } from '../../text/command-text.ts'
import { isAskedFor } from '../forms/form.ts'
import { ASK, askCommand } from '../suggest/ask-command.ts'
import { helpCommand } from '../suggest/autocomplete.ts'

/** What a language says of the commands. */
export interface RegisteredText {
  readonly commands: Readonly<Record<string, CommandText>>
  readonly registration: {
    readonly help: CommandText
    readonly ask: CommandText
    /** First word of commands of two, to what they are. */
    readonly groups: Readonly<Record<string, string>>
    readonly choices: Readonly<Record<string, string>>
    /** The language's own words for those of which commands and options are made, where it has some. */
    readonly names?: Readonly<Record<string, string>>
  }
}

export type Languages = { readonly [Code in `${Locale}`]?: RegisteredText }

export type RegisteredCommand = RESTPostAPIChatInputApplicationCommandsJSONBody

type RegisteredOption = APIApplicationCommandStringOption | APIApplicationCommandAttachmentOption

type Listed = Pick<Command, 'path' | 'input'>

const STRING = 3
const SUBCOMMAND = 1
const ATTACHMENT = 11

/** Characters of a text that has no limit of its own: amounts, strengths, days. */
const USUAL_MOST = 200

/** Installed to a server or to a person; used in servers, with the bot and between people. */
const EVERYWHERE = { integration_types: [0, 1], contexts: [0, 1, 2] } as const

interface Localised {
  readonly name_localizations?: LocalizationMap
  readonly description_localizations?: LocalizationMap
}

/** What the languages say, as far as they say it; nothing where there are none. */
const localised = (
  languages: Languages,
  name: string,
  description: ((text: RegisteredText) => string | undefined) | null,
): Localised => {
  const mapOf = (read: (text: RegisteredText) => string | undefined): LocalizationMap | undefined => {
    const said = Object.entries(languages).flatMap(([code, text]) => {
      const own = read(text)
      return own === undefined ? [] : [[code, own] as const]
    })
    return said.length === 0 ? undefined : (Object.fromEntries(said) as LocalizationMap)
  }
  const names = mapOf(({ registration }) => registration.names?.[name])
  const descriptions = description === null ? undefined : mapOf(description)
  return {
    ...(names && { name_localizations: names }),
    ...(descriptions && { description_localizations: descriptions }),
  }
}

const textOf = ({ commands, registration }: RegisteredText, path: string): CommandText | undefined =>
  path === HELP ? registration.help : path === ASK ? registration.ask : commands[path]

const expected = (text: string | undefined, of: string): string => {
  if (text === undefined) throw new TypeError(`no text for ${of}`)
  return text
}

/**
 * All of the commands as Discord takes them: a path of one word is a command, those of two words are subcommands of
 * their first. Every option is a string or a file, the required ones first, without those that a form asks for; `languages` are those besides the text's own.
 * Throws `TypeError` where a word is both a command and a group, or a text is missing.
 */
export const registrationOf = (
  commands: readonly Listed[],
  text: RegisteredText,
  languages: Languages = {},
): readonly RegisteredCommand[] => {
  const choice = (word: string | number) => {
    const value = String(word)
    const labels = Object.entries(languages).flatMap(([code, { registration }]) => {
      const label = registration.choices[value]
      return label === undefined ? [] : [[code, label] as const]
    })
    return {
      name: expected(text.registration.choices[value], `the choice ${value}`),
      value,
      ...(labels.length > 0 && { name_localizations: Object.fromEntries(labels) as LocalizationMap }),
    }
  }

  const optionOf = (path: string, name: string, schema: z.core.$ZodType): RegisteredOption => {
    const { choices, suggested, most = USUAL_MOST, isFile = false } = optionTextOf(schema)
    const named = {
      name,
      description: expected(textOf(text, path)?.options[name], `${name}: of /${path}`),
      ...localised(languages, name, (language) => textOf(language, path)?.options[name]),
      required: isRequired(schema) && !isAskedFor(path, name),
    } as const
    if (isFile) return { type: ATTACHMENT, ...named }
    const shared = { type: STRING, ...named } as const
    if (choices !== undefined) return { ...shared, choices: choices.map(choice) }
    const length = { min_length: 1, max_length: most }
    return suggested === undefined ? { ...shared, ...length } : { ...shared, ...length, autocomplete: true }
  }

  const optionsOf = ({ path, input }: Listed): APIApplicationCommandBasicOption[] => {
    const options = Object.entries(input.shape).map(([name, schema]) => optionOf(path, name, schema))
    return [...options.filter(({ required }) => required), ...options.filter(({ required }) => !required)]
  }

  const described = (path: string, name: string) => ({
    name,
    description: expected(textOf(text, path)?.summary, `/${path}`),
    ...localised(languages, name, (language) => textOf(language, path)?.summary),
  })

  const groupOf = (first: string, members: readonly Listed[]): RegisteredCommand => ({
    name: first,
    description: expected(text.registration.groups[first], `the group ${first}`),
    ...localised(languages, first, ({ registration }) => registration.groups[first]),
    options: members.map(
      (member): APIApplicationCommandSubcommandOption => ({
        type: SUBCOMMAND,
        ...described(member.path, member.path.slice(first.length + 1)),
        options: optionsOf(member),
      }),
    ),
  })

  const all = [...commands, helpCommand, askCommand]
  const firsts = [...new Set(all.map(({ path }) => path.split(' ')[0]!))]
  return firsts.map((first) => {
    const members = all.filter(({ path }) => path.split(' ')[0] === first)
    const plain = members.find(({ path }) => path === first)
    if (plain !== undefined && members.length > 1) throw new TypeError(`/${first} is a command and a group`)
    const body =
      plain === undefined ? groupOf(first, members) : { ...described(first, first), options: optionsOf(plain) }
    return { ...body, integration_types: [...EVERYWHERE.integration_types], contexts: [...EVERYWHERE.contexts] }
  })
}
