import { optionTextOf } from '../../calls/option.ts'
import { byPath, type Callable, optionNames } from '../../chat/callable.ts'
import { HELP } from '../../chat/run/help.ts'

const OWN = [HELP, 'quit']

/** The command that the words begin with, if any; of two, the one of more words. */
const commandOf = (words: readonly string[], commands: readonly Callable[]): Callable | null => {
  const begun = words.map((_, index) => byPath(words.slice(0, index + 1).join(' '), commands))
  return begun.findLast((command) => command !== null) ?? null
}

/** What Tab offers at the end of a line: commands first, then the options not yet given, then what one of a few can be; and the part they replace. */
export const complete = (line: string, commands: readonly Callable[]): [hits: string[], part: string] => {
  const begin = line.trimStart()
  const slash = begin === '' || begin.startsWith('/') ? '/' : ''
  const typed = begin.replace(/^\//, '').toLowerCase()
  const paths = commands.map((command) => command.path)
  if (typed.startsWith(`${HELP} `)) {
    const topic = typed.slice(HELP.length + 1)
    return [paths.filter((path) => path.startsWith(topic)), topic]
  }
  const words = typed.split(/\s+/)
  const command = commandOf(words, commands)
  if (command === null || typed === command.path) {
    const begun = [...paths, ...OWN].filter((path) => path.startsWith(typed))
    return [begun.map((path) => `${slash}${path} `), begin]
  }
  const part = words.at(-1) ?? ''
  const [, given] = /^([^:]+):/.exec(part) ?? []
  if (given !== undefined) {
    const { choices = [] } = optionTextOf(command.input.shape[given])
    return [choices.map((word) => `${given}:${word}`).filter((text) => text.startsWith(part)), part]
  }
  const isOpen = (name: string) => name.startsWith(part) && !words.some((word) => word.startsWith(`${name}:`))
  return [
    optionNames(command)
      .filter(isOpen)
      .map((name) => `${name}:`),
    part,
  ]
}
