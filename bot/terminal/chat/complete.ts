import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { optionTextOf, type Suggested } from '../../calls/option.ts'
import { byPath, type Callable, optionNames } from '../../chat/callable.ts'
import { HELP } from '../../chat/run/help-page.ts'

const OWN = [HELP, 'quit']

/** The command that the words begin with, if any; of two, the one of more words. */
const commandOf = (words: readonly string[], commands: readonly Callable[]): Callable | null => {
  const begun = words.map((_, index) => byPath(words.slice(0, index + 1).join(' '), commands))
  return begun.findLast((command) => command !== null) ?? null
}

/** What a person may name, for Tab to finish. */
export interface Nameable {
  readonly jars: readonly string[]
}

const NOTHING: Nameable = { jars: [] }

const JARS: readonly (Suggested | undefined)[] = ['jar', 'jar_or_all', 'jars']

/** Names in English as they are typed. */
const plants: readonly string[] = [
  ...new Set(catalogue.flatMap(({ names }) => names.en.map((name) => name.toLowerCase()))),
]

const begunWith = (names: readonly string[], part: string): readonly string[] =>
  part === '' ? [] : names.filter((name) => name.toLowerCase().startsWith(part.toLowerCase())).slice(0, MOST)

const MOST = 20

/** The option whose value is being typed: the last that was named, else the first where that goes without its name. */
const optionAt = (words: readonly string[], command: Callable): Suggested | undefined => {
  const named = words.findLast((word) => /^[a-z-]+:/.test(word))?.split(':')[0]
  const [first = ''] = optionNames(command)
  return optionTextOf(command.input.shape[named ?? first]).suggested
}

/** Jars and plants that a word may begin, where the option takes them. */
const namesFor = (words: readonly string[], part: string, command: Callable, { jars }: Nameable): readonly string[] => {
  const suggested = optionAt(words, command)
  if (JARS.includes(suggested)) return begunWith(jars, part)
  return suggested === 'botanicals' ? begunWith(plants, part) : []
}

/** What Tab offers at the end of a line: commands first, then the options not yet given, then what one of a few can be; and the part they replace. */
export const complete = (
  line: string,
  commands: readonly Callable[],
  known: Nameable = NOTHING,
): [hits: string[], part: string] => {
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
    const last = words.at(-1) ?? ''
    // In a sentence a jar or a plant may be named anywhere.
    if (begun.length === 0 && slash === '') return [[...begunWith([...known.jars, ...plants], last)], last]
    return [begun.map((path) => `${slash}${path} `), begin]
  }
  const part = words.at(-1) ?? ''
  const [, given] = /^([^:]+):/.exec(part) ?? []
  if (given !== undefined) {
    const { choices = [] } = optionTextOf(command.input.shape[given])
    const begun = namesFor(words, part.slice(given.length + 1), command, known).map((name) => `${given}:${name}`)
    return [[...choices.map((word) => `${given}:${word}`).filter((text) => text.startsWith(part)), ...begun], part]
  }
  const isOpen = (name: string) => name.startsWith(part) && !words.some((word) => word.startsWith(`${name}:`))
  const options = optionNames(command).filter(isOpen)
  return [[...options.map((name) => `${name}:`), ...namesFor(words, part, command, known)], part]
}
