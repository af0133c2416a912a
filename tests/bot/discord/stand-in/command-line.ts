import { nearest } from '../../../../bot/chat/grammar/nearest.ts'
import { type CommandNode, GROUP, SUBCOMMAND } from '../fake/check-commands.ts'
import { unquoted } from './lines.ts'
import { Refusal } from './refusal.ts'

/** A command as it is typed in Discord: every option by its name. */
export interface Typed {
  readonly path: string
  readonly leaf: CommandNode
  readonly options: Readonly<Record<string, string>>
}

/** An option and its value, which ends before the next name; a name within double quotes is none. */
const OPTION =
  /\s*([\p{L}_][\p{L}\p{N}_-]*):(?!\/\/)\s*("(?:[^"\\]|\\.)*"(?!\S)|(?:(?!\s+[\p{L}_][\p{L}\p{N}_-]*:(?!\/\/))[\s\S])*)/uy

const innerOf = ({ options = [] }: CommandNode): readonly CommandNode[] =>
  options.filter(({ type }) => type === SUBCOMMAND || type === GROUP)

const listed = (names: readonly string[]): string => (names.length === 0 ? 'none' : names.join(', '))

const unknown = (what: string, name: string, known: readonly string[]): Refusal => {
  const meant = nearest(name, known)
  const hint = meant === null ? `there is ${listed(known)}.` : `did you mean ${meant}?`
  return new Refusal(`${what}: ${hint}`)
}

const byName = (nodes: readonly CommandNode[], name: string, before: string): CommandNode => {
  const found = nodes.find((node) => node.name === name)
  if (found) return found
  const names = nodes.map((node) => node.name)
  if (name === '') throw new Refusal(`${before || '/'} goes on with one of: ${listed(names)}.`)
  throw unknown(`No command ${`${before} ${name}`.trim()} is registered`, name, names)
}

/** Reads `/jar start name:lemon of:10 lemons` by the commands that are registered. */
export const readCommand = (text: string, registered: readonly CommandNode[]): Typed => {
  const words = text.replace(/^\/\s*/, '').split(/\s+/)
  let leaf = byName(registered, (words[0] ?? '').toLowerCase(), '')
  const path = [leaf.name]
  while (innerOf(leaf).length > 0) {
    leaf = byName(innerOf(leaf), (words[path.length] ?? '').toLowerCase(), `/${path.join(' ')}`)
    path.push(leaf.name)
  }
  const line = text.trim().replace(/^\/\s*/, '')
  const rest = line.slice(new RegExp(`^(?:\\S+\\s*){${path.length}}`).exec(line)?.[0].length ?? 0)
  return { path: path.join(' '), leaf, options: readOptions(rest, leaf, path.join(' ')) }
}

const readOptions = (text: string, { options: known = [] }: CommandNode, path: string) => {
  const names = known.map(({ name }) => name)
  const options: Record<string, string> = {}
  for (let at = 0; at < text.length; ) {
    OPTION.lastIndex = at
    const match = OPTION.exec(text)
    if (match === null) {
      const stray = text.slice(at).trim()
      throw new Refusal(`In Discord every option has its name; “${stray}” has none. /${path} has ${listed(names)}.`)
    }
    const name = match[1]!.toLowerCase()
    if (!names.includes(name))
      throw unknown(`/${path} has no option ${name} (in a value, put it in quotes)`, name, names)
    if (name in options) throw new Refusal(`${name}: stands there twice.`)
    options[name] = unquoted(match[2]!.trim())
    at = OPTION.lastIndex
  }
  return options
}

/** What is sent for a value: of one of a few choices the choice's own, whether its name or its value was typed. */
export const choiceOf = ({ name, choices = [] }: CommandNode, typed: string): string => {
  if (choices.length === 0) return typed
  const isIt = (text: unknown): boolean => String(text).toLowerCase() === typed.toLowerCase()
  const found = choices.find((choice) => isIt(choice.value) || isIt(choice.name))
  if (!found) throw new Refusal(`${name}: is one of ${choices.map((choice) => choice.name).join(', ')}.`)
  return String(found.value)
}
