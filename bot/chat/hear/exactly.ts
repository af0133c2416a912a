import { isRefused } from '../../../core/domain-error.ts'
import { findJar, isJarName } from '../../../core/jar/state/find-jar.ts'
import type { Jar } from '../../../store/person.ts'
import type { Invocation } from '../../calls/invocation.ts'
import { byPath, type Callable, optionNames } from '../callable.ts'
import { ChatError } from '../chat-error.ts'
import type { Command } from '../command.ts'
import { parseLine } from '../grammar/grammar.ts'

/** What is done by a line with its slash only: it erases, throws away, or shows to others. */
export const ONLY_TYPED: readonly string[] = ['forget', 'share', 'jar discard', 'jar empty']

/** The call of a line that the grammar and the command take as it is; null where any of it is to be understood first. */
export function exactCall(line: string, commands: readonly Command[], jars: readonly Jar[]): Invocation | null {
  try {
    const call = parseLine(line, commands)
    const command = byPath(call.path, commands)
    const isTaken = command?.input.safeParse({ ...call.options }).success === true
    const { jar } = call.options
    const isJar = jar === undefined || jar === 'all' || !isRefused(() => findJar(jar, jars))
    return isTaken && isJar ? call : null
  } catch (error) {
    if (error instanceof ChatError) return null
    throw error
  }
}

/** As `exactCall` of a line without its slash, which erases, discards and shares nothing. */
export function exactWithoutSlash(line: string, commands: readonly Command[], jars: readonly Jar[]): Invocation | null {
  const call = exactCall(line, commands, jars)
  if (call === null || ONLY_TYPED.includes(call.path)) return null
  // In a sentence a word of a jar's name, or a plant, may be said of something else.
  const { jar } = call.options
  if (jar !== undefined && jar !== 'all' && !isJarName(jar, jars)) return null
  // `measure it` and `settings please` are no lines: what stands without an option's name has to be read.
  const isNamed =
    /(?<!\S)[a-z][a-z-]*:\s*\S/i.test(line) || Object.keys(call.options).length === 0 || 'jar' in call.options
  return isNamed ? call : null
}

/** `name:value`, up to the next. */
const NAMED = /(?<!\S)([a-z][a-z-]*)\s*:\s*(.*?)(?=\s+[a-z][a-z-]*\s*:|$)/gis

/** With their signs; the dash of `4-6` is none. */
const figuresIn = (text: string): readonly string[] =>
  (text.match(/(?<![\d.,])[-−]?\d+(?:[.,]\d+)*/g) ?? []).map((figure) => figure.replace('−', '-'))

/** What a line says before its first option that has a name, and those, as they were typed; null where it names none. */
export function looseAndNamed(
  line: string,
  command: Callable,
): { readonly loose: string; readonly named: Options } | null {
  const known = optionNames(command)
  const found = [...line.matchAll(NAMED)].filter(([, name = '']) => known.includes(name.toLowerCase()))
  const [first] = found
  if (first === undefined) return null
  const named = Object.fromEntries(found.map(([, name = '', text = '']) => [name.toLowerCase(), text]))
  return Object.keys(named).length < found.length ? null : { loose: line.slice(0, first.index).trim(), named }
}

type Options = Readonly<Record<string, string>>

/** Whether a reading says of every option that a line names what the line says of it; an option that there is not is no word of it. */
export function keepsNamed(line: string, call: Invocation, commands: readonly Callable[]): boolean {
  const command = byPath(call.path, commands)
  const known = command === null ? [] : optionNames(command)
  return [...line.matchAll(NAMED)].every(([, name = '', text = '']) => {
    const option = name.toLowerCase()
    if (!known.includes(option)) return false
    const kept = call.options[option]
    const figures = kept === undefined ? [] : figuresIn(kept)
    return kept !== undefined && figuresIn(text).every((figure, at) => figure === figures[at])
  })
}

/** The call of a line as the grammar takes it, whatever its options say; null where it is none. */
export function typedCall(line: string, commands: readonly Callable[]): Invocation | null {
  try {
    return parseLine(line, commands)
  } catch (error) {
    if (error instanceof ChatError) return null
    throw error
  }
}
