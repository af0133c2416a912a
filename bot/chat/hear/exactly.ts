import { isRefused } from '../../../core/domain-error.ts'
import { findJar } from '../../../core/jar/state/find-jar.ts'
import type { Jar } from '../../../store/person.ts'
import type { Invocation } from '../../calls/invocation.ts'
import { byPath, type Callable } from '../callable.ts'
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
  // `measure it` and `settings please` are no lines: what stands without an option's name has to be read.
  const isNamed =
    /(?<!\S)[a-z][a-z-]*:\s*\S/i.test(line) || Object.keys(call.options).length === 0 || 'jar' in call.options
  return isNamed ? call : null
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
